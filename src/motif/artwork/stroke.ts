import { fitRing } from "../../geometry/fit.ts";
import { flatten, type Ring, ringArea } from "../../geometry/flatten.ts";
import { areaOf, type Path } from "../../geometry/path.ts";
import { pen } from "../../geometry/pen.ts";
import type { Run, Runs } from "../../geometry/sketch.ts";
import { type StrokeStyle, strokeRing } from "../../geometry/stroke.ts";
import { type Dash, dashesOf, lengthOf } from "./dash.ts";
import { extentOf } from "./extent.ts";

/** Whole steps across the longer side of what is stroked: fine enough that rounding to one does not show. */
const STEPS = 4_000_000;
/** How far the flattened line may stray, in steps. */
const TOLERANCE = 60;
/** How far the curves of the area's outline may stray from it, in steps: 2 µm at 30 mm, or else 1. */
const FITS = [280, 140] as const;

/** How an element's line is drawn, in its own coordinates. */
export interface LineStyle extends Omit<StrokeStyle, "tolerance"> {
  readonly dash: Dash | undefined;
  /** What the author says the line is long, which dashes are measured by; 0: as long as it is. */
  readonly pathLength: number;
  /** Told how many dashes are about to be drawn. */
  readonly spend: (count: number) => void;
}

/** The area that the stroke of an outline covers, for nonzero filling. */
export function strokeOutline(outline: Runs, style: LineStyle): Runs {
  const box = extentOf([outline]);
  const longer = Math.max(box.maxX - box.minX, box.maxY - box.minY, style.width);
  if (!(longer > 0) || !Number.isFinite(longer)) return [];
  const scale = STEPS / longer;
  const scaled: StrokeStyle = { ...style, width: style.width * scale, tolerance: TOLERANCE };
  const runs: Run[] = [];
  for (const run of outline) {
    for (const { line, closed } of partsOf(run, style, box.minX, box.minY, scale)) {
      // Without a cap, a line of no length is nothing (SVG 2, section 13.5.4).
      if (style.cap === "butt" && lengthOf(line, closed) < 1) continue;
      for (const ring of strokeRing(line, closed, scaled))
        if (ring.length >= 6) runs.push(runOf(ring, box.minX, box.minY, scale));
    }
  }
  return runs;
}

/** A run as one line, or as its dashes. */
function partsOf(
  run: Run,
  { dash, pathLength, spend }: LineStyle,
  ox: number,
  oy: number,
  scale: number,
): readonly { readonly line: Ring; readonly closed: boolean }[] {
  const line = lineOf(run, ox, oy, scale);
  if (!dash) return [{ line, closed: run.closed }];
  const long = lengthOf(line, run.closed);
  const unit = pathLength > 0 ? long / pathLength : scale;
  const lengths = dash.lengths.map((length) => length * unit);
  const period = lengths.reduce((sum, length) => sum + length, 0);
  if (!(period > 0)) return [{ line, closed: run.closed }];
  spend(Math.ceil((long / period) * (lengths.length / 2)));
  const parts = dashesOf(line, run.closed, { lengths, offset: dash.offset * unit });
  return parts.map((part) => ({ line: part, closed: false }));
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

/** A ring as curves, where curves are fewer and cover the same; else as its sides. */
function runOf(ring: Ring, ox: number, oy: number, scale: number): Run {
  const area = ringArea(ring);
  const long = lengthOf(ring, true);
  const serves = (path: Path, fit: number): boolean =>
    path.points.length / 6 < ring.length / 2 && Math.abs(areaOf(path) - area) <= (fit / 2) * long;
  let fitted: Path | undefined;
  for (const fit of FITS) {
    const path = fitRing(ring, fit);
    fitted ??= serves(path, fit) ? path : undefined;
    if (fitted) break;
  }
  const x = (v: number): number => v / scale + ox;
  const y = (v: number): number => v / scale + oy;
  const points: number[] = [];
  if (fitted) {
    const p = fitted.points;
    for (let i = 0; i <= p.length; i += 2) points.push(x(p[i % p.length]!), y(p[(i + 1) % p.length]!));
    return { points, closed: true };
  }
  const count = ring.length / 2;
  for (let k = 0; k <= count; k++) {
    const i = 2 * (k % count);
    const [px, py] = [x(ring[i]!), y(ring[i + 1]!)];
    if (k > 0) points.push(points[points.length - 2]!, points[points.length - 1]!, px, py);
    points.push(px, py);
  }
  return { points, closed: true };
}
