import type { Element } from "@xmldom/xmldom";
import type { Journey, Painted, Place } from "./journey.ts";
import { readMeasure } from "./measure.ts";
import { type Outline, transformOutline } from "./outline.ts";
import { readPaint } from "./paint.ts";
import { shapeOutline } from "./shapes.ts";
import { strokeOutline } from "./stroke.ts";
import { readShare, type Style } from "./style.ts";
import { type Viewport, viewportOf } from "./viewport.ts";

/** Adds what a drawing element paints: its fill, then its stroke. */
export function paintElement(element: Element, journey: Journey, here: Place, where: string): void {
  const { style, matrix } = here;
  if (style.visibility !== "visible") return;
  const warn = (what: string): void => journey.warn(`${where}: ${what}`);
  const source = { byId: journey.byId, means: journey.means, warn };
  const viewport = here.viewport ?? viewportOf(100, 100);
  const outline = shapeOutline(element, viewport, where);
  journey.budget.points(
    where,
    outline.reduce((sum, run) => sum + run.points.length / 2, 0),
  );
  const put = (kind: "fill" | "stroke", area: () => Outline, rule: Painted["rule"]): void => {
    const color = readPaint(style[kind], style.color, source);
    if (!color) return;
    const cover = color.alpha * here.opacity * readShare(style[`${kind}-opacity`]);
    if (cover === 0) return;
    const drawn = area();
    if (drawn.length === 0) return;
    if (cover < 1)
      warn(`its ${kind} covers ${Math.round(cover * 100)} %; it is drawn solid in ${color.fill}`);
    journey.painted.push({ fill: color.fill, outline: transformOutline(drawn, matrix), rule, from: where });
  };
  put("fill", () => outline.filter(hasArea), style["fill-rule"] === "evenodd" ? "evenodd" : "nonzero");
  put("stroke", () => strokeArea(outline, style, viewport, where, warn), "nonzero");
}

/** A single straight side fills nothing. */
function hasArea({ points: p }: Outline[number]): boolean {
  if (p.length > 8) return true;
  return p.length === 8 && !(p[0] === p[2] && p[1] === p[3] && p[4] === p[6] && p[5] === p[7]);
}

function strokeArea(
  outline: Outline,
  style: Style,
  viewport: Viewport,
  where: string,
  warn: (what: string) => void,
): Outline {
  const width = readMeasure(style["stroke-width"], viewport.diagonal, 1, `${where} > stroke-width`);
  if (width <= 0) return [];
  if (style["stroke-dasharray"] !== "none") warn("its dashes are drawn as one line");
  const join = style["stroke-linejoin"];
  const cap = style["stroke-linecap"];
  const limit = Number(style["stroke-miterlimit"]);
  return strokeOutline(outline, {
    width,
    join: join === "round" || join === "bevel" ? join : "miter",
    cap: cap === "round" || cap === "square" ? cap : "butt",
    miterLimit: limit >= 1 ? limit : 4,
  });
}
