import { type Element, XMLSerializer } from "@xmldom/xmldom";
import { parseSvg } from "./parse.ts";
import { placesOf } from "./places.ts";
import { SHAPE_NAMES } from "./shapes.ts";

/** Elements that may paint. */
const PAINTING: ReadonlySet<string> = new Set([...SHAPE_NAMES, "use", "text", "image", "foreignObject"]);
/** Elements whose content paints only where it is asked for. */
const STORES: ReadonlySet<string> = new Set(["defs", "symbol", "clipPath", "mask", "pattern", "marker"]);
/** Rounds in which what nobody asks for any more is taken out. */
const ROUNDS = 8;

/**
 * The text of a drawing with only those painting elements left that are at `places` (see {@link placesOf}), and of
 * what is stored for use only what they need.
 */
export function keepOnly(svg: string, places: ReadonlySet<number>): string {
  const root = parseSvg(svg);
  const order = placesOf(root);
  for (const [element, place] of order) {
    if (!PAINTING.has(element.localName ?? "") || places.has(place) || isStored(element)) continue;
    element.parentNode?.removeChild(element);
  }
  for (let round = 0; round < ROUNDS; round++) {
    const text = new XMLSerializer().serializeToString(root);
    const asked = new Set(Array.from(text.matchAll(/#([^"')\s]{1,200})/g), (match) => match[1]!));
    if (!dropUnasked(root, asked)) return text;
  }
  return new XMLSerializer().serializeToString(root);
}

function isStored(element: Element): boolean {
  for (let up = element.parentNode; up?.nodeType === 1; up = up.parentNode)
    if (STORES.has((up as Element).localName ?? "")) return true;
  return false;
}

/** Takes out stored elements that have an id which nothing names. Whether any was. */
function dropUnasked(root: Element, asked: ReadonlySet<string>): boolean {
  let dropped = false;
  for (const element of placesOf(root).keys()) {
    const name = element.localName ?? "";
    const inDefs = (element.parentNode as Element | null)?.localName === "defs";
    const stored =
      (inDefs && name !== "style") || /^(symbol|clipPath|mask|pattern|marker|filter|\w+Gradient)$/.test(name);
    if (!stored || asked.has(element.getAttribute("id") ?? "")) continue;
    if (
      placesOf(element).size > 1 &&
      [...placesOf(element).keys()].some((one) => asked.has(one.getAttribute("id") ?? ""))
    )
      continue;
    element.parentNode?.removeChild(element);
    dropped = true;
  }
  return dropped;
}
