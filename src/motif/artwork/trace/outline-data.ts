import type { Outline } from "./fit/outline.ts";
import type { Point } from "./fit/point.ts";

/** Parts of the longer side in which outlines are written: a part is 0.3 µm in a motif of 30 mm. */
export const PARTS: number = 100_000;

/**
 * Outlines as SVG path data in whole parts, `perPixel` of them a pixel, seen from a point: every step from where the
 * one before ended, so that the text stays short.
 */
export function outlineData(outlines: readonly Outline[], perPixel: number, from: Point): string {
  const whole = (v: number, axis: 0 | 1): number => Math.round((v - from[axis]) * perPixel) + 0;
  const at = (p: Point): Point => [whole(p[0], 0), whole(p[1], 1)];
  const words: string[] = [];
  let before: Point = [0, 0];
  const step = (p: Point): string => `${p[0] - before[0]} ${p[1] - before[1]}`;
  for (const { spans } of outlines) {
    before = at(spans[0]!.curve[0]);
    words.push(`M${before[0]} ${before[1]}`);
    for (const { curve, straight } of spans) {
      const [, b, c, d] = curve.map(at) as [Point, Point, Point, Point];
      words.push(straight ? `l${step(d)}` : `c${step(b)} ${step(c)} ${step(d)}`);
      before = d;
    }
    words.push("z");
  }
  return words.join("");
}
