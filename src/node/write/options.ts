import { outOfRange, unknownName, wrongType } from "../../errors/catalogue.ts";
import { isRecord } from "../../params/compound.ts";
import type { Pattern } from "../../pattern/pattern.ts";

/** Kinds of pictures that can be asked for. */
export type PictureKind = "svg" | "png" | "field";

/** How far a pattern is on its way to the disk. */
export interface WriteProgress {
  /** `tile`: motifs are drawn and laid out. `raster`: pixels are painted. `files`: colorways are written. */
  readonly stage: "tile" | "raster" | "files";
  /** Share of the whole that is done, 0 to 1, never backwards. */
  readonly done: number;
  /** The file that was just written. */
  readonly file?: string;
}

/** Options of `writePattern`. */
export interface WriteOptions<C extends string = string> {
  /** The folder in which a folder for the pattern is made. */
  readonly out: string;
  /** Dots per inch of the print, 1 to 2400. Default 150, which common practice takes for fabric. */
  readonly dpi?: number | undefined;
  /** Colorways to write. Default: all. */
  readonly colorways?: readonly C[] | undefined;
  /** Pictures to write: `svg` and `png` hold one block at true size, `field` shows it repeated. Default: all. */
  readonly only?: readonly PictureKind[] | undefined;
  /** Calls the work off: the promise then rejects with its reason, and nothing is left behind. */
  readonly signal?: AbortSignal | undefined;
  readonly onProgress?: ((progress: WriteProgress) => void) | undefined;
}

/** Checked and complete. */
export interface WritePlan {
  readonly out: string;
  readonly dpi: number;
  readonly colorways: readonly string[];
  readonly kinds: ReadonlySet<PictureKind>;
  readonly signal: AbortSignal | undefined;
  readonly onProgress: (progress: WriteProgress) => void;
}

export const PICTURE_KINDS: readonly PictureKind[] = ["svg", "png", "field"];
const KEYS = ["out", "dpi", "colorways", "only", "signal", "onProgress"];
const FILE_NAME = /^[a-z0-9][a-z0-9-]{0,79}$/;

/** @throws SprigwrightError `unknown-colorway`, `unknown-kind-of-picture`, `wrong-type`, `number-range`, `unknown-option` */
export function readWriteOptions(pattern: Pattern, options: WriteOptions): WritePlan {
  const where = "writePattern";
  if (!isRecord(pattern) || !isRecord(pattern.colorways))
    throw wrongType(where, pattern, "a pattern: what definePattern returned");
  if (!isRecord(options)) throw wrongType(`${where} > options`, options, "options with a folder `out`");
  for (const key of Object.keys(options))
    if (!KEYS.includes(key)) throw unknownName(`${where} > ${key}`, "option", key, KEYS);
  const { out, dpi = 150, only = PICTURE_KINDS, signal, onProgress = () => {} } = options;
  if (typeof out !== "string" || out === "") throw wrongType(`${where} > out`, out, "the path of a folder");
  if (!Number.isInteger(dpi)) throw wrongType(`${where} > dpi`, dpi, "a whole number of dots per inch");
  if (dpi < 1 || dpi > 2400) throw outOfRange(`${where} > dpi`, dpi, { min: 1, max: 2400 }, "dpi");
  const known = Object.keys(pattern.colorways);
  // definePattern keeps names to kebab-case; a pattern put together by hand must not name files elsewhere.
  for (const name of [pattern.name, ...known])
    if (!FILE_NAME.test(name)) throw wrongType(`${where} > pattern`, name, "a name in kebab-case");
  const colorways = chosen(options.colorways ?? known, known, `${pattern.name} > colorways`, "colorway");
  const kinds = new Set(chosen(only, PICTURE_KINDS, `${where} > only`, "kind of picture"));
  return { out, dpi, colorways, kinds, signal, onProgress };
}

/** The given names, each once, when all of them are known. */
function chosen<N extends string>(given: unknown, known: readonly N[], where: string, kind: string): N[] {
  if (!Array.isArray(given) || given.length === 0)
    throw wrongType(where, given, `a list of names: ${known.join(", ")}`);
  for (const name of given as unknown[])
    if (!known.includes(name as N)) throw unknownName(where, kind, String(name), known);
  return [...new Set(given as N[])];
}
