import type { Element } from "@xmldom/xmldom";
import { compose } from "../../geometry/matrix.ts";
import type { Visit } from "./clip-path.ts";
import type { Journey, Place } from "./journey.ts";
import { readMeasure } from "./measure.ts";
import { hrefOf } from "./names.ts";
import { viewportOf } from "./viewport.ts";

/** Walks what a `use` repeats, where it puts it. */
export function follow(element: Element, journey: Journey, here: Place, where: string, visit: Visit): void {
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
    holder: here.holder ?? element,
    use: element,
  });
}

function whyNotFollowed(href: string, target: Element | undefined): string {
  const name = `"${href.slice(0, 40)}"`;
  if (target) return `it repeats itself through ${name}; it is left out there`;
  if (href.startsWith("#") || href === "") return `what it repeats, ${name}, is not in the file`;
  return "it points outside the file, which is never fetched";
}
