import { Unzlib } from "fflate";
import { badPicture } from "./refused.ts";

/** Bytes handed to the unpacker at a time: they can grow to a thousand times as many, no more. */
const AT_ONCE = 8192;

/**
 * Makes sure that packed data holds just `expected` bytes: a small file that would unpack to gigabytes is stopped
 * as soon as it passes that, and one that was cut off is found before it is drawn.
 * @throws SprigwrightError `bad-picture`
 */
export function checkUnpacked(parts: readonly Uint8Array[], expected: number, where: string): void {
  let length = 0;
  const unpacker = new Unzlib((piece) => {
    length += piece.length;
  });
  try {
    for (const part of parts)
      for (let at = 0; at < part.length && length <= expected; at += AT_ONCE)
        unpacker.push(part.subarray(at, at + AT_ONCE));
    if (length <= expected) unpacker.push(new Uint8Array(0), true);
  } catch (cause) {
    throw badPicture(where, "its image data is damaged or cut off", "copy or export the PNG again", cause);
  }
  if (length > expected) throw badPicture(where, "it holds more image data than its size calls for");
  if (length < expected)
    throw badPicture(
      where,
      `only ${Math.floor((100 * length) / expected)} % of it is there`,
      "copy or export the PNG again",
    );
}
