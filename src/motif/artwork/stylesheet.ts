import type { Element } from "@xmldom/xmldom";
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
  for (const { head, body } of texts.flatMap((text) => blocksOf(withoutComments(text)))) {
    if (head.startsWith("@")) {
      unread.push(head.slice(0, 60));
      continue;
    }
    const declarations = readDeclarations(body);
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
  const merged: Declarations = { plain: new Map(), important: new Map() };
  for (const { declarations } of found)
    for (const kind of ["plain", "important"] as const)
      for (const [name, value] of declarations[kind]) merged[kind].set(name, value);
  return merged;
}

/** Whether a rule says anything about what is drawn. */
const concerns = ({ plain, important }: Declarations): boolean =>
  [...plain.keys(), ...important.keys()].some((name) => Object.hasOwn(firstStyle, name));

/** Rules as what stands before their braces and in them; blocks within blocks (`@media`) stay in one piece. */
function blocksOf(text: string): { readonly head: string; readonly body: string }[] {
  const found: { head: string; body: string }[] = [];
  let [from, open, deep] = [0, 0, 0];
  for (let i = 0; i < text.length; i++) {
    const char = text[i]!;
    if (char === ";" && deep === 0) {
      const head = text.slice(from, i).trim(); // @import and @charset end so
      if (head.startsWith("@")) found.push({ head, body: "" });
      from = i + 1;
    } else if (char === "{" && deep++ === 0) open = i;
    else if (char === "}" && deep > 0 && --deep === 0) {
      found.push({ head: text.slice(from, open).trim(), body: text.slice(open + 1, i) });
      from = i + 1;
    }
  }
  return found;
}

function withoutComments(text: string): string {
  let kept = "";
  let from = 0;
  for (let at = text.indexOf("/*"); at >= 0; at = text.indexOf("/*", from)) {
    kept += text.slice(from, at);
    const end = text.indexOf("*/", at + 2);
    if (end < 0) return kept;
    from = end + 2;
  }
  return kept + text.slice(from);
}
