import { badInput } from "../errors/catalogue.ts";
import type { Path } from "../geometry/path.ts";
import { pen } from "../geometry/pen.ts";
import { type Length, toMm } from "../units/length.ts";

/** What {@link ogeeCurve} takes. */
export interface OgeeCurveOptions {
  /** From the left tip to the right one, over 0 and up to 10 m. */
  readonly width: Length;
  /** From the upper tip to the lower one, over 0 and up to 10 m. */
  readonly height: Length;
  /** How strongly the sides swing, 0 (straight: a diamond) to 1. Default 0.6. */
  readonly swing?: number;
}

/**
 * The outline of an ogee about the origin, in whole µm: a guide to draw by, or a shape for a motif.
 *
 * Each side looks the same after half a turn about its middle, and facing sides are the same curve moved, so in an
 * `ogee` repeat of the same size the outlines fit together without gap or overlap. Sides leave every tip upright.
 *
 * @throws SprigwrightError `length-range` or `number-range`
 */
export function ogeeCurve({ width, height, swing = 0.6 }: OgeeCurveOptions): Path {
  const [x, y] = [toMm(width, "ogeeCurve > width") / 2, toMm(height, "ogeeCurve > height") / 2];
  for (const [name, half] of [["width", x] as const, ["height", y] as const])
    if (!(half > 0 && half <= 5000))
      throw badInput(
        "length-range",
        `ogeeCurve > ${name}`,
        `${2 * half} mm is not over 0 and up to 10000 mm`,
        "give a size such as 120",
      );
  if (!(swing >= 0 && swing <= 1))
    throw badInput("number-range", "ogeeCurve > swing", `${swing} is outside 0 to 1`, "give 0 to 1");
  const k = y * swing;
  return pen()
    .moveTo(0, -y)
    .curveTo(0, -y + k, x, -k, x, 0)
    .curveTo(x, k, 0, y - k, 0, y)
    .curveTo(0, y - k, -x, k, -x, 0)
    .curveTo(-x, -k, 0, -y + k, 0, -y)
    .path();
}
