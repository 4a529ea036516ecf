import { type Arrangement, cellsInBlock, type Size } from "../../../geometry/lattice.ts";
import type { Matrix } from "../../../geometry/matrix.ts";

/** A centre of rotation (µm) and its order: 2 for half turns up to 6 for sixths. */
export interface Centre {
  readonly x: number;
  readonly y: number;
  readonly order: 2 | 3 | 4 | 6;
}

/** A line of reflection or glide reflection, as far as it runs through the block (µm). */
export interface Axis {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  /** Whether it only mirrors together with a shift along it. */
  readonly glide: boolean;
}

/** What is closer than this is the same place (µm): operations of thirds and sixths are rounded doubles. */
const SAME = 4;

/**
 * The symmetry elements in one block, edges included, found from the operations: of each one followed by every
 * translation of the lattice, the fixed point (turns) or the fixed line (mirrors and glides).
 */
export function elementsOf(
  arrangement: Arrangement,
  block: Size,
): { readonly centres: readonly Centre[]; readonly axes: readonly Axis[] } {
  const centres: Centre[] = [];
  const axes: Axis[] = [];
  for (const operation of arrangement.operations) {
    const det = operation[0] * operation[3] - operation[1] * operation[2];
    eachTranslation(arrangement, operation, block, (moved) => {
      if (det < 0) addAxis(axes, moved, block);
      else addCentre(centres, moved, block);
    });
  }
  return { centres, axes };
}

/** The operation followed by every translation whose element may lie in the block. */
function eachTranslation(
  { lattice }: Arrangement,
  [a, b, c, d, e, f]: Matrix,
  block: Size,
  visit: (moved: Matrix) => void,
): void {
  const { width, height } = lattice.block;
  // A fixed point within the block is moved by at most its diagonal, twice.
  const reach = 2 * (block.width + block.height);
  for (const [cx, cy] of cellsInBlock(lattice))
    for (let i = Math.floor((-reach - e - cx) / width); i <= (reach - e - cx) / width; i++)
      for (let j = Math.floor((-reach - f - cy) / height); j <= (reach - f - cy) / height; j++)
        visit([a, b, c, d, e + cx + i * width, f + cy + j * height]);
}

function addCentre(centres: Centre[], [a, b, c, d, e, f]: Matrix, block: Size): void {
  const order = [2, 3, 4, 6] as const;
  const trace = Math.round(a + d);
  if (trace < -2 || trace > 1) return;
  // (1 - R) x = w, by Cramer's rule.
  const det = (1 - a) * (1 - d) - b * c;
  const x = ((1 - d) * e + c * f) / det;
  const y = (b * e + (1 - a) * f) / det;
  if (x < -SAME || y < -SAME || x > block.width + SAME || y > block.height + SAME) return;
  const centre = { x, y, order: order[trace + 2]! };
  const known = centres.findIndex((other) => isNear(other.x - x, other.y - y));
  if (known < 0) centres.push(centre);
  else if (centres[known]!.order < centre.order) centres[known] = centre;
}

function addAxis(axes: Axis[], [a, b, c, d, e, f]: Matrix, block: Size): void {
  // The part of the shift along the line, which the operation keeps, and the part across, which it turns round.
  const along = [((a + 1) * e + c * f) / 2, (b * e + (d + 1) * f) / 2] as const;
  const through = [(e - along[0]) / 2, (f - along[1]) / 2] as const;
  const way = Math.abs(a + 1) > Math.abs(d + 1) ? ([a + 1, b] as const) : ([c, d + 1] as const);
  const line = clipped(through, way, block);
  if (!line) return;
  const axis = { ...line, glide: !isNear(along[0], along[1]) };
  const same = (other: Axis): boolean =>
    isNear(other.from[0] - axis.from[0], other.from[1] - axis.from[1]) &&
    isNear(other.to[0] - axis.to[0], other.to[1] - axis.to[1]);
  const known = axes.findIndex(same);
  if (known < 0) axes.push(axis);
  else if (!axis.glide) axes[known] = axis;
}

const isNear = (dx: number, dy: number): boolean => Math.abs(dx) <= SAME && Math.abs(dy) <= SAME;

/** The part of a line that lies in the block, from left to right (upright: from top to bottom). */
function clipped(
  [x, y]: readonly [number, number],
  [dx, dy]: readonly [number, number],
  block: Size,
): Omit<Axis, "glide"> | undefined {
  let [first, last] = [-Infinity, Infinity];
  for (const [at, step, size] of [[x, dx, block.width] as const, [y, dy, block.height] as const]) {
    if (Math.abs(step) < 1e-9) {
      if (at < -SAME || at > size + SAME) return undefined;
      continue;
    }
    const [enter, leave] = [-at / step, (size - at) / step];
    first = Math.max(first, Math.min(enter, leave));
    last = Math.min(last, Math.max(enter, leave));
  }
  if (!((last - first) * (Math.abs(dx) + Math.abs(dy)) > 4 * SAME)) return undefined;
  const ends = [first, last].map((t) => [x + t * dx, y + t * dy] as const);
  const [p, q] = ends as unknown as readonly [readonly [number, number], readonly [number, number]];
  return p[0] < q[0] - SAME || (p[0] < q[0] + SAME && p[1] < q[1]) ? { from: p, to: q } : { from: q, to: p };
}
