import { badInput, missingOption, outOfRange, shown } from "../errors/catalogue.ts";

/**
 * A length: a number of millimetres, or text with its unit.
 * `12`, `"12mm"`, `"1.2cm"` and `"6.4in"` are lengths; `"50px"` is not, since a pixel has no size.
 */
export type Length = number | `${number}mm` | `${number}cm` | `${number}in`;

/** Micrometres in an inch: exactly 25 400, by the international yard and pound agreement of 1959. */
export const UM_PER_INCH = 25_400;

/** The longest length taken, in mm (100 m: a bolt of cloth; coordinates stay within 32 bits). */
export const LONGEST_MM = 100_000;

const MM_PER = { mm: 1, cm: 10, in: UM_PER_INCH / 1000 } as const;
const LENGTH_TEXT = /^\s*([+-]?(?:\d+\.?\d*|\.\d+))\s*(mm|cm|in)\s*$/;

/** How a length is written. */
const WRITTEN = 'a number of mm, or text such as "12mm", "1.2cm" or "6.4in"';

/** A refusal of what is no length; a number written as text is shown as what it most likely means. */
function noLength(where: string, given: unknown): Error {
  const bare =
    typeof given === "string" ? /^\s*([+-]?\d{1,9}(?:\.\d{1,9})?)\s*$/.exec(given)?.[1] : undefined;
  const fix =
    bare === undefined ? `give a length: ${WRITTEN}` : `give ${Number(bare)} or "${Number(bare)}mm"`;
  return badInput("wrong-type", where, `${shown(given)} is not a length`, fix);
}

/**
 * A length in millimetres.
 * @throws SprigwrightError `wrong-type` when it is not a length, `length-range` beyond 100 m
 */
export function toMm(length: Length, where = "length"): number {
  if (length === undefined) throw missingOption(where, `a length: ${WRITTEN}`);
  let mm: number;
  if (typeof length === "number") mm = length;
  else {
    const match = typeof length === "string" && length.length <= 40 ? LENGTH_TEXT.exec(length) : null;
    if (!match) throw noLength(where, length);
    // Through whole micrometres first where text allows it, so that "6.4in" is 162.56 and not 162.55999.
    mm = Math.round(Number(match[1]) * MM_PER[match[2] as keyof typeof MM_PER] * 1e6) / 1e6;
  }
  if (!Number.isFinite(mm)) throw noLength(where, length);
  if (mm > LONGEST_MM || mm < -LONGEST_MM)
    throw outOfRange(where, mm, { min: -LONGEST_MM, max: LONGEST_MM }, "mm", "length-range");
  return mm;
}

/** Millimetres as the nearest whole number of micrometres (never -0). */
export const mmToUm = (mm: number): number => Math.round(mm * 1000) + 0;

/** Micrometres as millimetres. */
export const umToMm = (um: number): number => um / 1000;
