import { flatten, type Ring } from "../../geometry/flatten.ts";
import { pen } from "../../geometry/pen.ts";
import { type StrokeStyle, strokeRing } from "../../geometry/stroke.ts";
import { extentOf } from "./extent.ts";
import type { Outline, Run } from "./outline.ts";

/** Whole steps across the longer side of what is stroked: fine enough that rounding to one does not show. */
const STEPS = 4_000_000;
/** How far the flattened line may stray, in steps. */
const TOLERANCE = 60;

/** How an element's line is drawn, in its own coordinates. */
export type LineStyle = Omit<StrokeStyle, "tolerance">;

/** The area that the stroke of an outline covers, as straight-sided runs for nonzero filling. */
export function strokeOutline(outline: Outline, style: LineStyle): Outline {
  const box = extentOf([outline]);
  const longer = Math.max(box.maxX - box.minX, box.maxY - box.minY, style.width);
  if (!(longer > 0) || !Number.isFinite(longer)) return [];
  const scale = STEPS / longer;
  const scaled: StrokeStyle = { ...style, width: style.width * scale, tolerance: TOLERANCE };
  const runs: Run[] = [];
  for (const run of outline)
    for (const ring of strokeRing(lineOf(run, box.minX, box.minY, scale), run.closed, scaled))
      runs.push(backToRun(ring, box.minX, box.minY, scale));
  return runs;
}

/** A run as a line of points, in steps from the corner of its box. */
function lineOf({ points: p, closed }: Run, ox: number, oy: number, scale: number): Ring {
  // The pen counts in thousandths, so a step is a thousandth of its unit.
  const at = (i: number): [number, number] => [
    ((p[i]! - ox) * scale) / 1000,
    ((p[i + 1]! - oy) * scale) / 1000,
  ];
  const to = pen();
  to.moveTo(...at(0));
  for (let i = 2; i + 5 < p.length; i += 6) to.curveTo(...at(i), ...at(i + 2), ...at(i + 4));
  const [ring] = flatten(to.path(), TOLERANCE);
  const start = at(0).map((v) => Math.round(v * 1000)) as [number, number];
  if (!ring) return Float64Array.from(start);
  if (closed) return ring;
  // The pen closes what it draws: where the line came back to its start, that point has to be said again.
  const end = at(p.length - 2).map((v) => Math.round(v * 1000));
  return end[0] === start[0] && end[1] === start[1] ? Float64Array.from([...ring, ...start]) : ring;
}

function backToRun(ring: Ring, ox: number, oy: number, scale: number): Run {
  const points: number[] = [];
  const count = ring.length / 2;
  for (let k = 0; k <= count; k++) {
    const i = 2 * (k % count);
    const [x, y] = [ring[i]! / scale + ox, ring[i + 1]! / scale + oy];
    if (k > 0) points.push(points[points.length - 2]!, points[points.length - 1]!, x, y);
    points.push(x, y);
  }
  return { points, closed: true };
}
