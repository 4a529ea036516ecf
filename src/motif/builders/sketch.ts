import type { Path } from "../../geometry/path.ts";
import type { MotifTools } from "../motif.ts";
import { brush, LEAST } from "./brush.ts";
import { toPath } from "./chain.ts";
import { dab } from "./dab.ts";
import { contour, type Ends, softened, spline, twin } from "./spline.ts";
import { sway } from "./sway.ts";
import type { Vector } from "./vector.ts";

/** A run of points x, y, x, y … in the units of a sketch. */
export type Points = readonly number[];

/** Draws in units of its own on a sheet that all parts of a drawing share. */
export interface Sketch {
  /** Millimetres in a unit. */
  readonly unit: number;
  /** A closed shape of smooth runs that meet in corners: see {@link contour}. */
  fill(...runs: readonly Points[]): Path;
  /** A closed smooth shape through points. */
  loop(points: Points): Path;
  /** A closed shape from its right half: see {@link twin}. */
  twin(ends: Ends, ...half: readonly Points[]): Path;
  /** A closed shape of straight sides whose corners are rounded, `r` units to each side of them where there is room. */
  soft(r: number, points: Points): Path;
  /** A brush line through points, its widths spread evenly along it; nowhere under {@link LEAST}. */
  line(points: Points, ...widths: readonly number[]): Path;
  /** A dab about a point: a circle, less so where drawings vary. */
  dot(x: number, y: number, r: number): Path;
  /** A sketch on the same sheet about another origin, its up towards `up`, its units `scale` times as large. */
  at(x: number, y: number, up?: Vector, scale?: number, flip?: boolean): Sketch;
}

/**
 * A sheet to draw on, `unit` mm a unit. Where drawings vary, the whole sheet is stretched, leant and bowed a little
 * before curves are laid through its points, so that parts stay together and curves stay smooth: the same hand, another day.
 * Bows are made for drawings of about 100 units that stand about the origin.
 */
export function sketch(tools: MotifTools, unit: number, ease = 1): Sketch {
  const [wide, tall] = [1 + sway(tools, 0.11 * ease), 1 + sway(tools, 0.07 * ease)];
  const [lean, bow] = [sway(tools, 0.13 * ease), sway(tools, 0.0018 * ease)];
  return sheet(tools, unit, 1, ([x, y]) => [
    (x * wide + y * lean + bow * (y * y - 800)) * unit,
    y * tall * unit,
  ]);
}

function sheet(tools: MotifTools, unit: number, size: number, warp: (at: Vector) => Vector): Sketch {
  const set = (points: Points): number[] => {
    const out: number[] = [];
    for (let i = 0; i < points.length; i += 2) out.push(...warp([points[i]!, points[i + 1]!]));
    return out;
  };
  const mm = unit * size;
  return {
    unit: mm,
    fill: (...runs) => toPath(contour(...runs.map(set))),
    loop: (points) => toPath(spline(set(points), true)),
    twin: (ends, ...half) => {
      const { runs, round } = twin(ends, half);
      return toPath(round ? spline(set(runs[0]!), true) : contour(...runs.map(set)));
    },
    soft: (r, points) => toPath(softened(set(points), r * mm)),
    line: (points, ...widths) =>
      brush(
        spline(set(points)),
        widths.map((w) => w * mm),
      ),
    dot: (x, y, r) => dab(...warp([x, y]), Math.max(LEAST / 2, r * mm), tools, 0.1),
    at: (x, y, [s, c] = [0, -1], scale = 1, flip = false) => {
      const hand = flip ? -scale : scale;
      return sheet(tools, unit, size * scale, ([u, v]) =>
        warp([x - c * u * hand - s * v * scale, y + s * u * hand - c * v * scale]),
      );
    },
  };
}
