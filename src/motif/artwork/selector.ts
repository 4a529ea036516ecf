import type { Element } from "@xmldom/xmldom";

/** What one step of a selector asks of an element: `path.leaf#stem`. */
interface Step {
  readonly type: string;
  readonly id: string;
  readonly classes: readonly string[];
  /** How it stands to the step before it: anywhere within, or right inside. */
  readonly within: "any" | "parent";
}

/** A selector of types, classes, ids and stars, combined by blanks and `>`. */
export interface Selector {
  readonly steps: readonly Step[];
  /** How many ids, classes and types it names, as one number: what decides between rules (CSS Selectors 4). */
  readonly weight: number;
}

/** Most steps and most names in a step: drawings need two or three. */
const MOST = 8;
const STEP = /^(\*|[a-z][\w-]{0,60})?((?:[.#][\w-]{1,100}){0,8})$/i;

/** A selector, or undefined for one that asks for more than types, classes, ids and their nesting. */
export function readSelector(text: string): Selector | undefined {
  if (text.length > 400) return undefined;
  const words = text
    .replace(/\s*>\s*/g, " > ")
    .trim()
    .split(/\s+/);
  const steps: Step[] = [];
  let within: Step["within"] = "any";
  let weight = 0;
  for (const word of words) {
    if (word === ">") {
      if (steps.length === 0 || within === "parent") return undefined;
      within = "parent";
      continue;
    }
    const match = word === "" ? null : STEP.exec(word);
    if (!match) return undefined;
    const names = match[2]!.match(/[.#][\w-]+/g) ?? [];
    const ids = names.filter((name) => name.startsWith("#")).map((name) => name.slice(1));
    const classes = names.filter((name) => name.startsWith(".")).map((name) => name.slice(1));
    const type = match[1] === undefined || match[1] === "*" ? "" : match[1];
    if (ids.length > 1) return undefined;
    weight += ids.length * 10_000 + classes.length * 100 + (type === "" ? 0 : 1);
    steps.push({ type, id: ids[0] ?? "", classes, within });
    within = "any";
  }
  return steps.length === 0 || steps.length > MOST || within === "parent" ? undefined : { steps, weight };
}

/** Whether a selector means an element. `tried` is called for every element that is looked at. */
export function selects(selector: Selector, element: Element, tried: () => void): boolean {
  const { steps } = selector;
  const matches = (at: Element, index: number): boolean => {
    tried();
    const step = steps[index]!;
    if (!isMeant(step, at)) return false;
    if (index === 0) return true;
    for (let up = parentOf(at); up; up = parentOf(up)) {
      if (matches(up, index - 1)) return true;
      if (step.within === "parent") return false;
    }
    return false;
  };
  return matches(element, steps.length - 1);
}

function isMeant({ type, id, classes }: Step, element: Element): boolean {
  if (type !== "" && element.localName !== type) return false;
  if (id !== "" && element.getAttribute("id") !== id) return false;
  if (classes.length === 0) return true;
  const own = classesOf(element);
  return classes.every((name) => own.includes(name));
}

const parentOf = (element: Element): Element | null =>
  element.parentNode?.nodeType === 1 ? (element.parentNode as Element) : null;

/** The class names of an element. */
export const classesOf = (element: Element): readonly string[] =>
  (element.getAttribute("class") ?? "").split(/\s+/).filter(Boolean);
