import type { Element } from "@xmldom/xmldom";
import { badInput } from "../../errors/catalogue.ts";
import { drawArc, drawEllipse } from "../../geometry/arc.ts";
import { readPathData } from "../../geometry/path-data.ts";
import { type Runs, type Sketch, sketch } from "../../geometry/sketch.ts";
import { readMeasure, readNumbers } from "./measure.ts";
import type { Viewport } from "./viewport.ts";

interface Given {
  /** A length attribute: `along` says what a percentage is of. */
  readonly number: (name: string, along: "width" | "height" | "diagonal", fallback?: number) => number;
  readonly has: (name: string) => boolean;
}

/** The elements that draw, each from its own attributes. */
const SHAPES: Readonly<Record<string, (to: Sketch, given: Given) => void>> = {
  rect(to, { number, has }) {
    const [x, y] = [number("x", "width"), number("y", "height")];
    const [w, h] = [number("width", "width"), number("height", "height")];
    if (w <= 0 || h <= 0) return;
    const across = number("rx", "width");
    const down = number("ry", "height");
    // A radius that is not given is the other one; neither passes half a side (SVG 2, section 10.2).
    const rx = Math.min(Math.max(0, has("rx") ? across : down), w / 2);
    const ry = Math.min(Math.max(0, has("ry") ? down : across), h / 2);
    drawRect(to, x, y, w, h, rx, ry);
  },
  circle(to, { number }) {
    const r = number("r", "diagonal");
    if (r > 0) drawEllipse(to, number("cx", "width"), number("cy", "height"), r, r);
  },
  ellipse(to, { number, has }) {
    const across = number("rx", "width");
    const down = number("ry", "height");
    const [rx, ry] = [has("rx") ? across : down, has("ry") ? down : across];
    if (rx > 0 && ry > 0) drawEllipse(to, number("cx", "width"), number("cy", "height"), rx, ry);
  },
  line(to, { number }) {
    to.move(number("x1", "width"), number("y1", "height"));
    to.line(number("x2", "width"), number("y2", "height"));
  },
};

/** Names of the elements that draw something. */
export const SHAPE_NAMES: readonly string[] = [...Object.keys(SHAPES), "polyline", "polygon", "path"];

/** What a drawing element draws, in its own coordinates. @throws SprigwrightError for attributes that cannot be read */
export function shapeOutline(element: Element, viewport: Viewport, where: string): Runs {
  const name = element.localName ?? "";
  if (name === "path") return readPathData(element.getAttribute("d") ?? "", `${where} > d`);
  const to = sketch();
  if (name === "polygon" || name === "polyline") drawPoints(to, element, name === "polygon", where);
  else
    SHAPES[name]!(to, {
      number: (attribute, along, fallback = 0) =>
        readMeasure(element.getAttribute(attribute), viewport[along], fallback, `${where} > ${attribute}`),
      has: (attribute) => !["", "auto"].includes(element.getAttribute(attribute)?.trim() ?? ""),
    });
  return to.done();
}

function drawPoints(to: Sketch, element: Element, closed: boolean, where: string): void {
  const text = element.getAttribute("points") ?? "";
  const numbers = readNumbers(text);
  if (!numbers || numbers.length % 2 === 1)
    throw badInput(
      "bad-points",
      `${where} > points`,
      `"${text.slice(0, 40)}" is not a list of points`,
      'write x and y of every point, such as "0,0 10,0 5,8"',
    );
  if (numbers.length === 0) return;
  to.move(numbers[0]!, numbers[1]!);
  for (let i = 2; i < numbers.length; i += 2) to.line(numbers[i]!, numbers[i + 1]!);
  if (closed) to.close();
}

function drawRect(to: Sketch, x: number, y: number, w: number, h: number, rx: number, ry: number): void {
  const round = rx > 0 && ry > 0;
  const [ax, ay] = round ? [rx, ry] : [0, 0];
  const corner = (cx: number, cy: number): void =>
    drawArc(to, { rx, ry, turn: 0, large: false, sweep: true, x: cx, y: cy });
  to.move(x + ax, y);
  to.line(x + w - ax, y);
  if (round) corner(x + w, y + ay);
  to.line(x + w, y + h - ay);
  if (round) corner(x + w - ax, y + h);
  to.line(x + ax, y + h);
  if (round) corner(x, y + h - ay);
  to.line(x, y + ay);
  if (round) corner(x + ax, y);
  to.close();
}
