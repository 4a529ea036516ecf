import { badInput } from "../../errors/catalogue.ts";

/** CSS pixels in each unit of length (CSS Values 4); `em` and `ex` at the usual 16 px. */
const UNITS: Readonly<Record<string, number>> = {
  "": 1,
  px: 1,
  in: 96,
  cm: 96 / 2.54,
  mm: 96 / 25.4,
  q: 96 / 101.6,
  pt: 96 / 72,
  pc: 16,
  em: 16,
  ex: 8,
};

/**
 * A length attribute in the drawing's units; `whole` is what a percentage is of.
 * @throws SprigwrightError `bad-svg-length`
 */
export function readMeasure(text: string | null, whole: number, fallback: number, where: string): number {
  if (text === null || text.trim() === "" || text.trim() === "auto") return fallback;
  // No length needs more than 64 characters; the bound keeps the expression below from labouring.
  const match = text.length <= 64 && /^\s*([+-]?[\d.]+(?:e[+-]?\d+)?)\s*(%|[a-z]*)\s*$/i.exec(text);
  const number = match ? Number(match[1]) : Number.NaN;
  const unit = match ? match[2]!.toLowerCase() : "";
  const scale = unit === "%" ? whole / 100 : UNITS[unit];
  if (!Number.isFinite(number) || scale === undefined)
    throw badInput(
      "bad-svg-length",
      where,
      `"${text.slice(0, 40)}" is not a length that SVG knows`,
      'write a number, alone or with px, pt, mm, cm, in or %, such as "12.5"',
    );
  return number * scale;
}

/** A plain list of numbers, packed or not, as `points` and `viewBox` have it; undefined when it holds anything else. */
export function readNumbers(text: string): number[] | undefined {
  const number = /[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?/gi;
  if (text.replace(number, "").replace(/[\s,]+/g, "") !== "") return undefined;
  return (text.match(number) ?? []).map(Number);
}
