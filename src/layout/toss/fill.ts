import type { Piece } from "./board.ts";
import type { Band, SizeClass } from "./plan.ts";
import { listCells, ONE_ROUND, type Seeker, seekerFor } from "./seeker.ts";
import type { Stage } from "./stage.ts";
import { createTries, type VisitWays, visit } from "./visit.ts";

/** How a class is filled in. */
export interface FillWays extends VisitWays {
  readonly shares: readonly number[];
  /** How much of its share a band has had: the one with least is placed next. */
  readonly fed: (band: Band) => number;
  /** How many more of a band may be placed. */
  readonly room: (band: Band) => number;
  /** How many an entry may be ahead of its share when another finds no more place. */
  readonly leeway: number;
  /** See {@link Seeker.rounds}. */
  readonly rounds: readonly number[];
  /** Awaited every so many cells. */
  readonly breathe: () => Promise<void>;
}

/** Cells between two breaths. */
const BREATH = 4000;

/**
 * Places the bands of one class, always the entry that is most behind its share, until the one that is behind
 * finds no place any more: shapes that go in everywhere must not win. Returns what was placed.
 */
export async function fillClass(stage: Stage, sizeClass: SizeClass, ways: FillWays): Promise<Piece[]> {
  const tries = createTries(ways.tries);
  let seekers = sizeClass
    .filter((band) => ways.room(band) > 0)
    .map((band) => seekerFor(stage, band, ways.spreads[band.entry]! > 0 ? ways.rounds : ONE_ROUND));
  const placed: Piece[] = [];
  let breath = BREATH;
  let ceiling = Infinity; // pieces for each share, set by the first entry that finds no more place
  const mayGo = ({ band }: Seeker): boolean =>
    stage.used[band.entry]! + 1 <= ceiling * ways.shares[band.entry]! + ways.leeway && ways.room(band) > 0;
  while (seekers.length > 0) {
    const seeker = leastFed(seekers, ways);
    let found: Piece | undefined;
    while (!found && seeker.live > 0) {
      if (--breath === 0) {
        breath = BREATH;
        await ways.breathe();
      }
      found = visit(stage, seeker, ways, tries);
      if (seeker.live === 0 && seeker.round + 1 < seeker.rounds.length) {
        seeker.round++;
        listCells(stage, seeker);
      }
    }
    if (found) {
      placed.push(found);
      if (mayGo(seeker)) continue;
    } else {
      ceiling = Math.min(ceiling, stage.used[seeker.band.entry]! / ways.shares[seeker.band.entry]!);
    }
    seekers = seekers.filter((other) => (found || other !== seeker) && mayGo(other));
  }
  return placed;
}

/** The seeker that has had least of its share; among equals one by chance. */
function leastFed(seekers: readonly Seeker[], ways: FillWays): Seeker {
  let best: Seeker | undefined;
  let least = Infinity;
  let ties = 1;
  for (const seeker of seekers) {
    const use = ways.fed(seeker.band);
    if (use > least) continue;
    ties = use < least ? 1 : ties + 1;
    if (use < least || ways.random.below(ties) === 0) best = seeker;
    least = use;
  }
  return best!;
}
