import { badInput } from "../../errors/catalogue.ts";
import { readProfile } from "./read-profile.ts";

/**
 * Makes sure that bytes are an ICC profile of a CMYK press, by its header.
 * @throws SprigwrightError `bad-profile`, `not-cmyk`, `wrong-type`
 */
export function checkProfile(given: unknown, where: string): Uint8Array {
  const bytes = given instanceof ArrayBuffer ? new Uint8Array(given) : given;
  const { space, use } = readProfile(bytes, where);
  if (space !== "CMYK")
    throw badInput(
      "not-cmyk",
      where,
      `it is a profile for ${space}`,
      "give the CMYK profile of the press and paper; your printer has it",
    );
  if (use !== "prtr")
    throw badInput(
      "bad-profile",
      where,
      `its class is ${JSON.stringify(use)}, not that of a printer`,
      "give the profile of a press and paper; your printer has it",
    );
  return bytes as Uint8Array;
}
