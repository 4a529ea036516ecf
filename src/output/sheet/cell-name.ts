import type { Font } from "../../motif/lettering/font.ts";
import { letters, widthOf } from "./letters.ts";
import { INK } from "./marks.ts";
import type { SheetItem } from "./page.ts";

/** Sizes of names at `u` 1: largest, and least, from which on names are set in two lines (mm). */
const [LARGEST, LEAST] = [3.1, 2.2];

/** Baselines below the cloth at `u` 1: of one line, and of two (mm). */
const [ONE, TWO] = [5.4, [3.4, 6.2] as const];

/** The size at which all names of a sheet are set alike (mm): as large as the longest allows, to a limit. */
export function nameSize(font: Font, names: readonly string[], room: number, u: number): number {
  const widest = names.reduce((most, name) => Math.max(most, widthOf(font, name, 1)), 0);
  return Math.max(LEAST * u, Math.min(LARGEST * u, room / widest));
}

/** A name below a cloth that ends at `y`, in as many lines, one or two, as it takes (mm). */
export function nameLines(
  font: Font,
  name: string,
  [x, y]: readonly [number, number],
  size: number,
  room: number,
  u: number,
): SheetItem[] {
  const set = (text: string, below: number): SheetItem =>
    letters(font, text, { x, y: y + below * u, size, ink: INK, room, least: (LEAST - 0.4) * u });
  const broken = widthOf(font, name, size) > room + 1e-6 ? inTwo(font, name) : undefined;
  return broken ? broken.map((line, i) => set(line, TWO[i]!)) : [set(name, ONE)];
}

/** A text broken where its longer line is shortest; undefined for one word. */
function inTwo(font: Font, text: string): readonly string[] | undefined {
  const words = text.split(" ");
  const breaks = words
    .slice(1)
    .map((_, i) => [words.slice(0, i + 1).join(" "), words.slice(i + 1).join(" ")]);
  const longer = (lines: readonly string[]): number =>
    Math.max(...lines.map((line) => widthOf(font, line, 1)));
  return breaks.sort((a, b) => longer(a) - longer(b))[0];
}
