import { contains, pointSideSquared } from "../../geometry/distance.ts";
import type { Outline } from "../../geometry/outline.ts";
import type { Circle } from "../../geometry/reach.ts";

/** Texels on a side. */
const SIDE = 48;

/**
 * Signed distance (µm) to one outline, negative inside, at the points of a square that reaches a radius beyond
 * the enclosing circle. Only ever a first sieve: the exact distance decides.
 */
export interface Texture {
  readonly side: number;
  /** Local coordinates of the first texel. */
  readonly left: number;
  readonly top: number;
  /** Distance between texels. */
  readonly pitch: number;
  readonly values: Float32Array;
}

/** Samples the distance to an outline around its enclosing circle. */
export function textureOf(outline: Outline, circle: Circle): Texture {
  const pitch = (4 * circle.r) / (SIDE - 1);
  const left = circle.x - 2 * circle.r;
  const top = circle.y - 2 * circle.r;
  const values = new Float32Array(SIDE * SIDE);
  const { points, rings } = outline;
  for (let row = 0; row < SIDE; row++)
    for (let column = 0; column < SIDE; column++) {
      const x = left + column * pitch;
      const y = top + row * pitch;
      let best = Infinity;
      for (let r = 0; r + 1 < rings.length; r++) {
        const last = rings[r + 1]! * 2 - 2;
        for (let i = rings[r]! * 2; i < last; i += 2) {
          const d = pointSideSquared(x, y, points[i]!, points[i + 1]!, points[i + 2]!, points[i + 3]!);
          if (d < best) best = d;
        }
      }
      const distance = Math.sqrt(best);
      values[row * SIDE + column] = contains(outline, x, y) ? -distance : distance;
    }
  return { side: SIDE, left, top, pitch, values };
}

/**
 * The texture of the outline closed by a disc of the given radius: bays that such a disc cannot enter count as
 * filled, so that motifs do not creep into the arms of a crescent. Discs larger than that see no difference.
 */
export function closeTexture(texture: Texture, radius: number): Texture {
  const { side, pitch, values } = texture;
  const rim: number[] = []; // texels just outside the shape grown by `radius`: column, row, distance beyond it
  for (let row = 1; row < side - 1; row++)
    for (let column = 1; column < side - 1; column++) {
      const at = row * side + column;
      const inner = Math.min(values[at - 1]!, values[at + 1]!, values[at - side]!, values[at + side]!);
      if (values[at]! >= radius && inner < radius) rim.push(column, row, values[at]! - radius);
    }
  const closed = values.slice();
  for (let row = 0; row < side; row++)
    for (let column = 0; column < side; column++) {
      const at = row * side + column;
      if (values[at]! >= radius || values[at]! < 0) continue;
      let nearest = Infinity;
      for (let i = 0; i < rim.length; i += 3) {
        const dx = rim[i]! - column;
        const dy = rim[i + 1]! - row;
        nearest = Math.min(nearest, Math.sqrt(dx * dx + dy * dy) * pitch - rim[i + 2]!);
      }
      closed[at] = Math.min(values[at]!, radius - nearest);
    }
  return { ...texture, values: closed };
}
