import { badInput } from "../errors/catalogue.ts";
import { mmToUm } from "../units/length.ts";
import { type Closed, closing, roundedUp } from "./closing.ts";

/** Height of an equilateral triangle of side 1, √3 / 2: rows of a hexagonal lattice stand so far apart. */
const ROW = Math.sqrt(3) / 2;

/** A hexagonal lattice on whole µm. */
export interface Sixfold {
  /** From one point to the next in a row; even. */
  readonly width: number;
  /** From row to row. */
  readonly row: number;
  /** How far the lattice is from what was asked and from true, whichever is more; see {@link sixfold}. */
  readonly off: number;
}

/**
 * The hexagonal lattice of a given width on whole µm. √3 is irrational, so none is true to the last bit: rows
 * stand at the whole µm nearest to √3/2 of the width, which is at most half a µm off. That much is never
 * refused, and reported in `off`; a width that does not halve, or a row height that is asked for and is not
 * the nearest, is refused beyond `limit`.
 * @throws SprigwrightError `uneven-length` or `not-hexagonal`
 */
export function sixfold(
  widthMm: number,
  rowMm: number | undefined,
  limit: number,
  where: string,
  rowName = "height",
): Sixfold {
  const { um: width, off }: Closed = closing(widthMm, 2, `${where} > width`, limit);
  const best = Math.round(width * ROW);
  const row = rowMm === undefined ? best : mmToUm(rowMm);
  const bent = Math.abs(row / (width * ROW) - 1);
  if (row !== best && bent > limit)
    throw badInput(
      "not-hexagonal",
      `${where} > ${rowName}`,
      `rows ${row / 1000} mm apart are ${Math.round(bent * 1e6) / 1e4} % off a hexagonal lattice of ${width / 1000} mm`,
      `leave it out, give ${best / 1000} mm, or allow a distortion of ${roundedUp(bent)}; least off near that width: ${truest(width) / 1000} mm`,
    );
  return { width, row, off: Math.max(off, bent) };
}

/** The even width within 1 % (at most 1 mm) of `width` µm whose rows are least off; of equals the nearest. */
export function truest(width: number): number {
  const reach = 2 * Math.floor(Math.min(1000, width / 100) / 2);
  let best = width;
  let least = Infinity;
  for (let step = 0; step <= reach; step += 2)
    for (const candidate of [width - step, width + step]) {
      const off = Math.abs(Math.round(candidate * ROW) / (candidate * ROW) - 1);
      if (off < least) {
        best = candidate;
        least = off;
      }
    }
  return best;
}
