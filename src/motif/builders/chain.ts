import { reversePath } from "../../geometry/matrix.ts";
import { areaOf, type Path } from "../../geometry/path.ts";
import { pen } from "../../geometry/pen.ts";
import { mix, unit, type Vector } from "./vector.ts";

/**
 * A chain of cubic Béziers in mm, before it is rounded to whole µm: the start's x and y, then six numbers
 * a curve (two controls and the end).
 */
export type Chain = readonly number[];

/** A straight chain of one curve, evenly paced. */
export const straight = (from: Vector, to: Vector): number[] =>
  [0, 1, 2, 3].flatMap((k) => [mix(from[0], to[0], k / 3), mix(from[1], to[1], k / 3)]);

/** A half outline, from the axis x = 0 and back to it, closed by its mirror image. */
export function mirrored(half: Chain): number[] {
  const out = [...half];
  for (let i = half.length - 4; i >= 0; i -= 2) out.push(-half[i]!, half[i + 1]!);
  return out;
}

/** A chain that was drawn upright (its up is 0, -1), turned until up is `up` and moved to `at`. */
export function placed(chain: Chain, at: Vector, up: Vector, scale = 1): number[] {
  const [s, c] = [up[0] * scale, -up[1] * scale];
  const out: number[] = [];
  for (let i = 0; i < chain.length; i += 2) {
    const [x, y] = [chain[i]!, chain[i + 1]!];
    out.push(c * x - s * y + at[0], s * x + c * y + at[1]);
  }
  return out;
}

/**
 * An upright chain bent over a parabola that goes through (0, from) and (0, to) and is `bulge` mm to the right half way:
 * what lay on the axis lies on the parabola, what lay beside it lies square to it, as far off as before.
 * Joins stay smooth: controls are carried by the slope of the bending at their knots.
 */
export function bent(chain: Chain, from: number, to: number, bulge: number): number[] {
  const k = (-4 * bulge) / ((to - from) * (to - from));
  const out: number[] = [];
  for (let i = 0; i < chain.length / 2; i++) {
    const knot = i % 3 === 0 ? i : i % 3 === 1 ? i - 1 : i + 1;
    const [x, y] = [chain[2 * knot]!, chain[2 * knot + 1]!];
    const [dx, dy] = [chain[2 * i]! - x, chain[2 * i + 1]! - y];
    const slope = k * (2 * y - from - to);
    const w = Math.sqrt(1 + slope * slope);
    // How the normal (1, -slope) / w turns as y grows.
    const turn = (2 * k) / (w * w * w);
    out.push(k * (y - from) * (y - to) + x / w + slope * dy + dx / w - x * slope * turn * dy);
    out.push(y - (slope * x) / w + dy - (slope * dx) / w - x * turn * dy);
  }
  return out;
}

/** Coordinate `axis` (0 is x, 1 is y) of a chain's curve that starts at index `i`, at `t` from 0 to 1. */
export function along(chain: Chain, i: number, axis: number, t: number): number {
  const [a, b, c, d] = [0, 2, 4, 6].map((k) => chain[i + k + axis]!) as [number, number, number, number];
  const s = 1 - t;
  return s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
}

/** Slope of the same coordinate, by `t`. */
export function slopeAt(chain: Chain, i: number, axis: number, t: number): number {
  const [a, b, c, d] = [0, 2, 4, 6].map((k) => chain[i + k + axis]!) as [number, number, number, number];
  const s = 1 - t;
  return 3 * (s * s * (b - a) + 2 * s * t * (c - b) + t * t * (d - c));
}

/** Second derivative of the same coordinate, by `t`. */
export function bending(chain: Chain, i: number, axis: number, t: number): number {
  const [a, b, c, d] = [0, 2, 4, 6].map((k) => chain[i + k + axis]!) as [number, number, number, number];
  return 6 * ((1 - t) * (a - 2 * b + c) + t * (b - 2 * c + d));
}

/** The point at `t` of a chain of one curve. */
export const pointOn = (chain: Chain, t: number): Vector => [along(chain, 0, 0, t), along(chain, 0, 1, t)];

/** The direction at `t` of a chain of one curve. */
export const wayOn = (chain: Chain, t: number): Vector =>
  unit(slopeAt(chain, 0, 0, t), slopeAt(chain, 0, 1, t));

/** The point at a share of a chain, counted in curves, and the direction there. */
export function walk(chain: Chain, share: number): { readonly at: Vector; readonly way: Vector } {
  const curves = (chain.length - 2) / 6;
  const k = Math.max(0, Math.min(curves - 1, Math.floor(share * curves)));
  const [i, t] = [k * 6, share * curves - k];
  return {
    at: [along(chain, i, 0, t), along(chain, i, 1, t)],
    way: unit(slopeAt(chain, i, 0, t), slopeAt(chain, i, 1, t)),
  };
}

/** How finely curves are sampled to measure them. */
const SAMPLES = 64;

/** Farthest distance of a chain from the origin, to about a ten thousandth. */
export function reachOf(chain: Chain): number {
  let most = 0;
  for (let i = 0; i + 7 < chain.length; i += 6)
    for (let k = 0; k <= SAMPLES; k++) {
      const [x, y] = [along(chain, i, 0, k / SAMPLES), along(chain, i, 1, k / SAMPLES)];
      most = Math.max(most, x * x + y * y);
    }
  return Math.sqrt(most);
}

/** Least and greatest coordinate `axis` (0 is x, 1 is y) of a chain, to about a ten thousandth. */
export function rangeOf(chain: Chain, axis: number): readonly [least: number, greatest: number] {
  let [least, greatest] = [Infinity, -Infinity];
  for (let i = 0; i + 7 < chain.length; i += 6)
    for (let k = 0; k <= SAMPLES; k++) {
      const at = along(chain, i, axis, k / SAMPLES);
      least = Math.min(least, at);
      greatest = Math.max(greatest, at);
    }
  return [least, greatest];
}

/** A closed chain as a path, run through the way outer contours are. */
export function toPath(chain: Chain): Path {
  const draw = pen().moveTo(chain[0]!, chain[1]!);
  for (let i = 2; i + 5 < chain.length; i += 6)
    draw.curveTo(chain[i]!, chain[i + 1]!, chain[i + 2]!, chain[i + 3]!, chain[i + 4]!, chain[i + 5]!);
  const path = draw.path();
  return areaOf(path) < 0 ? reversePath(path) : path;
}
