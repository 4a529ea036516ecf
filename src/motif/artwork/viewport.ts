import type { Element } from "@xmldom/xmldom";
import { badInput } from "../../errors/catalogue.ts";
import { compose, type Matrix } from "../../geometry/matrix.ts";
import { readMeasure, readNumbers } from "./measure.ts";

/** What percentages are of. */
export interface Viewport {
  readonly width: number;
  readonly height: number;
  /** √((width² + height²) / 2), for lengths that run neither way. */
  readonly diagonal: number;
}

/** A viewport of a size. */
export const viewportOf = (width: number, height: number): Viewport => ({
  width,
  height,
  diagonal: Math.sqrt((width * width + height * height) / 2),
});

/** What an element that sets up coordinates (`svg`, `symbol`) does to its content. */
export interface Window {
  /** From its content to its frame, whose corner is at x, y. */
  readonly fit: Matrix;
  readonly viewport: Viewport;
  /** Its frame, seen from outside. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** From the content of a window to the coordinates around it. */
export const insideOf = ({ fit, x, y }: Window): Matrix => compose(fit, [1, 0, 0, 1, x, y]);

const ALONG = { Min: 0, Mid: 0.5, Max: 1 } as const;

/**
 * Coordinates inside `svg` and `symbol` (SVG 2, section 8.2). `outer` undefined: the outermost, which sits at the
 * origin and is as large as its `viewBox` when it has no size of its own.
 */
export function windowOf(
  element: Element,
  outer: Viewport | undefined,
  where: string,
  use?: Element,
): Window {
  const box = viewBox(element, where);
  const size = (name: "width" | "height", own: number): number => {
    const given = use?.getAttribute(name) || element.getAttribute(name);
    const whole = outer ? outer[name] : own;
    return readMeasure(given, whole, whole, `${where} > ${name}`);
  };
  const width = size("width", box?.[2] ?? 100);
  const height = size("height", box?.[3] ?? 100);
  const placed = outer && element.localName === "svg";
  const x = placed ? readMeasure(element.getAttribute("x"), outer.width, 0, `${where} > x`) : 0;
  const y = placed ? readMeasure(element.getAttribute("y"), outer.height, 0, `${where} > y`) : 0;
  const frame = { x, y, width, height };
  if (!box) return { ...frame, fit: [1, 0, 0, 1, 0, 0], viewport: viewportOf(width, height) };
  const [bx, by, bw, bh] = box;
  const wanted = element.getAttribute("preserveAspectRatio") ?? "";
  const [, alongX = "Mid", alongY = "Mid"] =
    /^\s*(?:defer\s+)?x(Min|Mid|Max)Y(Min|Mid|Max)/.exec(wanted) ?? [];
  let [sx, sy] = [width / bw, height / bh];
  if (!wanted.includes("none")) {
    sx = wanted.includes("slice") ? Math.max(sx, sy) : Math.min(sx, sy);
    sy = sx;
  }
  const e = -bx * sx + (width - bw * sx) * ALONG[alongX as keyof typeof ALONG];
  const f = -by * sy + (height - bh * sy) * ALONG[alongY as keyof typeof ALONG];
  return { ...frame, fit: [sx, 0, 0, sy, e, f], viewport: viewportOf(bw, bh) };
}

function viewBox(element: Element, where: string): readonly [number, number, number, number] | undefined {
  const text = element.getAttribute("viewBox");
  if (text === null || text.trim() === "") return undefined;
  const numbers = readNumbers(text);
  if (numbers?.length !== 4 || numbers[2]! <= 0 || numbers[3]! <= 0)
    throw badInput(
      "bad-view-box",
      `${where} > viewBox`,
      `"${text.slice(0, 40)}" is not a box`,
      'write its corner, width and height, such as "0 0 32 32"',
    );
  return numbers as unknown as readonly [number, number, number, number];
}
