import { badInput } from "../../errors/catalogue.ts";
import type { LayoutTools, Placement } from "../layout.ts";
import { aloneStage } from "./alone.ts";
import type { Piece } from "./board.ts";
import { type Body, bodiesInTurn } from "./body.ts";
import { findClash } from "./check.ts";
import { packCounted } from "./counted.ts";
import { packCovering } from "./covering.ts";
import { packEvenly, packLoosely, packTightly } from "./evenly.ts";
import { type Job, jobFor } from "./job.ts";
import type { TossOptions } from "./options.ts";
import { refuseOverfull } from "./overfull.ts";
import { planClasses } from "./plan.ts";
import { refuseRoomless } from "./roomless.ts";
import type { Stage } from "./stage.ts";
import { refuseTooLarge } from "./too-large.ts";

export type { Density, Direction, TossEntry, TossOptions } from "./options.ts";

/** How much an airy toss widens the gap at least, as a share of the motifs' mean radius. */
const AIR = 0.45;

/**
 * Scatters motifs over the unit so that no two drawn outlines, copies under the lattice and the operations
 * included, come closer than the gap. The same tools (seed) give the same placements.
 *
 * @throws SprigwrightError `motif-too-large` for a motif that cannot keep the gap from its own copies,
 * `too-many-motifs` where filling would all but certainly take more than a unit may have,
 * `count-too-large` for a count that does not fit, `no-room` for a motif that finds no place beside what stands
 * already or within the area given
 */
export async function packTossed(options: TossOptions, tools: LayoutTools): Promise<readonly Placement[]> {
  if (options.entries.length === 0 || options.count === 0) return [];
  const breathe = (): Promise<void> => tools.step(0);
  const bodies = await bodiesInTurn(options.entries, options.hollows, breathe);
  const gap = Math.round(options.gap * 1000);
  const job = jobFor(options, planClasses(options.entries, bodies), tools);
  await refuseTooLarge(options.entries, bodies, { ...job, gap, breathe });
  const airy = options.density === "airy" ? airFor(options, bodies, gap) : 0;
  if (options.count === undefined && options.coverage === undefined) refuseOverfull(job, gap + airy);
  await refuseRoomless(options, job, gap, tools);
  const packed = await packedStage(options, job, gap, airy);
  const stage = packed.board.pieces.size > 0 || job.terrain ? packed : await aloneStage(job, gap);
  const placements = placementsOf(stage, job.turns.turn);
  const clash = await findClash(placements, (placement) => bodyOfPlacement(placement, bodies), {
    ...options,
    arrangement: tools.arrangement,
    standing: tools.standing,
    gap,
    step: () => tools.step(1),
  });
  if (clash)
    throw badInput(
      "internal-error",
      "toss",
      `"${clash.first}" and "${clash.second}" came out closer than they may`,
      "this is a fault of the library: please report the seed and the options",
    );
  await tools.step(1);
  return placements;
}

async function packedStage(options: TossOptions, job: Job, gap: number, airy: number): Promise<Stage> {
  if (options.count !== undefined) return packCounted(job, gap, options.count);
  if (options.coverage !== undefined) return packCovering(job, gap, options.coverage);
  if (options.density === "packed") return packTightly(job, gap);
  if (options.density === "even") return packEvenly(job, gap);
  return packLoosely(job, gap + airy);
}

/** What an airy toss adds to the gap (µm). */
function airFor({ entries }: TossOptions, bodies: readonly (readonly Body[])[], gap: number): number {
  let [radii, extras, shares] = [0, 0, 0];
  entries.forEach(({ share, scale, gap: extra = 0 }, index) => {
    const r = bodies[index]!.reduce((sum, body) => sum + body.circle.r, 0) / bodies[index]!.length;
    radii += (share * r * (scale[0] + scale[1])) / 2;
    extras += share * extra * 1000;
    shares += share;
  });
  return Math.round(Math.max(gap + extras / shares, (AIR * radii) / shares));
}

/** The body that a placement shows: its id begins with the number of its entry. */
function bodyOfPlacement({ id, motif }: Placement, bodies: readonly (readonly Body[])[]): Body {
  const entry = Number(id.slice(0, id.indexOf("-"))) - 1;
  return bodies[entry]!.find((body) => body.drawn.index === motif)!;
}

/** Pieces in the order in which they were placed, named by their entry and a running number. */
function placementsOf(stage: Stage, turn: Float64Array): Placement[] {
  const running = new Map<number, number>();
  const pieces: Piece[] = [...stage.board.pieces].sort((a, b) => a.serial - b.serial);
  return pieces.map((piece) => {
    const { entry, drawn } = piece.body;
    const number = (running.get(entry) ?? 0) + 1;
    running.set(entry, number);
    return {
      id: `${entry + 1}-${number}`,
      motif: drawn.index,
      x: piece.x,
      y: piece.y,
      turn: turn[piece.turn]!,
      scale: piece.scale,
      flip: piece.flip,
    };
  });
}
