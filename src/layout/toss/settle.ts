import { type Outline, transformOutline } from "../../geometry/outline.ts";
import type { Piece, Pose } from "./board.ts";
import { type Crowd, createCrowd, type Mover, poseOf } from "./crowd.ts";
import { broughtHome } from "./home.ts";
import type { Job } from "./job.ts";
import { driftOf } from "./kin.ts";
import type { Band } from "./plan.ts";
import { polish } from "./polish.ts";
import { relax } from "./relax.ts";
import { exchange, type Stage } from "./stage.ts";
import { fits, poseAt } from "./trial.ts";
import { turnIndex } from "./turns.ts";

/** What the grids of distances may be off, as a share of the radius: it is kept on top of the gap while pushing. */
const MARGIN = 0.0066;
/** Overlaps up to this share of the radius are left to the exact correction. */
const CLOSE = 0.0022;

/** A mover that knows what it will be set down as. */
export interface Newcomer extends Mover {
  readonly band: Band;
}

/** The pieces of a stage in the order in which they came. */
export const inOrder = (stage: Stage): Piece[] => [...stage.board.pieces].sort((a, b) => a.serial - b.serial);

/** Pieces that stand, and newcomers after them, ready to be pushed. */
export function crowdOf(job: Job, pieces: readonly Piece[], newcomers: readonly Newcomer[]): Crowd {
  const crowd = createCrowd([...pieces.map((piece) => moverOf(job, piece)), ...newcomers], job.turns.free);
  crowd.moved.fill(0, 0, pieces.length);
  return crowd;
}

const moverOf = (job: Job, { body, band, scale, flip, x, y, turn }: Piece): Newcomer => ({
  body,
  band,
  scale,
  flip,
  x,
  y,
  turn: job.turns.turn[turn]!,
});

/** How a crowd is freed. */
export interface Freeing {
  /** Rounds in which those of a kind drift apart before. */
  readonly drift?: number;
  /** Whether those that keep the gap are let be until they are pushed: it is quicker, but less comes free. */
  readonly kept?: boolean;
}

/** Pushes a crowd `gap` µm apart; undefined when that went, else what each body still overlaps. */
export async function freed(
  stage: Stage,
  job: Job,
  crowd: Crowd,
  gap: number,
  sweeps: number,
  breathe: () => Promise<void>,
  { drift = 0, kept = false }: Freeing = {},
): Promise<Float64Array | undefined> {
  const left = await relax(stage.images, crowd, {
    gap,
    sweeps,
    nests: job.nests,
    drift: { apart: drift > 0 ? driftOf(stage, job.spreads, crowd) : [], sweeps: drift },
    kept,
    margin: MARGIN,
    close: CLOSE,
    grid: stage.field,
    room: stage.room,
    breathe,
  });
  return left.some((depth) => depth > 0) ? left : undefined;
}

/**
 * Puts a freed crowd, of these pieces and newcomers, down: on allowed turns, whole µm, and only if every body that
 * moved passes the exact test, and all keep `gap` µm. Returns whether it did; otherwise nothing changes.
 */
export function settle(
  stage: Stage,
  job: Job,
  crowd: Crowd,
  pieces: readonly Piece[],
  gap: number = stage.gap,
): boolean {
  const { turns } = job;
  // Those that stand keep the stage's gap from each other, and need not keep a wider one.
  if (gap > stage.gap) crowd.moved.fill(1);
  if (!polish(stage.images, crowd, turns, gap)) return false;
  const gone: Piece[] = [];
  const poses: Pose[] = [];
  (crowd.movers as readonly Newcomer[]).forEach(({ body, band, scale, flip }, i) => {
    const [, , , , e, f] = poseOf(crowd, i);
    const turn = turnIndex(turns, crowd.turn[i]!);
    const [x, y] = [Math.round(e), Math.round(f)];
    const old = pieces[i];
    if (old && old.x === x && old.y === y && old.turn === turn) return;
    if (old) gone.push(old);
    const [a, b, c, d] = poseAt(band, body, turns, turn, scale, flip, 0, 0).matrix;
    poses.push(broughtHome(stage, job, { band, body, x, y, turn, scale, flip, matrix: [a, b, c, d, x, y] }));
  });
  return exchange(stage, gone, poses, (pose) => (fits(stage, pose) ? outlineOf(pose) : undefined));
}

/**
 * Pushes the motifs of a stage `gap` µm apart and puts them down, if that goes. Returns whether it did; otherwise nothing
 * changes.
 */
export async function pushApart(
  stage: Stage,
  job: Job,
  gap: number,
  sweeps: number,
  breathe: () => Promise<void>,
  drift: number,
): Promise<boolean> {
  const pieces = inOrder(stage);
  const crowd = crowdOf(job, pieces, []);
  const left = await freed(stage, job, crowd, gap, sweeps, breathe, { drift });
  return !left && settle(stage, job, crowd, pieces, gap);
}

/** Rounds of pushing apart what was stirred. */
const APART = 150;

/**
 * Pushes the motifs of a stage towards `wide` µm, which they need not reach: it moves them from where it is narrow to where
 * it is wide. Then they are put down `stage.gap` apart, if that goes. Returns whether it did; otherwise nothing changes.
 */
export async function stir(
  stage: Stage,
  job: Job,
  wide: number,
  sweeps: number,
  breathe: () => Promise<void>,
  drift: number,
): Promise<boolean> {
  const pieces = inOrder(stage);
  const crowd = crowdOf(job, pieces, []);
  await freed(stage, job, crowd, wide, sweeps, breathe, { drift });
  return !(await freed(stage, job, crowd, stage.gap, APART, breathe)) && settle(stage, job, crowd, pieces);
}

/** Puts a stage back to the pieces that stood on it before. */
export function putBack(stage: Stage, before: readonly Piece[]): void {
  exchange(stage, inOrder(stage), before, outlineOf);
}

const outlineOf = ({ body, matrix }: Pose): Outline => transformOutline(body.outline, matrix, body.scratch);
