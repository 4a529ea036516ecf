import { cosTurns, sinTurns } from "../../seed/trigonometry.ts";
import { type Crowd, swayOf } from "./crowd.ts";
import type { Job } from "./job.ts";
import { pairsOf } from "./pairs.ts";
import { meanDistance, type Stage } from "./stage.ts";

/** How far motifs weigh on each other, in mean distances of all. */
const REACH = 2.4;
/**
 * What two of a kind at full spread weigh on each other besides, however light they are: three small stars in a row are seen
 * as soon as three large ones.
 */
const KIN = 16;
/** How far, in mean distances of all, but no more than the mean distance of that kind. */
const KIN_REACH = 1.7;
/**
 * How much more two of a kind weigh on each other that face one way, to within 11 degrees: were those that face opposite ways to weigh
 * less than others, of three angles only two would be left.
 */
const FACING = 0.7;
const ALIKE = 0.98;

/** A pose that a motif may take at a place: its turn, and where the middle of its ink lies from its centre (µm). */
export interface Stance {
  readonly turn: number;
  readonly x: number;
  readonly y: number;
}

/** What motifs weigh on each other where they stand now. */
export interface Burdens {
  /** The stance of each now. */
  readonly stances: readonly Stance[];
  /** The stance of motif `i` at another turn. */
  readonly turned: (i: number, turn: number) => Stance;
  /** What motif `i` would weigh at the place of motif `place`, in a stance, were motif `gone` not there. */
  readonly at: (i: number, place: number, stance: Stance, gone: number) => number;
}

/**
 * Weighs the motifs of a crowd on each other: near ones by the product of their inks, so that heavy ones and light ones
 * mix; those of a kind much more, and most if they face one way.
 */
export function burdensOf(stage: Stage, job: Job, crowd: Crowd): Burdens {
  const { movers, turn } = crowd;
  const count = movers.length;
  const { operations } = stage.images;
  const ink = movers.map(({ body, scale }) => body.area * scale * scale);
  const mean = ink.reduce((sum, a) => sum + a, 0) / count;
  const weight = Float64Array.from(ink, (a) => a / mean);
  const kind = Int32Array.from(movers, ({ body }) => body.entry);
  const spacing = meanDistance(stage.arrangement, count);
  const inkReach = square(REACH * spacing);
  const kinReach = Float64Array.from(kind, (entry) =>
    square(Math.min(KIN_REACH * spacing, meanDistance(stage.arrangement, stage.used[entry]!))),
  );
  const kin = Float64Array.from(kind, (entry) => KIN * job.spreads[entry]!);
  const facing = job.turns.free || job.turns.turn.length === 1 ? 0 : FACING;
  const stances = movers.map((_, i): Stance => {
    const [x, y] = swayOf(crowd, i);
    return { turn: turn[i]!, x, y };
  });
  const off = stances.reduce((most, one) => Math.max(most, Math.sqrt(one.x * one.x + one.y * one.y)), 0);
  const farthest = Math.sqrt(kinReach.reduce((most, reach) => Math.max(most, reach), inkReach)) + 2 * off;
  const near = nearOf(stage, crowd, farthest);
  const ways = [...operations, ...operations.map(([a, b, c, d]) => [a, c, b, d])];
  return {
    stances,
    turned(i, to) {
      const one = stances[i]!;
      const [cos, sin] = [cosTurns(to - one.turn), sinTurns(to - one.turn)];
      return { turn: to, x: cos * one.x - sin * one.y, y: sin * one.x + cos * one.y };
    },
    at(i, place, stance, gone) {
      let sum = 0;
      for (let n = near.from[place]!; n < near.from[place + 1]!; n++) {
        const beside = near.beside[n]!;
        const k = beside === place ? i : beside;
        if (k === gone || (k === i && beside !== place)) continue;
        const other = k === i ? stance : stances[k]!;
        const way = near.way[n]!;
        let [ox, oy] = [other.x, other.y];
        if (way !== 0) {
          const [a, b, c, d] = ways[way]!;
          [ox, oy] = [a! * ox + c! * oy, b! * ox + d! * oy];
        }
        const dx = near.x[n]! + ox - stance.x;
        const dy = near.y[n]! + oy - stance.y;
        const apart = dx * dx + dy * dy;
        let together = apart < inkReach ? weight[i]! * weight[k]! * square(1 - apart / inkReach) : 0;
        if (kind[i] === kind[k] && apart < kinReach[i]!) {
          const alike =
            facing > 0 && way === 0 && cosTurns(other.turn - stance.turn) > ALIKE ? 1 + facing : 1;
          together += kin[i]! * alike * square(1 - apart / kinReach[i]!);
        }
        sum += k === i ? together / 2 : together;
      }
      return sum;
    },
  };
}

const square = (x: number): number => x * x;

/**
 * The motifs near each, all copies: those of motif `i` from `from[i]` on, with the way from its centre to theirs (µm), and the
 * operation that brought them there (after all those its inverse).
 */
interface Near {
  readonly from: Int32Array;
  readonly beside: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly way: Int32Array;
}

function nearOf(stage: Stage, crowd: Crowd, farthest: number): Near {
  const { operations } = stage.images;
  const { x, y, movers } = crowd;
  const pairs = pairsOf(stage.images, crowd, farthest);
  const from = new Int32Array(movers.length + 1);
  const kept: number[] = [];
  const vx: number[] = [];
  const vy: number[] = [];
  for (let k = 0; k < pairs.first.length; k++) {
    const [i, j] = [pairs.first[k]!, pairs.second[k]!];
    const [a, b, c, d, e, f] = operations[pairs.operation[k]!]!;
    const dx = a * x[j]! + c * y[j]! + e + pairs.dx[k]! - x[i]!;
    const dy = b * x[j]! + d * y[j]! + f + pairs.dy[k]! - y[i]!;
    if (dx * dx + dy * dy >= farthest * farthest) continue;
    kept.push(k);
    vx.push(dx);
    vy.push(dy);
    from[i + 1]!++;
    from[j + 1]!++;
  }
  for (let i = 0; i < movers.length; i++) from[i + 1]! += from[i]!;
  const next = from.slice(0, -1);
  const number = 2 * kept.length;
  const near: Near = {
    from,
    beside: new Int32Array(number),
    x: new Float64Array(number),
    y: new Float64Array(number),
    way: new Int32Array(number),
  };
  const put = (at: number, to: number, dx: number, dy: number, way: number): void => {
    const n = next[at]!++;
    near.beside[n] = to;
    near.x[n] = dx;
    near.y[n] = dy;
    near.way[n] = way;
  };
  for (const [n, k] of kept.entries()) {
    const [i, j] = [pairs.first[k]!, pairs.second[k]!];
    const way = pairs.operation[k]!;
    const [a, b, c, d] = operations[way]!;
    const [dx, dy] = [vx[n]!, vy[n]!];
    put(i, j, dx, dy, way);
    put(j, i, -(a * dx + b * dy), -(c * dx + d * dy), way === 0 ? 0 : operations.length + way);
  }
  return near;
}
