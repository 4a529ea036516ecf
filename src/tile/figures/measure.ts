import type { Arrangement, Lattice } from "../../geometry/lattice.ts";
import { areaOf } from "../../geometry/path.ts";
import type { Placement } from "../../layout/layout.ts";
import type { Motif } from "../../motif/motif.ts";
import { deepFreeze } from "../../params/canonical.ts";
import type { Figures, Layer } from "../tile.ts";
import { balanceOf } from "./balance.ts";
import { clearanceOf, nearestImages } from "./clearance.ts";
import { inkCoverage, offsetCoverage } from "./coverage.ts";
import { distanceTransform } from "./distance-transform.ts";
import { rasterOf } from "./draw-raster.ts";
import { facingOf } from "./facing.ts";
import { holesOf } from "./holes.ts";
import { huddleOf } from "./huddle.ts";
import { lanesOf } from "./lanes.ts";
import { lumpiness } from "./lumpiness.ts";
import { neighboursOf } from "./neighbours.ts";
import { sceneOf } from "./scene.ts";

/** What is measured: a tile without its figures. */
export interface Measured {
  readonly motifs: readonly Motif[];
  readonly placements: readonly Placement[];
  readonly arrangement: Arrangement;
  /** The tile's own lattice: that of the arrangement, except for the corner of a frame. */
  readonly lattice: Lattice;
  readonly layers: readonly Layer[];
}

/**
 * All figures of a tile, measured on what was drawn, on the torus that its block is.
 *
 * Of the corner of a frame, coverage and ink by role are its own; all else is measured on the band it was cut from.
 */
export function measure({ motifs, placements, arrangement, lattice, layers }: Measured): Figures {
  const scene = sceneOf(motifs, placements, arrangement);
  const nearest = nearestImages(scene);
  const overlapping = nearest.some(({ distance, seated }) => distance === 0 || seated);
  const clearance = clearanceOf(scene, nearest);
  const raster = rasterOf(scene);
  const squared = distanceTransform(raster);
  const { largest, large } = holesOf(scene, raster, squared, clearance / 2);
  const ink = inkCoverage(scene, raster, overlapping);
  const { tracking, gutter } = lanesOf(scene, raster);
  const facing = facingOf(scene);
  const neighbours = neighboursOf(scene, nearest);
  const huddle = huddleOf(scene);
  const byRole = <T>(figure: (layer: Layer) => T): Record<string, T> =>
    Object.fromEntries(layers.map((layer) => [layer.role, figure(layer)]));
  return deepFreeze({
    motifs: scene.copies.length * scene.cells.length,
    coverage: byRole(({ path }) => rounded(areaOf(path) / (lattice.block.width * lattice.block.height), 6)),
    inkCoverage: rounded(ink, 6),
    offsetCoverage: rounded(offsetCoverage(scene, squared, clearance, ink, overlapping), 4),
    clearance: mm(clearance),
    spacing: mm(scene.spacing),
    largestHole: { radius: mm(largest.radius), x: mm(largest.x), y: mm(largest.y) },
    largeHoles: mm(large),
    lumpiness: rounded(lumpiness(scene), 4),
    tracking: { ...tracking, value: rounded(tracking.value, 4) },
    gutter: { ...gutter, value: rounded(gutter.value, 4) },
    facing: { alike: rounded(facing.alike, 4), chance: Number(facing.chance.toPrecision(4)) },
    neighbours: { alike: rounded(neighbours.alike, 4), expected: rounded(neighbours.expected, 4) },
    huddle: {
      motifs: huddle.placements.map((i) => placements[i]!.id),
      chance: rounded(huddle.chance, 4),
    },
    balance: byRole((layer) => {
      const { variation, chance } = balanceOf(layer, lattice, scene);
      return { variation: rounded(variation, 4), chance: rounded(chance, 4) };
    }),
  });
}

/** A length in mm, to the micrometre. */
const mm = (um: number): number => Math.round(um) / 1000;

function rounded(value: number, digits: 4 | 6): number {
  const scale = digits === 4 ? 1e4 : 1e6;
  return Math.round(value * scale) / scale + 0;
}
