import { badInput, wrongType } from "../../errors/catalogue.ts";

/** What an ICC profile is for, as its header says. */
export interface ProfileFacts {
  readonly space: "GRAY" | "RGB" | "CMYK";
  /** How many values a colour has. */
  readonly channels: 1 | 3 | 4;
  /** Its class: `prtr` for a printer, `mntr` for a screen, and so on. */
  readonly use: string;
}

const CHANNELS = { GRAY: 1, RGB: 3, CMYK: 4 } as const;

/** Shorter than its header and tag count no profile can be; those of presses have 0.2 to 10 MB (bytes). */
const [LEAST, MOST] = [132, 64_000_000];

/**
 * Reads the header of an ICC profile (ICC.1:2022, 7.2: size at 0, class at 12, colour space at 16, `acsp` at 36).
 * @throws SprigwrightError `bad-profile` for bytes that are none, or one for other than grey, RGB or CMYK; `wrong-type`
 */
export function readProfile(bytes: unknown, where: string): ProfileFacts {
  if (!(bytes instanceof Uint8Array))
    throw wrongType(where, bytes, "the bytes of an ICC profile, a Uint8Array");
  const refused = (what: string): Error =>
    badInput("bad-profile", where, what, "give the whole .icc file that your printer names, unchanged");
  const text = (at: number): string => String.fromCharCode(...bytes.subarray(at, at + 4)).trim();
  if (bytes.length < LEAST || bytes.length > MOST || text(36) !== "acsp")
    throw refused("this is not an ICC profile");
  const size = new DataView(bytes.buffer, bytes.byteOffset).getUint32(0);
  if (size > bytes.length) throw refused(`it is cut off: ${bytes.length} of ${size} bytes are there`);
  const space = text(16);
  if (!Object.hasOwn(CHANNELS, space))
    throw refused(`it is for ${JSON.stringify(space)}, not for GRAY, RGB or CMYK`);
  const known = space as ProfileFacts["space"];
  return { space: known, channels: CHANNELS[known], use: text(12) };
}
