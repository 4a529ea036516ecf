import { inRegion } from "../../geometry/region.ts";
import type { Random } from "../../seed/random.ts";
import { type Patch, roomAt } from "./field.ts";
import { offsetOf } from "./kin.ts";
import type { Band } from "./plan.ts";
import type { Stage } from "./stage.ts";

/**
 * Cells looked at for each one chosen, neighbours in the list, which lie near each other in memory: cells far apart take half as
 * long again among thousands of motifs. The tightest of them keeps the wide places free; the roomiest strews.
 */
const CHOICE = 4;

/** Cells of a seeker are this share of its smallest radius wide, or a cell of the field if that is wider. */
const STRIDE = 2.5;

/** A band with the cells where its first disc may still find room. */
export interface Seeker {
  readonly band: Band;
  /** What the field must hold at a cell for the smallest first disc. */
  readonly need: number;
  /** What the band's motifs want beyond the gap (µm). */
  readonly extra: number;
  /** How far a body's centre may lie from its first disc (µm). */
  readonly slack: number;
  /** Where the cells are taken from, and every how manyth on either axis. */
  readonly area: Patch;
  readonly stride: number;
  readonly cells: Int32Array;
  /** How many of the cells are left. */
  live: number;
  /** How much of the spread is asked for in each round over the cells: kin keep apart as far as there is room. */
  readonly rounds: readonly number[];
  round: number;
}

/** The rounds of an entry that has nobody to keep apart from. */
export const ONE_ROUND: readonly number[] = [0];

/** Lists the cells of the unit that have room. */
export function seekerFor(stage: Stage, band: Band, rounds: readonly number[]): Seeker {
  const { field, gap, arrangement } = stage;
  const { cell, left, top } = field;
  const { width, height } = arrangement.unit;
  let need = Infinity;
  let radius = Infinity;
  for (const body of band.bodies) {
    need = Math.min(need, body.spots[2]! * band.low);
    radius = Math.min(radius, body.circle.r * band.low);
  }
  const stride = Math.max(1, Math.floor(radius / (STRIDE * cell)));
  const area = {
    fromColumn: Math.ceil(-left / cell),
    toColumn: Math.floor((width - left) / cell),
    fromRow: Math.ceil(-top / cell),
    toRow: Math.floor((height - top) / cell),
  };
  const across = Math.max(0, Math.ceil((area.toColumn - area.fromColumn + 1) / stride));
  const down = Math.max(0, Math.ceil((area.toRow - area.fromRow + 1) / stride));
  const cells = new Int32Array(across * down);
  const seeker = {
    band,
    need: need + gap - 0.7 * stride * cell,
    extra: band.bodies[0]!.extra,
    slack: Math.max(...band.bodies.map((body) => offsetOf(body, band.high))),
    area,
    stride,
    cells,
    live: 0,
    rounds,
    round: 0,
  };
  listCells(stage, seeker);
  return seeker;
}

/** Lists the cells with room anew, those in or beside the unit's region where it has one. */
export function listCells({ field, arrangement: { region } }: Stage, seeker: Seeker): void {
  const { area, cells, need, extra, stride } = seeker;
  let live = 0;
  for (let row = area.fromRow; row <= area.toRow; row += stride)
    for (let column = area.fromColumn; column <= area.toColumn; column += stride) {
      const at = row * field.columns + column;
      if (roomAt(field, at, extra) < need) continue;
      const [x, y] = [field.left + column * field.cell, field.top + row * field.cell];
      if (!region || inRegion(region, x, y, stride * field.cell)) cells[live++] = at;
    }
  seeker.live = live;
}

/**
 * Index of a cell with room, by chance but rather a tight one, or a roomy one; -1 when there is none left. Cells
 * that `shut` says no to are struck off on the way.
 */
export function pickCell(
  stage: Stage,
  seeker: Seeker,
  random: Random,
  tight: boolean,
  shut: (cell: number) => boolean,
): number {
  const { cells, need, extra } = seeker;
  let best = -1;
  let most = -Infinity;
  let index = -1;
  for (let k = 0; k < CHOICE && seeker.live > 0; ) {
    index = k === 0 || index + 1 >= seeker.live ? random.below(seeker.live) : index + 1;
    const cell = cells[index]!;
    const value = roomAt(stage.field, cell, extra);
    const worth = tight ? -value : value;
    if (value < need || (worth > most && shut(cell))) {
      dropCell(seeker, index);
      if (best === seeker.live) best = index; // the last cell moved into the gap
      continue;
    }
    if (worth > most) {
      most = worth;
      best = index;
    }
    k++;
  }
  return best;
}

/** Strikes a cell off the list. */
export function dropCell(seeker: Seeker, index: number): void {
  seeker.cells[index] = seeker.cells[--seeker.live]!;
}
