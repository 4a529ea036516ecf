import { isCloser } from "../../geometry/distance.ts";
import type { Copy, Pose } from "./board.ts";
import type { Body } from "./body.ts";
import type { Crowd } from "./crowd.ts";
import { meanDistance, type Stage } from "./stage.ts";

/** Share of the mean spacing of one kind that two of it keep between the middles of their ink, at full spread. */
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
  /** Least distance of middles (µm). */
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

/** Least distance (µm) of the middles of two of one entry. */
export function spacingOf(stage: Stage, entry: number, spread: number): number {
  return spread * SPACING * meanDistance(stage.arrangement, stage.used[entry]! + 1);
}

/** Share of the mean spacing of one kind, and of its radius, that middles of it drift apart at full spread: the lesser of the two. */
const DRIFT = 0.72;
const DRIFT_RADII = 3;

/**
 * How far (µm) the middles of each entry's pieces are to drift apart. The spacing is theirs, so that few are spread widely, but
 * no farther than the eye takes two of their size for neighbours.
 */
export function driftOf(stage: Stage, spreads: readonly number[], crowd: Crowd): number[] {
  const widest = spreads.map(() => 0);
  for (const [i, { body }] of crowd.movers.entries())
    widest[body.entry] = Math.max(widest[body.entry]!, crowd.radius[i]!);
  return spreads.map((spread, entry) => {
    const spacing = DRIFT * meanDistance(stage.arrangement, Math.max(1, stage.used[entry]!));
    return spread * Math.min(spacing, DRIFT_RADII * widest[entry]!);
  });
}

/** Whether a copy of the entry has its middle within `reach` µm of (x, y). */
export function isNearKin(stage: Stage, entry: number, x: number, y: number, reach: number): boolean {
  if (reach <= 0) return false;
  return stage.board.nearKin(entry, x, y, reach, (copy) => {
    const dx = copy.mx - x;
    const dy = copy.my - y;
    return dx * dx + dy * dy < reach * reach;
  });
}

/** How far the middle of a body's ink, at the given scale, lies from its first disc. */
export function offsetOf({ middle, spots }: Body, scale: number): number {
  return distance(middle[0] - spots[0]!, middle[1] - spots[1]!) * scale;
}

const distance = (x: number, y: number): number => Math.sqrt(x * x + y * y);

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
  const { circle, spots } = body;
  const r = circle.r * scale;
  const toCentre = distance(circle.x - spots[0]!, circle.y - spots[1]!) * scale;
  const apart = offsetOf(body, scale) + spacing;
  const touch = toCentre + r + nearness(stage, spread, r, r);
  const copies: Copy[] = [];
  if (full > 0)
    stage.board.nearKin(body.entry, x, y, Math.max(apart, touch + stage.radius + stage.sway), (copy) => {
      const [mx, my] = [copy.mx - x, copy.my - y];
      const [cx, cy] = [copy.cx - x, copy.cy - y];
      const far = touch + copy.r;
      if (mx * mx + my * my < apart * apart || cx * cx + cy * cy < far * far) copies.push(copy);
      return false;
    });
  return { copies, spread, spacing, nest: nestOf(full) };
}

/** Clear distance that two of one kind should keep. */
const nearness = (stage: Stage, spread: number, r: number, other: number): number =>
  spread * Math.max(NEAR_GAPS * stage.gap, NEAR_RADIUS * Math.min(r, other));

/** Whether a pose's middle is too near that of one of its kin, or the centres are. */
export function crowdsCentres({ copies, spacing, nest }: Kin, pose: Pose): boolean {
  const { circle, middle } = pose.body;
  const [a, b, c, d, e, f] = pose.matrix;
  const x = a * circle.x + c * circle.y + e;
  const y = b * circle.x + d * circle.y + f;
  const mx = a * middle[0] + c * middle[1] + e;
  const my = b * middle[0] + d * middle[1] + f;
  const r = circle.r * pose.scale;
  for (const copy of copies) {
    const [dx, dy] = [copy.mx - mx, copy.my - my];
    if (dx * dx + dy * dy < spacing * spacing) return true;
    const [ox, oy] = [copy.cx - x, copy.cy - y];
    const least = nest * Math.max(r, copy.r);
    if (ox * ox + oy * oy < least * least) return true;
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
