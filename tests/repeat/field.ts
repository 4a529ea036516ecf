// A tossed field of any repeat, and what must hold for it, measured by code that the build takes no part in.
import type { Arrangement } from "../../src/geometry/lattice.ts";
import { placing, transformPath } from "../../src/geometry/matrix.ts";
import { boxOf, joinPaths, type Path } from "../../src/geometry/path.ts";
import {
  blossom,
  buildTile,
  definePattern,
  type Layer,
  leaf,
  type Matrix,
  type Pattern,
  placeAt,
  type RepeatUse,
  rasterize,
  ring,
  scallop,
  star,
  type Tile,
  toss,
} from "../../src/index.ts";
import { arrangementOf } from "../../src/repeat/arrangement.ts";
import { stackShapes } from "../../src/tile/stack.ts";
import { type Picture, readPng } from "../flow/picture.ts";
import { smallestClearance } from "../layout/toss/clearance.ts";
import { DPI } from "./every.ts";

/** Least distance between outlines (mm). */
export const GAP = 1.2;

const inks = {
  ground: "#f4ead8",
  petal: "#c9573f",
  centre: "#e2a33a",
  shell: "#2f6f8f",
  star: "#22384d",
  leaf: "#5d8a6b",
};
const flower = blossom({ size: 17, roles: { marking: "ground", seed: "centre" } });
const blade = leaf({ length: 13, roles: { vein: "ground", blade: "leaf" } });

export const harbour = (repeat: RepeatUse, seed: string): Pattern =>
  definePattern({
    name: "harbour",
    seed,
    repeat,
    layout: toss({
      gap: GAP,
      flip: true,
      spread: 0,
      motifs: [
        { motif: flower, share: 1 },
        { motif: scallop({ size: 12, roles: { scallop: "shell", rib: "ground", rim: "shell" } }), share: 1 },
        { motif: star({ size: 8 }), share: 1 },
        { motif: blade, share: 2 },
        { motif: ring({ size: 4.5, roles: { core: "ground", ring: "centre" } }), share: 2 },
      ],
    }),
    colorways: { day: inks },
  });

/** Blossoms and leaves by hand: x, y in mm, turn, mirrored. */
export const byHand = (
  repeat: RepeatUse,
  places: readonly (readonly [x: number, y: number, turn?: number, flip?: boolean])[],
): Promise<Tile> =>
  buildTile(
    definePattern({
      name: "by-hand",
      seed: "1",
      repeat,
      layout: placeAt({
        places: places.map(([x, y, turn = 0, flip = false], i) => ({
          ...{ motif: i % 2 === 0 ? flower : blade, x, y, turn, flip },
        })),
      }),
      colorways: { day: { ground: "#f4ead8", petal: "#c9573f", centre: "#e2a33a", leaf: "#5d8a6b" } },
    }),
  );

export const picture = async (tile: Tile, cut = { across: 1, down: 1 }): Promise<Picture> => {
  const day = { name: "day", inks } as Parameters<Awaited<ReturnType<typeof rasterize>>["png"]>[0];
  return readPng((await rasterize(tile, { dpi: DPI, cut })).png(day));
};

/**
 * The field of 2 x 2 blocks as one block, with every shape set by every move of the lattice: neither the cells of
 * the block nor wrapping take part.
 */
export function byLattice(tile: Tile, arrangement: Arrangement): Tile {
  const { lattice, operations } = arrangement;
  const block = { width: 2 * lattice.block.width, height: 2 * lattice.block.height };
  const byRole = new Map<string, Path[]>(tile.layers.map(({ role }) => [role, []]));
  const det = lattice.a[0] * lattice.b[1] - lattice.a[1] * lattice.b[0];
  for (const { motif, x, y, turn, scale, flip } of tile.placements)
    for (const { role, path } of stackShapes(tile.motifs[motif]!, tile.recipe.roles)) {
      if (!byRole.has(role)) continue;
      // Rounded as the build promises: once at its origin, then moved and mirrored by whole µm; else once in all.
      const placed = transformPath(transformPath(path, placing(0, 0, turn, scale, flip)), [1, 0, 0, 1, x, y]);
      for (const operation of operations) {
        const [a, b, c, d, e, f] = operation;
        const whole = operation.every(Number.isInteger);
        const [A, B, C, D] = placing(0, 0, turn, scale, flip);
        const once: Matrix = [
          ...([a * A + c * B, b * A + d * B, a * C + c * D, b * C + d * D] as const),
          ...([a * x + c * y + e, b * x + d * y + f] as const),
        ];
        const image = whole ? transformPath(placed, operation) : transformPath(path, once);
        const { minX, minY } = boxOf(image);
        // All i, j with the box's corner at i·a + j·b in the window: a rectangle of them by Cramer's rule.
        const corners = [
          [-minX, -minY],
          [block.width - minX, -minY],
          [-minX, block.height - minY],
          [block.width - minX, block.height - minY],
        ].map(([u, v]) => [
          (u! * lattice.b[1] - v! * lattice.b[0]) / det,
          (lattice.a[0] * v! - lattice.a[1] * u!) / det,
        ]);
        const range = (k: 0 | 1): [number, number] => [
          Math.floor(Math.min(...corners.map((p) => p[k]!))),
          Math.ceil(Math.max(...corners.map((p) => p[k]!))),
        ];
        const [[fromI, toI], [fromJ, toJ]] = [range(0), range(1)];
        for (let i = fromI; i <= toI; i++)
          for (let j = fromJ; j <= toJ; j++) {
            const dx = i * lattice.a[0] + j * lattice.b[0];
            const dy = i * lattice.a[1] + j * lattice.b[1];
            const [atX, atY] = [minX + dx, minY + dy];
            if (atX < 0 || atY < 0 || atX >= block.width || atY >= block.height) continue;
            byRole.get(role)!.push(transformPath(image, [1, 0, 0, 1, dx, dy]));
          }
      }
    }
  const layers = tile.layers.map(({ role }) => ({ role, path: joinPaths(byRole.get(role)!) }));
  return { ...tile, block, lattice: { ...lattice, block }, layers };
}

/**
 * A tile with everything on it under a symmetry of its lattice, and how many times over each shape then is on it.
 *
 * A turn by a sixth does not take blocks to blocks: what it makes of the moves by whole blocks is added, and then
 * each shape is there as often as these are different moves.
 */
export function under(tile: Tile, matrix: Matrix): { readonly image: Tile; readonly times: number } {
  const [a, b, c, d] = matrix;
  const { width, height } = tile.block;
  const moves = new Map<string, readonly [number, number]>();
  for (const i of [0, 1])
    for (const j of [0, 1]) {
      const x = Math.round(i * a * width + j * c * height);
      const y = Math.round(i * b * width + j * d * height);
      moves.set(`${((x % width) + width) % width},${((y % height) + height) % height}`, [x, y]);
    }
  const layers = tile.layers.map(({ role, path }): Layer => {
    const once = transformPath(path, matrix);
    return {
      role,
      path: joinPaths([...moves.values()].map(([x, y]) => transformPath(once, [1, 0, 0, 1, x, y]))),
    };
  });
  return { image: { ...tile, layers }, times: moves.size };
}

/** The same tile with every shape `times` over: soft edges come out harder. */
export const over = (tile: Tile, times: number): Tile => ({
  ...tile,
  layers: tile.layers.map(
    ({ role, path }): Layer => ({
      role,
      path: joinPaths(new Array<Path>(times).fill(path)),
    }),
  ),
});

/** The smallest distance of any two outlines of a tossed field, by jsts (mm). */
export function clearance(tile: Tile, repeat: RepeatUse): number {
  const outlines = tile.motifs.map(({ outline }) => outline);
  return smallestClearance(tile.placements, outlines, arrangementOf(repeat), GAP + 0.5).distance;
}
