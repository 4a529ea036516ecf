import { arcHandle, QUARTER } from "../../geometry/shapes.ts";
import { along, type Chain } from "./chain.ts";
import { mix, unit } from "./vector.ts";

/** What a leaf-like blade is made of, in mm. It stands upright on (0, 0). */
export interface BladeShape {
  /** From the foot of the stalk to the tip. */
  readonly length: number;
  /** Half of the greatest width. */
  readonly half: number;
  /** Where the blade is widest, as a share of it from its base. */
  readonly fullest: number;
  /** How blunt the tip is, 0 to 1. */
  readonly roundness: number;
  /** Length of the bare stalk. */
  readonly stalk: number;
  /** Half of the stalk's width. */
  readonly stalkHalf: number;
}

/** The least radius of a tip, so that print holds it. */
const TIP = 0.3;

/** Radius of the arc that a blade ends in. */
export function tipRadius({ length, half, roundness, stalk }: BladeShape): number {
  return Math.min(mix(Math.min(TIP, half * 0.3), half * 0.72, roundness), (length - stalk) * 0.3);
}

/** The right half of a blade with its stalk, from the tip down to the foot. */
export function bladeHalf(shape: BladeShape): number[] {
  const { length, half, fullest, roundness, stalk, stalkHalf } = shape;
  const blade = length - stalk;
  const round = tipRadius(shape);
  // The tip is an arc that ends where it runs in direction `d`, from which the side swings out.
  const wide = -stalk - blade * fullest;
  const d = unit(half * mix(1.3, 2.6, roundness), wide + length);
  const [tx, ty] = [round * d[1], -length + round - round * d[0]];
  const cap = arcHandle(d[0]) * round;
  const swing = Math.max(0, wide - ty);
  // The foot is a half circle, a little broader than the stalk.
  const foot = stalkHalf * 1.12;
  const rise = Math.max(stalk + stalkHalf * 0.4, foot * 1.3);
  const fall = -rise - wide;
  const out = [0, -length, cap, -length, tx - d[0] * cap, ty - d[1] * cap, tx, ty];
  const reach = Math.min(0.55 * swing, (0.62 * (half - tx)) / d[0]);
  out.push(tx + d[0] * reach, ty + d[1] * reach, half, wide - swing * 0.4, half, wide);
  out.push(half, wide + fall * 0.62, stalkHalf, -rise - fall * 0.13, stalkHalf, -rise);
  out.push(stalkHalf, -rise + (rise - foot) * 0.4, foot, -foot, foot, -foot);
  out.push(foot, -foot + foot * QUARTER, foot * QUARTER, 0, 0, 0);
  return out;
}

/** Half of a blade's width at height `y`, from its right half; 0 outside of it. */
export function halfWidthAt(half: Chain, y: number): number {
  for (let i = 0; i + 7 < half.length; i += 6) {
    if (y < half[i + 1]! || y > half[i + 7]!) continue;
    let [low, high] = [0, 1];
    for (let k = 0; k < 40; k++) {
      const middle = (low + high) / 2;
      if (along(half, i, 1, middle) < y) low = middle;
      else high = middle;
    }
    return along(half, i, 0, low);
  }
  return 0;
}
