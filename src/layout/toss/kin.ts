import { isCloser } from "../../geometry/distance.ts";
import type { Copy, Pose } from "./board.ts";
import type { Body } from "./body.ts";
import type { Stage } from "./stage.ts";

/** Share of the mean spacing of one kind that two of it keep between their centres, at full spread. */
const SPACING = 0.7;
/** Clear distance that two of one kind keep at full spread: in gaps, and as a share of the smaller radius. */
const NEAR_GAPS = 3;
const NEAR_RADIUS = 0.5;
/** Centres of one kind stay this share of the larger radius apart, so that no moon lies in a moon. */
const NEST = 1.1;

/** The copies of one kind around a place that could be too near it for the eye. */
export interface Kin {
  readonly copies: readonly Copy[];
  /** How far they are to keep apart, 0 to 1. */
  readonly spread: number;
  /** Least distance of centres as a share of the larger radius. */
  readonly nest: number;
  /** Least distance of centres (µm). */
  readonly spacing: number;
}

/**
 * How far the pieces of each entry are to keep apart, 0 to 1: less for an entry that makes up much of the whole,
 * whose pieces cannot but be neighbours, and not at all for the only one.
 */
export function spreads(spread: number, shares: readonly number[]): number[] {
  const sum = shares.reduce((a, b) => a + b, 0);
  return shares.map((share) => spread * Math.min(1, 1.25 * (1 - share / sum)));
}

/** Least distance of centres of two of one entry, as a share of the larger radius, for the entry's spread. */
export const nestOf = (spread: number): number => NEST * Math.min(1, 1.2 * spread);

/** Least distance (µm) of the centres of two of one entry. */
export function spacingOf(stage: Stage, entry: number, spread: number): number {
  const { width, height } = stage.arrangement.unit;
  return spread * SPACING * Math.sqrt((width * height) / (stage.used[entry]! + 1));
}

/** Whether a copy of the entry has its centre within `reach` µm of (x, y). */
export function isNearKin(stage: Stage, entry: number, x: number, y: number, reach: number): boolean {
  if (reach <= 0) return false;
  return stage.board.nearKin(entry, x, y, reach, (copy) => {
    const dx = copy.cx - x;
    const dy = copy.cy - y;
    return dx * dx + dy * dy < reach * reach;
  });
}

/** How far a body's centre, at the given scale, lies from its first disc. */
export function offsetOf({ circle, spots }: Body, scale: number): number {
  const ox = circle.x - spots[0]!;
  const oy = circle.y - spots[1]!;
  return Math.sqrt(ox * ox + oy * oy) * scale;
}

/**
 * The kin of a body of at most the given scale whose first disc lies on (x, y). `full` is the entry's spread, of
 * which the share `part` is asked for now.
 */
export function kinAround(
  stage: Stage,
  body: Body,
  scale: number,
  x: number,
  y: number,
  full: number,
  part: number,
): Kin {
  const spread = full * part;
  const spacing = spacingOf(stage, body.entry, spread);
  const offset = offsetOf(body, scale);
  const r = body.circle.r * scale;
  const far = offset + Math.max(spacing, stage.radius + r + nearness(stage, spread, r, r));
  const copies: Copy[] = [];
  if (full > 0)
    stage.board.nearKin(body.entry, x, y, far, (copy) => {
      const dx = copy.cx - x;
      const dy = copy.cy - y;
      const reach = offset + Math.max(spacing, copy.r + r + nearness(stage, spread, r, copy.r));
      if (dx * dx + dy * dy < reach * reach) copies.push(copy);
      return false;
    });
  return { copies, spread, spacing, nest: nestOf(full) };
}

/** Clear distance that two of one kind should keep. */
const nearness = (stage: Stage, spread: number, r: number, other: number): number =>
  spread * Math.max(NEAR_GAPS * stage.gap, NEAR_RADIUS * Math.min(r, other));

/** Whether a pose's centre is too near that of one of its kin. */
export function crowdsCentres({ copies, spacing, nest }: Kin, pose: Pose): boolean {
  const { circle } = pose.body;
  const [a, b, c, d, e, f] = pose.matrix;
  const x = a * circle.x + c * circle.y + e;
  const y = b * circle.x + d * circle.y + f;
  const r = circle.r * pose.scale;
  for (const copy of copies) {
    const dx = copy.cx - x;
    const dy = copy.cy - y;
    const least = Math.max(spacing, nest * Math.max(r, copy.r));
    if (dx * dx + dy * dy < least * least) return true;
  }
  return false;
}

/** Whether a pose's outline (in the body's scratch) is as good as next to one of its kin. */
export function crowdsOutlines(stage: Stage, { copies, spread }: Kin, pose: Pose): boolean {
  const r = pose.body.circle.r * pose.scale;
  for (const copy of copies) {
    const near = nearness(stage, spread, r, copy.r);
    if (near > stage.gap && isCloser(pose.body.scratch, copy.outline, copy.dx, copy.dy, near)) return true;
  }
  return false;
}
