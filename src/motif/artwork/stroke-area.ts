import { type Runs, transformRuns } from "../../geometry/sketch.ts";
import { dashPattern } from "./dash.ts";
import type { Journey, Place } from "./journey.ts";
import { strokeOutline } from "./stroke.ts";
import type { Viewport } from "./viewport.ts";

interface Line {
  readonly width: number;
  /** What the author says the outline is long; not above 0: as long as it is. */
  readonly pathLength: number;
  readonly viewport: Viewport;
  readonly where: string;
  readonly journey: Journey;
}

/** The area of an element's stroke, in the coordinates of the root. */
export function strokeArea(outline: Runs, { style, matrix }: Place, line: Line): Runs {
  const { width, pathLength, viewport, where, journey } = line;
  const join = style["stroke-linejoin"];
  const cap = style["stroke-linecap"];
  const limit = Number(style["stroke-miterlimit"]);
  const pen = {
    width,
    join: join === "round" || join === "bevel" ? join : "miter",
    cap: cap === "round" || cap === "square" ? cap : "butt",
    miterLimit: limit >= 1 ? limit : 4,
    dash: dashPattern(style, viewport, where),
    pathLength: pathLength > 0 && Number.isFinite(pathLength) ? pathLength : 0,
    spend: (count: number) => journey.budget.dashes(where, count),
  } as const;
  // A stroke that does not scale is drawn on the page, after the element was transformed.
  if (style["vector-effect"] === "non-scaling-stroke")
    return strokeOutline(transformRuns(outline, matrix), pen);
  return transformRuns(strokeOutline(outline, pen), matrix);
}
