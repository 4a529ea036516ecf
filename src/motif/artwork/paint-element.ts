import type { Element } from "@xmldom/xmldom";
import { type Runs, transformRuns } from "../../geometry/sketch.ts";
import type { Journey, Painted, Place } from "./journey.ts";
import { readMeasure } from "./measure.ts";
import { readPaint } from "./paint.ts";
import { shapeOutline } from "./shapes.ts";
import { strokeArea } from "./stroke-area.ts";
import { firstStyle, readShare } from "./style.ts";
import { viewportOf } from "./viewport.ts";

/** Leaves marks for what a drawing element paints: its fill, then its stroke, or as `paint-order` says. */
export function paintElement(element: Element, journey: Journey, here: Place, where: string): void {
  const { style, matrix } = here;
  if (style.visibility !== "visible") {
    journey.drop(where, "hidden");
    return;
  }
  const warn = (what: string): void => journey.warn(`${where}: ${what}`);
  const viewport = here.viewport ?? viewportOf(100, 100);
  const outline = shapeOutline(element, viewport, where);
  journey.budget.points(
    where,
    outline.reduce((sum, run) => sum + run.points.length / 2, 0),
  );
  if (outline.length === 0) {
    journey.drop(where, "empty");
    return;
  }
  let why: "unpainted" | "hidden" | "no-area" | undefined = "unpainted";
  const put = (kind: "fill" | "stroke", area: () => Runs, rule: Painted["rule"]): void => {
    const color = readPaint(style[kind], style.color, {
      byId: journey.byId,
      styleOf: (stop) => journey.style(stop, firstStyle),
      ...{ warn, viewport, outline, kind },
    });
    if (!color) return;
    const alpha = color.alpha * readShare(style[`${kind}-opacity`]);
    if (alpha === 0) {
      if (why === "unpainted") why = "hidden";
      return;
    }
    const drawn = area();
    if (drawn.length === 0) {
      if (why === "unpainted") why = "no-area";
      return;
    }
    why = undefined;
    here.marks.push({
      ...{ kind: "painted", fill: color.fill, alpha, outline: drawn, rule, from: where },
      ...{ clips: here.clips, trail: here.trail, holder: here.holder ?? element },
    });
  };
  const fill = (): void =>
    put(
      "fill",
      () => transformRuns(outline.filter(hasArea), matrix),
      style["fill-rule"] === "evenodd" ? "evenodd" : "nonzero",
    );
  const stroke = (): void => {
    const width = readMeasure(style["stroke-width"], viewport.diagonal, 1, `${where} > stroke-width`);
    if (width <= 0) return;
    const pathLength = Number(element.getAttribute("pathLength") ?? "");
    put(
      "stroke",
      () => strokeArea(outline, here, { width, pathLength, viewport, where, journey }),
      "nonzero",
    );
  };
  const strokeFirst = /^\s*(?:markers\s+)?stroke/.test(style["paint-order"]);
  for (const paint of strokeFirst ? [stroke, fill] : [fill, stroke]) paint();
  if (why !== undefined) journey.drop(where, why);
  const marked = (["marker-start", "marker-mid", "marker-end"] as const).some(
    (name) => style[name] !== "none",
  );
  if (marked) warn("its markers are not drawn; expand the line's appearance in its editor");
}

/** A single straight side fills nothing. */
function hasArea({ points: p }: Runs[number]): boolean {
  if (p.length > 8) return true;
  return p.length === 8 && !(p[0] === p[2] && p[1] === p[3] && p[4] === p[6] && p[5] === p[7]);
}
