import { badInput } from "../../errors/catalogue.ts";
import { compose, identity, type Matrix } from "../../geometry/matrix.ts";
import { cosTurns, sinTurns } from "../../seed/trigonometry.ts";
import { readMeasure } from "./measure.ts";
import type { Viewport } from "./viewport.ts";

const shear = (degrees: number): number => sinTurns(degrees / 360) / cosTurns(degrees / 360);

/** Each function of a `transform` list, from its numbers; undefined when their count is wrong. */
const FUNCTIONS: Readonly<Record<string, (n: readonly number[]) => Matrix | undefined>> = {
  matrix: (n) => (n.length === 6 ? (n as unknown as Matrix) : undefined),
  translate: ([x, y = 0, ...more]) => (x !== undefined && more.length === 0 ? [1, 0, 0, 1, x, y] : undefined),
  scale: ([x, y = x, ...more]) =>
    x !== undefined && y !== undefined && more.length === 0 ? [x, 0, 0, y, 0, 0] : undefined,
  rotate: ([angle, cx = 0, cy = 0, ...more]) => {
    if (angle === undefined || more.length > 0) return undefined;
    const c = cosTurns(angle / 360);
    const s = sinTurns(angle / 360);
    return [c, s, -s, c, cx - c * cx + s * cy, cy - s * cx - c * cy];
  },
  skewX: ([angle, ...more]) =>
    angle !== undefined && more.length === 0 ? [1, 0, shear(angle), 1, 0, 0] : undefined,
  skewY: ([angle, ...more]) =>
    angle !== undefined && more.length === 0 ? [1, shear(angle), 0, 1, 0, 0] : undefined,
};

/**
 * A `transform`, attribute or style, as one matrix; angles are in degrees, as SVG has them; `px` and `deg` may be
 * written out, as styles have them.
 * @throws SprigwrightError `bad-transform`
 */
export function readTransform(text: string | null, where: string): Matrix {
  let matrix = identity;
  if (text === null || text === "none") return matrix;
  // Split rather than matched, so that no text of any length takes more than one pass.
  const calls = text.split(")");
  const rest = calls.pop() ?? "";
  for (const call of calls) {
    const [name = "", inside, ...more] = call.split("(");
    const numbers = (inside ?? "")
      .split(/[\s,]+/)
      .filter(Boolean)
      .map((word) => Number(word.length > 60 ? word : word.replace(/(?:px|deg)$/, "")));
    const make =
      Object.hasOwn(FUNCTIONS, name.replace(/[\s,]/g, "")) && FUNCTIONS[name.replace(/[\s,]/g, "")];
    const read = make && more.length === 0 && numbers.every(Number.isFinite) ? make(numbers) : undefined;
    if (!read) throw badTransform(where, `${call})`);
    matrix = compose(read, matrix); // the last function of the list is done first
  }
  if (rest.replace(/[\s,]/g, "") !== "") throw badTransform(where, rest);
  return matrix;
}

const SIDES: Readonly<Record<string, string>> = {
  left: "0%",
  top: "0%",
  center: "50%",
  right: "100%",
  bottom: "100%",
};

/**
 * A `transform-origin`: lengths, percentages of the page, or sides of it, x before y unless sides say otherwise
 * (CSS Transforms 1, section 6.1, for elements without a box of their own). Undefined for what cannot be read.
 */
export function readOrigin(text: string, viewport: Viewport): readonly [x: number, y: number] | undefined {
  const words = text.trim().toLowerCase().slice(0, 200).split(/\s+/);
  const turned = /^(?:top|bottom)$/.test(words[0]!) || /^(?:left|right)$/.test(words[1] ?? "");
  const [x = "center", y = "center"] = turned ? [words[1], words[0]] : words;
  try {
    return [
      readMeasure(SIDES[x] ?? x, viewport.width, 0, "transform-origin"),
      readMeasure(SIDES[y] ?? y, viewport.height, 0, "transform-origin"),
    ];
  } catch {
    return undefined;
  }
}

const badTransform = (where: string, text: string): Error =>
  badInput(
    "bad-transform",
    `${where} > transform`,
    `"${text.trim().slice(0, 40)}" is not a transform`,
    "use matrix, translate, scale, rotate, skewX and skewY with plain numbers, angles in degrees",
  );
