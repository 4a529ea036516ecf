import type { Random } from "../../seed/random.ts";
import type { Piece } from "./board.ts";
import { patchAround } from "./field.ts";
import { fillClass } from "./fill.ts";
import type { Job } from "./job.ts";
import { excess } from "./shares.ts";
import { type Stage, takeUp, tally } from "./stage.ts";

export const K = { steps: 400, tries: 16, voids: 12, reach: [0.6, 1.4], leeway: 1, stats: {} as Record<string, number> };

/**
 * Works over a filled stage to close its holes (after Schrimpf and others 2000, "ruin and recreate"): again and
 * again the motifs around a hole are taken up and the place is filled anew, which is kept when it got fuller.
 */
export async function rework(stage: Stage, job: Job): Promise<void> {
  const random = job.random.fork("rework");
  const { field, board } = stage;
  const largest = Math.max(...[...board.pieces].map((p) => p.copies[0]!.r));
  for (let step = 0; step < K.steps; step++) {
    if (step % 8 === 0) await job.step(0.5 + (0.5 * step) / K.steps);
    const [x, y] = findVoid(stage, random);
    const reach = largest * random.between(K.reach[0]!, K.reach[1]!);
    const old = piecesWithin(stage, x, y, reach);
    if (old.length === 0) continue;
    const snapshot = field.values.slice();
    const before = stage.area;
    const over = excess(stage.used, job.shares).over;
    for (const piece of old) takeUp(stage, piece);
    const known = new Set(board.pieces);
    for (const sizeClass of job.classes)
      await fillClass(stage, sizeClass, {
        ...job,
        random,
        tries: K.tries,
        rounds: [0.4],
        leeway: K.leeway,
        room: () => Infinity,
        tight: true,
        patch: patchAround(field, x, y, reach + largest),
        breathe: () => job.step(0.5 + (0.5 * step) / K.steps),
      });
    const now = excess(stage.used, job.shares).over;
    if (stage.area >= before && now < Math.max(1, over)) { K.stats.ok = (K.stats.ok ?? 0) + 1; continue; }
    K.stats.no = (K.stats.no ?? 0) + 1;
    if (stage.area >= before) K.stats.share = (K.stats.share ?? 0) + 1;
    for (const piece of [...board.pieces])
      if (!known.has(piece)) {
        board.remove(piece);
        tally(stage, piece, -1);
      }
    for (const piece of old) {
      board.restore(piece);
      tally(stage, piece, 1);
    }
    field.values.set(snapshot);
  }
}

function findVoid({ field, arrangement }: Stage, random: Random): [number, number] {
  let best: [number, number] = [0, 0];
  let most = -Infinity;
  for (let k = 0; k < K.voids; k++) {
    const x = random.next() * arrangement.unit.width;
    const y = random.next() * arrangement.unit.height;
    const value =
      field.values[
        Math.round((y - field.top) / field.cell) * field.columns + Math.round((x - field.left) / field.cell)
      ]!;
    if (value > most) {
      most = value;
      best = [x, y];
    }
  }
  return best;
}

function piecesWithin(stage: Stage, x: number, y: number, reach: number): Piece[] {
  const found = new Set<Piece>();
  stage.board.search(x - reach, y - reach, x + reach, y + reach, (copy) => {
    const dx = copy.cx - x;
    const dy = copy.cy - y;
    if (dx * dx + dy * dy < reach * reach) found.add(copy.piece);
    return false;
  });
  return [...found];
}
