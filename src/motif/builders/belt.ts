import { arcHandle } from "../../geometry/shapes.ts";
import { unit, type Vector } from "./vector.ts";

/** A circle that an outline runs around: clockwise, so bulging, for a positive radius; a hollow for a negative one. */
export interface Wheel {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

/**
 * The outline that runs around wheels in turn, as a belt does: arcs joined by the straight lines that
 * touch both, so that every corner is round and every join smooth. Wheels that touch need no line.
 * @returns a closed chain
 */
export function belt(wheels: readonly Wheel[]): number[] {
  const n = wheels.length;
  const ways = wheels.map((wheel, i) => tangent(wheel, wheels[(i + 1) % n]!));
  const out: number[] = [];
  wheels.forEach((wheel, i) => {
    const [into, from] = [ways[(i + n - 1) % n]!, ways[i]!];
    const start = rimAt(wheel, into);
    if (i === 0) out.push(...start);
    else line(out, start);
    arc(out, wheel, into, from);
  });
  line(out, [out[0]!, out[1]!]);
  return out;
}

/** The direction of the line that leaves `a` and meets `b`. */
function tangent(a: Wheel, b: Wheel): Vector {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const gain = b.r - a.r;
  const straight = Math.sqrt(Math.max(0, dx * dx + dy * dy - gain * gain));
  return unit(straight * dx + gain * dy, straight * dy - gain * dx);
}

/** Where a wheel's rim runs in direction `way`. */
const rimAt = (wheel: Wheel, way: Vector): Vector => [wheel.x + wheel.r * way[1], wheel.y - wheel.r * way[0]];

/** An arc of a wheel's rim from where it runs `from` to where it runs `to`, the short way, in two halves if it is long. */
function arc(out: number[], wheel: Wheel, from: Vector, to: Vector): void {
  const cos = from[0] * to[0] + from[1] * to[1];
  if (cos > 0.9999999) return;
  if (cos < 0.2) {
    // Half way: across the directions' difference, on the wheel's own hand, so that it holds beyond half a turn.
    const hand = wheel.r < 0 ? -1 : 1;
    const middle = unit((from[1] - to[1]) * -hand, (from[0] - to[0]) * hand);
    arc(out, wheel, from, middle);
    arc(out, wheel, middle, to);
    return;
  }
  const handle = arcHandle(cos) * Math.abs(wheel.r);
  const [a, b] = [rimAt(wheel, from), rimAt(wheel, to)];
  out.push(a[0] + from[0] * handle, a[1] + from[1] * handle);
  out.push(b[0] - to[0] * handle, b[1] - to[1] * handle, b[0], b[1]);
}

function line(out: number[], to: Vector): void {
  const [x, y] = [out[out.length - 2]!, out[out.length - 1]!];
  if (Math.abs(x - to[0]) + Math.abs(y - to[1]) < 1e-4) {
    out[out.length - 2] = to[0];
    out[out.length - 1] = to[1];
  } else out.push(x, y, to[0], to[1], to[0], to[1]);
}
