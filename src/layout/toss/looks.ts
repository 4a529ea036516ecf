import type { Images } from "../../geometry/images.ts";
import { placing } from "../../geometry/matrix.ts";
import type { Body } from "./body.ts";
import type { Holding, Stand } from "./stand.ts";
import type { Turns } from "./turns.ts";

/** Turns tried: enough to find the diagonal of a repeat. */
const MOST_TURNS = 48;
/** Places tried on each axis, when it matters where a motif stands. */
const PLACES = 13;
/** Squares of the close look, each smaller than the one before it by a factor, and places in each. */
const SQUARES = 12;
const SHRINK = 0.6;
const CLOSELY = 24;
/** Steps of a sequence that covers a cube evenly: powers of the root of x^4 = x + 1, inverted (Roberts 2018). */
const STEP_U = 0.8191725133961645;
const STEP_V = 0.6710436067037893;
const STEP_W = 0.5497004779019703;

/** Places over the whole unit in all ways, all places of one way together; one place where all are alike. */
export function* firstLook(
  { operations }: Images,
  { circle }: Body,
  scale: number,
  { arrangement, turns, flip }: Holding,
): Generator<Stand> {
  const { width, height } = arrangement.unit;
  // Without reflections and rotations all places are alike.
  const places = operations.length > 1 ? PLACES : 1;
  const stride = strideOf(turns);
  for (const mirrored of flip ? [false, true] : [false])
    for (let turn = 0; turn < turns.turn.length; turn += stride) {
      const [a, b, c, d] = placing(0, 0, turns.turn[turn]!, scale, mirrored);
      // Origins, which are what has to lie in the unit.
      for (let i = 0; i < places; i++)
        for (let j = 0; j < places; j++)
          yield {
            x: ((i + 0.5) * width) / places + a * circle.x + c * circle.y,
            y: ((j + 0.5) * height) / places + b * circle.x + d * circle.y,
            turn,
            flip: mirrored,
          };
    }
}

const strideOf = ({ turn }: Turns): number => Math.max(1, Math.floor(turn.length / MOST_TURNS));

/** Places in ever smaller squares around the best so far, and where turns are free, turns around its own. */
export function* closeLook(
  { operations }: Images,
  { arrangement, turns }: Holding,
  best: () => Stand,
): Generator<Stand> {
  const { width, height } = arrangement.unit;
  const across = operations.length > 1 ? 2 / PLACES : 0;
  const count = turns.turn.length;
  if (across === 0 && !turns.free) return; // nothing else to look at
  let [u, v, w] = [0.5, 0.5, 0.5];
  let part = 1;
  for (let square = 0; square < SQUARES; square++, part *= SHRINK)
    for (let k = 0; k < CLOSELY; k++) {
      [u, v, w] = [(u + STEP_U) % 1, (v + STEP_V) % 1, (w + STEP_W) % 1];
      const { x, y, turn, flip } = best();
      const by = turns.free ? Math.round((w - 0.5) * 2 * part * strideOf(turns)) : 0;
      yield {
        x: x + (u - 0.5) * across * part * width,
        y: y + (v - 0.5) * across * part * height,
        turn: (turn + by + count) % count,
        flip,
      };
    }
}
