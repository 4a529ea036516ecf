import type { Element } from "@xmldom/xmldom";
import { badInput } from "../../errors/catalogue.ts";
import { type Cluster, spreads } from "./cluster.ts";
import { boxOfMarks } from "./frame.ts";
import { leavesOf, type Mark } from "./journey.ts";
import { namesOf } from "./names.ts";
import { childElements } from "./parse.ts";
import { placesOf } from "./places.ts";

const isGroup = (element: Element): boolean => ["g", "svg", "use", "a"].includes(element.localName ?? "");

/**
 * The groups at the top of a sheet that paint something, each as one motif. Groups around everything, such as a
 * layer, are opened. Undefined when there are no two, or something paints outside them; refused when `wanted`.
 * @throws SprigwrightError `no-groups`
 */
export function groupsOf(
  root: Element,
  marks: readonly Mark[],
  wanted: boolean,
): readonly Cluster[] | undefined {
  const painted = marks.flatMap(leavesOf);
  const places = placesOf(root);
  const holders = [...new Set(painted.map((one) => one.holder))];
  const holds = (group: Element, element: Element): boolean => {
    for (
      let up: Element | null = element;
      up;
      up = up.parentNode?.nodeType === 1 ? (up.parentNode as Element) : null
    )
      if (up === group) return true;
    return false;
  };
  const boxOf = (held: readonly Element[]) => boxOfMarks(painted.filter((one) => held.includes(one.holder)));
  const whole = boxOfMarks(marks);
  let top = root;
  let members: { readonly element: Element; readonly held: readonly Element[] }[] = [];
  for (;;) {
    members = childElements(top)
      .map((element) => ({ element, held: holders.filter((one) => holds(element, one)) }))
      .filter(({ held }) => held.length > 0)
      // A single shape over all of it is the sheet's paper, whatever group it is in.
      .filter(({ element, held }) => (isGroup(element) && held.length > 1) || !spreads(boxOf(held), whole));
    const [only] = members;
    if (members.length !== 1 || !only || !isGroup(only.element) || only.element.localName === "use") break;
    top = only.element;
  }
  const loose = members.find(({ element }) => !isGroup(element));
  if (members.length < 2 || loose) {
    if (!wanted) return undefined;
    throw badInput(
      "no-groups",
      "svg",
      loose
        ? `a <${loose.element.localName}> stands outside the groups`
        : "its shapes are not in two groups or more",
      'put every motif into a group of its own at the top of the file, or say by: "clusters"',
    );
  }
  return members.map(({ element, held }) => {
    const box = boxOf(held);
    return {
      name: namesOf(element).names[0] ?? "",
      longer: Math.max(box.maxX - box.minX, box.maxY - box.minY),
      places: new Set(held.map((one) => places.get(one)!)),
    };
  });
}
