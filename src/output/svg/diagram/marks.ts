import type { Size, Vector } from "../../../geometry/lattice.ts";
import { cellsInBlock } from "../../../geometry/lattice.ts";
import { cornerOf } from "../../../tile/finish.ts";
import type { Tile } from "../../../tile/tile.ts";
import { type Axis, type Centre, elementsOf } from "./elements.ts";
import { arrow, n, rotationSymbol } from "./symbols.ts";

/** Colours of the drawing: an ink like a draughtsman's, and a red pencil. */
export const INK = "#1d2733";
export const PENCIL = "#c23b22";

/** Corners of the unit as an SVG path (mm). */
export function unitShape({ arrangement: { unit, region } }: Tile): string {
  const { width, height } = unit;
  const corners =
    region ??
    ([[0, 0] as const, [width, 0] as const, [width, height] as const, [0, height] as const] as const);
  return `M${corners.map(([x, y]) => `${n(x / 1000)} ${n(y / 1000)}`).join("L")}Z`;
}

/** The elements of symmetry that a tile shows: those of its arrangement, or the mitre of a corner. */
export function elementsShown(tile: Tile): {
  readonly centres: readonly Centre[];
  readonly axes: readonly Axis[];
} {
  const { width, height } = tile.block;
  const side = cornerOf(tile.arrangement);
  if (side === "left") return { centres: [], axes: [{ from: [0, 0], to: [width, height], glide: false }] };
  if (side === "right") return { centres: [], axes: [{ from: [0, height], to: [width, 0], glide: false }] };
  return elementsOf(tile.arrangement, tile.block);
}

/** Mirror lines, solid, and glide lines, dashed, as the plane groups are drawn. */
export function axisMarks(axes: readonly Axis[], thin: number): string {
  const line = ({ from, to, glide }: Axis): string =>
    `<path d="M${n(from[0] / 1000)} ${n(from[1] / 1000)}L${n(to[0] / 1000)} ${n(to[1] / 1000)}"${glide ? ` stroke-dasharray="${n(thin * 5)} ${n(thin * 3.5)}"` : ""}/>`;
  if (axes.length === 0) return "";
  return `<g id="axes" fill="none" stroke="${INK}" stroke-width="${n(thin * 1.15)}">${axes.map(line).join("")}</g>`;
}

/** Symbols of the centres of rotation, each with a hair of white around it. */
export function centreMarks(centres: readonly Centre[], thin: number): string {
  if (centres.length === 0) return "";
  const path = centres
    .map(({ x, y, order }) => rotationSymbol(order, x / 1000, y / 1000, thin * 5.2))
    .join("");
  return `<path id="centres" d="${path}" fill="${INK}" stroke="#fff" stroke-width="${n(thin * 1.1)}" paint-order="stroke"/>`;
}

/**
 * The two lattice vectors, from the point of the lattice from where they lead out of the block least; from one each
 * where no single point keeps both near the block. A border has only the first. `clear` is how far short of the points they stop (mm).
 */
export function vectorMarks(
  { lattice, block, arrangement }: Tile,
  thin: number,
  size: number,
  clear: number,
): string {
  const { a, b } = lattice;
  const from = points(lattice, block);
  const shared = startOf([a, b], from, block);
  const isNear = leaving(shared, [a, b], block) <= NEAR * (block.width + block.height);
  const draw = (v: Vector, name: string): string => {
    const [x, y] = isNear ? shared : startOf([v], from, block);
    const start = [x / 1000, y / 1000] as const;
    const to = [(x + v[0]) / 1000, (y + v[1]) / 1000] as const;
    const { shaft, head } = arrow(start, to, thin * 10, clear);
    const length = Math.sqrt(v[0] * v[0] + v[1] * v[1]) / 1000;
    const [u, w] = [v[0] / 1000 / length, v[1] / 1000 / length];
    // Beside the middle of the arrow, on the side where the other vector is not.
    const side = (v === a ? 1 : -1) * (a[0] * b[1] - a[1] * b[0] > 0 ? 1 : -1);
    const [tx, ty] = [
      (start[0] + to[0]) / 2 + w * side * size * 0.85,
      (start[1] + to[1]) / 2 - u * side * size * 0.85 + size * 0.32,
    ];
    return [
      `<path d="${shaft}" fill="none" stroke="${PENCIL}" stroke-width="${n(thin * 1.8)}"/>`,
      `<path d="${head}" fill="${PENCIL}"/>`,
      `<text x="${n(tx)}" y="${n(ty)}" font-style="italic" font-weight="bold" text-anchor="middle" fill="${PENCIL}" stroke="#fff" stroke-width="${n(thin * 3)}" stroke-linejoin="round" paint-order="stroke">${name}</text>`,
    ].join("");
  };
  return `<g id="vectors" font-size="${n(size * 1.15)}">${draw(a, "a")}${arrangement.border ? "" : draw(b, "b")}</g>`;
}

/** Lattice points in the block and on all its edges. */
function points(lattice: Tile["lattice"], { width, height }: Size): Vector[] {
  return cellsInBlock(lattice).flatMap(([x, y]) => {
    const xs = x === 0 ? [0, width] : [x];
    const ys = y === 0 ? [0, height] : [y];
    return xs.flatMap((px) => ys.map((py): Vector => [px, py]));
  });
}

/** How far vectors may lead out of the block together, as a share of its sides. */
const NEAR = 0.04;

/** How far vectors lead out of the block from a point (µm). */
function leaving([x, y]: Vector, vectors: readonly Vector[], block: Size): number {
  const out = (v: number, size: number): number => Math.max(0, -v, v - size);
  return vectors.reduce((sum, [u, w]) => sum + out(x + u, block.width) + out(y + w, block.height), 0);
}

const startOf = (vectors: readonly Vector[], from: readonly Vector[], block: Size): Vector =>
  [...from].sort(
    (p, q) => leaving(p, vectors, block) - leaving(q, vectors, block) || p[1] - q[1] || p[0] - q[0],
  )[0]!;
