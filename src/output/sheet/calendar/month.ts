import type { Font } from "../../../motif/lettering/font.ts";
import { letters } from "../letters.ts";
import { HAIR, INK, QUIET, rectangles } from "../marks.ts";
import type { SheetItem } from "../page.ts";
import { weeksOf } from "./dates.ts";
import type { CalendarNames } from "./names.ts";

/** What one month's grid shows, and how. */
export interface Month {
  readonly year: number;
  /** 1 to 12. */
  readonly month: number;
  /** The day that weeks begin with, 1 (Monday) to 7 (Sunday). */
  readonly first: number;
  readonly weekNumbers: boolean;
  readonly names: CalendarNames;
  /** Ink of the month's name and of Sundays, `#rrggbb`. */
  readonly accent: string;
}

/** Most rows that a month takes: all months are as high, so that nothing jumps from page to page. */
const ROWS = 6;

/** Heights of the heading and of the names of days, as shares of the whole. */
const [HEADING, DAYS] = [0.185, 0.075];

/** A month in a box (mm): its name, the year, the names of days, and the days with room to write beside them. */
export function monthGrid(
  font: Font,
  { year, month, first, weekNumbers, names, accent }: Month,
  [x, y, width, height]: readonly [x: number, y: number, width: number, height: number],
): SheetItem[] {
  const u = Math.min(height / 100, width / 150);
  const aside = weekNumbers ? width * 0.055 : 0;
  const [column, row] = [(width - aside) / 7, (height * (1 - HEADING - DAYS)) / ROWS];
  const columnAt = (i: number): number => x + aside + i * column;
  const top = y + height * (HEADING + DAYS);
  const size = Math.min(row * 0.42, column * 0.3);
  const small = Math.min(3 * u, column * 0.16);
  const weekdayOf = (i: number): number => ((first - 1 + i) % 7) + 1;
  const ink = (i: number): string => (weekdayOf(i) === 7 ? accent : INK);
  const weeks = weeksOf(year, month, first);
  const say = (
    text: string,
    at: readonly [number, number],
    size: number,
    ink: string,
    room: number,
  ): SheetItem => letters(font, text, { x: at[0], y: at[1], size, ink, room, least: size * 0.5 });
  const items: SheetItem[] = [
    say(names.months[month - 1]!, [x, y + height * 0.105], 12 * u, accent, width * 0.75),
    letters(font, String(year), {
      x: x + width,
      y: y + height * 0.105,
      size: 5 * u,
      ink: QUIET,
      align: "right",
    }),
    rectangles(
      weeks.map((_, i) => [x, top + i * row, width, 0.12] as const),
      HAIR,
    ),
  ];
  const header = top - 2.4 * u;
  if (weekNumbers) items.push(say(names.week, [x, header], small, QUIET, aside * 0.9));
  for (let i = 0; i < 7; i++)
    items.push(say(names.weekdays[weekdayOf(i) - 1]!, [columnAt(i), header], small, QUIET, column * 0.92));
  weeks.forEach(({ days, week }, r) => {
    const baseline = top + r * row + size * 1.12;
    if (weekNumbers) items.push(say(String(week), [x, baseline], small, QUIET, aside * 0.9));
    days.forEach((day, i) => {
      if (day !== undefined) items.push(say(String(day), [columnAt(i), baseline], size, ink(i), column));
    });
  });
  return items;
}
