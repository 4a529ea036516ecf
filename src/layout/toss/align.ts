import { contains } from "../../geometry/distance.ts";
import type { Matrix } from "../../geometry/matrix.ts";
import { type Outline, outlineOfRings, silhouetteOf } from "../../geometry/outline.ts";
import type { Body } from "./body.ts";
import type { Turns } from "./turns.ts";

/** Points on a side of the square in which a motif is probed. */
const PROBES = 40;
/** How much worse than the best a turn may suit and still be taken, as a share of the points within the motif. */
const NEARLY = 0.005;
/**
 * A motif with no symmetry of its own suits no mirror line well. Turns that suit up to so many times worse than the best
 * count too, and of them those are taken that lay it along the line, rather than across it: within so much of the
 * slimmest.
 */
const ALONG = { worse: 1.6, slim: 1.05 };

/**
 * The turns (by number) in which a motif comes nearest to being its own mirror image under the reflections among some
 * operations that fix its origin. All turns, when there is no reflection: a motif that is turned about its own origin
 * looks the same to a rotation.
 */
export type Alignments = (body: Body, fixing: readonly Matrix[], flip: boolean) => readonly number[];

/** See {@link Alignments}. What was worked out once is kept. */
export function alignments(turns: Turns): Alignments {
  const all = [...turns.turn.keys()];
  const known = new Map<Body, Map<string, readonly number[]>>();
  return (body, fixing, flip) => {
    const reflections = fixing.filter(([a, b, c, d]) => a * d - b * c < 0);
    if (reflections.length === 0 || all.length === 1) return all;
    const key = `${flip} ${reflections.map((m) => m.slice(0, 4).map((v) => Math.round(v * 1e6))).join(" ")}`;
    const own = known.get(body) ?? new Map<string, readonly number[]>();
    known.set(body, own);
    const suited = own.get(key) ?? suitedTurns(body, reflections, turns, flip);
    own.set(key, suited);
    return suited;
  };
}

function suitedTurns(body: Body, reflections: readonly Matrix[], turns: Turns, flip: boolean): number[] {
  const outline = outlineOfRings(silhouetteOf(body.drawn.motif.outline, body.circle.r / 60));
  const mask = maskOf(outline);
  const probes = probesIn(outline);
  const misses = Array.from(turns.turn, (_, k) =>
    reflections.reduce(
      (sum, reflection) => sum + missed(mask, probes, reflection, turns.cos[k]!, turns.sin[k]!, flip),
      0,
    ),
  );
  const best = misses.reduce((least, n) => Math.min(least, n), Infinity);
  const nearly = (NEARLY * probes.length) / 2;
  const suited = (most: number): number[] => misses.flatMap((n, k) => (n <= most ? [k] : []));
  if (reflections.length > 1) return suited(best + nearly);
  const width = (k: number): number =>
    widthAcross(probes, reflections[0]!, turns.cos[k]!, turns.sin[k]!, flip);
  const along = suited(best * ALONG.worse + nearly).map((k) => ({ k, wide: width(k) }));
  const slim = ALONG.slim * along.reduce((least, { wide }) => Math.min(least, wide), Infinity);
  const laid = along.filter(({ wide }) => wide <= slim);
  const least = laid.reduce((fewest, { k }) => Math.min(fewest, misses[k]!), Infinity);
  return laid.flatMap(({ k }) => (misses[k]! <= least + nearly ? [k] : []));
}

/** Mean distance of a motif's points from the mirror line through its origin. */
function widthAcross(
  probes: readonly number[],
  [a, b, c, d]: Matrix,
  cos: number,
  sin: number,
  flip: boolean,
): number {
  // A point and its mirror image lie on either side of the line: half their distance is that from the line.
  const hand = flip ? -1 : 1;
  let sum = 0;
  for (let i = 0; i < probes.length; i += 2) {
    const [x, y] = [hand * probes[i]!, probes[i + 1]!];
    const [u, v] = [cos * x - sin * y, sin * x + cos * y];
    const [dx, dy] = [a * u + c * v - u, b * u + d * v - v];
    sum += Math.sqrt(dx * dx + dy * dy) / 2;
  }
  return sum / probes.length;
}

/** How many points of a motif that is turned by an angle fall beside it when it is mirrored. */
function missed(
  mask: Mask,
  probes: readonly number[],
  [a, b, c, d]: Matrix,
  cos: number,
  sin: number,
  flip: boolean,
): number {
  // The reflection as the motif sees it: flipped and turned, mirrored, then turned and flipped back.
  const hand = flip ? -1 : 1;
  const [p, q] = [a * cos + c * sin, b * cos + d * sin];
  const [r, s] = [c * cos - a * sin, d * cos - b * sin];
  const [xx, xy] = [cos * p + sin * q, hand * (cos * q - sin * p)];
  const [yx, yy] = [hand * (cos * r + sin * s), cos * s - sin * r];
  let count = 0;
  for (let i = 0; i < probes.length; i += 2) {
    const [x, y] = [probes[i]!, probes[i + 1]!];
    if (!isCovered(mask, xx * x + yx * y, xy * x + yy * y)) count++;
  }
  return count;
}

/** What an outline covers of a square about its origin that holds it however it is turned. */
interface Mask {
  readonly reach: number;
  readonly cells: Uint8Array;
}

/** Cells on a side of a mask. */
const SIDE = 160;

function maskOf(outline: Outline): Mask {
  let squared = 1;
  for (let i = 0; i < outline.points.length; i += 2) {
    const [x, y] = [outline.points[i]!, outline.points[i + 1]!];
    squared = Math.max(squared, x * x + y * y);
  }
  const reach = Math.sqrt(squared) * (1 + 2 / SIDE);
  const cells = new Uint8Array(SIDE * SIDE);
  const middle = (k: number): number => ((2 * k + 1) / SIDE - 1) * reach;
  for (let row = 0; row < SIDE; row++)
    for (let column = 0; column < SIDE; column++)
      if (contains(outline, middle(column), middle(row))) cells[row * SIDE + column] = 1;
  return { reach, cells };
}

/** Whether a point no farther from the origin than the outline reaches is covered. */
const isCovered = ({ reach, cells }: Mask, x: number, y: number): boolean =>
  cells[Math.floor((y / reach + 1) * (SIDE / 2)) * SIDE + Math.floor((x / reach + 1) * (SIDE / 2))] === 1;

/** Points of an even grid that lie in an outline. */
function probesIn(outline: Outline): number[] {
  const { box } = outline;
  const pitch = Math.max(box[2]! - box[0]!, box[3]! - box[1]!) / PROBES;
  const points: number[] = [];
  for (let y = box[1]! + pitch / 2; y < box[3]!; y += pitch)
    for (let x = box[0]! + pitch / 2; x < box[2]!; x += pitch) if (contains(outline, x, y)) points.push(x, y);
  return points;
}
