import { MOST_ROLES } from "../../motif/motif.ts";
import { addSides } from "./accumulate.ts";
import { clearBand, createBand, eachRun } from "./band.ts";
import { paintLayer } from "./compose.ts";
import type { Edges } from "./edges.ts";
import type { Grid } from "./grid.ts";
import { type Mix, pairOf } from "./mix.ts";
import { createRuns, type Runs } from "./runs.ts";

/** A painted block. */
export interface Picture {
  readonly grid: Grid;
  readonly runs: Runs;
  /** By pair of roles, how many pixels show a bit of both. */
  readonly pairs: Float64Array;
}

/** To be awaited now and then, with the share that is done: throws when the work was called off. */
export type Step = (done: number) => Promise<void>;

/** Rows between two steps. */
export const ROWS_A_STEP = 256;

/** Paints the block from top to bottom, a band at a time; `layerRoles` numbers each layer's role, 0 the ground. */
export async function paint(
  grid: Grid,
  edges: Edges,
  layerRoles: readonly number[],
  step: Step,
): Promise<Picture> {
  const band = createBand(grid.width, edges.rows);
  const runs = createRuns(grid.width);
  const pairs = new Float64Array(MOST_ROLES * MOST_ROLES);
  const put = (mix: Mix, length: number): void => {
    runs.put(mix, length);
    if ((mix & 255) !== 0) pairs[pairOf(mix)]! += length;
  };
  let rested = 0;
  for (let b = 0, top = 0; b < edges.bands; b++, top += edges.rows) {
    clearBand(band, 0);
    layerRoles.forEach((role, layer) => {
      const bucket = layer * edges.bands + b;
      if (edges.starts[bucket] === edges.starts[bucket + 1]) return;
      addSides(band, edges, bucket, top);
      paintLayer(band, role);
    });
    for (let row = 0; row < Math.min(edges.rows, grid.height - top); row++) eachRun(band, row, put);
    if (top - rested < ROWS_A_STEP) continue;
    rested = top;
    await step(top / grid.height);
  }
  await step(1);
  return { grid, runs, pairs };
}
