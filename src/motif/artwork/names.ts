import type { Element } from "@xmldom/xmldom";
import type { Named } from "./journey.ts";
import { classesOf } from "./selector.ts";

/**
 * What an element is called: its id, the label that an editor keeps for it (`data-name`, or `label` in the editor's
 * own namespace), and its classes.
 */
export function namesOf(element: Element): Named {
  const names: string[] = [];
  const id = element.getAttribute("id");
  if (id) names.push(id);
  for (let i = 0; i < element.attributes.length; i++) {
    const { nodeName, localName, value } = element.attributes.item(i)!;
    const isLabel = nodeName === "data-name" || (localName === "label" && nodeName.includes(":"));
    if (isLabel && value !== "" && value !== id) names.push(value);
  }
  return { names, classes: classesOf(element) };
}

/** Where an element points, by `href` or its older spelling. */
export const hrefOf = (element: Element): string =>
  (
    element.getAttribute("href") ||
    element.getAttributeNS("http://www.w3.org/1999/xlink", "href") ||
    element.getAttribute("xlink:href") ||
    ""
  ).trim();
