import type { Point } from "./point.ts";

/** Rounds of smoothing: each takes in one more point on either side. */
const ROUNDS = 24;

/**
 * Points of which those that are hidden lie evenly: below other inks an outline may run as it likes, and needs the
 * fewest nodes where it is smooth. What is seen stays where it is.
 */
export function smoothHidden(points: readonly Point[], isHidden: (p: Point) => boolean): readonly Point[] {
  const hidden = points.map(isHidden);
  if (!hidden.includes(true)) return points;
  const n = points.length;
  let now = [...points];
  for (let round = 0; round < ROUNDS; round++) {
    const before = now;
    now = before.map((p, i) => {
      if (!hidden[i]) return p;
      const [a, b] = [before[(i + n - 1) % n]!, before[(i + 1) % n]!];
      return [(a[0] + 2 * p[0] + b[0]) / 4, (a[1] + 2 * p[1] + b[1]) / 4];
    });
  }
  return now;
}
