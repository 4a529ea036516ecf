import type { Element } from "@xmldom/xmldom";

/** Properties that children take over, with their first values (SVG 2 and CSS). */
const INHERITED = {
  color: "#000000",
  fill: "#000000",
  "fill-rule": "nonzero",
  "fill-opacity": "1",
  stroke: "none",
  "stroke-width": "1",
  "stroke-linecap": "butt",
  "stroke-linejoin": "miter",
  "stroke-miterlimit": "4",
  "stroke-opacity": "1",
  "stroke-dasharray": "none",
  visibility: "visible",
} as const;

/** Properties that hold for one element alone. */
const OWN = {
  opacity: "1",
  display: "inline",
  "clip-path": "none",
  mask: "none",
  filter: "none",
  transform: "",
} as const;

/** The properties that are read, each with its value as text. */
export type Style = Readonly<Record<keyof typeof INHERITED | keyof typeof OWN, string>>;

/** What the outermost element inherits. */
export const firstStyle: Style = { ...INHERITED, ...OWN };

/** Declarations from style sheets that hold for an element. */
export type Rules = (element: Element) => ReadonlyMap<string, string>;

/**
 * The style of an element: its `style` attribute before style sheets before presentation attributes before what
 * it inherits.
 */
export function styleOf(element: Element, parent: Style, rules: Rules): Style {
  const inline = readDeclarations(element.getAttribute("style") ?? "");
  const sheet = rules(element);
  const style: Record<string, string> = { ...parent, ...OWN };
  for (const name of Object.keys(style) as (keyof Style)[]) {
    // The `transform` attribute has a syntax of its own, and is read as what it is.
    const attribute = name === "transform" ? null : element.getAttribute(name);
    const given = (inline.get(name) ?? sheet.get(name) ?? attribute)?.trim();
    if (given === undefined || given === "") continue;
    if (given === "inherit" || given === "unset")
      style[name] = given === "inherit" ? parent[name] : style[name]!;
    else style[name] = given === "initial" ? firstStyle[name] : given;
  }
  return style as Style;
}

/** `name: value` pairs, as a `style` attribute and a rule's braces hold them. */
export function readDeclarations(text: string): Map<string, string> {
  const found = new Map<string, string>();
  for (const piece of text.split(";")) {
    const colon = piece.indexOf(":");
    if (colon < 0) continue;
    const value = piece.slice(colon + 1).trim();
    found.set(
      piece.slice(0, colon).trim().toLowerCase(),
      value.toLowerCase().endsWith("!important") ? value.slice(0, -"!important".length).trim() : value,
    );
  }
  return found;
}

/** A share as `0.4` or `40%`, held to 0 to 1; text that is no number counts as 1. */
export function readShare(text: string): number {
  const number = text.endsWith("%") ? Number(text.slice(0, -1)) / 100 : Number(text);
  return Number.isFinite(number) ? Math.min(1, Math.max(0, number)) : 1;
}
