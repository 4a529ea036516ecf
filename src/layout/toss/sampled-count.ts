import { groundOf } from "../../geometry/lattice.ts";
import { LIGHTLY } from "./effort.ts";
import { packEvenly } from "./evenly.ts";
import { filledStage } from "./filled.ts";
import type { Job } from "./job.ts";

/** Motifs on the sample, about. */
const SAMPLE = 300;
/** Grounds with fewer than so many samples are filled themselves. */
const WORTH = 2;
/** What is said of the whole, as a share of what the sample would have: a sample may come out a little dense. */
const SURE = 0.97;

/**
 * About how many motifs an even filling of a large bare ground holds at `gap` µm, from a square cut to a few hundred of
 * them, which takes a moment where filling the whole takes long. Undefined where a sample says nothing of the whole: where
 * sizes differ much, where something stands or an area is given, under mirrors and rotations, and in a border.
 */
export async function sampledCount(job: Job, gap: number): Promise<number | undefined> {
  const { terrain, arrangement, classes } = job;
  const isBare = !terrain && !arrangement.border && arrangement.operations.length === 1;
  if (!isBare || classes.length > 1) return undefined;
  const light = await filledStage(job, { gap, stream: "fill", effort: LIGHTLY, done: 0.1 });
  const samples = light.board.pieces.size / SAMPLE;
  if (samples < WORTH) return undefined;
  const side = Math.round(Math.sqrt(groundOf(job.arrangement) / samples));
  const sample = {
    operations: arrangement.operations,
    unit: { width: side, height: side },
    lattice: { a: [side, 0], b: [0, side], block: { width: side, height: side } },
  } as const;
  const { board } = await packEvenly({ ...job, arrangement: sample }, gap);
  return Math.floor(board.pieces.size * samples * SURE);
}
