import type { Element } from "@xmldom/xmldom";
import { compose, identity } from "../../geometry/matrix.ts";
import type { Journey, Painted, Place } from "./journey.ts";
import { budget } from "./limits.ts";
import { readMeasure } from "./measure.ts";
import { hrefOf } from "./paint.ts";
import { paintElement } from "./paint-element.ts";
import { called, childElements } from "./parse.ts";
import { SHAPE_NAMES } from "./shapes.ts";
import { firstStyle, readShare, styleOf } from "./style.ts";
import { readStyleSheet } from "./stylesheet.ts";
import { readTransform } from "./transform.ts";
import { viewportOf, windowOf } from "./viewport.ts";

/** What a walk through a drawing finds, in paint order. */
export interface Walk {
  readonly painted: readonly Painted[];
  /** The page that a viewer shows: from the origin, in the coordinates of the root. */
  readonly page: { readonly width: number; readonly height: number };
  readonly warnings: readonly string[];
}

const GROUPS: ReadonlySet<string> = new Set(["g", "a", "svg", "symbol"]);
/** Elements that paint nothing where they stand. */
const SILENT: ReadonlySet<string> = new Set([
  ...["defs", "symbol", "title", "desc", "metadata", "style", "linearGradient", "radialGradient", "stop"],
  ...["clipPath", "mask", "filter", "pattern", "marker", "view"],
]);
/** Attributes whose reading takes time in step with their length. */
const LONG_ATTRIBUTES = ["style", "class", "transform", "d", "points"] as const;
const SHAPES: ReadonlySet<string> = new Set(SHAPE_NAMES);

/** Everything a drawing paints. @throws SprigwrightError for attributes that cannot be read, and at the limits */
export function walk(root: Element): Walk {
  const painted: Painted[] = [];
  const warnings = new Set<string>();
  const warn = (what: string): void => void warnings.add(what);
  const ids = new Map<string, Element>();
  const sheets: string[] = [];
  survey(root, ids, sheets);
  const sheet = readStyleSheet(sheets);
  for (const selector of sheet.unread) warn(`<style>: the rule "${selector}" is not read`);
  const journey: Journey = {
    painted,
    warn,
    budget: budget(),
    byId: (id) => ids.get(id),
    means: new Map(),
    style: (element, parent) => styleOf(element, parent, sheet.rules),
  };
  visit(root, journey, {
    matrix: identity,
    style: firstStyle,
    viewport: undefined,
    opacity: 1,
    depth: 1,
    following: [],
  });
  const page = windowOf(root, undefined, called(root));
  return { painted, page, warnings: [...warnings] };
}

/** Finds ids and style sheets, without recursion: depth is not checked yet. */
function survey(root: Element, ids: Map<string, Element>, sheets: string[]): void {
  const waiting = [root];
  for (let element = waiting.pop(); element; element = waiting.pop()) {
    const id = element.getAttribute("id");
    if (id && !ids.has(id)) ids.set(id, element);
    if (element.localName === "style") sheets.push(element.textContent ?? "");
    waiting.push(...childElements(element).reverse());
  }
}

function visit(element: Element, journey: Journey, place: Place): void {
  const name = element.localName ?? "";
  const where = called(element);
  journey.budget.element(where, place.depth);
  for (const name of LONG_ATTRIBUTES) journey.budget.text(where, element.getAttribute(name)?.length ?? 0);
  const style = journey.style(element, place.style);
  if (style.display === "none") return;
  if (SILENT.has(name) && !(name === "symbol" && place.use)) return;
  const warn = (what: string): void => journey.warn(`${where}: ${what}`);
  for (const effect of ["clip-path", "mask", "filter"] as const)
    if (style[effect] !== "none") warn(`its ${effect} is not applied; it is drawn without`);
  if (style.transform !== "") warn("a transform in a style is not read; write it as an attribute");
  const own = readTransform(element.getAttribute("transform"), where);
  const here: Place = {
    ...place,
    style,
    matrix: compose(own, place.matrix),
    opacity: place.opacity * readShare(style.opacity),
  };
  if (here.opacity === 0) return;
  if (SHAPES.has(name)) paintElement(element, journey, here, where);
  else if (name === "use") follow(element, journey, here, where);
  else if (GROUPS.has(name)) enter(element, journey, here, where);
  else if (name === "switch") {
    const first = childElements(element)[0];
    if (first) visit(first, journey, { ...here, depth: here.depth + 1 });
  } else warn(`a <${name.slice(0, 40)}> is not drawn`);
}

function enter(element: Element, journey: Journey, here: Place, where: string): void {
  const { use: _, ...inside } = here;
  let { matrix, viewport } = inside;
  if (element.localName === "svg" || element.localName === "symbol") {
    const window = windowOf(element, viewport, where, here.use);
    matrix = compose(window.matrix, matrix);
    viewport = window.viewport;
  }
  for (const child of childElements(element))
    visit(child, journey, { ...inside, matrix, viewport, depth: here.depth + 1 });
}

function follow(element: Element, journey: Journey, here: Place, where: string): void {
  const href = hrefOf(element);
  const target = href.startsWith("#") ? journey.byId(href.slice(1)) : undefined;
  if (!target || here.following.includes(target)) {
    journey.warn(`${where}: ${whyNotFollowed(href, target)}`);
    return;
  }
  const viewport = here.viewport ?? viewportOf(100, 100);
  const x = readMeasure(element.getAttribute("x"), viewport.width, 0, `${where} > x`);
  const y = readMeasure(element.getAttribute("y"), viewport.height, 0, `${where} > y`);
  visit(target, journey, {
    ...here,
    matrix: compose([1, 0, 0, 1, x, y], here.matrix),
    depth: here.depth + 1,
    following: [...here.following, target],
    use: element,
  });
}

function whyNotFollowed(href: string, target: Element | undefined): string {
  const name = `"${href.slice(0, 40)}"`;
  if (target) return `it repeats itself through ${name}; it is left out there`;
  if (href.startsWith("#") || href === "") return `what it repeats, ${name}, is not in the file`;
  return "it points outside the file, which is never fetched";
}
