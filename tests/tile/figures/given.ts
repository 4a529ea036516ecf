// Tiles put together from shapes whose figures are known, without the packing engine.
import type { Arrangement } from "../../../src/geometry/lattice.ts";
import { areaOf, type Path } from "../../../src/geometry/path.ts";
import type { Placement } from "../../../src/layout/layout.ts";
import type { Motif } from "../../../src/motif/motif.ts";
import type { Scene } from "../../../src/tile/figures/scene.ts";
import { sceneOf } from "../../../src/tile/figures/scene.ts";
import { finishTile } from "../../../src/tile/finish.ts";
import type { Recipe } from "../../../src/tile/recipe.ts";
import type { Tile } from "../../../src/tile/tile.ts";

export const motifOf = (name: string, outline: Path, role = "ink"): Motif => ({
  name,
  shapes: [{ role, path: outline }],
  outline,
});

/** A placement at (x, y) mm. */
export const at = (x: number, y: number, more: Partial<Placement> = {}): Placement => ({
  id: `${x},${y},${more.motif ?? 0}`,
  ...{ motif: 0, turn: 0, scale: 1, flip: false },
  ...more,
  x: Math.round(x * 1000),
  y: Math.round(y * 1000),
});

/** The same lattice as a square or a hexagon has it, with the side `a` mm, `times` of them across and down. */
export function squares(a: number, times = 1): { arrangement: Arrangement; places: Placement[] } {
  const places = Array.from({ length: times * times }, (_, i) =>
    at((i % times) * a, Math.floor(i / times) * a),
  );
  return { arrangement: straight(a * times, a * times), places };
}

/** One motif a cell of a hexagonal lattice whose nearest points are `a` mm apart (to a ten thousandth). */
export const hexagons = (a: number): Arrangement => {
  const [w, h] = [Math.round(a * 1000), 2 * Math.round(a * 1000 * Math.sqrt(0.75))];
  return {
    unit: { width: w, height: h / 2 },
    lattice: { a: [w, 0], b: [w / 2, h / 2], block: { width: w, height: h } },
    operations: [[1, 0, 0, 1, 0, 0]],
  };
};

export const straight = (width: number, height: number): Arrangement => {
  const [w, h] = [width * 1000, height * 1000];
  return {
    unit: { width: w, height: h },
    lattice: { a: [w, 0], b: [0, h], block: { width: w, height: h } },
    operations: [[1, 0, 0, 1, 0, 0]],
  };
};

const rolesOf = (motifs: readonly Motif[]): string[] => [
  ...new Set(motifs.flatMap(({ shapes }) => shapes.map(({ role }) => role))),
];

/** A finished tile of the given motifs and places. */
export function tileOf(
  motifs: readonly Motif[],
  placements: readonly Placement[],
  arrangement: Arrangement,
): Tile {
  const recipe = { name: "given", roles: ["ground", ...rolesOf(motifs)], colorways: {} } as unknown as Recipe;
  return finishTile({ motifs: [...motifs], placements, arrangement, recipe });
}

export const sceneFor = (
  motifs: readonly Motif[],
  placements: readonly Placement[],
  arrangement: Arrangement,
): Scene => sceneOf(motifs, placements, arrangement);

/** Area in mm². */
export const areaMm = (path: Path): number => areaOf(path) / 1e6;
