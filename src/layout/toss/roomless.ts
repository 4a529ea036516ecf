import { badInput } from "../../errors/catalogue.ts";
import type { LayoutTools } from "../layout.ts";
import { LIGHTLY } from "./effort.ts";
import { filledStage } from "./filled.ts";
import type { Job } from "./job.ts";
import type { TossOptions } from "./options.ts";
import { terrainOf } from "./terrain.ts";

/**
 * Refuses entries that find no place at all at `gap` µm, where something stands already or an area is given: the rest
 * would be thinned out to nothing for the sake of their shares.
 * @throws SprigwrightError `no-room`, which names the area, or the entry when what stands leaves no room
 */
export async function refuseRoomless(
  options: TossOptions,
  job: Job,
  gap: number,
  { arrangement, standing }: LayoutTools,
): Promise<void> {
  if (!job.terrain) return;
  const free: Job = { ...job, fixed: [] };
  const bare: Job = { ...free, terrain: terrainOf(arrangement, standing, {}) };
  for (const [index, { drawings, listed = index }] of options.entries.entries()) {
    if (job.fixed.some(({ entry }) => entry === index) || (await findsRoom(free, index, gap))) continue;
    const motif = `"${drawings[0]!.motif.name}"`;
    const areas = (["inside", "outside"] as const).filter((name) => options[name] !== undefined);
    if (areas.length === 0 || !(await findsRoom(bare, index, gap)))
      throw badInput(
        "no-room",
        `toss > motifs[${listed}]`,
        `${motif} finds no place between the motifs of the layouts before it, and those that are held or seated, with a gap of ${gap / 1000} mm`,
        "make it smaller, lessen the gap, or let fewer stand before it",
      );
    const edge = options.edge ?? 0;
    throw badInput(
      "no-room",
      `toss > ${areas.join(" and ")}`,
      `${motif} (motifs[${listed}]) finds no place ${areas.join(" and ")} the area${edge > 0 ? ` with an edge of ${edge} mm` : ""}`,
      `make the motif smaller or the area ${areas.includes("inside") ? "larger" : "smaller"}${edge > 0 ? ", or lessen the edge" : ""}; paths are in mm`,
    );
  }
}

/** Whether one motif of an entry can stand alone. */
async function findsRoom(job: Job, index: number, gap: number): Promise<boolean> {
  const entries = job.shares.map((_, k) => (k === index ? 1 : 0));
  const stage = await filledStage(job, { gap, stream: "room", effort: LIGHTLY, entries, done: 0 });
  return stage.used[index] === 1;
}
