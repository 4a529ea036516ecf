import type { Element } from "@xmldom/xmldom";
import { compose, identity, type Matrix } from "../../geometry/matrix.ts";
import { sketch } from "../../geometry/sketch.ts";
import { clipsOf } from "./clip-path.ts";
import { follow } from "./follow.ts";
import type { Clip, Journey, Mark, Place } from "./journey.ts";
import { namesOf } from "./names.ts";
import { paintElement } from "./paint-element.ts";
import { called, childElements } from "./parse.ts";
import { SHAPE_NAMES } from "./shapes.ts";
import { readShare } from "./style.ts";
import { readOrigin, readTransform } from "./transform.ts";
import { insideOf, viewportOf, type Window, windowOf } from "./viewport.ts";

const GROUPS: ReadonlySet<string> = new Set(["g", "a", "svg", "symbol", "switch"]);
/** Elements that paint nothing where they stand. */
const SILENT: ReadonlySet<string> = new Set([
  ...["defs", "symbol", "title", "desc", "metadata", "style", "linearGradient", "radialGradient", "stop"],
  ...["clipPath", "mask", "filter", "pattern", "marker", "view", "script"],
]);
/** Attributes whose reading takes time in step with their length. */
const LONG_ATTRIBUTES = ["style", "class", "transform", "d", "points"] as const;
const SHAPES: ReadonlySet<string> = new Set(SHAPE_NAMES);
/** What to do about elements that are left out. */
const INSTEAD: Readonly<Record<string, string>> = {
  text: "; turn it into outlines in its editor",
  image: "; trace it, or redraw it as shapes",
  foreignObject: "; redraw it as shapes",
};

/** Walks an element and all in it, leaving marks for what they paint. */
export function visit(element: Element, journey: Journey, place: Place): void {
  const name = element.localName ?? "";
  const where = called(element);
  journey.budget.element(where, place.depth);
  for (const attribute of LONG_ATTRIBUTES)
    journey.budget.text(where, element.getAttribute(attribute)?.length ?? 0);
  if (SILENT.has(name) && !(name === "symbol" && place.use)) return;
  const isShape = SHAPES.has(name);
  if (isShape) journey.count();
  const style = journey.style(element, place.style);
  const opacity = readShare(style.opacity);
  if (style.display === "none" || opacity === 0) {
    if (isShape || childElements(element).length > 0) journey.drop(where, "hidden");
    return;
  }
  const marks = opacity < 1 ? ([] as Mark[]) : place.marks;
  if (opacity < 1) place.marks.push({ kind: "veil", alpha: opacity, marks });
  const transform = style.transform === "" ? element.getAttribute("transform") : style.transform;
  const own = about(readTransform(transform, where), style["transform-origin"], place, () =>
    journey.warn(`${where}: its transform-origin is not read; write its transform without one`),
  );
  const matrix = compose(own, place.matrix);
  const trail = place.depth > 1 ? [...place.trail, namesOf(element)] : place.trail;
  let here: Place = { ...place, style, marks, trail, matrix };
  here = { ...here, clips: clipsOf(element, journey, here, where, visit) };
  if (style.filter !== "none")
    journey.warn(
      `${where}: its filter is not applied; it is drawn without. Draw blurs and shadows as shapes`,
    );
  if (style["mix-blend-mode"] !== "normal")
    journey.warn(`${where}: its blending "${style["mix-blend-mode"].slice(0, 20)}" is drawn as plain paint`);
  if (isShape) paintElement(element, journey, here, where);
  else if (name === "use") follow(element, journey, here, where, visit);
  else if (GROUPS.has(name)) enter(element, journey, here, where);
  else {
    journey.warn(`${where}: a <${name.slice(0, 40)}> is not drawn${INSTEAD[name] ?? ""}`);
    journey.drop(where, "unsupported");
  }
}

/** A transform about its origin. */
function about(transform: Matrix, origin: string, { viewport }: Place, unread: () => void): Matrix {
  if (origin === "" || transform === identity) return transform;
  const at = readOrigin(origin, viewport ?? viewportOf(100, 100));
  if (!at) unread();
  const [x, y] = at ?? [0, 0];
  return compose(compose([1, 0, 0, 1, -x, -y], transform), [1, 0, 0, 1, x, y]);
}

function enter(element: Element, journey: Journey, here: Place, where: string): void {
  const { use: _, ...inside } = here;
  let { matrix, viewport, clips } = inside;
  if (element.localName === "svg" || element.localName === "symbol") {
    const window = windowOf(element, viewport, where, here.use);
    const overflow = here.style.overflow;
    // The page itself is no clip: a drawing that reaches beyond it is taken whole.
    if (viewport && overflow !== "visible" && overflow !== "auto")
      clips = [...clips, frameOf(window, matrix)];
    matrix = compose(insideOf(window), matrix);
    viewport = window.viewport;
  }
  for (const child of childrenOf(element))
    visit(child, journey, { ...inside, matrix, viewport, clips, depth: here.depth + 1 });
}

/** All children; of a `switch`, the first that asks for nothing special. */
function childrenOf(element: Element): readonly Element[] {
  const children = childElements(element);
  if (element.localName !== "switch") return children;
  const plain = children.find(
    (child) => child.localName !== "foreignObject" && !child.getAttribute("requiredExtensions"),
  );
  return plain ? [plain] : [];
}

/** What shows through a nested page. */
function frameOf({ x, y, width, height }: Window, matrix: Place["matrix"]): Clip {
  const [a, b, c, d, e, f] = matrix;
  const to = sketch();
  const corners = [x, y, x + width, y, x + width, y + height, x, y + height];
  for (let i = 0; i < 8; i += 2) {
    const [px, py] = [corners[i]!, corners[i + 1]!];
    (i === 0 ? to.move : to.line)(a * px + c * py + e, b * px + d * py + f);
  }
  to.close();
  return { regions: [{ outline: to.done(), rule: "nonzero", clips: [] }] };
}
