import { axesOf } from "./axis.ts";
import { type Burdens, burdensOf, type Stance } from "./burden.ts";
import { type Crowd, turnTo } from "./crowd.ts";
import type { Job } from "./job.ts";
import { polish } from "./polish.ts";
import { crowdOf, freed, inOrder, settle } from "./settle.ts";
import type { Stage } from "./stage.ts";

/** Of motifs that change places the larger is at most this many times as wide: a fleck makes no room for a hero. */
const LIKE = 4;
/** Least gain of a change, as a share of what those that move weigh before it. */
const GAIN = 0.005;
/** Most motifs. */
const MOST = 3000;
/** Motifs times changes tried at most, and rounds over all. */
const WORK = 6_000;
const ROUNDS = 10;
/** Pairs weighed in a round: those of the motifs that weigh most. */
const PAIRS = 300_000;
/** Rounds of pushing apart after a change. */
const SWEEPS = 100;
/** Pairs weighed between two breaths. */
const BREATH = 20_000;

/** Two motifs that change places, or one that turns where it stands (`j` is `i`); the stances that they take. */
interface Change {
  readonly i: number;
  readonly j: number;
  readonly one: Stance;
  readonly two: Stance;
  readonly gain: number;
}

/**
 * Lets motifs change places, two at a time, and single ones turn where they stand, so that heavy ones and those
 * of a kind are spread evenly: a change that lessens what they weigh on each other is made if all can be pushed apart after it.
 */
export async function mingle(stage: Stage, job: Job, breathe: () => Promise<void>): Promise<void> {
  const pieces = inOrder(stage);
  const count = pieces.length;
  if (count < 3 || count > MOST) return;
  const crowd = crowdOf(job, pieces, []);
  const axes = axesOf(pieces);
  const spent = new Set<number>();
  let burdens = burdensOf(stage, job, crowd);
  let tries = Math.ceil(WORK / count);
  let changed = false;
  for (let round = 0; round < ROUNDS && tries > 0; round++) {
    let better = false;
    for (const { i, j } of await changesFor(job, crowd, burdens, axes, spent, breathe)) {
      if (tries <= 0) break;
      const change = changeOf(job, crowd, burdens, axes, i, j);
      if (!change) continue;
      tries--;
      if (await changePlaces(stage, job, crowd, change, breathe)) {
        burdens = burdensOf(stage, job, crowd);
        better = true;
      } else spent.add(i * count + j);
    }
    if (!better) break;
    changed = true;
  }
  if (changed) settle(stage, job, crowd, pieces);
}

/** The changes that would lessen the burden, most first. */
async function changesFor(
  job: Job,
  crowd: Crowd,
  burdens: Burdens,
  axes: Float64Array,
  spent: ReadonlySet<number>,
  breathe: () => Promise<void>,
): Promise<Change[]> {
  const count = crowd.movers.length;
  const { stances } = burdens;
  const weighs = stances.map((stance, i) => burdens.at(i, i, stance, -1));
  const worst = [...weighs.keys()].sort((p, q) => weighs[q]! - weighs[p]! || p - q);
  const changes: Change[] = [];
  let [pairs, breath] = [PAIRS, BREATH];
  const seen = new Uint8Array(count);
  for (const i of worst) {
    if (pairs <= 0) break;
    seen[i] = 1;
    pairs -= count;
    breath -= count;
    if (breath <= 0) {
      breath = BREATH;
      await breathe();
    }
    for (let j = 0; j < count; j++) {
      if ((j !== i && seen[j] === 1) || spent.has(Math.min(i, j) * count + Math.max(i, j))) continue;
      const change = changeOf(job, crowd, burdens, axes, Math.min(i, j), Math.max(i, j));
      if (change) changes.push(change);
    }
  }
  return changes.sort((p, q) => q.gain - p.gain || p.i - q.i || p.j - q.j);
}

/** The best change of two motifs, or of one, if any lessens the burden. */
function changeOf(
  { turns }: Job,
  crowd: Crowd,
  burdens: Burdens,
  axes: Float64Array,
  i: number,
  j: number,
): Change | undefined {
  if (i !== j && !alike(crowd, i, j)) return undefined;
  const { stances, turned, at } = burdens;
  const [first, second] = [stances[i]!, stances[j]!];
  const best = (k: number, place: number, ways: readonly number[]): readonly [Stance, number] => {
    let [chosen, least] = [stances[k]!, Infinity];
    for (const turn of ways) {
      const stance = turn === stances[k]!.turn ? stances[k]! : turned(k, turn);
      const weighs = at(k, place, stance, i === j ? -1 : place);
      if (weighs < least) [chosen, least] = [stance, weighs];
    }
    return [chosen, least];
  };
  const change = (before: number, after: number, one: Stance, two: Stance): Change | undefined =>
    before - after > GAIN * before ? { i, j, one, two, gain: before - after } : undefined;
  if (i === j) {
    const [one, after] = best(i, i, turns.free ? [first.turn + 0.5] : [...turns.turn]);
    return change(at(i, i, first, -1), after, one, one);
  }
  // Long motifs lie as the other lay, head to one end or to the other.
  const along = axes[j]! + second.turn - axes[i]! - first.turn;
  const ways = (own: number, other: number, by: number): number[] =>
    turns.free ? [own + by, own + by + 0.5] : [own, other];
  const before = at(i, i, first, j) + at(j, j, second, i);
  const [one, afterOne] = best(i, j, ways(first.turn, second.turn, along));
  if (afterOne >= before) return undefined;
  const [two, afterTwo] = best(j, i, ways(second.turn, first.turn, -along));
  return change(before, afterOne + afterTwo, one, two);
}

/** Makes a change, and pushes all apart; if that does not go, all stay as they were. */
async function changePlaces(
  stage: Stage,
  job: Job,
  crowd: Crowd,
  { i, j, one, two }: Change,
  breathe: () => Promise<void>,
): Promise<boolean> {
  const { x, y, turn, linear } = crowd;
  const before = [x, y, turn, linear].map((array) => array.slice());
  [x[i], x[j]] = [x[j]!, x[i]!];
  [y[i], y[j]] = [y[j]!, y[i]!];
  turn[j] = two.turn;
  turn[i] = one.turn;
  for (const k of [i, j]) {
    turnTo(crowd, k);
    crowd.moved[k] = 1;
  }
  const free = !(await freed(stage, job, crowd, stage.gap, SWEEPS, breathe));
  if (free && polish(stage.images, crowd, job.turns, stage.gap)) return true;
  for (const [k, array] of [x, y, turn, linear].entries()) array.set(before[k]!);
  return false;
}

function alike({ radius, movers }: Crowd, i: number, j: number): boolean {
  if (movers[i]!.body.entry === movers[j]!.body.entry) return false;
  const [one, two] = [radius[i]!, radius[j]!];
  return one <= LIKE * two && two <= LIKE * one;
}
