import type { Arrangement, Lattice } from "../geometry/lattice.ts";
import type { Placement } from "../layout/layout.ts";
import type { Motif } from "../motif/motif.ts";
import { deepFreeze } from "../params/canonical.ts";
import { mitre, type Side } from "./corner.ts";
import { digestOf } from "./digest.ts";
import { measure } from "./figures/measure.ts";
import { makeLayers } from "./layers.ts";
import type { Recipe } from "./recipe.ts";
import { stackShapes } from "./stack.ts";
import type { Tile } from "./tile.ts";

/** Motifs laid out, before anything is drawn. */
export interface Laid {
  readonly motifs: readonly Motif[];
  readonly placements: readonly Placement[];
  /** Least distance (µm) that the layout promises between any two motifs; undefined when it promises none. */
  readonly gap?: number | undefined;
  readonly arrangement: Arrangement;
  readonly recipe: Recipe;
}

/** Draws the layers of what was laid out, measures and freezes them. */
export function finishTile({ motifs, placements, gap, arrangement, recipe }: Laid): Tile {
  const stacked = motifs.map((motif) => stackShapes(motif, recipe.roles));
  const roles = recipe.roles.filter((role) => role !== "ground");
  const band = makeLayers(placements, stacked, arrangement, roles);
  const side = cornerOf(arrangement);
  const lattice = side ? square(arrangement.lattice.block.height) : arrangement.lattice;
  const { block } = lattice;
  const layers = Object.freeze(side ? mitre(band, arrangement.lattice.block, side) : band);
  return Object.freeze({
    name: recipe.name,
    block,
    lattice,
    arrangement,
    motifs: Object.freeze(motifs),
    placements,
    ...(gap === undefined ? {} : { gap }),
    layers,
    figures: measure({ motifs, placements, arrangement, lattice, layers }),
    recipe: deepFreeze(recipe),
    digest: digestOf(block, layers),
  });
}

/** Which corner of a frame a tile is, if it is one. */
export function cornerOf({ border }: Arrangement): Side | undefined {
  if (!border || border.piece === "band") return undefined;
  return border.piece === "left-corner" ? "left" : "right";
}

const square = (side: number): Lattice =>
  deepFreeze({ a: [side, 0], b: [0, side], block: { width: side, height: side } } as const);
