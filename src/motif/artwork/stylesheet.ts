import type { Element } from "@xmldom/xmldom";
import { firstStyle, type Rules, readDeclarations } from "./style.ts";

interface Rule {
  readonly selector: string;
  readonly declarations: ReadonlyMap<string, string>;
}

type BySelector = Map<string, { readonly order: number; readonly declarations: Map<string, string> }>;

/** The parts of a style sheet that drawing programs write. */
export interface StyleSheet {
  readonly rules: Rules;
  /** Selectors and rules that were passed over. */
  readonly unread: readonly string[];
}

/** A type, a class, an id, or a star: what `export as SVG` writes. */
const SIMPLE = /^(?:\*|[.#]?[\w-]{1,100})$/;

/**
 * Reads the text of `<style>` elements: rules with simple selectors (`path`, `.cls-1`, `#stem`, `*`), alone or in
 * lists. An id beats a class, which beats a type; among equals the later rule wins.
 */
export function readStyleSheet(texts: readonly string[]): StyleSheet {
  const found: Rule[] = [];
  const unread: string[] = [];
  for (const text of texts)
    for (const block of withoutComments(text).split("}")) {
      const brace = block.indexOf("{");
      if (brace < 0) continue;
      const declarations = readDeclarations(block.slice(brace + 1));
      for (const selector of block
        .slice(0, brace)
        .split(",")
        .map((part) => part.trim()))
        if (SIMPLE.test(selector)) found.push({ selector, declarations });
        else unread.push(selector.slice(0, 60));
    }
  const bySelector: BySelector = new Map();
  found.forEach(({ selector, declarations }, order) => {
    const merged = bySelector.get(selector)?.declarations ?? new Map<string, string>();
    for (const [name, value] of declarations) if (Object.hasOwn(firstStyle, name)) merged.set(name, value);
    bySelector.set(selector, { order, declarations: merged });
  });
  return { rules: (element) => declarationsFor(element, bySelector), unread };
}

function declarationsFor(element: Element, bySelector: BySelector): ReadonlyMap<string, string> {
  const merged = new Map<string, string>();
  if (bySelector.size === 0) return merged;
  const take = (one: { readonly declarations: ReadonlyMap<string, string> } | undefined): void => {
    for (const [name, value] of one?.declarations ?? []) merged.set(name, value);
  };
  take(bySelector.get("*"));
  take(bySelector.get(element.localName ?? ""));
  (element.getAttribute("class") ?? "")
    .split(/\s+/)
    .flatMap((name) => bySelector.get(`.${name}`) ?? [])
    .sort((a, b) => a.order - b.order) // the later rule wins, whatever the order of the class names
    .forEach(take);
  take(bySelector.get(`#${element.getAttribute("id") ?? ""}`));
  return merged;
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
