import { joinApart, unite } from "../../geometry/boolean.ts";
import { intersectRings, ringsArea, roundRings } from "../../geometry/clip.ts";
import { flatten } from "../../geometry/flatten.ts";
import { lyingOf } from "../../geometry/lying.ts";
import { outlineOfRings } from "../../geometry/outline.ts";
import { type Box, boxOf, type Path } from "../../geometry/path.ts";

/** What one role paints in one go, between areas of other roles. */
export interface Coat {
  readonly role: string;
  readonly path: Path;
  readonly box: Box;
}

/** Areas in paint order, neighbours of one role joined. */
export function coatsOf(areas: readonly { readonly role: string; readonly path: Path }[]): Coat[] {
  const groups: { role: string; paths: Path[] }[] = [];
  for (const { role, path } of areas) {
    const last = groups.at(-1);
    if (last?.role === role) last.paths.push(path);
    else groups.push({ role, paths: [path] });
  }
  return groups.map(({ role, paths }) => {
    const path = uniteMany(paths);
    return { role, path, box: boxOf(path) };
  });
}

/** Paths that one union takes in its stride, however they overlap. */
const AT_ONCE = 24;

/**
 * A union of united paths, Béziers kept. Only paths whose boxes meet are united at all; of those, a few at a time, so
 * that thousands that lie on one another shrink before they meet. A path that is there twice is taken once: outlines
 * that coincide are what the Bézier engine is slowest at.
 */
export function uniteMany(paths: readonly Path[]): Path {
  let left = heaps(differentPaths(paths)).map(uniteHeap);
  // A union may reach what its members did not; boxes only grow by it, so this ends.
  for (let before = -1; before !== left.length && left.length > 1; ) {
    before = left.length;
    left = heaps(left).map(uniteHeap);
  }
  return left.length === 1 ? left[0]! : joinApart(left);
}

function differentPaths(paths: readonly Path[]): Path[] {
  const byLength = new Map<number, Path[]>();
  return paths.filter((path) => {
    const { length } = path.points;
    const like = byLength.get(length) ?? [];
    if (length === 0 || like.some((other) => isSame(other, path))) return false;
    byLength.set(length, [...like, path]);
    return true;
  });
}

const isSame = (one: Path, other: Path): boolean =>
  one === other ||
  (one.points.every((v, i) => v === other.points[i]) && `${one.contours}` === `${other.contours}`);

function uniteHeap(paths: readonly Path[]): Path {
  let left = paths;
  while (left.length > AT_ONCE) {
    const fewer: Path[] = [];
    for (let i = 0; i < left.length; i += AT_ONCE) fewer.push(unite(left.slice(i, i + AT_ONCE)));
    left = fewer;
  }
  return unite(left);
}

/** Paths sorted into heaps, so that boxes of different heaps do not meet; in the order of their first paths. */
function heaps(paths: readonly Path[]): Path[][] {
  const boxes = paths.map(boxOf);
  const heapOf = paths.map((_, i) => i);
  const top = (i: number): number => {
    let at = i;
    while (heapOf[at] !== at) at = heapOf[at]!;
    return at;
  };
  for (let i = 1; i < paths.length; i++)
    for (let j = 0; j < i; j++) {
      if (!boxesMeet(boxes[i]!, boxes[j]!)) continue;
      const [p, q] = [top(i), top(j)];
      heapOf[Math.max(p, q)] = Math.min(p, q);
    }
  const found = new Map<number, Path[]>();
  paths.forEach((path, i) => {
    const heap = found.get(top(i));
    if (heap) heap.push(path);
    else found.set(top(i), [path]);
  });
  return [...found.values()];
}

/** Whether two boxes share any area. */
export const boxesMeet = (a: Box, b: Box): boolean =>
  a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;

/** How finely outlines are flattened to weigh overlaps (µm): only the order of roles hangs on it. */
const COARSE = 50;
/** Overlaps weighed as areas; beyond so many, as the overlap of their boxes. */
const MOST_WEIGHED = 20_000;

/**
 * Roles back to front, so that as little area as possible must be cut away to keep the picture: a role that is
 * painted over by another should lie below it. Exact best orders are hard to find (linear ordering), so each role
 * is moved to where it saves most until no move saves anything; ties keep the order of first paint.
 */
export function stackRoles(coats: readonly Coat[]): string[] {
  const roles = [...new Set(coats.map((coat) => coat.role))];
  const weigh = weigher(coats);
  const index = new Map(roles.map((role, i) => [role, i]));
  const levels = coats.map((coat) => index.get(coat.role)!);
  const over = roles.map(() => roles.map(() => 0));
  /** Adds up the area (µm²) in which b is painted over a, for roles of which `when` says so. */
  const overlaps = (when: (a: number, b: number) => boolean): boolean => {
    let found = false;
    for (let above = 1; above < coats.length; above++)
      for (let below = 0; below < above; below++) {
        const [a, b] = [levels[below]!, levels[above]!];
        const area = when(a, b) ? weigh(below, above) : 0;
        if (area > 0) found = true;
        over[a]![b]! += area;
      }
    return found;
  };
  // As they were first painted, mostly none is painted over one that comes later: then no order is better.
  if (!overlaps((a, b) => a > b)) return roles;
  overlaps((a, b) => a < b);
  const order = roles.map((_, i) => i);
  for (let moved = true, rounds = 0; moved && rounds < 4 * roles.length; rounds++) {
    moved = false;
    let best = { from: 0, to: 0, saved: 0 };
    for (let from = 0; from < order.length; from++)
      for (const way of [1, -1])
        for (let to = from + way, saved = 0; to >= 0 && to < order.length; to += way) {
          const [mover, passed] = [order[from]!, order[to]!];
          // Moving up past a role pays for what that role paints over it, and saves the reverse.
          const [up, down] = way === 1 ? [mover, passed] : [passed, mover];
          saved += over[down]![up]! - over[up]![down]!;
          if (saved > best.saved) best = { from, to, saved };
        }
    if (best.saved > 0) {
      order.splice(best.to, 0, ...order.splice(best.from, 1));
      moved = true;
    }
  }
  return order.map((i) => roles[i]!);
}

/** Weighs in what area (µm²) two coats overlap. */
function weigher(coats: readonly Coat[]): (one: number, other: number) => number {
  const rings = coats.map((coat) => roundRings(flatten(coat.path, COARSE)));
  const outlines = rings.map(outlineOfRings);
  let weighed = 0;
  return (i, j) => {
    const [a, b] = [coats[i]!.box, coats[j]!.box];
    if (!boxesMeet(a, b)) return 0;
    if (weighed++ >= MOST_WEIGHED) return Math.round(boxOverlap(a, b));
    const lying = lyingOf(outlines[i]!, outlines[j]!);
    if (lying === "apart") return 0;
    const shared = lying === "within" ? rings[i]! : rings[j]!;
    return Math.round(ringsArea(lying === "open" ? intersectRings(rings[i]!, rings[j]!) : shared));
  };
}

const boxOverlap = (a: Box, b: Box): number =>
  (Math.min(a.maxX, b.maxX) - Math.max(a.minX, b.minX)) *
  (Math.min(a.maxY, b.maxY) - Math.max(a.minY, b.minY));
