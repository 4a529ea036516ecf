import type { Ring } from "../../../../geometry/flatten.ts";
import type { Point } from "./point.ts";

/** Steps along an outline, in pixels. */
export const STEP = 0.5;

/** A ring as points at even steps along it, about {@link STEP} pixels apart. */
export function evenPoints(ring: Ring): Point[] {
  const n = ring.length / 2;
  const lengths = new Float64Array(n + 1);
  for (let i = 0; i < n; i++) {
    const j = (i + 1) % n;
    const [dx, dy] = [ring[2 * j]! - ring[2 * i]!, ring[2 * j + 1]! - ring[2 * i + 1]!];
    lengths[i + 1] = lengths[i]! + Math.sqrt(dx * dx + dy * dy);
  }
  const whole = lengths[n]!;
  const count = Math.max(4, Math.round(whole / STEP));
  const points: Point[] = [];
  for (let k = 0, i = 0; k < count; k++) {
    const at = (whole * k) / count;
    while (i + 1 < n && lengths[i + 1]! < at) i++;
    const side = lengths[i + 1]! - lengths[i]!;
    const t = side > 0 ? (at - lengths[i]!) / side : 0;
    const j = (i + 1) % n;
    points.push([
      ring[2 * i]! + (ring[2 * j]! - ring[2 * i]!) * t,
      ring[2 * i + 1]! + (ring[2 * j + 1]! - ring[2 * i + 1]!) * t,
    ]);
  }
  return points;
}
