import { badInput } from "../../../../errors/catalogue.ts";

/** A picture that cannot be read as a PNG. */
export const badPicture = (
  where: string,
  what: string,
  fix = "save it again as a PNG",
  cause?: unknown,
): Error => badInput("bad-picture", where, what, fix, cause);

/** A picture that takes more than is allowed. */
export const pictureTooLarge = (where: string, what: string): Error =>
  badInput("picture-too-large", where, what, "scan at fewer dpi, or cut the picture down to the drawing");

/** First bytes of formats that a designer may give for a PNG. */
const OTHERS: readonly (readonly [name: string, at: number, bytes: readonly number[]])[] = [
  ["a JPEG", 0, [0xff, 0xd8, 0xff]],
  ["a GIF", 0, [0x47, 0x49, 0x46, 0x38]],
  ["a TIFF", 0, [0x49, 0x49, 0x2a, 0x00]],
  ["a TIFF", 0, [0x4d, 0x4d, 0x00, 0x2a]],
  ["a WebP", 8, [0x57, 0x45, 0x42, 0x50]],
  ["a BMP", 0, [0x42, 0x4d]],
  ["a PDF", 0, [0x25, 0x50, 0x44, 0x46]],
  ["a PSD", 0, [0x38, 0x42, 0x50, 0x53]],
];

/** The refusal of what is no PNG; it names the format where that is known. */
export function notPng(bytes: Uint8Array, where: string): Error {
  const other = OTHERS.find(([, at, sign]) => sign.every((byte, i) => bytes[at + i] === byte));
  const what = bytes.length === 0 ? "there is nothing in it" : `it is ${other?.[0] ?? "not a PNG"}`;
  return badInput("not-png", where, what, "save the picture as a PNG");
}
