import type { Matrix } from "../../geometry/matrix.ts";
import type { Random } from "../../seed/random.ts";
import type { Body } from "./body.ts";
import { drawnScale } from "./drawn-scale.ts";
import { roomAt } from "./field.ts";
import type { Job } from "./job.ts";
import { isNearKin, spacingOf } from "./kin.ts";
import type { Band, SizeClass } from "./plan.ts";
import type { Newcomer } from "./settle.ts";
import type { Stage } from "./stage.ts";
import { type Place, type Taken, takenOver } from "./taken.ts";
import { poseAt } from "./trial.ts";

/** Points looked at for each place chosen: the fewer are wanted, the closer the look. */
const FEWEST = 200;
const MOST = 1500;
/** How far an entry may be ahead of the one most behind its share, and still come next. */
const AHEAD = 2;
/** Turns tried at a place. */
const TURNS = 12;
/** Places chosen between two breaths. */
const BREATH = 32;

/**
 * Bodies for the widest places, of the entries that are most behind their shares, though they will overlap there.
 * `room` says how many more of a band may come; `spurned` are places that were tried in vain.
 */
export async function chooseNewcomers(
  stage: Stage,
  job: Job,
  sizeClass: SizeClass,
  count: number,
  random: Random,
  room: (band: Band) => number,
  spurned: readonly Place[],
  breathe: () => Promise<void>,
): Promise<Newcomer[]> {
  const coming = new Map<Band, number>();
  const chosen: Newcomer[] = [];
  const { width, height } = stage.arrangement.unit;
  const taken = takenOver([0, 0, width, height], count + spurned.length);
  for (const place of spurned) taken.add(place);
  const fed = (band: Band): number =>
    (stage.used[band.entry]! + stage.placed.get(band)! + 2 * (coming.get(band) ?? 0)) /
    job.shares[band.entry]!;
  for (let k = 0; k < count; k++) {
    if (k % BREATH === BREATH - 1) await breathe();
    const open = sizeClass.filter((band) => room(band) > (coming.get(band) ?? 0));
    if (open.length === 0) break;
    const least = Math.min(...open.map(fed));
    const [x, y] = widestPlace(stage, taken, Math.max(FEWEST, MOST / count), random);
    const due = open.filter((b) => fed(b) <= least + AHEAD / job.shares[b.entry]!);
    const apart = due.filter(
      ({ entry }) => !isNearKin(stage, entry, x, y, spacingOf(stage, entry, job.spreads[entry]!)),
    );
    const band = random.pick(apart.length > 0 ? apart : due);
    coming.set(band, (coming.get(band) ?? 0) + 1);
    const { low, high, range } = band;
    const scale = low === high ? high : drawnScale(random.between(low, high), range);
    const body = random.pick(band.bodies);
    chosen.push(poseIn(stage, job, band, body, scale, random, x, y));
    taken.add({ x, y, r: body.circle.r * scale });
  }
  return chosen;
}

/** The widest of some places of the unit, where a motif that is to start in it may start. */
function widestPlace(
  { field, arrangement, images }: Stage,
  taken: Taken,
  places: number,
  random: Random,
): [x: number, y: number] {
  const { cell, left, top, columns, values, cap } = field;
  const { width, height } = arrangement.unit;
  let best: [number, number] = [0, 0];
  let widest = -Infinity;
  for (let k = 0; k < places; k++) {
    const x = random.next() * width;
    const y = random.next() * height;
    if (arrangement.region && !images.home(x, y)) continue;
    let room = values[Math.round((y - top) / cell) * columns + Math.round((x - left) / cell)]!;
    if (room >= cap) room = Infinity; // beyond what the field tells
    if (room > widest) room = taken.roomAt(x, y, room, widest);
    if (room <= widest) continue;
    widest = room;
    best = [x, y];
  }
  return best;
}

/** The turn, of some, at which a body overlaps least what stands around a place. */
function poseIn(
  stage: Stage,
  { turns, flip: mayFlip }: Job,
  band: Band,
  body: Body,
  scale: number,
  random: Random,
  x: number,
  y: number,
): Newcomer {
  const flip = mayFlip && random.below(2) === 1;
  const allowed = turns.turn.length;
  let best: Newcomer | undefined;
  let least = Infinity;
  for (let k = 0; k < TURNS; k++) {
    const turn = random.below(allowed);
    const pose = poseAt(band, body, turns, turn, scale, flip, x, y);
    const overlap = overlapOf(stage, body, pose.matrix, scale);
    if (overlap >= least) continue;
    least = overlap;
    best = { body, band, scale, flip, x: pose.x, y: pose.y, turn: turns.turn[turn]! };
  }
  return best!;
}

/** How deep the discs of a body lie in what surrounds them (µm, added up). */
function overlapOf({ field, gap }: Stage, { spots, extra }: Body, matrix: Matrix, scale: number): number {
  const [a, b, c, d, e, f] = matrix;
  let sum = 0;
  for (let i = 0; i < spots.length; i += 3) {
    const column = Math.round((a * spots[i]! + c * spots[i + 1]! + e - field.left) / field.cell);
    const row = Math.round((b * spots[i]! + d * spots[i + 1]! + f - field.top) / field.cell);
    const inside = column >= 0 && row >= 0 && column < field.columns && row < field.rows;
    const room = inside ? roomAt(field, row * field.columns + column, extra) : 0;
    sum += Math.max(0, spots[i + 2]! * scale + gap - room);
  }
  return sum;
}
