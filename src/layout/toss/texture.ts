import { pointSideSquared } from "../../geometry/distance.ts";
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

/**
 * Samples the distance to an outline at `side` x `side` points of a square that reaches `reach` radii from the centre
 * of the enclosing circle.
 */
export function textureOf(outline: Outline, circle: Circle, side: number = SIDE, reach = 2): Texture {
  const pitch = (2 * reach * circle.r) / (side - 1);
  const left = circle.x - reach * circle.r;
  const top = circle.y - reach * circle.r;
  const values = new Float32Array(side * side);
  const winding = new Int32Array(side + 1);
  for (let row = 0; row < side; row++) {
    const y = top + row * pitch;
    windingAlong(outline, y, left, pitch, winding);
    let near = Infinity;
    let wound = 0;
    for (let column = 0; column < side; column++) {
      // No nearer than the last point by more than the pitch, so farther runs need no look.
      near = sideDistance(outline, left + column * pitch, y, near + pitch);
      wound += winding[column]!;
      values[row * side + column] = wound !== 0 ? -near : near;
    }
  }
  return { side, left, top, pitch, values };
}

/** Distance of a point to the nearest side, which is known to be at most `bound`. */
function sideDistance({ points, runs, boxes }: Outline, x: number, y: number, bound: number): number {
  let best = bound * bound * 1.000001;
  for (let r = 0; r < runs.length; r += 2) {
    const gapX = Math.max(boxes[2 * r]! - x, x - boxes[2 * r + 2]!, 0);
    const gapY = Math.max(boxes[2 * r + 1]! - y, y - boxes[2 * r + 3]!, 0);
    if (gapX * gapX + gapY * gapY >= best) continue;
    const last = runs[r + 1]! * 2;
    for (let i = runs[r]! * 2; i < last; i += 2) {
      const d = pointSideSquared(x, y, points[i]!, points[i + 1]!, points[i + 2]!, points[i + 3]!);
      if (d < best) best = d;
    }
  }
  return Math.sqrt(best);
}

/** How the winding number changes from column to column along the row at `y`. */
function windingAlong(
  { points, rings }: Outline,
  y: number,
  left: number,
  pitch: number,
  to: Int32Array,
): void {
  to.fill(0);
  for (let r = 0; r + 1 < rings.length; r++) {
    const last = rings[r + 1]! * 2 - 2;
    for (let i = rings[r]! * 2; i < last; i += 2) {
      const y0 = points[i + 1]!;
      const y1 = points[i + 3]!;
      if (y0 <= y === y1 <= y) continue;
      const x = points[i]! + ((points[i + 2]! - points[i]!) * (y - y0)) / (y1 - y0);
      const column = Math.max(0, Math.ceil((x - left) / pitch));
      if (column < to.length) to[column]! += y1 > y0 ? -1 : 1;
    }
  }
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
