import { flatten } from "./flatten.ts";
import type { Path } from "./path.ts";

/** The middle of a path's ink (its centre of gravity, µm), flattened within 50 µm. */
export function middleOf(path: Path): readonly [x: number, y: number] {
  const ox = path.points[0] ?? 0;
  const oy = path.points[1] ?? 0;
  let [area, sx, sy] = [0, 0, 0];
  for (const ring of flatten(path, 50))
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      const [x0, y0, x1, y1] = [ring[j]! - ox, ring[j + 1]! - oy, ring[i]! - ox, ring[i + 1]! - oy];
      const twice = x0 * y1 - x1 * y0;
      area += twice;
      sx += twice * (x0 + x1);
      sy += twice * (y0 + y1);
    }
  return area === 0 ? [ox, oy] : [ox + sx / (3 * area), oy + sy / (3 * area)];
}
