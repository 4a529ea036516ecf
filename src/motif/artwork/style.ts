import type { Element } from "@xmldom/xmldom";
import { isRead, readDeclarations } from "./declarations.ts";

/** Properties that children take over, with their first values (SVG 2 and CSS). */
const INHERITED = {
  color: "#000000",
  fill: "#000000",
  "fill-rule": "nonzero",
  "fill-opacity": "1",
  "clip-rule": "nonzero",
  stroke: "none",
  "stroke-width": "1",
  "stroke-linecap": "butt",
  "stroke-linejoin": "miter",
  "stroke-miterlimit": "4",
  "stroke-opacity": "1",
  "stroke-dasharray": "none",
  "stroke-dashoffset": "0",
  "paint-order": "normal",
  "marker-start": "none",
  "marker-mid": "none",
  "marker-end": "none",
  visibility: "visible",
} as const;

/** Properties that hold for one element alone. */
const OWN = {
  opacity: "1",
  display: "inline",
  overflow: "",
  "clip-path": "none",
  mask: "none",
  filter: "none",
  transform: "",
  "transform-origin": "",
  "vector-effect": "none",
  "mix-blend-mode": "normal",
  "stop-color": "#000000",
  "stop-opacity": "1",
} as const;

/** The properties that are read, each with its value as text. */
export type Style = Readonly<Record<keyof typeof INHERITED | keyof typeof OWN, string>>;

/** What the outermost element inherits. */
export const firstStyle: Style = { ...INHERITED, ...OWN };

/** Where an attribute of the same name has a syntax of its own, or none. */
const NO_ATTRIBUTE: ReadonlySet<string> = new Set(["transform"]);

/** Declarations from style sheets that hold for an element, and those of them that are `!important`. */
export interface Ruled {
  readonly plain: ReadonlyMap<string, string>;
  readonly important: ReadonlyMap<string, string>;
}
export type Rules = (element: Element) => Ruled;

/**
 * The style of an element, after the cascade of CSS: important rules, its `style` attribute, style sheets,
 * presentation attributes, then what it inherits. `passed` is told of paints that mean nothing.
 */
export function styleOf(
  element: Element,
  parent: Style,
  rules: Rules,
  passed: (name: string, value: string) => void,
): Style {
  const inline = readDeclarations(element.getAttribute("style") ?? "");
  const sheet = rules(element);
  const style: Record<string, string> = { ...parent, ...OWN };
  const first: Record<string, string> = { ...style };
  const put = (name: string, value: string): void => {
    const given = value.trim();
    if (!Object.hasOwn(firstStyle, name) || given === "") return;
    const known = name as keyof Style;
    if (!isRead(name, given)) passed(name, given);
    else if (given === "inherit") style[name] = parent[known];
    else if (given === "unset") style[name] = first[name]!;
    else style[name] = given === "initial" ? firstStyle[known] : given;
  };
  const { attributes } = element;
  for (let i = 0; i < attributes.length; i++) {
    const { name, value } = attributes.item(i)!;
    if (!NO_ATTRIBUTE.has(name)) put(name, value);
  }
  for (const layer of [sheet.plain, inline.plain, sheet.important, inline.important])
    for (const [name, value] of layer) put(name, value);
  for (const [name, value] of inline.unread)
    if (!inline.plain.has(name) && !inline.important.has(name)) passed(name, value);
  return style as Style;
}

/** A share as `0.4` or `40%`, held to 0 to 1; text that is no number counts as 1. */
export function readShare(text: string): number {
  const number = text.endsWith("%") ? Number(text.slice(0, -1)) / 100 : Number(text);
  return Number.isFinite(number) ? Math.min(1, Math.max(0, number)) : 1;
}
