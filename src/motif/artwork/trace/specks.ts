import { badInput } from "../../../errors/catalogue.ts";
import type { Regions } from "./regions.ts";
import type { Shares } from "./shares.ts";

/** Entries of the table of what specks touch. */
const MOST_CONTACTS = 40_000_000;

/** What was too small to keep. */
export interface Specks {
  /** Areas of ink. */
  readonly specks: number;
  /** Areas of paper. */
  readonly pinholes: number;
}

/**
 * Gives every region of fewer pixels than `least` to the ink that has most of its border, in `shares` itself;
 * ink that has no neighbour but other specks goes to the paper.
 * @throws SprigwrightError `picture-too-rich` when there are too many to be a drawing
 */
export function takeSpecks(
  shares: Shares,
  regions: Regions,
  least: number,
  labels: number,
  isPaper: (label: number) => boolean,
  where: string,
): Specks {
  const { width, major, minor, part } = shares;
  const slots = new Int32Array(regions.count).fill(-1);
  let [small, specks, pinholes] = [0, 0, 0];
  const largest = regions.areas.reduce((most, area) => Math.max(most, area), 0);
  for (let region = 0; region < regions.count; region++) {
    if (regions.areas[region]! >= Math.min(least, largest)) continue;
    slots[region] = small++;
    if (isPaper(regions.labels[region]!)) pinholes++;
    else specks++;
  }
  if (small === 0) return { specks, pinholes };
  if (small * labels > MOST_CONTACTS)
    throw badInput(
      "picture-too-rich",
      where,
      `it falls into more than ${small} specks`,
      "give a picture of flat shapes, or fewer inks",
    );
  const heirs = new Int32Array(small).fill(-1);
  // Specks within specks learn their heirs in rounds, from the outermost inwards.
  for (let round = 0, left = small; round < 4 && left > 0; round++) {
    const contacts = new Int32Array(small * labels);
    const heirOf = (region: number): number =>
      slots[region]! < 0 ? regions.labels[region]! : heirs[slots[region]!]!;
    const meet = (i: number, j: number): void => {
      const [p, q] = [regions.of[i]!, regions.of[j]!];
      if (p === q) return;
      for (const [speck, other] of [
        [p, q],
        [q, p],
      ] as const) {
        const slot = slots[speck]!;
        if (slot < 0 || heirs[slot]! >= 0) continue;
        const heir = heirOf(other);
        if (heir >= 0) contacts[slot * labels + heir]!++;
      }
    };
    for (let i = 0, x = 0; i < major.length; i++, x = x + 1 === width ? 0 : x + 1) {
      if (x + 1 < width && regions.of[i] !== regions.of[i + 1]) meet(i, i + 1);
      if (i + width < major.length && regions.of[i] !== regions.of[i + width]) meet(i, i + width);
    }
    for (let slot = 0; slot < small; slot++) {
      if (heirs[slot]! >= 0) continue;
      let most = 0;
      for (let label = 0; label < labels; label++)
        if (contacts[slot * labels + label]! > most) {
          most = contacts[slot * labels + label]!;
          heirs[slot] = label;
        }
      if (most > 0) left--;
    }
  }
  for (let i = 0; i < major.length; i++) {
    const slot = slots[regions.of[i]!]!;
    if (slot < 0 || heirs[slot]! < 0) continue;
    major[i] = minor[i] = heirs[slot]!;
    part[i] = 0;
  }
  return { specks, pinholes };
}
