import { modulo, type Size } from "../geometry/lattice.ts";
import { movePath } from "../geometry/matrix.ts";
import { boxOf, type Path } from "../geometry/path.ts";

/** A path moved by whole blocks until the upper left corner of its box lies within the block. */
export function intoBlock(path: Path, block: Size): Path {
  const { minX, minY } = boxOf(path);
  const dx = modulo(minX, block.width) - minX;
  const dy = modulo(minY, block.height) - minY;
  return dx === 0 && dy === 0 ? path : movePath(path, dx, dy);
}

/** A total order of paths by their numbers, so that a layer does not depend on the order of placing. */
export function comparePaths(p: Path, q: Path): number {
  const [a, b] = [p.points, q.points];
  const shared = Math.min(a.length, b.length);
  // y first: a layer then reads from top to bottom
  if (a[1] !== b[1]) return a[1]! - b[1]!;
  for (let i = 0; i < shared; i++) if (a[i] !== b[i]) return a[i]! - b[i]!;
  return a.length - b.length;
}
