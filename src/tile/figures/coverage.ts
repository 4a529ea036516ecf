import { ringsArea } from "../../geometry/clip.ts";
import { flatten, type Ring } from "../../geometry/flatten.ts";
import { growRings } from "../../geometry/grow.ts";
import { areaOf } from "../../geometry/path.ts";
import type { Raster } from "./raster.ts";
import type { Scene } from "./scene.ts";

/**
 * Ink coverage: the share of the block, 0 to 1, that the motifs cover together, knocked-out parts (role `ground`) left out.
 *
 * Exact by the areas of the Béziers as long as no two motifs overlap; otherwise the share of pixels whose middle lies
 * in ink, right to about 0.003. What is good depends on the print: common practice calls below 0.25 airy and
 * above 0.5 full.
 */
export function inkCoverage({ copies, cellArea }: Scene, { ink }: Raster, overlapping: boolean): number {
  if (!overlapping) return copies.reduce((sum, { area }) => sum + area, 0) / cellArea;
  let count = 0;
  for (const pixel of ink) count += pixel & 1;
  return count / ink.length;
}

/**
 * Offset coverage: the share of the block that the motifs cover when grown by half the clearance on all sides, 0 to 1.
 *
 * Then the nearest two just touch, as the pieces of a packing do: this is the number to hold against packing densities
 * from the literature (random sequential addition of discs 0.547, random close packing 0.82 to 0.86, the densest
 * packing of discs 0.907). Outlines are grown as polygons and no two of them overlap, so areas add. Where motifs overlap,
 * pixels are counted instead, right to about 0.01.
 */
export function offsetCoverage(
  scene: Scene,
  squared: Float64Array,
  clearance: number,
  ink: number,
  overlapping: boolean,
): number {
  const by = clearance / 2;
  if (by === 0) return ink;
  if (overlapping) {
    let count = 0;
    for (const away of squared) if (away <= by * by) count++;
    return count / squared.length;
  }
  const rims = scene.motifs.map((_, motif) => rimOf(scene, motif, by));
  let sum = 0;
  for (const { motif, scale } of scene.placements) sum += rims[motif]!(scale);
  return Math.min(1, ink + (sum * scene.operations.length) / scene.cellArea);
}

/** Scales for which a rim is worked out; for others it is interpolated. */
const SCALES = 4;

/** What growing a motif by `by` µm adds to its area (µm²), for every scale that the tile uses. */
function rimOf({ motifs, placements }: Scene, motif: number, by: number): (scale: number) => number {
  const used = new Set(placements.filter((p) => p.motif === motif).map((p) => p.scale));
  if (used.size === 0) return () => 0;
  const [least, most] = [Math.min(...used), Math.max(...used)];
  const scales =
    used.size <= SCALES
      ? [...used]
      : Array.from({ length: SCALES }, (_, k) => least + ((most - least) * k) / (SCALES - 1));
  const { outline } = motifs[motif]!;
  const rings = flatten(outline, Math.min(by / most / 8, Math.sqrt(Math.abs(areaOf(outline))) / 120));
  const rims = scales.map((scale) => rim(rings, by / scale) * scale * scale);
  return (scale) => interpolate(scales, rims, scale);
}

const rim = (rings: readonly Ring[], by: number): number =>
  ringsArea(growRings(rings, by, by / 250)) - ringsArea(rings);

/** The polynomial through all points, by Lagrange. */
function interpolate(xs: readonly number[], ys: readonly number[], x: number): number {
  let sum = 0;
  xs.forEach((at, i) => {
    let term = ys[i]!;
    xs.forEach((other, j) => {
      if (i !== j) term *= (x - other) / (at - other);
    });
    sum += term;
  });
  return sum;
}
