import type { Matrix } from "../../geometry/matrix.ts";
import { type Runs, type Sketch, sketch, transformRuns } from "../../geometry/sketch.ts";
import type { OutlineStep } from "./glyph.ts";
import type { Spaced } from "./set-line.ts";

/** A glyph where it stands. */
export interface Stand {
  readonly sign: Spaced;
  /** The line that it belongs to, counted from 0. */
  readonly line: number;
  /** Middle of its advance, on the baseline (mm). */
  readonly x: number;
  readonly y: number;
  /** Which way the baseline runs there: a vector of length 1, y downwards. */
  readonly along: readonly [x: number, y: number];
}

/** A glyph's outline where it stands, in mm, at a size of `size` mm an em. */
export function outlineAt({ sign, x, y, along: [dx, dy] }: Stand, size: number, unitsPerEm: number): Runs {
  const k = size / unitsPerEm;
  const back = (sign.advance * size) / 2;
  // Font units run upwards from the baseline: up is (dy, -dx) on the page.
  const place: Matrix = [k * dx, k * dy, k * dy, -k * dx, x - back * dx, y - back * dy];
  return transformRuns(runsOf(sign.glyph.commands), place);
}

function runsOf(commands: readonly OutlineStep[]): Runs {
  const to: Sketch = sketch();
  for (const c of commands)
    switch (c.type) {
      case "M":
        to.move(c.x, c.y);
        break;
      case "L":
        to.line(c.x, c.y);
        break;
      case "Q": {
        // A quadratic as the cubic that it is: controls two thirds of the way.
        const [x0, y0] = to.at();
        const toward = (end: number, control: number): number => end + (2 * (control - end)) / 3;
        to.curve(toward(x0, c.x1), toward(y0, c.y1), toward(c.x, c.x1), toward(c.y, c.y1), c.x, c.y);
        break;
      }
      case "C":
        to.curve(c.x1, c.y1, c.x2, c.y2, c.x, c.y);
        break;
      case "Z":
        to.close();
        break;
    }
  return to.done().filter(({ points }) => points.length > 2);
}
