import { isCloser } from "../../geometry/distance.ts";
import type { Images } from "../../geometry/images.ts";
import { nearestPoints } from "../../geometry/nearest.ts";
import { type Outline, transformOutline } from "../../geometry/outline.ts";
import { type Crowd, poseOf, turnTo } from "./crowd.ts";
import { pairsOf } from "./pairs.ts";
import { type Turns, turnIndex } from "./turns.ts";

/** Most rounds over all pairs. */
const ROUNDS = 48;
/** How far bodies may move here, as a share of the largest radius. */
const SKIN = 0.05;
/** Pairs that may cross by a hair before it is given up. */
const MOST_CROSSINGS = 40;
/** Pushed beyond what is wanted (µm), since origins are rounded. */
const SPARE = 5;

/**
 * Brings a relaxed crowd to the allowed turns and to whole µm, and corrects by exact distances what overlaps then.
 * Returns whether all is clear. Only for overlaps far smaller than the gap: outlines that cross are given up.
 */
export function polish(images: Images, crowd: Crowd, turns: Turns, gap: number): boolean {
  const { movers, x, y, lightness } = crowd;
  const outlines: Outline[] = [];
  const stale = new Uint8Array(movers.length).fill(1);
  const settle = (i: number): Outline => {
    if (stale[i] === 0) return outlines[i]!;
    const { body } = movers[i]!;
    crowd.turn[i] = turns.turn[turnIndex(turns, crowd.turn[i]!)]!;
    turnTo(crowd, i);
    const [, , , , left, top] = poseOf(crowd, i);
    x[i]! += Math.round(left) - left;
    y[i]! += Math.round(top) - top;
    const [a, b, c, d, e, f] = poseOf(crowd, i);
    outlines[i] = transformOutline(body.outline, [a, b, c, d, Math.round(e), Math.round(f)], outlines[i]);
    stale[i] = 0;
    return outlines[i]!;
  };
  const extra = movers.reduce((most, { body }) => Math.max(most, body.extra), 0);
  const largest = crowd.radius.reduce((most, r) => Math.max(most, r), 0);
  const reach = gap + extra + SKIN * largest;
  const pairs = pairsOf(images, crowd, reach);
  const clear = new Float64Array(pairs.first.length); // when each pair was last found clear
  // When each body moved last: those that stand as they were set down are clear of each other.
  const last = Float64Array.from(crowd.moved, (moved) => moved - 0.5);
  let time = 0;
  let crossings = 0;
  for (let round = 0; round < ROUNDS; round++) {
    let worst = 0;
    for (let k = 0; k < clear.length; k++) {
      const i = pairs.first[k]!;
      const j = pairs.second[k]!;
      if (clear[k]! > last[i]! && clear[k]! > last[j]!) continue;
      clear[k] = ++time;
      const one = settle(i);
      const operation = images.operations[pairs.operation[k]!]!;
      const two = pairs.operation[k] === 0 ? settle(j) : transformOutline(settle(j), operation);
      const dx = pairs.dx[k]!;
      const dy = pairs.dy[k]!;
      const need = gap + Math.max(movers[i]!.body.extra, movers[j]!.body.extra);
      if (!isCloser(one, two, dx, dy, need)) continue;
      const ease = lightness[i]! + lightness[j]!;
      const [a, b, c, d, e, f] = operation;
      const near = nearestPoints(one, two, dx, dy, need);
      let { x: towardsX, y: towardsY, distance } = near;
      if (!(distance > 0 && distance < need)) {
        // They just touch or cross: nothing shows the way but their centres.
        if (++crossings > MOST_CROSSINGS) return false;
        towardsX = x[i]! - (a * x[j]! + c * y[j]! + e + dx);
        towardsY = y[i]! - (b * x[j]! + d * y[j]! + f + dy);
        distance = 0;
      }
      const length = Math.sqrt(towardsX * towardsX + towardsY * towardsY);
      if (length === 0) return false;
      const missing = need - distance + SPARE;
      worst = Math.max(worst, missing);
      const push = missing / length / ease;
      x[i]! += push * lightness[i]! * towardsX;
      y[i]! += push * lightness[i]! * towardsY;
      x[j]! -= push * lightness[j]! * (a * towardsX + b * towardsY);
      y[j]! -= push * lightness[j]! * (c * towardsX + d * towardsY);
      for (const body of [i, j]) {
        stale[body] = 1;
        last[body] = ++time;
      }
    }
    if (worst === 0) return true;
  }
  return false;
}
