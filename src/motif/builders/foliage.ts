import type { Path } from "../../geometry/path.ts";
import { type BladeShape, bladeHalf } from "./blade.ts";
import { bent, mirrored, placed, straight, toPath } from "./chain.ts";
import { FINE, stroke } from "./stroke.ts";
import type { Vector } from "./vector.ts";

/** A small leaf on a stem. */
export interface Foliage {
  readonly blade: Path;
  /** Its midrib, which grows out of the stem; none where it would crowd the blade. */
  readonly rib: readonly Path[];
}

/** The shape of a small leaf `long` mm, `width` (a share of that) wide, on a stalk `stalk` mm thick. */
export function leafletShape(long: number, width: number, roundness: number, stalk: number): BladeShape {
  const half = (width * long) / 2;
  const stalkHalf = Math.min(stalk / 2, half * 0.5);
  return { length: long, half, fullest: 0.42, roundness, stalk: long * 0.03, stalkHalf };
}

/** A leaf that grows from `at` towards `way`, its middle off to the right by `curl` (a share of its length). */
export function leaflet(shape: BladeShape, at: Vector, way: Vector, curl: number): Foliage {
  const { length: long, half, stalkHalf } = shape;
  const set = (chain: readonly number[]): number[] => placed(bent(chain, 0, -long, curl * long), at, way);
  const blade = toPath(set(mirrored(bladeHalf(shape))));
  if (half < FINE * 3) return { blade, rib: [] };
  const thick = Math.max(FINE, stalkHalf * 1.9);
  return {
    blade,
    rib: [stroke(set(straight([0, 0], [0, -long * 0.71])), [thick, Math.max(FINE, thick * 0.6)])],
  };
}
