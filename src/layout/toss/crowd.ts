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
}

/** Bodies that push each other apart, in arrays: index `i` is one body everywhere. */
export interface Crowd {
  readonly movers: readonly Mover[];
  /** Centre of the enclosing circle (µm), which a body is turned about. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly turn: Float64Array;
  readonly radius: Float64Array;
  /** One over mass (area of the circle, µm²) and one over moment of inertia, 0 where bodies keep their turn. */
  readonly lightness: Float64Array;
  readonly spin: Float64Array;
  /** Linear part of each pose, four numbers a body. */
  readonly linear: Float64Array;
  /** 0 for a body that stands where it was set down, 1 for one that was moved or is new. */
  readonly moved: Uint8Array;
}

const TAU = 2 * Math.PI;
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
    moved: new Uint8Array(movers.length),
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
    crowd.lightness[i] = 1 / (r * r);
    crowd.spin[i] = turning ? 1 / (INERTIA * r * r * r * r) : 0;
  });
  crowd.moved.fill(1);
  return crowd;
}

/** A crowd without some of its bodies, the others as they are now. */
export function without(crowd: Crowd, out: ReadonlySet<number>): Crowd {
  const turning = crowd.spin.some((spin) => spin > 0);
  const movers = crowd.movers.map((mover, i) => {
    const [, , , , x, y] = poseOf(crowd, i);
    return { ...mover, x, y, turn: crowd.turn[i]! };
  });
  const staying = [...movers.keys()].filter((i) => !out.has(i));
  const left = createCrowd(
    staying.map((i) => movers[i]!),
    turning,
  );
  left.moved.set(staying.map((i) => crowd.moved[i]!));
  return left;
}

const IDENTITY: Matrix = [1, 0, 0, 1, 0, 0];

/** Writes a body's pose to `to`, its centre being at (centreX, centreY) under an operation if these are given. */
export function placeOf(
  { movers, x, y, linear }: Crowd,
  i: number,
  to: Float64Array,
  operation: Matrix = IDENTITY,
  centreX: number = x[i]!,
  centreY: number = y[i]!,
): void {
  const [a, b, c, d] = operation;
  const { circle } = movers[i]!.body;
  const k = linear[4 * i]!;
  const l = linear[4 * i + 1]!;
  const m = linear[4 * i + 2]!;
  const o = linear[4 * i + 3]!;
  to[0] = a * k + c * l;
  to[1] = b * k + d * l;
  to[2] = a * m + c * o;
  to[3] = b * m + d * o;
  to[4] = centreX - to[0] * circle.x - to[2] * circle.y;
  to[5] = centreY - to[1] * circle.x - to[3] * circle.y;
}

/** Moves a body along (nx, ny), of length 1, and turns it; returns how far it moved (µm). */
export function push(
  crowd: Crowd,
  i: number,
  impulse: number,
  nx: number,
  ny: number,
  torque: number,
): number {
  const way = impulse * crowd.lightness[i]!;
  crowd.x[i]! += way * nx;
  crowd.y[i]! += way * ny;
  crowd.moved[i] = 1;
  if (crowd.spin[i]! > 0) {
    crowd.turn[i]! += (impulse * crowd.spin[i]! * torque) / TAU;
    turnTo(crowd, i);
  }
  return way;
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

/** Where the middle of a body's ink lies from its centre (µm). */
export function swayOf({ movers, linear }: Crowd, i: number): readonly [x: number, y: number] {
  const { circle, middle } = movers[i]!.body;
  const [x, y] = [middle[0] - circle.x, middle[1] - circle.y];
  return [linear[4 * i]! * x + linear[4 * i + 2]! * y, linear[4 * i + 1]! * x + linear[4 * i + 3]! * y];
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
