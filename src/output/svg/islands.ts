import { type Box, boxOf, CURVE, eachContour, joinPaths, type Path } from "../../geometry/path.ts";

/** A part of a path, and the box around it. */
export interface Part {
  readonly path: Path;
  readonly box: Box;
}

/** Every outer contour of a united path by itself, with the holes in it: the nearest before a hole that is around it. */
export function islandsOf(path: Path): Part[] {
  const outers: { pieces: Path[]; box: Box }[] = [];
  for (const { path: piece, box } of contoursOf(path)) {
    let at = isHole(piece.points) ? outers.length - 1 : -1;
    while (at >= 0 && !holds(outers[at]!.box, box)) at--;
    if (at >= 0) outers[at]!.pieces.push(piece);
    else outers.push({ pieces: [piece], box });
  }
  return outers.map(({ pieces, box }) => ({ path: joinPaths(pieces), box }));
}

/** A path's contours, taken apart where no box of one meets a box of another. */
export function clustersOf(path: Path): Part[] {
  const single = contoursOf(path);
  const root = single.map((_, i) => i);
  const find = (i: number): number => {
    let at = i;
    while (root[at] !== at) {
      root[at] = root[root[at]!]!;
      at = root[at]!;
    }
    return at;
  };
  meetings(single, single, (i, j) => {
    const [a, b] = [find(i), find(j)];
    root[Math.max(a, b)] = Math.min(a, b);
  });
  const members = new Map<number, Path[]>();
  single.forEach(({ path: piece }, i) => {
    const at = find(i);
    const some = members.get(at);
    if (some) some.push(piece);
    else members.set(at, [piece]);
  });
  return [...members.values()].map((pieces) => {
    const joined = joinPaths(pieces);
    return { path: joined, box: boxOf(joined) };
  });
}

function contoursOf(path: Path): Part[] {
  const parts: Part[] = [];
  eachContour(path, (from, to) => {
    const piece = { points: path.points.subarray(from, to), contours: [(to - from) / CURVE] };
    parts.push({ path: piece, box: boxOf(piece) });
  });
  return parts;
}

const holds = (outer: Box, inner: Box): boolean =>
  outer.minX <= inner.minX &&
  outer.minY <= inner.minY &&
  outer.maxX >= inner.maxX &&
  outer.maxY >= inner.maxY;

/** Whether a contour runs backwards, by the polygon of its points and controls. */
function isHole(p: Int32Array): boolean {
  let twice = 0;
  for (let i = 0, j = p.length - 2; i < p.length; j = i, i += 2)
    twice += (p[j]! - p[0]!) * (p[i + 1]! - p[1]!) - (p[i]! - p[0]!) * (p[j + 1]! - p[1]!);
  return twice < 0;
}

/** Calls `visit` for every pair of one of `these` and one of `those` whose boxes meet, touching included. */
export function meetings(
  these: readonly Part[],
  those: readonly Part[],
  visit: (i: number, j: number) => void,
): void {
  const order = those.map((_, j) => j).sort((p, q) => those[p]!.box.minX - those[q]!.box.minX || p - q);
  const widest = those.reduce((most, { box }) => Math.max(most, box.maxX - box.minX), 0);
  these.forEach(({ box }, i) => {
    let [low, high] = [0, order.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (those[order[middle]!]!.box.minX < box.minX - widest) low = middle + 1;
      else high = middle;
    }
    for (; low < order.length; low++) {
      const j = order[low]!;
      const other = those[j]!.box;
      if (other.minX > box.maxX) break;
      if (other.maxX >= box.minX && other.minY <= box.maxY && other.maxY >= box.minY) visit(i, j);
    }
  });
}
