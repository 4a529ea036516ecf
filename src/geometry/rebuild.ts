import { pathOfRings } from "./clip.ts";
import { type Ring, sideCount } from "./flatten.ts";
import { CURVE, eachContour, type Path } from "./path.ts";

/** How near a point counts as on a side (µm): both were rounded to whole ones. */
const NEAR = 1.6;
/** Comparisons of crossings with sides before polygons are left as they are. */
const MOST_LOOKS = 6e7;

/** Where a point lies on a curve. */
interface Spot {
  readonly curve: number;
  readonly t: number;
}

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

interface Sides {
  /** Eight numbers a curve. */
  readonly curves: Float64Array;
  /** Start of each side, rounded; its curve; its place on the curve and the step to its end. */
  readonly x: number[];
  readonly y: number[];
  readonly curve: number[];
  readonly t: number[];
  readonly step: number[];
  /** The side before and after. */
  readonly before: number[];
  readonly after: number[];
}

function sidesOf(path: Path, tolerance: number): Sides {
  const p = path.points;
  const curves = new Float64Array((p.length / CURVE) * 8);
  const sides: Sides = { curves, x: [], y: [], curve: [], t: [], step: [], before: [], after: [] };
  eachContour(path, (from, to) => {
    const first = sides.x.length;
    for (let i = from; i < to; i += CURVE) {
      const c = i / CURVE;
      const end = i + CURVE < to ? i + CURVE : from;
      for (let k = 0; k < 6; k++) curves[8 * c + k] = p[i + k]!;
      curves[8 * c + 6] = p[end]!;
      curves[8 * c + 7] = p[end + 1]!;
      const v = curves.subarray(8 * c, 8 * c + 8);
      const n = Math.max(1, sideCount(v[0]!, v[1]!, v[2]!, v[3]!, v[4]!, v[5]!, v[6]!, v[7]!, tolerance));
      for (let k = 0; k < n; k++) {
        const [x, y] = k === 0 ? [v[0]!, v[1]!] : pointAt(v, k / n);
        sides.x.push(Math.round(x));
        sides.y.push(Math.round(y));
        sides.curve.push(c);
        sides.t.push(k / n);
        sides.step.push(1 / n);
      }
    }
    const last = sides.x.length - 1;
    for (let s = first; s <= last; s++) {
      sides.before.push(s > first ? s - 1 : last);
      sides.after.push(s < last ? s + 1 : first);
    }
  });
  return sides;
}

function pointAt(v: ArrayLike<number>, t: number): [number, number] {
  const s = 1 - t;
  const [c0, c1, c2, c3] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
  return [
    c0 * v[0]! + c1 * v[2]! + c2 * v[4]! + c3 * v[6]!,
    c0 * v[1]! + c1 * v[3]! + c2 * v[5]! + c3 * v[7]!,
  ];
}

/** Finds where points lie on curves: by themselves where they are points of the sides, else by looking. */
interface Locator {
  /** Undefined when looking would take too long. */
  readonly near: (x: number, y: number) => Spot[] | undefined;
  readonly known: (x: number, y: number) => Spot[];
}

function locator(sides: Sides): Locator {
  const byPlace = new Map<number, number[]>();
  const key = (x: number, y: number): number => x * 67_108_864 + y;
  for (let s = 0; s < sides.x.length; s++) {
    const at = key(sides.x[s]!, sides.y[s]!);
    const listed = byPlace.get(at);
    if (listed) listed.push(s);
    else byPlace.set(at, [s]);
  }
  let looks = 0;
  let strips: ReturnType<typeof stripsOf> | undefined;
  return {
    known(x, y) {
      const spots: Spot[] = [];
      for (const s of byPlace.get(key(x, y)) ?? []) {
        if (sides.x[s] !== x || sides.y[s] !== y) continue;
        spots.push({ curve: sides.curve[s]!, t: sides.t[s]! });
        const b = sides.before[s]!;
        if (sides.t[s] === 0) spots.push({ curve: sides.curve[b]!, t: 1 });
      }
      return spots;
    },
    near(x, y) {
      strips ??= stripsOf(sides);
      const strip = strips.at(x);
      looks += strip.length;
      if (looks > MOST_LOOKS) return undefined;
      const spots: Spot[] = [];
      for (const s of strip) {
        const [ax, ay] = [sides.x[s]!, sides.y[s]!];
        const e = sides.after[s]!;
        const [bx, by] = [sides.x[e]!, sides.y[e]!];
        if (x < Math.min(ax, bx) - NEAR || x > Math.max(ax, bx) + NEAR) continue;
        if (y < Math.min(ay, by) - NEAR || y > Math.max(ay, by) + NEAR) continue;
        const [dx, dy] = [bx - ax, by - ay];
        const long = dx * dx + dy * dy;
        if (long === 0) continue;
        const off = dx * (y - ay) - dy * (x - ax);
        if (off * off > NEAR * NEAR * long) continue;
        const share = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / long));
        spots.push({ curve: sides.curve[s]!, t: sides.t[s]! + share * sides.step[s]! });
      }
      return spots;
    },
  };
}

/** Most upright strips that sides are sorted into. */
const STRIPS = 512;

/** Sides by the upright strips that they pass through, so that a point looks at few. */
function stripsOf({ x, after }: Sides): { readonly at: (at: number) => readonly number[] } {
  let [least, most] = [Infinity, -Infinity];
  for (const v of x) {
    least = Math.min(least, v);
    most = Math.max(most, v);
  }
  const count = Math.max(1, Math.min(STRIPS, Math.ceil(x.length / 8)));
  const width = (most - least) / count + 1;
  const strip = (v: number): number => Math.min(count - 1, Math.max(0, Math.floor((v - least) / width)));
  const lists = Array.from({ length: count }, (): number[] => []);
  for (let s = 0; s < x.length; s++) {
    const [a, b] = [x[s]!, x[after[s]!]!];
    const last = strip(Math.max(a, b) + NEAR);
    for (let k = strip(Math.min(a, b) - NEAR); k <= last; k++) lists[k]!.push(s);
  }
  return { at: (v) => lists[strip(v)]! };
}

/** A ring as pieces of curves, one after the other; undefined when finding out would take too long. */
function piecesOf(ring: Ring, sides: Sides, locate: Locator): Piece[] | undefined {
  const m = ring.length / 2;
  const steps = stepsOf(sides);
  const pieces: Piece[] = [];
  const looked = new Map<number, Spot[]>();
  const look = (i: number): Spot[] | undefined => {
    const found = looked.get(i) ?? locate.near(ring[2 * i]!, ring[2 * i + 1]!);
    if (found) looked.set(i, found);
    return found;
  };
  const known = Array.from({ length: m }, (_, i) => locate.known(ring[2 * i]!, ring[2 * i + 1]!));
  for (let i = 0; i < m; i++) {
    const j = (i + 1) % m;
    const last = pieces[pieces.length - 1];
    const ends = [ring[2 * i]!, ring[2 * i + 1]!, ring[2 * j]!, ring[2 * j + 1]!] as const;
    let found = match(known[i]!, known[j]!, last, ends, sides, steps);
    if (!found) {
      const [from, to] = [look(i), look(j)];
      if (!from || !to) return undefined;
      found = match(from, to, last, ends, sides, steps);
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

/** The size of a step of each curve. */
function stepsOf({ curve, step }: Sides): Float64Array {
  const steps = new Float64Array((curve[curve.length - 1] ?? -1) + 1);
  curve.forEach((c, s) => {
    steps[c] = step[s]!;
  });
  return steps;
}

/** The curve that runs straight from one point to another, rather the one that came there. */
function match(
  from: readonly Spot[],
  to: readonly Spot[],
  last: Piece | undefined,
  ends: readonly [number, number, number, number],
  { curves }: Sides,
  steps: Float64Array,
): Stretch | undefined {
  let best: Stretch | undefined;
  let least = Infinity;
  for (const p of from)
    for (const q of to) {
      if (p.curve !== q.curve) continue;
      const far = Math.abs(q.t - p.t);
      if (far < 1e-9) continue;
      const step = steps[p.curve]!;
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
    const [x, y] = pointAt(v, t);
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
