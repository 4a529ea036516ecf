import type { Element } from "@xmldom/xmldom";
import type { Named } from "./journey.ts";
import { classesOf } from "./selector.ts";

/**
 * What an element is called: the label that an editor shows for it (`label` in the editor's own namespace, or
 * `data-name`), before its id, which machines give; and its classes.
 */
export function namesOf(element: Element): Named {
  const [labels, others]: string[][] = [[], []];
  for (let i = 0; i < element.attributes.length; i++) {
    const { nodeName, localName, value } = element.attributes.item(i)!;
    if (value === "") continue;
    if (localName === "label" && nodeName.includes(":")) labels!.push(plain(value));
    else if (nodeName === "data-name") others!.unshift(plain(value));
    else if (nodeName === "id") others!.push(plain(value), value);
  }
  return { names: [...new Set([...labels!, ...others!])], classes: classesOf(element) };
}

/** Some programs write what an id may not hold by its number: `Sail_x0020_Boat`. */
const plain = (name: string): string =>
  name.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));

/** Where an element points, by `href` or its older spelling. */
export const hrefOf = (element: Element): string =>
  (
    element.getAttribute("href") ||
    element.getAttributeNS("http://www.w3.org/1999/xlink", "href") ||
    element.getAttribute("xlink:href") ||
    ""
  ).trim();
