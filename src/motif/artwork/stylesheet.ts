import type { Element } from "@xmldom/xmldom";
import { blocksOf } from "./blocks.ts";
import { type Declarations, readDeclarations } from "./declarations.ts";
import { LIMITS, tooLarge } from "./limits.ts";
import { classesOf, readSelector, type Selector, selects } from "./selector.ts";
import { firstStyle, type Ruled, type Rules } from "./style.ts";

interface Rule {
  readonly selector: Selector;
  readonly declarations: Declarations;
  readonly order: number;
}

/** The parts of style sheets that drawing programs write. */
export interface StyleSheet {
  readonly rules: Rules;
  /** Selectors and rules that were passed over. */
  readonly unread: readonly string[];
}

/**
 * Reads the text of `<style>` elements: rules for types, classes, ids and their nesting (`path.leaf`, `#crew path`,
 * `g > .sail`), alone or in lists. The heavier selector wins, among equals the later rule, and `!important` over all.
 * @throws SprigwrightError `artwork-too-large`
 */
export function readStyleSheet(texts: readonly string[]): StyleSheet {
  const unread: string[] = [];
  // By the id, class or type that the last step asks for, so that an element looks at few rules.
  const byKey = new Map<string, Rule[]>();
  let order = 0;
  for (const { head, body } of texts.flatMap(blocksOf)) {
    if (head.startsWith("@")) {
      unread.push(head.slice(0, 60));
      continue;
    }
    const declarations = readDeclarations(body);
    for (const [name, value] of declarations.unread)
      if (!declarations.plain.has(name)) unread.push(`${name}: ${value.slice(0, 40)}`);
    if (!concerns(declarations)) continue;
    for (const text of head.split(",").map((part) => part.trim())) {
      const selector = readSelector(text);
      if (!selector) {
        unread.push(text.slice(0, 60));
        continue;
      }
      if (++order > LIMITS.rules) throw tooLarge("svg > <style>", `more than ${LIMITS.rules} rules`);
      const last = selector.steps.at(-1)!;
      const key = last.id !== "" ? `#${last.id}` : last.classes[0] ? `.${last.classes[0]}` : last.type;
      const listed = byKey.get(key);
      if (listed) listed.push({ selector, declarations, order });
      else byKey.set(key, [{ selector, declarations, order }]);
    }
  }
  let trials = 0;
  const tried = (): void => {
    if (++trials > LIMITS.trials)
      throw tooLarge("svg > <style>", `more than ${LIMITS.trials} trials of its rules`);
  };
  return { rules: byKey.size === 0 ? () => NONE : (element) => ruled(element, byKey, tried), unread };
}

const NONE: Ruled = { plain: new Map(), important: new Map() };

function ruled(element: Element, byKey: ReadonlyMap<string, readonly Rule[]>, tried: () => void): Ruled {
  const id = element.getAttribute("id");
  const keys = ["", element.localName ?? "", ...classesOf(element).map((name) => `.${name}`)];
  if (id) keys.push(`#${id}`);
  const found = [...new Set(keys)]
    .flatMap((key) => byKey.get(key) ?? [])
    .filter((rule) => selects(rule.selector, element, tried))
    .sort((a, b) => a.selector.weight - b.selector.weight || a.order - b.order);
  const merged = { plain: new Map<string, string>(), important: new Map<string, string>() };
  for (const { declarations } of found)
    for (const kind of ["plain", "important"] as const)
      for (const [name, value] of declarations[kind]) merged[kind].set(name, value);
  return merged;
}

/** Whether a rule says anything about what is drawn. */
const concerns = ({ plain, important }: Declarations): boolean =>
  [...plain.keys(), ...important.keys()].some((name) => Object.hasOwn(firstStyle, name));
