import { badInput, outOfRange, wrongType } from "../../../errors/catalogue.ts";
import { isRecord, optional, readParams } from "../../../params/compound.ts";
import { integer, length, number } from "../../../params/kinds.ts";
import type { Param } from "../../../params/param.ts";
import { type Length, toMm } from "../../../units/length.ts";
import { readColor } from "../color.ts";
import type { Wish } from "./inks.ts";

/** A length, or pixels of the picture. */
export type PictureLength = Length | `${number}px`;

/** What {@link traceImage} does to a picture beside naming its roles. */
export interface TraceShaping {
  /** Longer side of all that is traced, 1 mm to 2 m. Give one of `size`, `width` and `dpi`. */
  readonly size?: Length;
  /** Width of the whole picture, its paper included, 1 mm to 20 m. */
  readonly width?: Length;
  /** Pixels an inch of the scan, 10 to 9600. Default: what the file says; where it says nothing, `size` is 30 mm. */
  readonly dpi?: number;
  /**
   * How many inks the drawing has, 1 to 24, the paper apart; or which, as colours. Default: as many as are found, up
   * to `mostInks`. Give a number where shades of one paint came out as two inks, or two near inks as one.
   */
  readonly inks?: number | readonly string[];
  /** Most inks that are found by themselves, 1 to 24; default 12. */
  readonly mostInks?: number;
  /**
   * What becomes of the paper, the colour that most of the picture's rim has: `"drop"` (default) leaves all of it
   * out, `"around"` keeps what the drawing encloses as an ink, such as a white sail; `"keep"` takes it for an ink like
   * any other. Or the paper's colour, where the rim does not show it. What is transparent is always left out.
   */
  readonly paper?: "drop" | "around" | "keep" | `#${string}`;
  /** How far outlines may lie from the edges that are seen, 0.1 to 20 pixels; default `"0.5px"`. More makes fewer nodes. */
  readonly tolerance?: PictureLength;
  /** Areas smaller than a square this wide become what is around them, 0 to 400 pixels; default `"4px"`. */
  readonly specks?: PictureLength;
}

/** Options of {@link traceImage}. */
export interface TraceOptions<Roles extends Readonly<Record<string, string>>> extends TraceShaping {
  /**
   * Which ink fills which role: `{ "#d9583f": "float" }`. A colour stands for the ink that is nearest to it, and every
   * ink needs a role. Inks that share one become one outline.
   */
  readonly roles?: Roles;
}

/** Most inks: as many as a pixel's set of neighbours can tell apart in one word. */
const MOST_INKS = 24;

const optionalLength = (about: string, max: number): Param<Length, number | undefined, true> =>
  optional(length({ about, min: 1, max }));
const spec = {
  size: optionalLength("Longer side of all that is traced.", 2000),
  width: optionalLength("Width of the whole picture.", 20_000),
  dpi: optional(number({ about: "Pixels an inch.", min: 10, max: 9600 })),
  mostInks: integer({ about: "Most inks that are found.", min: 1, max: MOST_INKS, default: 12 }),
};

/** Checked and complete; lengths in mm. */
export interface TraceSetting {
  readonly size: number | undefined;
  readonly width: number | undefined;
  readonly dpi: number | undefined;
  readonly wish: Wish;
  /** In pixels, once it is known how many make a mm. */
  readonly tolerance: (perMm: number) => number;
  readonly specks: (perMm: number) => number;
  readonly roles: Readonly<Record<string, string>> | undefined;
}

/** @throws SprigwrightError `wrong-type`, `unknown-option`, `number-range`, `length-range`, `bad-color`, `two-sizes` */
export function readTraceOptions(given: unknown, where: string): TraceSetting {
  if (!isRecord(given)) throw wrongType(where, given, "an object of options");
  const { inks, paper = "drop", tolerance = "0.5px", specks = "4px", roles, ...others } = given;
  const { size, width, dpi, mostInks } = readParams(spec, others, where);
  const sizes = Object.entries({ size, width, dpi }).filter(([, value]) => value !== undefined);
  if (sizes.length > 1) {
    const names = sizes.map(([name]) => name).join(" and ");
    throw badInput("two-sizes", where, `${names} are both given`, "give one of size, width and dpi");
  }
  if (roles !== undefined && !isRecord(roles))
    throw wrongType(`${where} > roles`, roles, "an object that maps colours to roles");
  return {
    ...{ size, width, dpi, roles: roles as TraceSetting["roles"] },
    wish: {
      inks: readInks(inks, `${where} > inks`),
      most: mostInks,
      paper: readPaper(paper, `${where} > paper`),
    },
    tolerance: pictureLength(tolerance, 0.1, 20, `${where} > tolerance`),
    specks: pictureLength(specks, 0, 400, `${where} > specks`),
  };
}

function readInks(given: unknown, where: string): Wish["inks"] {
  if (given === undefined) return undefined;
  if (typeof given === "number" && Number.isInteger(given)) {
    if (given < 1 || given > MOST_INKS) throw outOfRange(where, given, { min: 1, max: MOST_INKS }, "inks");
    return given;
  }
  if (!Array.isArray(given)) throw wrongType(where, given, "a whole number of inks, or a list of colours");
  if (given.length < 1 || given.length > MOST_INKS)
    throw outOfRange(where, given.length, { min: 1, max: MOST_INKS }, "inks");
  const fills = given.map((color: unknown, i) => opaque(color, `${where}[${i}]`));
  const twice = fills.findIndex((fill, i) => fills.indexOf(fill) < i);
  if (twice >= 0) throw wrongType(`${where}[${twice}]`, given[twice], "another colour than those before it");
  return fills;
}

function readPaper(given: unknown, where: string): string {
  if (given === "drop" || given === "around" || given === "keep") return given;
  if (typeof given === "string" && given.startsWith("#")) return opaque(given, where);
  throw wrongType(where, given, '"drop", "around", "keep", or the paper\'s colour as #rrggbb');
}

/** A colour without transparency, as `#rrggbb`. */
export function opaque(color: unknown, where: string): string {
  const read = typeof color === "string" ? readColor(color) : undefined;
  if (!read || read.alpha < 1) throw wrongType(where, color, 'an opaque colour such as "#d9583f"');
  return read.fill;
}

const PIXELS = /^\s*(\d+\.?\d*|\.\d+)\s*px\s*$/;

function pictureLength(given: unknown, min: number, max: number, where: string): (perMm: number) => number {
  const match = typeof given === "string" && given.length <= 40 ? PIXELS.exec(given) : null;
  const mm = match ? 0 : toMm(given as Length, where);
  const within = (pixels: number): number => {
    if (pixels < min || pixels > max)
      throw outOfRange(where, Math.round(pixels * 100) / 100, { min, max }, "pixels");
    return pixels;
  };
  if (!match) return (perMm) => within(mm * perMm);
  const pixels = within(Number(match[1]));
  return () => pixels;
}
