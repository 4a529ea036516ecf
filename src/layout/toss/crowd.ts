import type { Matrix } from "../../geometry/matrix.ts";
import { cosTurns, sinTurns } from "../../seed/trigonometry.ts";
import type { Body } from "./body.ts";

/** A body with its size, where it is to be pushed from. */
export interface Mover {
  readonly body: Body;
  readonly scale: number;
  readonly flip: boolean;
  /** Its origin (µm) and its turn. */
  readonly x: number;
  readonly y: number;
  readonly turn: number;
  /** Whether it stays where it is and others give way. */
  readonly fixed: boolean;
}

/** Bodies that push each other apart, in arrays: index `i` is one body everywhere. */
export interface Crowd {
  readonly movers: readonly Mover[];
  /** Centre of the enclosing circle (µm), which a body is turned about. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly turn: Float64Array;
  readonly radius: Float64Array;
  /** One over mass (area of the circle, µm²) and one over moment of inertia; 0 for what does not move, or not turn. */
  readonly lightness: Float64Array;
  readonly spin: Float64Array;
  /** Linear part of each pose, four numbers a body. */
  readonly linear: Float64Array;
}

/** Moment of inertia of a motif as a share of mass times squared radius: a disc has 1/2, most motifs less. */
const INERTIA = 0.35;

/** Makes a crowd; without `turning`, bodies keep their turn. */
export function createCrowd(movers: readonly Mover[], turning: boolean): Crowd {
  const array = (): Float64Array => new Float64Array(movers.length);
  const crowd: Crowd = {
    movers,
    x: array(),
    y: array(),
    turn: array(),
    radius: array(),
    lightness: array(),
    spin: array(),
    linear: new Float64Array(4 * movers.length),
  };
  movers.forEach((mover, i) => {
    const { circle } = mover.body;
    const r = circle.r * mover.scale;
    crowd.turn[i] = mover.turn;
    crowd.radius[i] = r;
    turnTo(crowd, i);
    const [a, b, c, d] = crowd.linear.subarray(4 * i, 4 * i + 4) as unknown as [
      number,
      number,
      number,
      number,
    ];
    crowd.x[i] = a * circle.x + c * circle.y + mover.x;
    crowd.y[i] = b * circle.x + d * circle.y + mover.y;
    crowd.lightness[i] = mover.fixed ? 0 : 1 / (r * r);
    crowd.spin[i] = mover.fixed || !turning ? 0 : 1 / (INERTIA * r * r * r * r);
  });
  return crowd;
}

/** Brings the linear part of a body's pose in line with its turn. */
export function turnTo({ movers, turn, linear }: Crowd, i: number): void {
  const { scale, flip } = movers[i]!;
  const cos = cosTurns(turn[i]!) * scale;
  const sin = sinTurns(turn[i]!) * scale;
  linear[4 * i] = flip ? -cos : cos;
  linear[4 * i + 1] = flip ? -sin : sin;
  linear[4 * i + 2] = -sin;
  linear[4 * i + 3] = cos;
}

/** Where a body's origin has come to, unrounded, and its pose as a matrix. */
export function poseOf({ movers, x, y, linear }: Crowd, i: number): Matrix {
  const { circle } = movers[i]!.body;
  const a = linear[4 * i]!;
  const b = linear[4 * i + 1]!;
  const c = linear[4 * i + 2]!;
  const d = linear[4 * i + 3]!;
  return [a, b, c, d, x[i]! - a * circle.x - c * circle.y, y[i]! - b * circle.x - d * circle.y];
}
