import { badInput } from "../../errors/catalogue.ts";
import { isCloser } from "../../geometry/distance.ts";
import { transformBounds } from "../../geometry/images.ts";
import { type Matrix, placing } from "../../geometry/matrix.ts";
import { type Outline, transformOutline } from "../../geometry/outline.ts";
import { fixesPoint } from "../../geometry/symmetry/fixed.ts";
import type { Random } from "../../seed/random.ts";
import type { LayoutTools, Standing } from "../layout.ts";
import { type Alignments, alignments } from "./align.ts";
import type { Pose } from "./board.ts";
import { type Body, bodiesInTurn } from "./body.ts";
import { findClash } from "./check.ts";
import { drawnScale } from "./drawn-scale.ts";
import type { Fixed, TossOptions } from "./options.ts";
import { planClasses, type SizeClass } from "./plan.ts";
import { type SeatPlace, seatPlaces } from "./seat-places.ts";
import { createStage, type Stage } from "./stage.ts";
import { terrainOf } from "./terrain.ts";
import { inBand } from "./trial.ts";
import { type Turns, turnsFor } from "./turns.ts";

/** Poses tried for an entry at one place. */
const TRIES = 24;

/** All that stays the same while seats are taken. */
interface Seating {
  readonly options: TossOptions;
  readonly bodies: readonly (readonly Body[])[];
  readonly classes: readonly SizeClass[];
  readonly stage: Stage;
  readonly turns: Turns;
  readonly aligned: Alignments;
  readonly random: Random;
}

/**
 * Seats the motifs of entries that ask for it on the repeat's mirror lines and centres of rotation, before all others:
 * always of the entry that has had least of its share, on a centre at the largest size that fits. `most` limits the
 * number of each entry.
 *
 * A seated motif lies over its own images under the operations that fix its origin, so that the picture there is as
 * symmetric as the place; from all other images, and from what stands, it keeps the gap like any motif.
 *
 * @throws SprigwrightError `no-symmetry`, or `no-room` for an entry that finds no seat at all
 */
export async function takeSeats(
  options: TossOptions,
  most: readonly number[],
  standing: readonly Standing[],
  tools: LayoutTools,
): Promise<Fixed[]> {
  const { entries } = options;
  const seats = entries.map(({ seat = "anywhere" }) => seat);
  const seating = await seatingFor(options, standing, tools);
  const places = seatPlaces(seats, tools.arrangement, seating.stage.images, seating.random);
  const used = new Array<number>(entries.length).fill(0);
  const taken: Fixed[] = [];
  for (const [n, place] of places.entries()) {
    if (n % 16 === 0) await tools.step(0);
    const order = [...entries.keys()].filter(
      (k) => (seats[k] === place.kind || seats[k] === "both") && used[k]! < most[k]!,
    );
    order.sort((i, j) => (used[i]! + 1) / entries[i]!.share - (used[j]! + 1) / entries[j]!.share || i - j);
    for (const index of order) {
      const pose = seatAt(seating, index, place);
      if (!pose) continue;
      seating.stage.board.add(pose, pose.body.scratch);
      taken.push(fixedAt(pose, index, ++used[index]!, seating.turns));
      break;
    }
  }
  refuseSeatless(options, most, used);
  await checkSeats(options, taken, standing, tools);
  return taken;
}

/** Looks at all seats anew, without the board that they were taken on: what is returned has passed here. */
async function checkSeats(
  options: TossOptions,
  seats: readonly Fixed[],
  standing: readonly Standing[],
  { arrangement, step }: LayoutTools,
): Promise<void> {
  const gap = Math.round(options.gap * 1000);
  const rules = { ...options, arrangement, gap, standing, seats, step: () => step(0) };
  const clash = await findClash([], () => undefined as never, rules);
  if (clash)
    throw badInput(
      "internal-error",
      "toss",
      `"${clash.first}" and "${clash.second}" came to sit closer than they may`,
      "this is a fault of the library: please report the seed and the options",
    );
}

async function seatingFor(
  options: TossOptions,
  standing: readonly Standing[],
  tools: LayoutTools,
): Promise<Seating> {
  const bodies = await bodiesInTurn(options.entries, options.hollows, () => tools.step(0));
  const classes = planClasses(options.entries, bodies);
  const terrain = terrainOf(tools.arrangement, standing, options);
  const gap = Math.round(options.gap * 1000);
  const turns = turnsFor(options.direction);
  return {
    options,
    bodies,
    classes,
    stage: createStage(tools.arrangement, classes, options.entries.length, gap, terrain),
    turns,
    aligned: alignments(turns),
    random: tools.random.fork("seats"),
  };
}

/** A pose of one of an entry's drawings that fits a place; its outline is left in the body's scratch. */
function seatAt(seating: Seating, entry: number, place: SeatPlace): Pose | undefined {
  const { options, random, turns, aligned, stage } = seating;
  const { x, y } = place;
  const [low, high] = options.entries[entry]!.scale;
  const body = random.pick(seating.bodies[entry]!);
  const band = seating.classes.flat().find((other) => other.entry === entry)!;
  for (let k = 0; k < TRIES; k++) {
    const flip = options.flip && random.below(2) === 1;
    const turn = random.pick(aligned(body, place.fixing, flip));
    const smaller = place.kind === "centres" ? k / (TRIES - 1) : random.next();
    const scale = low === high ? high : drawnScale(high - smaller * (high - low), [low, high]);
    const matrix = placing(x, y, turns.turn[turn]!, scale, flip);
    const outline = transformOutline(body.outline, matrix, body.scratch);
    if (fitsSeat(stage, body, outline, place)) return { band, body, x, y, turn, scale, flip, matrix };
  }
  return undefined;
}

/** Whether an outline keeps clear of all but its own images under the operations that fix its place. */
function fitsSeat(stage: Stage, body: Body, outline: Outline, { x, y }: SeatPlace): boolean {
  const { images, board, arrangement } = stage;
  if (!inBand(outline.box, 0, arrangement) || !board.isClear(body, outline, stage.gap)) return false;
  const limit = stage.gap + body.extra;
  return !images.operations.some((operation, index) => {
    let copy: Outline | undefined = index === 0 ? outline : undefined;
    const box = index === 0 ? outline.box : transformBounds(outline.box, operation);
    return images.between(box, outline.box, limit, (dx, dy) => {
      const [a, b, c, d, e, f] = operation;
      const image: Matrix = [a, b, c, d, e + dx, f + dy];
      if (fixesPoint(image, x, y)) return false;
      copy ??= transformOutline(outline, operation);
      return isCloser(outline, copy, dx, dy, limit);
    });
  });
}

function fixedAt(pose: Pose, entry: number, number: number, turns: Turns): Fixed {
  const { body, x, y, scale, flip } = pose;
  return {
    entry,
    extra: body.extra,
    motif: body.drawn.motif,
    placement: {
      id: `${entry + 1}-${number}`,
      motif: body.drawn.index,
      x,
      y,
      turn: turns.turn[pose.turn]!,
      scale,
      flip,
    },
  };
}

function refuseSeatless(
  { entries, gap }: TossOptions,
  most: readonly number[],
  used: readonly number[],
): void {
  entries.forEach(({ seat = "anywhere", drawings }, index) => {
    if (seat === "anywhere" || used[index]! > 0 || most[index] === 0) return;
    throw badInput(
      "no-room",
      `toss > motifs[${index}] > seat`,
      `"${drawings[0]!.motif.name}" finds no seat with a gap of ${gap} mm from its other copies and from what stands already`,
      "make it smaller, lessen the gap, or make the repeat larger",
    );
  });
}
