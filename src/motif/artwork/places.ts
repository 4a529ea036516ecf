import type { Element } from "@xmldom/xmldom";
import { childElements } from "./parse.ts";

/** Elements of SVG by their place in the file: the root is 0, then in the order in which they open. */
export function placesOf(root: Element): ReadonlyMap<Element, number> {
  const places = new Map<Element, number>();
  const waiting = [root];
  for (let element = waiting.pop(); element; element = waiting.pop()) {
    places.set(element, places.size);
    waiting.push(...childElements(element).reverse());
  }
  return places;
}
