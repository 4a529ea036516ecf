import { extentOf } from "../extent.ts";
import type { Outline } from "./fit/outline.ts";
import type { Point } from "./fit/point.ts";

/** Middle and longer side of outlines, in pixels. */
export function boxOf(outlines: readonly Outline[]): { middle: Point; longer: number } {
  const runs = outlines.map(({ spans }) => ({
    points: [...spans[0]!.curve[0], ...spans.flatMap(({ curve: [, b, c, d] }) => [...b, ...c, ...d])],
    closed: true,
  }));
  const { minX, minY, maxX, maxY } = extentOf([runs]);
  return { middle: [(minX + maxX) / 2, (minY + maxY) / 2], longer: Math.max(maxX - minX, maxY - minY) };
}
