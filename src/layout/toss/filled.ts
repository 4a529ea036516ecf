import type { Effort } from "./effort.ts";
import { fillClass } from "./fill.ts";
import type { Job } from "./job.ts";
import type { Band } from "./plan.ts";
import { pressIn } from "./press.ts";
import { createStage, type Stage } from "./stage.ts";
import { countIn } from "./stood.ts";

/** How a stage is filled. */
export interface Filling {
  /** Least distance of drawn outlines (µm). */
  readonly gap: number;
  /** Names the chance drawn from. */
  readonly stream: string;
  readonly effort: Effort;
  /** Most of each band, where limited. */
  readonly bands?: ReadonlyMap<Band, number>;
  /** Most of each entry, where limited. The filling stops once it cannot reach that number any more. */
  readonly entries?: readonly number[];
  /** Progress reported meanwhile. */
  readonly done: number;
}

/** A fresh stage, filled class by class from large to small until nothing more fits or none is left to place. */
export async function filledStage(job: Job, filling: Filling): Promise<Stage> {
  const { bands, entries, effort, stream } = filling;
  const stage = createStage(job.arrangement, job.classes, job.shares.length, filling.gap, job.terrain);
  countIn(stage, job.fixed);
  const breathe = (): Promise<void> => job.step(filling.done);
  const room = (band: Band): number =>
    Math.min(
      bands ? bands.get(band)! - stage.placed.get(band)! : Infinity,
      entries ? entries[band.entry]! - stage.used[band.entry]! : Infinity,
    );
  for (const [index, sizeClass] of job.classes.entries()) {
    const last = index === job.classes.length - 1;
    await fillClass(stage, sizeClass, {
      ...job,
      random: job.random.fork(`${stream}-${index}`),
      tries: effort.tries,
      rounds: effort.rounds,
      leeway: 1,
      fed: (band) => stage.used[band.entry]! / job.shares[band.entry]!,
      room,
      // A limited number of large motifs is strewn, or they would huddle and leave the rest to the small ones.
      tight: !entries || last,
      breathe,
    });
    const later = job.classes.slice(index + 1).flat();
    const due = (band: Band): boolean => !later.some((other) => other.entry === band.entry);
    if (effort.pressing) {
      const { pressing } = effort;
      const placed = sizeClass.reduce((sum, band) => sum + stage.placed.get(band)!, 0);
      const owed = sizeClass.reduce((sum, band) => sum + (bands || due(band) ? room(band) : 0), 0);
      const more = Math.ceil((last ? pressing.rest : pressing.more) * placed);
      const most = bands || entries ? owed : more;
      await pressIn(
        stage,
        job,
        sizeClass,
        most,
        pressing,
        job.random.fork(`press-${stream}-${index}`),
        room,
        breathe,
      );
    }
    if (bands && sizeClass.some((band) => room(band) > 0)) break;
    if (entries && sizeClass.some((band) => due(band) && room(band) > 0)) break;
  }
  return stage;
}
