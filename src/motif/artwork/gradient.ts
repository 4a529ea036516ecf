import type { Element } from "@xmldom/xmldom";
import { compose, type Matrix } from "../../geometry/matrix.ts";
import { bytesOf, type FlatColor, hexOf, readColor } from "./color.ts";
import { extentOf } from "./extent.ts";
import { readMeasure } from "./measure.ts";
import { hrefOf } from "./names.ts";
import type { PaintSource } from "./paint-source.ts";
import { childElements } from "./parse.ts";
import { sampleArea, sampleLine } from "./sample.ts";
import { readShare } from "./style.ts";
import { readTransform } from "./transform.ts";

interface Stop {
  readonly at: number;
  readonly color: readonly [red: number, green: number, blue: number];
  readonly alpha: number;
}

/**
 * The mean colour of a gradient over what it paints, and how much of what lies below it hides on the whole: taken at
 * some hundred places, channel by channel in sRGB, each place weighed by its opacity. A focus beside the centre is
 * passed over. Undefined without stops.
 */
export function meanOfGradient(element: Element, current: string, from: PaintSource): FlatColor | undefined {
  const chain = chainOf(element, from);
  const attribute = (name: string): string | null =>
    chain.find((one) => one.hasAttribute(name))?.getAttribute(name) ?? null;
  const stops = stopsOf(chain, current, from);
  if (stops.length === 0) return undefined;
  const place = placeOf(element.localName === "radialGradient", attribute, from);
  const spread = attribute("spreadMethod");
  const samples = place ? (from.kind === "fill" ? sampleArea : sampleLine)(from.outline) : [];
  let [red, green, blue, alpha, weight] = [0, 0, 0, 0, 0];
  const add = (t: number, share: number): void => {
    const shown = colorAt(stops, t);
    const w = share * shown.alpha;
    red += w * shown.color[0];
    green += w * shown.color[1];
    blue += w * shown.color[2];
    alpha += w;
    weight += share;
  };
  for (const { x, y, weight: share } of samples) add(spreadOf(place!(x, y), spread), share);
  // Where nothing can be sampled, the last stop fills it all (SVG 2, section 14.2.2).
  if (!(weight > 0)) add(1, 1);
  if (!(alpha > 0)) return { fill: hexOf(...stops[0]!.color), alpha: 0 };
  return { fill: hexOf(red / alpha, green / alpha, blue / alpha), alpha: alpha / weight };
}

/** The gradient and those it takes over from, by `href`. */
function chainOf(element: Element, { byId }: PaintSource): Element[] {
  const chain: Element[] = [];
  for (let at: Element | undefined = element; at && chain.length < 8 && !chain.includes(at); ) {
    chain.push(at);
    const href = hrefOf(at);
    at = href.startsWith("#") ? byId(href.slice(1)) : undefined;
  }
  return chain;
}

function stopsOf(chain: readonly Element[], current: string, { styleOf }: PaintSource): Stop[] {
  const children = (one: Element): Element[] =>
    childElements(one).filter((child) => child.localName === "stop");
  const holder = chain.find((one) => children(one).length > 0);
  let last = 0;
  return (holder ? children(holder) : []).slice(0, 256).map((stop) => {
    const style = styleOf(stop);
    const text = /^currentcolor$/i.test(style["stop-color"]) ? current : style["stop-color"];
    const color = readColor(text) ?? { fill: "#000000", alpha: 1 };
    last = Math.max(last, readShare(stop.getAttribute("offset") ?? "0"));
    return { at: last, color: bytesOf(color.fill), alpha: color.alpha * readShare(style["stop-opacity"]) };
  });
}

/** How far along the gradient a place is, 0 to 1 between its ends; undefined when the gradient has no extent. */
function placeOf(
  radial: boolean,
  attribute: (name: string) => string | null,
  { outline, viewport }: PaintSource,
): ((x: number, y: number) => number) | undefined {
  const onPage = attribute("gradientUnits") === "userSpaceOnUse";
  const box = extentOf([outline]);
  const measure = (name: string, along: "width" | "height" | "diagonal", share: number): number => {
    const whole = onPage ? viewport[along] : 1;
    return readMeasure(attribute(name), whole, share * whole, `gradient > ${name}`);
  };
  const own = readTransform(attribute("gradientTransform"), "gradient");
  const [a, b, c, d, e, f] = compose(
    own,
    onPage ? [1, 0, 0, 1, 0, 0] : [box.maxX - box.minX, 0, 0, box.maxY - box.minY, box.minX, box.minY],
  ) satisfies Matrix;
  const det = a * d - b * c;
  if (det === 0 || !Number.isFinite(det)) return undefined;
  const back = (x: number, y: number): readonly [number, number] => [
    (d * (x - e) - c * (y - f)) / det,
    (a * (y - f) - b * (x - e)) / det,
  ];
  if (radial) {
    const [cx, cy, r] = [
      measure("cx", "width", 0.5),
      measure("cy", "height", 0.5),
      measure("r", "diagonal", 0.5),
    ];
    if (!(r > 0)) return undefined;
    return (x, y) => {
      const [u, v] = back(x, y);
      return Math.sqrt((u - cx) * (u - cx) + (v - cy) * (v - cy)) / r;
    };
  }
  const [x1, y1] = [measure("x1", "width", 0), measure("y1", "height", 0)];
  const [dx, dy] = [measure("x2", "width", 1) - x1, measure("y2", "height", 0) - y1];
  const long = dx * dx + dy * dy;
  if (!(long > 0)) return undefined;
  return (x, y) => {
    const [u, v] = back(x, y);
    return ((u - x1) * dx + (v - y1) * dy) / long;
  };
}

function spreadOf(t: number, spread: string | null): number {
  if (!Number.isFinite(t)) return 1;
  if (spread === "repeat") return t - Math.floor(t);
  if (spread === "reflect") return Math.abs(t - 2 * Math.round(t / 2));
  return Math.min(1, Math.max(0, t));
}

function colorAt(stops: readonly Stop[], t: number): Omit<Stop, "at"> {
  const next = stops.findIndex((stop) => stop.at >= t);
  if (next <= 0) return stops[next < 0 ? stops.length - 1 : 0]!;
  const [p, q] = [stops[next - 1]!, stops[next]!];
  const s = q.at > p.at ? (t - p.at) / (q.at - p.at) : 1;
  const mix = (i: 0 | 1 | 2): number => p.color[i] + s * (q.color[i] - p.color[i]);
  return { color: [mix(0), mix(1), mix(2)], alpha: p.alpha + s * (q.alpha - p.alpha) };
}
