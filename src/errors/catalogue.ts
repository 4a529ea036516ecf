import { type ErrorParts, SprigwrightError } from "./error.ts";
import { nearestName } from "./nearest.ts";
import { synonymOf } from "./synonyms.ts";

const fault = (parts: ErrorParts): SprigwrightError => new SprigwrightError(parts);

/** A value as it should read in a message: short, and never more than a line. */
export function shown(value: unknown): string {
  if (value === null || !["string", "function", "object"].includes(typeof value)) return String(value);
  if (typeof value === "string") return JSON.stringify(value.length > 40 ? `${value.slice(0, 40)}…` : value);
  if (typeof value === "function") return "a function";
  if (Array.isArray(value)) return `a list of ${value.length}`;
  return `an object with ${
    Object.keys(value as object)
      .slice(0, 5)
      .join(", ") || "no keys"
  }`;
}

const listed = (names: readonly string[]): string =>
  names.length === 0 ? "none" : names.slice(0, 24).join(", ") + (names.length > 24 ? ", …" : "");

export const wrongType = (where: string, value: unknown, wanted: string): SprigwrightError =>
  fault({ code: "wrong-type", where, what: `${shown(value)} is not ${wanted}`, fix: `give ${wanted}` });

export const missingOption = (where: string, wanted: string): SprigwrightError =>
  fault({ code: "missing-option", where, what: "nothing was given", fix: `give ${wanted}` });

export const outOfRange = (
  where: string,
  value: number,
  range: { readonly min: number; readonly max: number },
  unit: string,
  code = "number-range",
): SprigwrightError => {
  const say = (n: number): string => (unit ? `${n} ${unit}` : String(n));
  return fault({
    code,
    where,
    what: `${say(value)} is outside ${say(range.min)} to ${say(range.max)}`,
    fix: `give a value from ${say(range.min)} to ${say(range.max)}`,
  });
};

/** An option, role, piece or colorway name that nobody knows. */
export const unknownName = (
  where: string,
  kind: string,
  given: string,
  known: readonly string[],
): SprigwrightError => {
  const near = (kind === "option" ? synonymOf(given, known) : undefined) ?? nearestName(given, known);
  return fault({
    code: `unknown-${kind.replace(/ /g, "-")}`,
    where,
    what: `there is no ${kind} ${shown(given)}`,
    fix: near ? `did you mean "${near}"? Known: ${listed(known)}` : `use one of: ${listed(known)}`,
  });
};

export const missingInk = (where: string, roles: readonly string[]): SprigwrightError =>
  fault({
    code: "missing-ink",
    where,
    what: `no ink for ${roles.map((r) => `"${r}"`).join(", ")}`,
    fix: "give every role that the pattern draws a colour, the ground included",
  });

export const badColor = (where: string, value: unknown, why = "is not a CSS colour"): SprigwrightError =>
  fault({
    code: "bad-color",
    where,
    what: `${shown(value)} ${why}`,
    fix: 'give an opaque CSS colour such as "#d9803c", "tomato" or "oklch(0.7 0.12 50)"',
  });

export const notWholePixels = (
  where: string,
  size: { readonly width: number; readonly height: number },
  dpi: number,
  nearest: { readonly sizes: readonly string[]; readonly dpis: readonly number[] },
): SprigwrightError =>
  fault({
    code: "not-whole-pixels",
    where,
    what: `a block of ${size.width / 1000} x ${size.height / 1000} mm is not a whole number of pixels at ${dpi} dpi`,
    fix: `${nearest.dpis.length > 0 ? `it is one at ${nearest.dpis.join(" or ")} dpi; ` : ""}nearest sizes that are at ${dpi}: ${nearest.sizes.join("; ")}; SVG, PDF, field views and pictures of a given width do not need whole pixels`,
  });

export const motifTooLarge = (where: string, what: string, fix: string): SprigwrightError =>
  fault({ code: "motif-too-large", where, what, fix });

export const badShape = (where: string, what: string, cause?: unknown): SprigwrightError =>
  fault({
    code: "bad-shape",
    where,
    what,
    fix: "return closed paths with finite coordinates in mm, one entry for each part",
    cause,
  });

export const pieceFailed = (where: string, cause: unknown): SprigwrightError =>
  fault({
    code: "piece-failed",
    where,
    what: `the piece threw: ${cause instanceof Error ? cause.message : shown(cause)}`,
    fix: "mend the piece, or report it to its author; the cause is attached",
    cause,
  });

export const unboundPiece = (where: string, use: string): SprigwrightError =>
  fault({
    code: "unbound-piece",
    where,
    what: `"${use}" was copied or parsed, so it no longer knows its definition`,
    fix: "build it through a kit that has the piece: createKit({ plugins }).build(recipe)",
  });

export const badInput = (
  code: string,
  where: string,
  what: string,
  fix: string,
  cause?: unknown,
): SprigwrightError => fault({ code, where, what, fix, cause });
