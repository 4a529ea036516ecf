import { sideCount } from "./flatten.ts";
import { CURVE, eachContour, type Path } from "./path.ts";

/** Curves as the sides that they are flattened to. */
export interface Sides {
  /** Eight numbers a curve. */
  readonly curves: Float64Array;
  /** First side of each curve, then the number of sides: those of a curve are of one step of its parameter. */
  readonly firsts: Int32Array;
  /** Start of each side, rounded; its curve; its place on the curve. */
  readonly x: Int32Array;
  readonly y: Int32Array;
  readonly curve: Int32Array;
  readonly t: Float64Array;
  /** The side before and after. */
  readonly before: Int32Array;
  readonly after: Int32Array;
}

/** The sides of a path's curves, flattened to within `tolerance` µm. */
export function sidesOf(path: Path, tolerance: number): Sides {
  const p = path.points;
  const total = p.length / CURVE;
  const curves = new Float64Array(total * 8);
  const firsts = new Int32Array(total + 1);
  eachContour(path, (from, to) => {
    for (let i = from; i < to; i += CURVE) {
      const c = i / CURVE;
      const end = i + CURVE < to ? i + CURVE : from;
      for (let k = 0; k < 6; k++) curves[8 * c + k] = p[i + k]!;
      curves[8 * c + 6] = p[end]!;
      curves[8 * c + 7] = p[end + 1]!;
      const [x0, y0, x1, y1, x2, y2] = [p[i]!, p[i + 1]!, p[i + 2]!, p[i + 3]!, p[i + 4]!, p[i + 5]!];
      const n = Math.max(1, sideCount(x0, y0, x1, y1, x2, y2, p[end]!, p[end + 1]!, tolerance));
      firsts[c + 1] = firsts[c]! + n;
    }
  });
  const whole = (): Int32Array => new Int32Array(firsts[total]!);
  const [x, y, curve, before, after] = [whole(), whole(), whole(), whole(), whole()];
  const t = new Float64Array(x.length);
  let s = 0;
  eachContour(path, (from, to) => {
    const first = s;
    for (let c = from / CURVE; c < to / CURVE; c++) {
      const n = countOf(firsts, c);
      for (let k = 0; k < n; k++, s++) {
        x[s] = Math.round(k === 0 ? curves[8 * c]! : coordinateAt(curves, 8 * c, k / n));
        y[s] = Math.round(k === 0 ? curves[8 * c + 1]! : coordinateAt(curves, 8 * c + 1, k / n));
        curve[s] = c;
        t[s] = k / n;
        before[s] = s - 1;
        after[s] = s + 1;
      }
    }
    before[first] = s - 1;
    after[s - 1] = first;
  });
  return { curves, firsts, x, y, curve, t, before, after };
}

/** How many sides a curve has. */
export const countOf = (firsts: Int32Array, curve: number): number => firsts[curve + 1]! - firsts[curve]!;

/** One coordinate of the curve whose first is at `at`. */
export function coordinateAt(v: ArrayLike<number>, at: number, t: number): number {
  const s = 1 - t;
  return (
    s * s * s * v[at]! + 3 * s * s * t * v[at + 2]! + 3 * s * t * t * v[at + 4]! + t * t * t * v[at + 6]!
  );
}
