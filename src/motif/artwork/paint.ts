import type { Element } from "@xmldom/xmldom";
import { bytesOf, type FlatColor, hexOf, readColor } from "./color.ts";
import { childElements } from "./parse.ts";
import { readDeclarations } from "./style.ts";

/** What a paint needs to know of its drawing. */
export interface PaintSource {
  /** The element with an id of this file. */
  readonly byId: (id: string) => Element | undefined;
  /** Flat colours of gradients that were met before. */
  readonly means: Map<Element, FlatColor>;
  /** Takes a sentence about what was changed or left out. */
  readonly warn: (what: string) => void;
}

/** A `fill` or `stroke` as one flat colour; undefined for none. `current` is the value of `color`. */
export function readPaint(text: string, current: string, from: PaintSource): FlatColor | undefined {
  if (text === "none") return undefined;
  if (/^currentcolor$/i.test(text)) return readColor(current) ?? { fill: "#000000", alpha: 1 };
  const url = /^url\(\s*["']?([^"')]{0,200})["']?\s*\)\s*(.*)$/.exec(text.slice(0, 300));
  if (url) return readReference(url[1]!.trim(), url[2]!.trim(), current, from);
  const color = readColor(text);
  if (color) return color;
  from.warn(`its paint "${text.slice(0, 40)}" is not read, so it is drawn black`);
  return { fill: "#000000", alpha: 1 };
}

function readReference(
  target: string,
  otherwise: string,
  current: string,
  from: PaintSource,
): FlatColor | undefined {
  const element = target.startsWith("#") ? from.byId(target.slice(1)) : undefined;
  const name = element?.localName ?? "";
  if (element && (name === "linearGradient" || name === "radialGradient")) {
    const mean = from.means.get(element) ?? meanOfStops(element, from.byId);
    if (mean) {
      from.means.set(element, mean);
      from.warn(`its gradient "${target}" is flattened to the mean of its stops, ${mean.fill}`);
      return mean;
    }
  }
  if (otherwise !== "") return readPaint(otherwise, current, from);
  from.warn(
    element && name !== ""
      ? `its paint "${target}" is a <${name}>, which is not drawn`
      : `its paint "${target}" is not in the file, so it is not drawn`,
  );
  return undefined;
}

/** The mean colour of a gradient's stops, each channel for itself; stops may come from another gradient by `href`. */
function meanOfStops(gradient: Element, byId: PaintSource["byId"]): FlatColor | undefined {
  let holder: Element | undefined = gradient;
  for (let hops = 0; holder && hops < 8; hops++) {
    const stops = childElements(holder).filter((child) => child.localName === "stop");
    if (stops.length > 0) return meanOf(stops.map(stopColor));
    const href = hrefOf(holder);
    holder = href.startsWith("#") ? byId(href.slice(1)) : undefined;
  }
  return undefined;
}

function stopColor(stop: Element): string {
  const value =
    readDeclarations(stop.getAttribute("style") ?? "").get("stop-color") ?? stop.getAttribute("stop-color");
  return readColor(value ?? "")?.fill ?? "#000000";
}

function meanOf(fills: readonly string[]): FlatColor {
  const all = fills.map(bytesOf);
  const mean = (channel: 0 | 1 | 2): number =>
    all.reduce((sum, bytes) => sum + bytes[channel], 0) / all.length;
  return { fill: hexOf(mean(0), mean(1), mean(2)), alpha: 1 };
}

/** Where an element points, by `href` or its older spelling. */
export const hrefOf = (element: Element): string =>
  (
    element.getAttribute("href") ||
    element.getAttributeNS("http://www.w3.org/1999/xlink", "href") ||
    ""
  ).trim();
