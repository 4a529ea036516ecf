// Small made-up things that many tests start from.
import { SprigwrightError } from "../src/errors/error.ts";
import type { Path } from "../src/geometry/path.ts";
import { pen } from "../src/geometry/pen.ts";
import { ellipse } from "../src/geometry/shapes.ts";
import { defineMotif } from "../src/motif/define.ts";
import { length } from "../src/params/kinds.ts";

/** The SprigwrightError that `work` throws; fails the test when it throws nothing or something else. */
export function refusal(work: () => unknown): SprigwrightError {
  try {
    work();
  } catch (error) {
    if (error instanceof SprigwrightError) return error;
    throw error;
  }
  throw new Error("nothing was refused");
}

/** The same for a promise. */
export async function refusalOf(work: () => Promise<unknown>): Promise<SprigwrightError> {
  try {
    await work();
  } catch (error) {
    if (error instanceof SprigwrightError) return error;
    throw error;
  }
  throw new Error("nothing was refused");
}

/** A closed polygon through points x, y, x, y … in mm. */
export function polygon(...points: number[]): Path {
  const draw = pen().moveTo(points[0]!, points[1]!);
  for (let i = 2; i < points.length; i += 2) draw.lineTo(points[i]!, points[i + 1]!);
  return draw.close().path();
}

/** An upright rectangle in mm. */
export const rectangle = (x: number, y: number, width: number, height: number): Path =>
  polygon(x, y, x + width, y, x + width, y + height, x, y + height);

/** A buoy: a round float with a square flag that lies over its right edge. Two parts, `float` and `flag`. */
export const buoy = defineMotif({
  name: "harbour/buoy",
  about: "A float with a flag.",
  params: { size: length({ about: "Width of the float.", min: 1, max: 500, default: 10 }) },
  parts: ["float", "flag"],
  draw: ({ size }, { stray }) => ({
    float: ellipse(0, 0, stray(size / 2, 0.3)),
    flag: rectangle(size * 0.2, -size * 0.35, size * 0.6, size * 0.4),
  }),
});

/** A pebble: one plain part, lopsided, so that turns and mirrors show. */
export const pebble = defineMotif({
  name: "harbour/pebble",
  about: "A lopsided pebble.",
  params: { size: length({ about: "Its width.", min: 1, max: 2000, default: 8 }) },
  parts: ["pebble"],
  draw: ({ size }) => ({
    pebble: pen()
      .moveTo(-size / 2, 0)
      .curveTo(-size / 2, -size * 0.4, size * 0.3, -size * 0.5, size / 2, -size * 0.1)
      .curveTo(size * 0.6, size * 0.2, 0, size * 0.3, -size / 2, 0)
      .path(),
  }),
});
