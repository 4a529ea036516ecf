import { badInput } from "../errors/catalogue.ts";
import { number } from "../params/kinds.ts";
import type { NumberParam } from "../params/param.ts";
import { mmToUm } from "../units/length.ts";

/** How far a length may be changed so that the repeat closes on whole µm, as most repeat types take it. */
export const distortion: {
  /** How far sizes may be changed so that the repeat closes, as a share of them. 0 to 0.05; default 0: a size that does not close is refused. */
  readonly distortion: NumberParam;
} = {
  distortion: number({
    about: "How far sizes may be changed so that the repeat closes, as a share of them.",
    min: 0,
    max: 0.05,
    default: 0,
  }),
};

/** A length in whole µm, and how far that is from what was asked, as a share of it. */
export interface Closed {
  readonly um: number;
  readonly off: number;
}

/**
 * A length as a multiple of `parts` µm, so that its `parts`-th is whole.
 * @throws SprigwrightError `uneven-length` with the nearest sizes, when that would change it by more than `limit`
 */
export function closing(mm: number, parts: number, where: string, limit: number): Closed {
  const um = mmToUm(mm);
  const lower = parts * Math.floor(um / parts);
  if (lower === um) return { um, off: 0 };
  const nearest = um - lower <= lower + parts - um ? lower : lower + parts;
  const off = Math.abs(nearest - um) / um;
  if (off <= limit) return { um: nearest, off };
  throw badInput(
    "uneven-length",
    where,
    `${mm} mm does not part into ${parts} of whole micrometres, so the repeat would not close`,
    `give ${lower / 1000} mm or ${(lower + parts) / 1000} mm, or allow a distortion of ${roundedUp(off)}`,
  );
}

/** A share rounded up to two figures that count, to be offered as a limit. */
export function roundedUp(share: number): number {
  let step = 1;
  while (share * step < 10) step *= 10;
  return Math.ceil(share * step) / step;
}
