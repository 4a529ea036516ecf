import type { Outline } from "../../geometry/outline.ts";
import type { Circle } from "../../geometry/reach.ts";

/** Most points for one motif. */
const MOST = 64;
/** Points lie at most about this share of the radius apart. */
const SPACING = 0.14;
/** A corner is a tip when the sine of its turn is above this (25 degrees), or when it turns back. */
const SHARP = 0.42;

/** Points on an outline, as x, y pairs (µm): its tips, and then always the one farthest from those chosen before. */
export function rimOf(outline: Outline, circle: Circle): Float64Array {
  const { points, rings } = outline;
  const fine = (circle.r * SPACING) / 4;
  const candidates: number[] = [];
  const tips: number[] = [];
  for (let r = 0; r + 1 < rings.length; r++) {
    const from = rings[r]! * 2;
    const last = rings[r + 1]! * 2 - 2;
    for (let i = from; i < last; i += 2) {
      const [x, y] = [points[i]!, points[i + 1]!];
      const [dx, dy] = [points[i + 2]! - x, points[i + 3]! - y];
      const before = i === from ? last - 2 : i - 2;
      const [bx, by] = [x - points[before]!, y - points[before + 1]!];
      const length = Math.sqrt(dx * dx + dy * dy);
      const across = bx * dy - by * dx;
      const along = bx * dx + by * dy;
      const sharp = across > SHARP * length * Math.sqrt(bx * bx + by * by) || (along < 0 && across >= 0);
      if (sharp) tips.push(candidates.length);
      const parts = Math.max(1, Math.ceil(length / fine));
      for (let k = 0; k < parts; k++) candidates.push(x + (dx * k) / parts, y + (dy * k) / parts);
    }
  }
  const away = new Float64Array(candidates.length / 2).fill(Infinity);
  const enough = circle.r * SPACING * circle.r * SPACING;
  const rim: number[] = [];
  let far = 0;
  const take = (at: number): void => {
    const x = candidates[at]!;
    const y = candidates[at + 1]!;
    rim.push(x, y);
    far = 0;
    for (let k = 0; k < away.length; k++) {
      const dx = candidates[2 * k]! - x;
      const dy = candidates[2 * k + 1]! - y;
      away[k] = Math.min(away[k]!, dx * dx + dy * dy);
      if (away[k]! > away[far]!) far = k;
    }
  };
  // Where there are too many tips, some all the way round.
  const kept = Math.min(MOST, tips.length);
  for (let k = 0; k < kept; k++) take(tips[Math.floor((k * tips.length) / kept)]!);
  while (rim.length < 2 * MOST && (rim.length === 0 || away[far]! > enough)) take(2 * far);
  return Float64Array.from(rim);
}
