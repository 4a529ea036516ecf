import { badInput, shown } from "../../errors/catalogue.ts";

/** Largest profile that is read; those of presses have 0.2 to 10 MB. */
const MOST_BYTES = 64_000_000;
const SPACES: Readonly<Record<string, string>> = { "RGB ": "an RGB", GRAY: "a grey", "Lab ": "a Lab" };

/**
 * Makes sure that bytes are an ICC profile of a CMYK press, by its header (ICC.1:2022, 7.2).
 * @throws SprigwrightError `bad-profile`, `not-cmyk`
 */
export function checkProfile(given: unknown, where: string): Uint8Array {
  const bytes = given instanceof ArrayBuffer ? new Uint8Array(given) : given;
  const wrong = (what: string): Error =>
    badInput("bad-profile", where, what, "give the bytes of your printer's .icc file, as it came");
  if (!(bytes instanceof Uint8Array)) throw wrong(`${shown(given)} is not bytes`);
  if (bytes.length < 132 || bytes.length > MOST_BYTES) throw wrong(`${bytes.length} bytes are no profile`);
  const text = (at: number): string => String.fromCharCode(...bytes.subarray(at, at + 4));
  if (text(36) !== "acsp") throw wrong("it is not an ICC profile");
  const length = new DataView(bytes.buffer, bytes.byteOffset, 4).getUint32(0);
  if (length > bytes.length) throw wrong(`it is cut off: ${bytes.length} of ${length} bytes are there`);
  const space = text(16);
  if (space !== "CMYK")
    throw badInput(
      "not-cmyk",
      where,
      `it is ${SPACES[space] ?? `a "${space.trim()}"`} profile`,
      "give the CMYK profile of the press and paper; your printer has it",
    );
  if (text(12) !== "prtr") throw wrong(`its class is "${text(12)}", not that of a printer`);
  return bytes;
}
