import type { Arrangement } from "../../geometry/lattice.ts";
import type { Random } from "../../seed/random.ts";
import type { LayoutTools } from "../layout.ts";
import { nestOf, spreads } from "./kin.ts";
import type { TossOptions } from "./options.ts";
import type { SizeClass } from "./plan.ts";
import { type Stood, stoodOf } from "./stood.ts";
import { type Terrain, terrainOf } from "./terrain.ts";
import { type Turns, turnsFor } from "./turns.ts";

/** All that stays the same while one toss is packed, tried again and worked over. */
export interface Job {
  readonly arrangement: Arrangement;
  readonly classes: readonly SizeClass[];
  readonly shares: readonly number[];
  readonly turns: Turns;
  readonly flip: boolean;
  /** How strongly the motifs of each entry keep apart, 0 to 1. */
  readonly spreads: readonly number[];
  /** Least distance of centres of two of one entry, as a share of the larger radius. */
  readonly nests: readonly number[];
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
  const apart = spreads(options.spread, shares);
  let most = 0;
  return {
    arrangement: tools.arrangement,
    classes,
    shares,
    turns: turnsFor(options.direction),
    flip: options.flip,
    spreads: apart,
    nests: apart.map(nestOf),
    random: tools.random,
    terrain: terrainOf(tools.arrangement, tools.standing, options),
    fixed: stoodOf(options),
    // What is tried again, with other numbers, reports again: progress never goes back.
    step(done) {
      most = Math.max(most, done);
      return tools.step(most);
    },
  };
}
