import type { Arrangement } from "../../geometry/lattice.ts";
import type { Random } from "../../seed/random.ts";
import type { LayoutTools } from "../layout.ts";
import { fillClass } from "./fill.ts";
import { spreads } from "./kin.ts";
import type { TossOptions } from "./options.ts";
import type { Band, SizeClass } from "./plan.ts";
import { createStage, type Stage } from "./stage.ts";
import { countIn, type Stood, stoodOf } from "./stood.ts";
import { type Terrain, terrainOf } from "./terrain.ts";
import { type Turns, turnsFor } from "./turns.ts";

/** Poses tried at a cell before it is given up. */
const TRIES = 96;
/** See {@link Seeker.rounds}. */
const ROUNDS: readonly number[] = [1, 0.7, 0.4];

/** All that stays the same while one toss is packed, tried again and worked over. */
export interface Job {
  readonly arrangement: Arrangement;
  readonly classes: readonly SizeClass[];
  readonly shares: readonly number[];
  readonly turns: Turns;
  readonly flip: boolean;
  /** How strongly the motifs of each entry keep apart, 0 to 1. */
  readonly spreads: readonly number[];
  readonly random: Random;
  /** What stands already, and where motifs may not be. */
  readonly terrain: Terrain | undefined;
  /** Motifs of the entries that stand already: they count, and the others keep apart from them like from kin. */
  readonly fixed: readonly Stood[];
  /** Reports progress, 0 to 1; throws when the work was called off. */
  readonly step: (done: number) => Promise<void>;
}

/** See {@link Job}. */
export function jobFor(options: TossOptions, classes: readonly SizeClass[], tools: LayoutTools): Job {
  const shares = options.entries.map((entry) => entry.share);
  return {
    arrangement: tools.arrangement,
    classes,
    shares,
    turns: turnsFor(options.direction),
    flip: options.flip,
    spreads: spreads(options.spread, shares),
    random: tools.random,
    terrain: terrainOf(tools.arrangement, tools.standing, options),
    fixed: stoodOf(options),
    step: tools.step,
  };
}

/** How a stage is filled. */
export interface Filling {
  /** Least distance of drawn outlines (µm). */
  readonly gap: number;
  /** Names the chance drawn from. */
  readonly stream: string;
  /** Most of each band, where limited. */
  readonly bands?: ReadonlyMap<Band, number>;
  /** Most of each entry, where limited. The filling stops once it cannot reach that number any more. */
  readonly entries?: readonly number[];
  /** Progress reported meanwhile. */
  readonly done: number;
}

/** A fresh stage, filled class by class from large to small until nothing more fits or none is left to place. */
export async function filledStage(job: Job, filling: Filling): Promise<Stage> {
  const { bands, entries } = filling;
  const stage = createStage(job.arrangement, job.classes, job.shares.length, filling.gap, job.terrain);
  countIn(stage, job.fixed);
  const room = (band: Band): number =>
    Math.min(
      bands ? bands.get(band)! - stage.placed.get(band)! : Infinity,
      entries ? entries[band.entry]! - stage.used[band.entry]! : Infinity,
    );
  for (const [index, sizeClass] of job.classes.entries()) {
    const last = index === job.classes.length - 1;
    await fillClass(stage, sizeClass, {
      ...job,
      random: job.random.fork(`${filling.stream}-${index}`),
      tries: TRIES,
      rounds: ROUNDS,
      leeway: 1,
      fed: (band) => stage.used[band.entry]! / job.shares[band.entry]!,
      room,
      // A limited number of large motifs is strewn, or they would huddle and leave the rest to the small ones.
      tight: !entries || last,
      breathe: () => job.step(filling.done),
    });
    if (bands && sizeClass.some((band) => room(band) > 0)) break;
    const later = job.classes.slice(index + 1).flat();
    const missed = (band: Band): boolean =>
      room(band) > 0 && !later.some((other) => other.entry === band.entry);
    if (entries && sizeClass.some(missed)) break;
  }
  return stage;
}
