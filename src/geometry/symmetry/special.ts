import { type Images, imagesOf, transformBounds } from "../images.ts";
import type { Arrangement } from "../lattice.ts";
import type { Matrix } from "../matrix.ts";
import { inRegion, type Region } from "../region.ts";
import { fixing } from "./fixed.ts";

/** A centre of rotation (µm); `order` 2, 3, 4 or 6: a turn by one over it maps the pattern onto itself. */
export interface Centre {
  readonly x: number;
  readonly y: number;
  readonly order: number;
}

/** The part of a mirror line that lies in the unit (µm). */
export interface MirrorLine {
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
}

/** The places of a unit that some operation of its repeat leaves where they are. */
export interface SpecialPlaces {
  /** One of each kind, those of the highest order first. */
  readonly centres: readonly Centre[];
  readonly mirrors: readonly MirrorLine[];
}

/** How far beyond the unit's edge a place may be and still belong to it (µm): corners are rounded. */
const SLACK = 1;
/** Longest shift along a mirror line that is rounding, and no glide (µm). */
const GLIDE = 3;

/** See {@link SpecialPlaces}. The unit's edges belong to it, where most of its mirror lines are. */
export function specialPlaces(arrangement: Arrangement): SpecialPlaces {
  const { unit, region } = arrangement;
  const images = imagesOf(arrangement);
  const whole: Region = region ?? [
    [0, 0],
    [unit.width, 0],
    [unit.width, unit.height],
    [0, unit.height],
  ];
  const centres: Centre[] = [];
  const mirrors: MirrorLine[] = [];
  eachNear(images, unit.width, unit.height, (g) => {
    if (g[0] * g[3] - g[1] * g[2] < 0) {
      const line = mirrorLine(g, whole);
      if (line) mirrors.push(line);
      return;
    }
    const [x, y] = fixedPoint(g);
    if (!inRegion(whole, x, y, SLACK) || centres.some((centre) => isAlike(images, centre, x, y))) return;
    const turns = fixing(images, x, y).filter((m) => m[0] * m[3] - m[1] * m[2] > 0);
    centres.push({ x, y, order: turns.length + 1 });
  });
  centres.sort((p, q) => q.order - p.order || p.y - q.y || p.x - q.x);
  mirrors.sort(
    (p, q) => p.from[1] - q.from[1] || p.from[0] - q.from[0] || p.to[1] - q.to[1] || p.to[0] - q.to[0],
  );
  return { centres, mirrors };
}

/** Every operation, with a translation, that brings the unit's box onto itself or beside itself; not the identity. */
function eachNear(images: Images, width: number, height: number, visit: (g: Matrix) => void): void {
  const box = [0, 0, width, height];
  images.operations.forEach((operation, index) => {
    if (index === 0) return;
    const [a, b, c, d, e, f] = operation;
    images.between(transformBounds(box, operation), box, SLACK, (dx, dy) =>
      visit([a, b, c, d, e + dx, f + dy]),
    );
  });
}

/** The point that a rotation leaves where it is: (I - A) p = t, by Cramer's rule. */
function fixedPoint([a, b, c, d, e, f]: Matrix): readonly [number, number] {
  const det = (1 - a) * (1 - d) - b * c;
  return [((1 - d) * e + c * f) / det, (b * e + (1 - a) * f) / det];
}

/** Whether some operation and translation map a centre onto a point. */
function isAlike(images: Images, { x, y }: Centre, toX: number, toY: number): boolean {
  return images.operations.some(([a, b, c, d, e, f]) => {
    const [ox, oy] = [a * x + c * y + e, b * x + d * y + f];
    return images.between([ox, oy, ox, oy], [toX, toY, toX, toY], GLIDE, () => true);
  });
}

/** The line that a reflection leaves where it is, cut off at a convex region; undefined for a glide. */
function mirrorLine([a, b, c, d, e, f]: Matrix, region: Region): MirrorLine | undefined {
  const [glideX, glideY] = [a * e + c * f + e, b * e + d * f + f];
  if (glideX * glideX + glideY * glideY > GLIDE * GLIDE) return undefined;
  // The columns of I + A point along the line, one of them at least.
  const [ux, uy] = (1 + a) * (1 + a) + b * b > 1 ? [1 + a, b] : [c, 1 + d];
  const [px, py] = [e / 2, f / 2];
  let [low, high] = [-Infinity, Infinity];
  for (let i = 0; i < region.length; i++) {
    const [fromX, fromY] = region[i]!;
    const [toX, toY] = region[(i + 1) % region.length]!;
    const [dx, dy] = [toX - fromX, toY - fromY];
    const length = Math.sqrt(dx * dx + dy * dy);
    const inward = (dx * (py - fromY) - dy * (px - fromX)) / length;
    const rise = (dx * uy - dy * ux) / length;
    if (Math.abs(rise) < 1e-6) {
      if (inward < -SLACK) return undefined;
    } else if (rise > 0) low = Math.max(low, -inward / rise);
    else high = Math.min(high, -inward / rise);
  }
  if (!(high - low > SLACK)) return undefined;
  return { from: [px + low * ux, py + low * uy], to: [px + high * ux, py + high * uy] };
}
