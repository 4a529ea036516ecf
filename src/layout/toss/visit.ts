import { transformOutline } from "../../geometry/outline.ts";
import type { Random } from "../../seed/random.ts";
import type { Piece } from "./board.ts";
import { drawnScale } from "./drawn-scale.ts";
import { crowdsCentres, crowdsOutlines, isNearKin, kinAround, spacingOf } from "./kin.ts";
import { dropCell, pickCell, type Seeker } from "./seeker.ts";
import { type Stage, setDown } from "./stage.ts";
import { atHome, fits, poseAt, roomToSpare } from "./trial.ts";
import type { Turns } from "./turns.ts";

/** How poses are chosen at a cell. */
export interface VisitWays {
  readonly turns: Turns;
  readonly flip: boolean;
  /** How strongly the motifs of each entry keep apart, 0 to 1. */
  readonly spreads: readonly number[];
  readonly random: Random;
  /** Whether to take tight places first, or roomy ones. */
  readonly tight: boolean;
  /** Poses tried at a cell before it is given up. */
  readonly tries: number;
}

/** Steps of a sequence that covers a square evenly: powers of the root of x^3 = x + 1, inverted (Roberts 2018). */
const STEP_X = 0.7548776662466927;
const STEP_Y = 0.5698402909980532;

/** Rounds before the last try so many times fewer poses: what they miss, the next comes by again. */
const EARLY = 5;

/** Room for one visit's tries, so that a visit allocates next to nothing. */
interface Tries {
  readonly order: number[];
  readonly spare: Float64Array;
  readonly turn: Int32Array;
  readonly scale: Float64Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly flip: Uint8Array;
}

/** Makes the room; one is enough for any number of visits. */
export const createTries = (count: number): Tries => ({
  order: [],
  spare: new Float64Array(count),
  turn: new Int32Array(count),
  scale: new Float64Array(count),
  x: new Float64Array(count),
  y: new Float64Array(count),
  flip: new Uint8Array(count),
});

/**
 * Tries one cell in several poses and sets the body down in the one that fits most tightly: what is left over is
 * then one wide place rather than many narrow ones. A cell where none fits is struck off.
 */
export function visit(stage: Stage, seeker: Seeker, ways: VisitWays, tries: Tries): Piece | undefined {
  const { field } = stage;
  const { band, cells } = seeker;
  const { random, turns } = ways;
  const part = seeker.rounds[seeker.round]!;
  const full = ways.spreads[band.entry]!;
  const { cell, columns, left, top } = field;
  const { slack } = seeker;
  const never = spacingOf(stage, band.entry, full * part) - slack;
  const index = pickCell(stage, seeker, random, ways.tight, (at) =>
    isNearKin(stage, band.entry, left + (at % columns) * cell, top + Math.floor(at / columns) * cell, never),
  );
  if (index < 0) return undefined;
  const at = cells[index]!;
  const centreX = left + (at % columns) * cell;
  const centreY = top + Math.floor(at / columns) * cell;
  const body = random.pick(band.bodies);
  const kin = kinAround(stage, body, band.high, centreX, centreY, full, part);
  scatterTries(stage, seeker, body, ways, tries, centreX, centreY);
  for (const k of tries.order) {
    const pose = poseAt(
      band,
      body,
      turns,
      tries.turn[k]!,
      tries.scale[k]!,
      tries.flip[k] === 1,
      tries.x[k]!,
      tries.y[k]!,
    );
    if (crowdsCentres(kin, pose)) continue;
    if (!fits(stage, pose)) continue;
    if (crowdsOutlines(stage, kin, pose)) continue;
    const home = atHome(stage, pose);
    return setDown(stage, home, transformOutline(body.outline, home.matrix, body.scratch));
  }
  dropCell(seeker, index);
  return undefined;
}

/** Draws the tries, and lists those that the field has room for, the tightest first. */
function scatterTries(
  stage: Stage,
  seeker: Seeker,
  body: Seeker["band"]["bodies"][number],
  ways: VisitWays,
  tries: Tries,
  centreX: number,
  centreY: number,
): void {
  const { low, high, range } = seeker.band;
  const { random, turns } = ways;
  const { order, spare } = tries;
  const cell = stage.field.cell * seeker.stride;
  const allowed = turns.turn.length;
  const stride = turns.free ? 443 : 1; // prime, and far from any simple part of the 720 turns
  const small = (random.next() * (high - low)) / 2;
  let turn = random.below(allowed);
  let u = random.next();
  let v = random.next();
  const odd = random.below(2);
  order.length = 0;
  const count = seeker.round < seeker.rounds.length - 1 ? Math.ceil(ways.tries / EARLY) : ways.tries;
  for (let k = 0; k < count; k++) {
    turn = (turn + stride) % allowed;
    u = u + STEP_X < 1 ? u + STEP_X : u + STEP_X - 1;
    v = v + STEP_Y < 1 ? v + STEP_Y : v + STEP_Y - 1;
    // The later the try, the smaller: large while there is room, small to fill what is left.
    const scale = low === high ? high : drawnScale(high - small * (1 + k / count), range);
    const flip = ways.flip && (k + odd) % 2 === 1;
    const x = centreX + (u - 0.5) * cell;
    const y = centreY + (v - 0.5) * cell;
    const room = roomToSpare(stage, body, turns.cos[turn]!, turns.sin[turn]!, scale, flip, x, y);
    if (room < 0) continue;
    spare[k] = room;
    tries.turn[k] = turn;
    tries.scale[k] = scale;
    tries.flip[k] = flip ? 1 : 0;
    tries.x[k] = x;
    tries.y[k] = y;
    order.push(k);
  }
  const sign = ways.tight ? 1 : -1;
  order.sort((i, j) => sign * (spare[i]! - spare[j]!) || i - j);
}
