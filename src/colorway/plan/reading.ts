/** ΔE00 and difference in L* beyond which two inks cannot be told apart any better: by our own eye, no standard. */
const APART = { difference: 34, lightness: 29 } as const;

/**
 * How well two inks side by side are told apart, 0..1, from their ΔE00 and their difference in L*: lightness does more
 * than hue, since an edge between two inks of one lightness swims, and the first steps do most.
 */
export function reading(difference: number, lightness: number): number {
  const both =
    0.4 * Math.min(1, difference / APART.difference) + 0.6 * Math.min(1, lightness / APART.lightness);
  return both * (2 - both);
}

/** Reading below which an edge drags a colorway down. */
export const LEGIBLE = 0.5;

/** Weight (see `Sight`) from which an edge that is not legible drags in full. */
const HEAVY = 0.08;

/** How much an edge drags a colorway down, 0..1. A short edge between twins is a blemish, a long one is ruin. */
export const drag = (read: number, weight: number): number =>
  (Math.max(0, LEGIBLE - read) / LEGIBLE) * Math.min(1, weight / HEAVY);
