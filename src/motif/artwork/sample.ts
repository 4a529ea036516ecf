import type { Runs } from "../../geometry/sketch.ts";
import { extentOf } from "./extent.ts";

/** A place within what is painted, and how much of it the place stands for. */
export interface Sample {
  readonly x: number;
  readonly y: number;
  readonly weight: number;
}

/** Straight pieces that a curve is looked at as: enough for a mean. */
const PIECES = 6;
const ROWS = 20;
const PLACES = 8;

/** Places within an outline, filled nonzero: some on each span of a number of level lines. */
export function sampleArea(outline: Runs): Sample[] {
  const { minY, maxY } = extentOf([outline]);
  const sides = sidesOf(outline, true);
  const samples: Sample[] = [];
  for (let row = 0; row < ROWS; row++) {
    const y = minY + ((row + 0.5) / ROWS) * (maxY - minY);
    const meets: { x: number; way: number }[] = [];
    for (const [ax, ay, bx, by] of sides)
      if (ay <= y !== by <= y)
        meets.push({ x: ax + ((y - ay) / (by - ay)) * (bx - ax), way: ay < by ? 1 : -1 });
    meets.sort((p, q) => p.x - q.x || p.way - q.way);
    let winding = 0;
    for (let i = 0; i + 1 < meets.length; i++) {
      winding += meets[i]!.way;
      const [from, to] = [meets[i]!.x, meets[i + 1]!.x];
      if (winding === 0 || !(to > from)) continue;
      for (let k = 0; k < PLACES; k++)
        samples.push({ x: from + ((k + 0.5) / PLACES) * (to - from), y, weight: (to - from) / PLACES });
    }
  }
  return samples;
}

/** Places along an outline's lines. */
export function sampleLine(outline: Runs): Sample[] {
  return sidesOf(outline, false).map(([ax, ay, bx, by]) => ({
    x: (ax + bx) / 2,
    y: (ay + by) / 2,
    weight: Math.sqrt((bx - ax) * (bx - ax) + (by - ay) * (by - ay)),
  }));
}

type Side = readonly [ax: number, ay: number, bx: number, by: number];

function sidesOf(outline: Runs, closed: boolean): Side[] {
  const sides: Side[] = [];
  for (const { points: p, closed: loop } of outline) {
    let [x, y] = [p[0]!, p[1]!];
    const to = (nx: number, ny: number): void => {
      sides.push([x, y, nx, ny]);
      [x, y] = [nx, ny];
    };
    for (let i = 0; i + 7 < p.length; i += 6)
      for (let k = 1; k <= PIECES; k++) {
        const t = k / PIECES;
        const s = 1 - t;
        const [b0, b1, b2, b3] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
        to(
          b0 * p[i]! + b1 * p[i + 2]! + b2 * p[i + 4]! + b3 * p[i + 6]!,
          b0 * p[i + 1]! + b1 * p[i + 3]! + b2 * p[i + 5]! + b3 * p[i + 7]!,
        );
      }
    if (closed || loop) to(p[0]!, p[1]!);
  }
  return sides;
}
