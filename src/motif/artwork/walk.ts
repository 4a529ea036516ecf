import type { Element } from "@xmldom/xmldom";
import { identity } from "../../geometry/matrix.ts";
import type { Journey, Mark } from "./journey.ts";
import { budget } from "./limits.ts";
import { called, childElements } from "./parse.ts";
import type { Dropped } from "./report.ts";
import { firstStyle, styleOf } from "./style.ts";
import { readStyleSheet } from "./stylesheet.ts";
import { windowOf } from "./viewport.ts";
import { visit } from "./visit.ts";

/** What a walk through a drawing finds. */
export interface Walk {
  /** In paint order. */
  readonly marks: readonly Mark[];
  /** Drawing elements that were met, those that `use` repeats included. */
  readonly shapes: number;
  /** The page that a viewer shows: from the origin, in the coordinates of the root. */
  readonly page: { readonly width: number; readonly height: number };
  readonly dropped: readonly Dropped[];
  readonly warnings: readonly string[];
}

/** Everything a drawing paints. @throws SprigwrightError for attributes that cannot be read, and at the limits */
export function walk(root: Element): Walk {
  const marks: Mark[] = [];
  const warnings = new Set<string>();
  const dropped: Dropped[] = [];
  let shapes = 0;
  const ids = new Map<string, Element>();
  const sheets: string[] = [];
  survey(root, ids, sheets);
  const sheet = readStyleSheet(sheets);
  for (const selector of sheet.unread)
    warnings.add(`<style>: the rule "${selector}" is not read; set what it says on the elements themselves`);
  const journey: Journey = {
    warn: (what) => void warnings.add(what),
    drop: (element, why) => void dropped.push({ element, why }),
    budget: budget(),
    byId: (id) => ids.get(id),
    clips: new Map(),
    style: (element, parent) =>
      styleOf(element, parent, sheet.rules, (name, value) => {
        const said = `its ${name} "${value.slice(0, 40)}" is no colour that is read`;
        warnings.add(`${called(element)}: ${said}; what was said before or around it holds`);
      }),
    count: () => void shapes++,
  };
  visit(root, journey, {
    ...{ matrix: identity, style: firstStyle, viewport: undefined, depth: 1 },
    ...{ marks, clips: [], trail: [], following: [] },
  });
  const page = windowOf(root, undefined, called(root));
  return { marks, shapes, page, dropped, warnings: [...warnings] };
}

/** Finds ids and style sheets, without recursion: depth is not checked yet. */
function survey(root: Element, ids: Map<string, Element>, sheets: string[]): void {
  const waiting = [root];
  for (let element = waiting.pop(); element; element = waiting.pop()) {
    const id = element.getAttribute("id");
    if (id && !ids.has(id)) ids.set(id, element);
    if (element.localName === "style") sheets.push(element.textContent ?? "");
    waiting.push(...childElements(element).reverse());
  }
}
