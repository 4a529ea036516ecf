import { badInput } from "../../errors/catalogue.ts";
import type { Ring } from "../../geometry/flatten.ts";
import { readMeasure } from "./measure.ts";
import type { Style } from "./style.ts";
import type { Viewport } from "./viewport.ts";

/** Lengths of dashes and gaps in turn, and how far into them a line begins. */
export interface Dash {
  readonly lengths: readonly number[];
  readonly offset: number;
}

/** Most dashes and gaps in a pattern. */
const MOST = 100;

/** `stroke-dasharray` and `stroke-dashoffset`; undefined for an unbroken line (SVG 2, section 13.5.6). */
export function dashPattern(style: Style, viewport: Viewport, where: string): Dash | undefined {
  const text = style["stroke-dasharray"];
  if (text === "none") return undefined;
  const words = text
    .slice(0, 64 * MOST)
    .split(/[\s,]+/)
    .filter(Boolean);
  const read = (word: string, name: string): number =>
    readMeasure(word, viewport.diagonal, 0, `${where} > ${name}`);
  const lengths = words.slice(0, MOST).map((word) => read(word, "stroke-dasharray"));
  const period = lengths.reduce((sum, length) => sum + length, 0);
  if (lengths.some((length) => length < 0) || !(period > 0)) return undefined;
  if (!Number.isFinite(period))
    throw badInput(
      "bad-svg-length",
      `${where} > stroke-dasharray`,
      "its dashes are not finite",
      'write lengths such as "4 2"',
    );
  return {
    lengths: lengths.length % 2 === 1 ? [...lengths, ...lengths] : lengths,
    offset: read(style["stroke-dashoffset"], "stroke-dashoffset"),
  };
}

/** How long a line of points is; a closed one runs back to its start. */
export function lengthOf(line: Ring, closed: boolean): number {
  let sum = 0;
  const n = line.length / 2;
  for (let i = 1; i < n + (closed ? 1 : 0); i++) sum += side(line, i - 1, i % n);
  return sum;
}

/** The dashes of a line as lines of their own. On a closed line, a dash that runs over its start stays in one piece. */
export function dashesOf(line: Ring, closed: boolean, { lengths, offset }: Dash): Ring[] {
  const period = lengths.reduce((sum, length) => sum + length, 0);
  let left = ((offset % period) + period) % period;
  let at = 0;
  while (left >= lengths[at]! && left > 0) {
    left -= lengths[at]!;
    at = (at + 1) % lengths.length;
  }
  const firstOn = at % 2 === 0;
  let rest = lengths[at]! - left;
  const n = line.length / 2;
  const found: number[][] = [];
  let dash: number[] | undefined = at % 2 === 0 ? [line[0]!, line[1]!] : undefined;
  for (let i = 1; i < n + (closed ? 1 : 0); i++) {
    const [from, to] = [i - 1, i % n];
    const long = side(line, from, to);
    let gone = 0;
    while (long - gone > rest) {
      gone += rest;
      const t = gone / long;
      const x = line[2 * from]! + t * (line[2 * to]! - line[2 * from]!);
      const y = line[2 * from + 1]! + t * (line[2 * to + 1]! - line[2 * from + 1]!);
      if (dash) found.push([...dash, x, y]);
      dash = dash ? undefined : [x, y];
      at = (at + 1) % lengths.length;
      rest = lengths[at]!;
    }
    rest -= long - gone;
    dash?.push(line[2 * to]!, line[2 * to + 1]!);
  }
  if (dash) found.push(dash);
  if (closed && firstOn && dash && found.length > 1) found[0] = [...found.pop()!, ...found[0]!.slice(2)];
  return found.map((points) => Float64Array.from(points));
}

function side(line: Ring, from: number, to: number): number {
  const [dx, dy] = [line[2 * to]! - line[2 * from]!, line[2 * to + 1]! - line[2 * from + 1]!];
  return Math.sqrt(dx * dx + dy * dy);
}
