import { inkBytes } from "../../colorway/ink.ts";
import type { Font } from "../../motif/lettering/font.ts";
import { letters } from "./letters.ts";
import { edge, HAIR, INK, QUIET, rectangle } from "./marks.ts";
import type { SheetItem } from "./page.ts";

/** A role and its ink, to be shown as a chip. */
export interface Chip {
  readonly role: string;
  /** `#rrggbb`. */
  readonly ink: string;
}

/** How a block of labelled chips is laid out, in mm. */
interface ChipGrid {
  readonly columns: number;
  /** Height of the colour itself. */
  readonly chip: number;
  /** Width of a column and height of a row, gaps included. */
  readonly column: number;
  readonly row: number;
  readonly height: number;
}

const GAP = 3;
const NARROWEST = 20;
const LABELS = 11;
/** Between rows. */
const ROW_GAP = 3.5;

/**
 * Chips of `count` inks in `width` mm: one row where they fit, and lower chips where they do not; never wider than a quarter.
 * `u` scales it all.
 */
export function chipGrid(count: number, width: number, u: number): ChipGrid {
  const most = Math.max(1, Math.floor((width / u + GAP) / (NARROWEST + GAP)));
  const rows = Math.ceil(count / most);
  const columns = Math.ceil(count / rows);
  const column = (width + GAP * u) / Math.max(4, columns);
  const chip = (rows === 1 ? 15 : rows === 2 ? 9 : 5) * u;
  const row = chip + (LABELS + ROW_GAP) * u;
  return { columns, chip, column, row, height: rows * row - ROW_GAP * u };
}

/** Chips with role, hexadecimal and decimal values of each ink, from (x, y) on. */
export function labelledChips(
  font: Font,
  chips: readonly Chip[],
  x: number,
  y: number,
  width: number,
  u: number,
): SheetItem[] {
  const grid = chipGrid(chips.length, width, u);
  return chips.flatMap(({ role, ink }, i) => {
    const left = x + (i % grid.columns) * grid.column;
    const top = y + Math.floor(i / grid.columns) * grid.row;
    const [room, high] = [grid.column - GAP * u, grid.chip];
    const line = (text: string, down: number, size: number, color: string): SheetItem =>
      letters(font, text, { x: left, y: top + high + down * u, size: size * u, ink: color, room });
    return [
      rectangle(left, top, room, high, ink),
      edge([left, top, room, high], 0.1, HAIR),
      line(role, 3.9, 3, INK),
      line(ink, 7.1, 2.5, QUIET),
      line(inkBytes(ink).join(" "), 10, 2.5, QUIET),
    ];
  });
}

/** Chips without labels in a row, as wide together as `width` mm, `height` mm high. */
export function bareChips(
  inks: readonly string[],
  x: number,
  y: number,
  width: number,
  height: number,
): SheetItem[] {
  const gap = Math.min(0.8, (width / inks.length) * 0.12);
  const each = Math.min(height * 1.6, (width + gap) / inks.length - gap);
  return inks.flatMap((ink, i) => {
    const left = x + i * (each + gap);
    return [rectangle(left, y, each, height, ink), edge([left, y, each, height], 0.08, HAIR)];
  });
}
