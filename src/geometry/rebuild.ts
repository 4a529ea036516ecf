import { pathOfRings } from "./clip.ts";
import { coordinateAt, countOf, type Sides, sidesOf } from "./curve-sides.ts";
import type { Ring } from "./flatten.ts";
import type { Path } from "./path.ts";
import { type Locator, locator, NEAR, type Spot } from "./spots.ts";

/** A stretch of a curve, or a straight side where `curve` is -1, from a point of the ring to another. */
interface Piece {
  readonly curve: number;
  readonly from: number;
  to: number;
  readonly start: number;
  end: number;
}

/**
 * The curves behind polygons: `rings`, made by a polygon engine from `path` flattened to within `tolerance` µm, run
 * along its curves but for where two cross. Each stretch becomes the part of its curve again, cut by de Casteljau's
 * rule, its ends moved onto the polygon's points (within the tolerance); what runs along no curve stays straight.
 */
export function rebuildCurves(path: Path, tolerance: number, rings: readonly Ring[]): Path {
  const sides = sidesOf(path, tolerance);
  const { curves } = sides;
  const locate = locator(sides);
  const points: number[] = [];
  const contours: number[] = [];
  for (const ring of rings) {
    const pieces = piecesOf(ring, sides, locate);
    if (!pieces) return pathOfRings(rings);
    const at = (i: number): readonly [number, number] => [
      ring[(2 * i) % ring.length]!,
      ring[(2 * i + 1) % ring.length]!,
    ];
    let count = 0;
    for (const piece of pieces) {
      const [p, q] = [at(piece.start), at(piece.end)];
      if (p[0] === q[0] && p[1] === q[1] && pieces.length > 1 && piece.end - piece.start < 2) continue;
      const own = piece.curve >= 0 ? cut(curves, piece.curve, piece.from, piece.to) : undefined;
      if (!own) points.push(...p, ...p, ...q);
      else {
        const [dx, dy, ex, ey] = [p[0] - own[0]!, p[1] - own[1]!, q[0] - own[6]!, q[1] - own[7]!];
        points.push(...p, own[2]! + dx, own[3]! + dy, own[4]! + ex, own[5]! + ey);
      }
      count++;
    }
    if (count > 0) contours.push(count);
  }
  return { points: Int32Array.from(points, (v) => Math.round(v)), contours };
}

/** A ring as pieces of curves, one after the other; undefined when finding out would take too long. */
function piecesOf(ring: Ring, sides: Sides, locate: Locator): Piece[] | undefined {
  const m = ring.length / 2;
  const pieces: Piece[] = [];
  const looked = new Map<number, Spot[]>();
  const look = (i: number): Spot[] | undefined => {
    const found = looked.get(i) ?? locate.near(ring[2 * i]!, ring[2 * i + 1]!);
    if (found) looked.set(i, found);
    return found;
  };
  const known = (i: number): Spot[] => locate.known(ring[2 * i]!, ring[2 * i + 1]!);
  for (let i = 0; i < m; i++) {
    const j = (i + 1) % m;
    const last = pieces[pieces.length - 1];
    let found = last && onwards(last, ring[2 * j]!, ring[2 * j + 1]!, sides);
    if (!found) {
      const ends = [ring[2 * i]!, ring[2 * i + 1]!, ring[2 * j]!, ring[2 * j + 1]!] as const;
      found = match(known(i), known(j), last, ends, sides);
      if (!found) {
        const [from, to] = [look(i), look(j)];
        if (!from || !to) return undefined;
        found = match(from, to, last, ends, sides);
      }
    }
    const next = found ?? { curve: -1, from: 0, to: 0 };
    if (last && continues(last, next)) {
      last.to = next.to;
      last.end = i + 1;
    } else pieces.push({ ...next, start: i, end: i + 1 });
  }
  const [first, last] = [pieces[0]!, pieces[pieces.length - 1]!];
  if (pieces.length > 1 && continues(last, first)) {
    pieces.pop();
    pieces[0] = { curve: first.curve, from: last.from, to: first.to, start: last.start, end: first.end + m };
  }
  return pieces;
}

type Stretch = Pick<Piece, "curve" | "from" | "to">;

const continues = (one: Stretch, next: Stretch): boolean =>
  one.curve >= 0 &&
  one.curve === next.curve &&
  Math.abs(one.to - next.from) < 1e-6 &&
  one.to > one.from === next.to > next.from;

/** One more side along the curve that came here, when that is where the ring goes: nearly always, within a curve. */
function onwards({ curve, from, to }: Piece, x: number, y: number, sides: Sides): Stretch | undefined {
  if (curve < 0) return undefined;
  const { firsts } = sides;
  const n = countOf(firsts, curve);
  const k = Math.round(to * n);
  const next = to > from ? k + 1 : k - 1;
  if (k / n !== to || next < 0 || next > n) return undefined;
  const s = next < n ? firsts[curve]! + next : sides.after[firsts[curve + 1]! - 1]!;
  return sides.x[s] === x && sides.y[s] === y ? { curve, from: to, to: next / n } : undefined;
}

/** The curve that runs straight from one point to another, rather the one that came there. */
function match(
  from: readonly Spot[],
  to: readonly Spot[],
  last: Piece | undefined,
  ends: readonly [number, number, number, number],
  { curves, firsts }: Sides,
): Stretch | undefined {
  let best: Stretch | undefined;
  let least = Infinity;
  for (const p of from)
    for (const q of to) {
      if (p.curve !== q.curve) continue;
      const far = Math.abs(q.t - p.t);
      if (far < 1e-9) continue;
      const step = 1 / countOf(firsts, p.curve);
      // Points that lie on one line were taken out by the polygon engine.
      if (far > step * 1.001 && !isLevel(curves, p.curve, p.t, q.t, step, ends)) continue;
      const found = { curve: p.curve, from: p.t, to: q.t };
      if (last && continues(last, found)) return found;
      if (far < least) [best, least] = [found, far];
    }
  return best;
}

function isLevel(
  curves: Float64Array,
  curve: number,
  from: number,
  to: number,
  step: number,
  [ax, ay, bx, by]: readonly [number, number, number, number],
): boolean {
  const v = curves.subarray(8 * curve, 8 * curve + 8);
  const [dx, dy] = [bx - ax, by - ay];
  const long = dx * dx + dy * dy;
  const [low, high] = from < to ? [from, to] : [to, from];
  for (let t = low + step; t < high - step * 0.001; t += step) {
    const [x, y] = [coordinateAt(v, 0, t), coordinateAt(v, 1, t)];
    const off = dx * (y - ay) - dy * (x - ax);
    const along = dx * (x - ax) + dy * (y - ay);
    if (off * off > NEAR * NEAR * long || along < -long * 0.01 || along > long * 1.01) return false;
  }
  return true;
}

/** The part of a curve from one place to another, eight numbers; undefined for a straight one. */
function cut(curves: Float64Array, curve: number, from: number, to: number): readonly number[] | undefined {
  const v = curves.subarray(8 * curve, 8 * curve + 8);
  if (v[0] === v[2] && v[1] === v[3] && v[4] === v[6] && v[5] === v[7]) return undefined;
  const whole = Math.abs(to - from) > 1 - 1e-9;
  const part = whole ? [...v] : blossoms(v, Math.min(from, to), Math.max(from, to));
  if (from < to) return part;
  return [6, 7, 4, 5, 2, 3, 0, 1].map((k) => part[k]!);
}

/** The controls of a part of a curve: its polar form at the ends (Ramshaw 1989; de Casteljau's rule). */
function blossoms(v: Float64Array, a: number, b: number): number[] {
  const at = (axis: 0 | 1, t1: number, t2: number, t3: number): number => {
    const mix = (p: number, q: number, t: number): number => p + t * (q - p);
    const [p0, p1, p2, p3] = [v[axis]!, v[2 + axis]!, v[4 + axis]!, v[6 + axis]!];
    const [q0, q1, q2] = [mix(p0, p1, t1), mix(p1, p2, t1), mix(p2, p3, t1)];
    return mix(mix(q0, q1, t2), mix(q1, q2, t2), t3);
  };
  const part: number[] = [];
  for (const [t1, t2, t3] of [
    [a, a, a],
    [a, a, b],
    [a, b, b],
    [b, b, b],
  ] as const)
    part.push(at(0, t1, t2, t3), at(1, t1, t2, t3));
  return part;
}
