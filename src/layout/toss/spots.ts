import type { Outline } from "../../geometry/outline.ts";
import type { Circle } from "../../geometry/reach.ts";
import type { Texture } from "./texture.ts";

/** Most discs for one motif. */
const MOST = 14;
/** Width that the first disc gives up for being nearer the centre, as a share of the way. */
const CENTRAL = 0.1;

/**
 * Discs within an outline, as x, y, radius triples (µm): the widest first, then always the one farthest from
 * those before it, tips (radius 0) included. Testing them in this order finds a clash early.
 */
export function spotsOf(outline: Outline, texture: Texture, circle: Circle): Float64Array {
  const { side, left, top, pitch, values } = texture;
  const candidates: number[] = [];
  let widest = 0;
  let most = -Infinity;
  for (let at = 0; at < values.length; at++) {
    if (values[at]! >= 0) continue;
    const x = left + (at % side) * pitch;
    const y = top + Math.floor(at / side) * pitch;
    const dx = x - circle.x;
    const dy = y - circle.y;
    const worth = -values[at]! - CENTRAL * Math.sqrt(dx * dx + dy * dy);
    if (worth > most) {
      most = worth;
      widest = candidates.length;
    }
    candidates.push(x, y, -values[at]!);
  }
  for (let i = 0; i < outline.points.length; i += 2)
    candidates.push(outline.points[i]!, outline.points[i + 1]!, 0);

  const spots: number[] = [];
  const away = new Float64Array(candidates.length / 3).fill(Infinity);
  for (let next = widest; spots.length < MOST * 3; ) {
    const x = candidates[next]!;
    const y = candidates[next + 1]!;
    const r = candidates[next + 2]!;
    spots.push(x, y, r);
    let far = 0;
    for (let k = 0; k < away.length; k++) {
      const dx = candidates[k * 3]! - x;
      const dy = candidates[k * 3 + 1]! - y;
      away[k] = Math.min(away[k]!, Math.sqrt(dx * dx + dy * dy) - r);
      if (away[k]! > away[far]!) far = k;
    }
    if (away[far]! < circle.r * 0.12) break;
    next = far * 3;
  }
  return Float64Array.from(spots);
}
