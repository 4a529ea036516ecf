import { type Chain, reachOf } from "./chain.ts";
import { mix } from "./vector.ts";

/** What a petal is made of; shares are of its length, which is 1. */
export interface PetalShape {
  /** Half of the greatest width. */
  readonly half: number;
  /** Half of the width at the base, and how far the base is from the flower's middle. */
  readonly base: number;
  readonly from: number;
  /** How broad the end is, 0 (pointed) to 1 (full). */
  readonly roundness: number;
  /** How deep the end is notched, 0 to 1. */
  readonly notch: number;
}

/** The right half of a petal that reaches exactly 1 up from the origin, from its end to its base. */
export function petalHalf(shape: PetalShape): number[] {
  const { half, base, from, roundness, notch } = shape;
  const depth = notch * half * 0.62;
  const lobe = half * mix(0.08, mix(0.08, 0.5, Math.min(1, notch * 2.2)), roundness);
  const wide = mix(0.52, 0.7, roundness);
  const dip = lobe * mix(0.45, 0.3, notch);
  const out = [
    0,
    depth - 1,
    dip,
    mix(depth, depth * 0.25, notch > 0 ? 0.9 : 0) - 1,
    lobe - dip * 0.9,
    -1,
    lobe,
    -1,
  ];
  const shoulder = (half - lobe) * mix(0.2, 0.58, roundness);
  out.push(lobe + shoulder, -1, half, -wide - (1 - wide) * mix(0.5, 0.56, roundness), half, -wide);
  const run = wide - from;
  const slope = (half - base) / run;
  out.push(half, -wide + run * 0.34, base + slope * run * 0.42, -from - run * 0.42, base, -from);
  out.push(base, -from * 0.6, base * 0.5, 0, 0, 0);
  return fitted(out);
}

/** A chain scaled so that its farthest point is 1 from the origin. */
function fitted(chain: Chain): number[] {
  const reach = reachOf(chain);
  return chain.map((v) => v / reach);
}
