import { isCloser } from "../../geometry/distance.ts";
import { type Bounds, type Images, imagesOf, transformBounds } from "../../geometry/images.ts";
import type { Arrangement } from "../../geometry/lattice.ts";
import { placing } from "../../geometry/matrix.ts";
import { type Outline, outlineOfRings, silhouetteOf, transformOutline } from "../../geometry/outline.ts";
import { fixesPoint } from "../../geometry/symmetry/fixed.ts";
import type { Placement, Standing } from "../layout.ts";
import { type Body, SLACK, TOLERANCE } from "./body.ts";
import { bucketsOver } from "./buckets.ts";
import { type Confines, forbiddenRings } from "./confines.ts";
import { edgeOf } from "./terrain.ts";

/** Two placements (or one and its own copy, or one and what it should keep clear of) that stand too close. */
export interface Clash {
  readonly first: string;
  readonly second: string;
}

/** What placements are held against. */
export interface Rules extends Confines {
  readonly arrangement: Arrangement;
  /** Least distance of drawn outlines (µm). */
  readonly gap: number;
  readonly standing?: readonly Standing[];
  /** Motifs on mirror lines and centres of rotation: they may lie over their own images there, and over no others. */
  readonly seats?: readonly Standing[];
  /** Awaited now and then. */
  readonly step?: () => Promise<void>;
}

/** An outline where it stands. `extra` is the room it wants beyond the gap; what stood before is nobody's business. */
interface Placed {
  readonly id: string;
  readonly outline: Outline;
  readonly extra: number;
  readonly stood: boolean;
  /** Where it sits, if it is seated. */
  readonly seat?: Placement;
}

/** Placements between two breaths. */
const BREATH = 256;

/**
 * The first pair that stands closer than it should, each placement's own copies included, or the first placement that
 * lies where it may not; undefined when all is well. Looks at everything anew, without the board and the terrain that
 * were packed on: what is returned has passed here.
 */
export async function findClash(
  placements: readonly Placement[],
  bodyOf: (placement: Placement) => Body,
  rules: Rules,
): Promise<Clash | undefined> {
  const { arrangement, gap, standing = [], seats = [], step } = rules;
  const images = imagesOf(arrangement);
  const limit = gap + SLACK;
  const placed: Placed[] = placements.map((p) => {
    const { extra, outline } = bodyOf(p);
    return { id: p.id, extra, outline: stood(outline, p), stood: false };
  });
  const asItStands = ({ placement: p, motif, extra = 0 }: Standing): Omit<Placed, "stood"> => {
    const bare = outlineOfRings(silhouetteOf(motif.outline, TOLERANCE / p.scale));
    return { id: p.id, extra, outline: stood(bare, p) };
  };
  for (const one of standing) placed.push({ ...asItStands(one), stood: true });
  for (const one of seats) placed.push({ ...asItStands(one), stood: false, seat: one.placement });
  const fence = fenceOf(placed, rules);
  const near = nearBy(placed, limit + placed.reduce((most, one) => Math.max(most, one.extra), 0));
  for (const [k, one] of placed.entries()) {
    if (step && k % BREATH === BREATH - 1) await step();
    if (!one.stood)
      for (const { name, outline } of fence)
        if (isCloser(one.outline, outline, 0, 0, edgeOf(rules))) return { first: one.id, second: name };
    const met = firstNear(one, k, placed, images, near, limit);
    if (met) return { first: met.id, second: one.id };
  }
  return undefined;
}

const stood = (outline: Outline, p: Placement): Outline =>
  transformOutline(outline, placing(p.x, p.y, p.turn, p.scale, p.flip));

/** Where motifs may not be, whole, by the name of the option. */
function fenceOf(placed: readonly Placed[], rules: Rules): { name: string; outline: Outline }[] {
  const edge = edgeOf(rules);
  const zone = Float64Array.from(boxAround(placed), (v, i) => (i < 2 ? v - 2 * edge : v + 2 * edge));
  return (["inside", "outside"] as const).flatMap((name) =>
    forbiddenRings({ [name]: rules[name] }, rules.arrangement, zone).map((rings) => ({
      name,
      outline: outlineOfRings(rings),
    })),
  );
}

function boxAround(placed: readonly Placed[]): Float64Array {
  const all = new Float64Array([Infinity, Infinity, -Infinity, -Infinity]);
  for (const { outline } of placed)
    for (let i = 0; i < 4; i++)
      all[i] = i < 2 ? Math.min(all[i]!, outline.box[i]!) : Math.max(all[i]!, outline.box[i]!);
  return all;
}

/** Outlines by place, in buckets about as wide as one of them. */
interface Near {
  readonly box: Bounds;
  readonly reach: number;
  /** Numbers of the outlines that may come within reach of a box, each once. */
  readonly at: (minX: number, minY: number, maxX: number, maxY: number) => readonly number[];
}

function nearBy(placed: readonly Placed[], reach: number): Near {
  const box = boxAround(placed);
  const [left, top, right, bottom] = box as unknown as [number, number, number, number];
  const square = Math.max(1, Math.sqrt(((right - left) * (bottom - top)) / Math.max(1, placed.length)));
  const { columns, count, column, row } = bucketsOver(box, square);
  const buckets: number[][] = Array.from({ length: count }, () => []);
  const seen = new Uint32Array(placed.length);
  let searches = 0;
  placed.forEach(({ outline: { box: own } }, k) => {
    for (let j = row(own[1]!); j <= row(own[3]!); j++)
      for (let i = column(own[0]!); i <= column(own[2]!); i++) buckets[j * columns + i]!.push(k);
  });
  return {
    box,
    reach,
    at(minX, minY, maxX, maxY) {
      const [fromColumn, toColumn] = [column(minX - reach), column(maxX + reach)];
      const toRow = row(maxY + reach);
      const found: number[] = [];
      searches++;
      for (let j = row(minY - reach); j <= toRow; j++)
        for (let i = fromColumn; i <= toColumn; i++)
          for (const k of buckets[j * columns + i]!) {
            if (seen[k] === searches) continue;
            seen[k] = searches;
            found.push(k);
          }
      return found;
    },
  };
}

/**
 * The first outline up to number `k` that some copy of number `k` is too close to. Two outlines are looked at once:
 * copies of the first around the second show the same distances as the other way round.
 */
function firstNear(
  one: Placed,
  k: number,
  placed: readonly Placed[],
  images: Images,
  near: Near,
  limit: number,
): Placed | undefined {
  let met: Placed | undefined;
  images.operations.some((operation, index) => {
    let copy: Outline | undefined = index === 0 ? one.outline : undefined;
    const box = index === 0 ? one.outline.box : transformBounds(one.outline.box, operation);
    return images.between(box, near.box, near.reach, (dx, dy) => {
      const itself = index === 0 && dx === 0 && dy === 0;
      const [a, b, c, d, e, f] = operation;
      const isOwn = one.seat && fixesPoint([a, b, c, d, e + dx, f + dy], one.seat.x, one.seat.y);
      for (const j of near.at(box[0]! + dx, box[1]! + dy, box[2]! + dx, box[3]! + dy)) {
        const other = placed[j]!;
        if (j > k || (j === k && (itself || isOwn)) || (one.stood && other.stood)) continue;
        copy ??= transformOutline(one.outline, operation);
        if (!isCloser(other.outline, copy, dx, dy, limit + Math.max(one.extra, other.extra))) continue;
        met = other;
        return true;
      }
      return false;
    });
  });
  return met;
}
