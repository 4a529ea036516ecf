import type { Piece } from "./board.ts";
import type { Crowd } from "./crowd.ts";
import type { Job } from "./job.ts";
import { pairsOf } from "./pairs.ts";
import { crowdOf, freed, inOrder, settle } from "./settle.ts";
import type { Stage } from "./stage.ts";

/** How far motifs weigh on each other, in mean distances. */
const REACH = 2.4;
/** What two of a kind at full spread weigh on each other besides their ink, against two motifs of mean ink. */
const KIN = 1;
/** Motifs that change places are of like size: the larger at most this many times as wide. */
const LIKE = 1.3;
/** Least gain of a change, as a share of what the two weigh before it. */
const GAIN = 0.005;
/** Most motifs: each is held against each. */
const MOST = 3000;
/** Motifs times changes tried at most, and rounds over all pairs. */
const WORK = 24_000;
const ROUNDS = 10;
/** Rounds of pushing apart after a change. */
const SWEEPS = 60;
/** Pairs held against each other between two breaths. */
const BREATH = 50_000;

/**
 * Lets motifs of like size change places, two at a time, so that heavy ones and those of a kind are spread evenly: each
 * motif weighs on those near it, by the product of their inks and by being of a kind, and a change that lessens the sum
 * is made if all can be pushed apart after it.
 */
export async function mingle(stage: Stage, job: Job, breathe: () => Promise<void>): Promise<void> {
  const pieces = inOrder(stage);
  const count = pieces.length;
  if (count < 3 || count > MOST) return;
  const crowd = crowdOf(job, pieces, []);
  const near = nearness(stage, crowd);
  const ink = pieces.map(({ body, scale }) => body.area * scale * scale);
  const mean = ink.reduce((sum, a) => sum + a, 0) / count;
  const weight = ink.map((a) => a / mean);
  const kind = pieces.map(({ body }) => body.entry);
  const kin = kind.map((entry) => KIN * job.spreads[entry]!);
  const at = Int32Array.from({ length: count }, (_, i) => i); // the place that each has come to
  const who = at.slice(); // and who is at each place
  const burden = (i: number, place: number, other: number): number => {
    let sum = 0;
    for (let n = near.from[place]!; n < near.from[place + 1]!; n++) {
      const beside = near.beside[n]!;
      const k = beside === place ? i : who[beside]!;
      if (k === other || (k === i && beside !== place)) continue;
      const together = weight[i]! * weight[k]! + (kind[i] === kind[k] ? kin[i]! : 0);
      sum += (beside === place ? 0.5 : 1) * together * near.weight[n]!;
    }
    return sum;
  };
  const gainOf = (i: number, j: number): number => {
    const before = burden(i, at[i]!, j) + burden(j, at[j]!, i);
    const after = burden(i, at[j]!, j) + burden(j, at[i]!, i);
    return after < (1 - GAIN) * before ? before - after : 0;
  };
  let tries = Math.ceil(WORK / count);
  let breath = BREATH;
  let changed = false;
  for (let round = 0; round < ROUNDS && tries > 0; round++) {
    const changes: { readonly i: number; readonly j: number; readonly gain: number }[] = [];
    for (let i = 0; i < count; i++) {
      breath -= count - i;
      if (breath <= 0) {
        breath = BREATH;
        await breathe();
      }
      for (let j = i + 1; j < count; j++) {
        const gain = alike(crowd, pieces, i, j) ? gainOf(i, j) : 0;
        if (gain > 0) changes.push({ i, j, gain });
      }
    }
    changes.sort((p, q) => q.gain - p.gain || p.i - q.i || p.j - q.j);
    let better = false;
    for (const { i, j } of changes) {
      if (tries <= 0) break;
      if (gainOf(i, j) === 0) continue;
      tries--;
      if (!(await changePlaces(stage, job, crowd, i, j, breathe))) continue;
      [at[i], at[j]] = [at[j]!, at[i]!];
      who[at[i]!] = i;
      who[at[j]!] = j;
      better = true;
    }
    if (!better) break;
    changed = true;
  }
  if (changed) settle(stage, job, crowd, pieces);
}

/** Puts each of two bodies where the other is, and pushes all apart; if that does not go, all stay as they were. */
async function changePlaces(
  stage: Stage,
  job: Job,
  crowd: Crowd,
  i: number,
  j: number,
  breathe: () => Promise<void>,
): Promise<boolean> {
  const { x, y, turn, linear } = crowd;
  const before = [x, y, turn, linear].map((array) => array.slice());
  [x[i], x[j]] = [x[j]!, x[i]!];
  [y[i], y[j]] = [y[j]!, y[i]!];
  if (!(await freed(stage, job, crowd, stage.gap, SWEEPS, breathe))) return true;
  for (const [k, array] of [x, y, turn, linear].entries()) array.set(before[k]!);
  return false;
}

function alike({ radius }: Crowd, pieces: readonly Piece[], i: number, j: number): boolean {
  if (pieces[i]!.body === pieces[j]!.body) return false;
  const [one, two] = [radius[i]!, radius[j]!];
  return one <= LIKE * two && two <= LIKE * one;
}

/** Lists of places and how near they are, one after another: that of place `i` begins at `from[i]`. */
interface Near {
  readonly from: Int32Array;
  readonly beside: Int32Array;
  readonly weight: Float64Array;
}

/** The places near each place, over all copies, and how near: 1 at the place itself, 0 from the reach on. */
function nearness(stage: Stage, crowd: Crowd): Near {
  const { width, height } = stage.arrangement.unit;
  const reach = REACH * Math.sqrt((width * height) / crowd.movers.length);
  const near = crowd.movers.map(() => new Map<number, number>());
  const pairs = pairsOf(stage.images, crowd, reach);
  for (let k = 0; k < pairs.first.length; k++) {
    const i = pairs.first[k]!;
    const j = pairs.second[k]!;
    const [a, b, c, d, e, f] = stage.images.operations[pairs.operation[k]!]!;
    const dx = a * crowd.x[j]! + c * crowd.y[j]! + e + pairs.dx[k]! - crowd.x[i]!;
    const dy = b * crowd.x[j]! + d * crowd.y[j]! + f + pairs.dy[k]! - crowd.y[i]!;
    const away = 1 - (dx * dx + dy * dy) / (reach * reach);
    if (away <= 0) continue;
    near[i]!.set(j, (near[i]!.get(j) ?? 0) + away * away);
    if (i !== j) near[j]!.set(i, (near[j]!.get(i) ?? 0) + away * away);
  }
  const from = new Int32Array(near.length + 1);
  for (const [i, list] of near.entries()) from[i + 1] = from[i]! + list.size;
  return {
    from,
    beside: Int32Array.from(near.flatMap((list) => [...list.keys()])),
    weight: Float64Array.from(near.flatMap((list) => [...list.values()])),
  };
}
