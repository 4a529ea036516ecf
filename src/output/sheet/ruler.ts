import type { Font } from "../../motif/lettering/font.ts";
import { letters } from "./letters.ts";
import { INK, QUIET, rectangles } from "./marks.ts";
import type { Fill } from "./page.ts";

/** Height of a ruler, numbers included (mm). */
export const RULER_HEIGHT = 11;

const WEIGHT = 0.12;
const INCH = 25.4;

/** A tick's length (mm), by how many steps it stands from the start. */
const MM_TICK = (n: number): number => (n % 10 === 0 ? 2.6 : n % 5 === 0 ? 1.9 : 1.1);
const EIGHTH_TICK = (n: number): number => (n % 8 === 0 ? 2.6 : n % 4 === 0 ? 1.9 : n % 2 === 0 ? 1.4 : 0.9);

/**
 * A ruler `width` mm long whose upper edge is at (x, y): millimetres above its line, eighths of an inch below. It is never
 * scaled: a print on which it does not measure true was not made at 100 %.
 */
export function ruler(font: Font, x: number, y: number, width: number): Fill[] {
  const axis = y + RULER_HEIGHT / 2;
  const ticks: [number, number, number, number][] = [
    [x - WEIGHT / 2, axis - WEIGHT / 2, width + WEIGHT, WEIGHT],
  ];
  const numbers: Fill[] = [];
  const number = (n: number, unit: string, at: number, baseline: number): void => {
    const setting = { y: baseline, size: 2.3 };
    // The unit stands with the 0, which begins at the tick so that nothing reaches into the margin.
    if (n === 0) numbers.push(letters(font, `0 ${unit}`, { ...setting, x: at, ink: QUIET }));
    else numbers.push(letters(font, String(n), { ...setting, x: at, ink: INK, align: "center" }));
  };
  const mms = Math.floor(width + 1e-6);
  for (let n = 0; n <= mms; n++) {
    ticks.push([x + n - WEIGHT / 2, axis - MM_TICK(n), WEIGHT, MM_TICK(n)]);
    if (n % 10 === 0 && n <= mms - 3) number(n, "mm", x + n, axis - 3.3);
  }
  const eighths = Math.floor((width * 8) / INCH + 1e-6);
  for (let n = 0; n <= eighths; n++) {
    ticks.push([x + (n * INCH) / 8 - WEIGHT / 2, axis, WEIGHT, EIGHTH_TICK(n)]);
    if (n % 8 === 0 && n <= eighths - 1) number(n / 8, "in", x + (n * INCH) / 8, axis + 5);
  }
  return [rectangles(ticks, INK), ...numbers];
}
