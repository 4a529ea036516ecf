import type { Font } from "../../motif/lettering/font.ts";
import { sayIn } from "./facts.ts";
import { letters } from "./letters.ts";
import { INK, QUIET } from "./marks.ts";
import type { Fill } from "./page.ts";

/** A sheet's heading from (x, y) mm on, 6 mm high at `u` 1: the title, and at the right what the sheet is. */
export const heading = (
  font: Font,
  title: string,
  about: string,
  [x, y]: readonly [number, number],
  width: number,
  u: number,
): Fill[] => {
  const baseline = y + 6 * u;
  return [
    letters(font, title, { x, y: baseline, size: 8 * u, least: 4.5 * u, ink: INK, room: width * 0.62 }),
    letters(font, sayIn(font, about), {
      ...{ x: x + width, y: baseline, ink: QUIET, align: "right" },
      ...{ size: 3.2 * u, least: 2.2 * u, room: width * 0.36 },
    }),
  ];
};
