// How alike two silhouettes are when laid over each other as well as can be.
import { flatten } from "../../../src/geometry/flatten.ts";
import type { Path } from "../../../src/geometry/path.ts";

/** Cells along the side of the sheet that silhouettes are laid on, and its side in roots of their area. */
const CELLS = 96;
const SHEET = 5;
const TURNS = 48;

/** What a silhouette covers of a sheet, a bit a cell, for every turn, as it is and mirrored; its area is 1, its middle central. */
export type Silhouette = readonly Uint32Array[];

/** A path's silhouette: its holes count as filled. */
export function silhouetteOf(path: Path): Silhouette {
  const rings = flatten(path, 20);
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const ring of rings)
    for (let i = 0; i < ring.length; i += 2) {
      [minX, maxX] = [Math.min(minX, ring[i]!), Math.max(maxX, ring[i]!)];
      [minY, maxY] = [Math.min(minY, ring[i + 1]!), Math.max(maxY, ring[i + 1]!)];
    }
  const step = Math.max(maxX - minX, maxY - minY) / 160;
  const found: [number, number][] = [];
  for (let y = minY + step / 2; y < maxY; y += step) {
    const cuts: [number, number][] = [];
    for (const ring of rings)
      for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
        const [y0, y1] = [ring[j + 1]!, ring[i + 1]!];
        if (y0 <= y !== y1 <= y)
          cuts.push([ring[j]! + ((y - y0) / (y1 - y0)) * (ring[i]! - ring[j]!), y1 > y0 ? 1 : -1]);
      }
    cuts.sort((p, q) => p[0] - q[0]);
    let depth = 0;
    cuts.forEach(([x, sense], k) => {
      depth += sense;
      const to = cuts[k + 1]?.[0] ?? x;
      if (depth === 0) return;
      for (let at = Math.ceil((x - minX) / step - 0.5); minX + (at + 0.5) * step < to; at++)
        found.push([minX + (at + 0.5) * step, y]);
    });
  }
  const [mx, my] = [0, 1].map((k) => found.reduce((sum, p) => sum + p[k]!, 0) / found.length) as [
    number,
    number,
  ];
  const scale = 1 / (step * Math.sqrt(found.length));
  const inside = found.map(([x, y]) => [(x - mx) * scale, (y - my) * scale] as const);
  return Array.from({ length: TURNS * 2 }, (_, k) => cellsOf(inside, (k >> 1) / TURNS, k % 2 === 0 ? 1 : -1));
}

/** The cells that points fall into when turned by `turn` and, for a `hand` of -1, mirrored. */
function cellsOf(
  inside: readonly (readonly [x: number, y: number])[],
  turn: number,
  hand: number,
): Uint32Array {
  const cells = new Uint32Array((CELLS * CELLS) / 32);
  const [s, c] = [Math.sin(turn * 2 * Math.PI), Math.cos(turn * 2 * Math.PI)];
  const cell = SHEET / CELLS;
  for (const [x, y] of inside) {
    const [u, v] = [hand * (c * x - s * y), s * x + c * y];
    const [i, j] = [Math.floor(u / cell) + CELLS / 2, Math.floor(v / cell) + CELLS / 2];
    if (i >= 0 && i < CELLS && j >= 0 && j < CELLS) cells[(j * CELLS + i) >> 5]! |= 1 << (i & 31);
  }
  return cells;
}

const bits = (word: number): number => {
  const pairs = word - ((word >>> 1) & 0x55555555);
  const fours = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
};

/**
 * The largest share of their union that two silhouettes have in common (0 to 1), of equal area and about their
 * centres of gravity, over turns by 7.5 degrees and both hands.
 */
export function likeness(a: Silhouette, b: Silhouette): number {
  const still = a[0]!;
  return Math.max(
    ...b.map((turned) => {
      let [both, either] = [0, 0];
      for (let i = 0; i < still.length; i++) {
        both += bits(turned[i]! & still[i]!);
        either += bits(turned[i]! | still[i]!);
      }
      return both / either;
    }),
  );
}
