import { outOfRange, unknownName, wrongType } from "../../errors/catalogue.ts";
import type { Cut } from "../../output/cut.ts";
import { COLORS, type ColorType } from "../../output/png/options.ts";
import { LAYERINGS, type Layering } from "../../output/svg/options.ts";
import { isRecord } from "../../params/compound.ts";
import type { Pattern } from "../../pattern/pattern.ts";
import { type Length, toMm } from "../../units/length.ts";
import { allCores } from "../pool/workshop.ts";
import { FILE_KINDS, type FileKind, USUAL_KINDS } from "./formats/all.ts";
import type { Settings } from "./formats/format.ts";

/** How far a pattern is on its way to the disk. */
export interface WriteProgress {
  /** `tile`: motifs are drawn and laid out. `files`: files are made. */
  readonly stage: "tile" | "files";
  /** Share of the whole that is done, 0 to 1, never backwards. */
  readonly done: number;
  /** A file that is ready. */
  readonly file?: string;
}

/** Options of `writePattern`. */
export interface WriteOptions<C extends string = string> {
  /** The folder in which a folder for the pattern is made. */
  readonly out: string;
  /** Kinds of files to write; default svg, png and field. `recipe.json` and `manifest.json` always go with them. */
  readonly files?: readonly FileKind[] | undefined;
  /** Colorways to write. Default: all. */
  readonly colorways?: readonly C[] | undefined;
  /** The piece of cloth that files show, `field` left out; default `"block"`. */
  readonly cut?: Cut | undefined;
  /** Dots per inch of pictures, 1 to 2400. Default 150, which common practice takes for fabric. */
  readonly dpi?: number | undefined;
  /** How PNG files hold colours; default indexed, and truecolour where a palette will not do. */
  readonly color?: ColorType | undefined;
  /** How the layers of SVG files lie; default `"stacked"`. */
  readonly layers?: Layering | undefined;
  /** How far the pattern goes on beyond the trim of a PDF, 0 to 100 mm; default 0. */
  readonly bleed?: Length | undefined;
  /** Who holds the rights, and what others may do, for the metadata of files. */
  readonly rights?: string | undefined;
  /** Who made it, for the metadata of files. */
  readonly creator?: string | undefined;
  /**
   * Whether each PNG, SVG and PDF of the pattern has the recipe in it; default true. False for files that go to clients and
   * shops. `recipe.json` is written all the same, and stays with you.
   */
  readonly recipe?: boolean | undefined;
  /** Whether the pattern is the hero of its collection, in which several subjects may meet, for the listing; default false. */
  readonly hero?: boolean | undefined;
  /** Who sells it and how to be reached: a line at the foot of line sheets. */
  readonly studio?: string | undefined;
  /** Threads that make files; default as many as there are cores. With 1, all is done in the calling thread. */
  readonly workers?: number | undefined;
  /** Calls the work off: the promise then rejects with its reason, and nothing is left behind. */
  readonly signal?: AbortSignal | undefined;
  readonly onProgress?: ((progress: WriteProgress) => void) | undefined;
}

/** Checked and complete. */
export interface WritePlan {
  readonly out: string;
  readonly kinds: readonly FileKind[];
  readonly colorways: readonly string[];
  readonly settings: Settings;
  readonly workers: number;
  readonly signal: AbortSignal | undefined;
  readonly onProgress: (progress: WriteProgress) => void;
}

const KEYS = [
  "out",
  "files",
  "colorways",
  "cut",
  "dpi",
  "color",
  "layers",
  "bleed",
  "rights",
  "creator",
  "recipe",
  "hero",
  "studio",
  "workers",
  "signal",
  "onProgress",
];
const FILE_NAME = /^[a-z0-9][a-z0-9-]{0,79}$/;
const DEVICE = /^(con|prn|aux|nul|com\d|lpt\d)$/;

/** Most threads. */
const MOST_WORKERS = 256;

/**
 * Cuts are checked against the repeat, later.
 * @throws SprigwrightError `unknown-colorway`, `unknown-kind-of-file`, `wrong-type`, `number-range`, `unknown-option`
 */
export function readWriteOptions(pattern: Pattern, options: WriteOptions): WritePlan {
  const where = "writePattern";
  if (!isRecord(pattern) || !isRecord(pattern.colorways))
    throw wrongType(where, pattern, "a pattern: what definePattern returned");
  if (!isRecord(options)) throw wrongType(`${where} > options`, options, "options with a folder `out`");
  for (const key of Object.keys(options))
    if (!KEYS.includes(key)) throw unknownName(`${where} > ${key}`, "option", key, KEYS);
  const { out, files = USUAL_KINDS, dpi = 150, cut = "block", layers = "stacked", bleed = 0 } = options;
  const {
    color,
    rights,
    creator,
    recipe = true,
    hero = false,
    studio,
    workers = allCores(),
    signal,
    onProgress = () => {},
  } = options;
  if (typeof out !== "string" || out === "") throw wrongType(`${where} > out`, out, "the path of a folder");
  count(dpi, 2400, `${where} > dpi`, "dpi", "a whole number of dots per inch");
  count(workers, MOST_WORKERS, `${where} > workers`, "threads", "a whole number of threads");
  const margin = toMm(bleed, `${where} > bleed`);
  if (margin < 0 || margin > 100)
    throw outOfRange(`${where} > bleed`, margin, { min: 0, max: 100 }, "mm", "length-range");
  for (const [name, text] of Object.entries({ rights, creator }))
    if (text !== undefined && (typeof text !== "string" || text.length > 500))
      throw wrongType(`${where} > ${name}`, text, "text of at most 500 characters");
  for (const [name, value] of Object.entries({ recipe, hero }))
    if (typeof value !== "boolean") throw wrongType(`${where} > ${name}`, value, "true or false");
  if (studio !== undefined && (typeof studio !== "string" || studio.length > 160))
    throw wrongType(`${where} > studio`, studio, "text of at most 160 characters");
  if (!LAYERINGS.includes(layers))
    throw unknownName(`${where} > layers`, "layering", String(layers), LAYERINGS);
  if (color !== undefined && !COLORS.includes(color))
    throw unknownName(`${where} > color`, "kind of color", String(color), COLORS);
  const known = Object.keys(pattern.colorways);
  // definePattern keeps names to kebab-case; a pattern put together by hand must not name files elsewhere.
  for (const name of [pattern.name, ...known])
    if (!FILE_NAME.test(name)) throw wrongType(`${where} > pattern`, name, "a name in kebab-case");
  if (DEVICE.test(pattern.name))
    throw wrongType(`${where} > pattern`, pattern.name, "a name for a folder: Windows keeps it for a device");
  const colorways = chosen(options.colorways ?? known, known, `${pattern.name} > colorways`, "colorway");
  const kinds = chosen(files, FILE_KINDS, `${where} > files`, "kind of file");
  const settings = { dpi, cut, bleed: margin, color, layers, rights, creator, recipe, hero, studio };
  return { out, kinds, colorways, settings, workers, signal, onProgress };
}

function count(value: unknown, max: number, where: string, unit: string, wanted: string): void {
  if (!Number.isInteger(value)) throw wrongType(where, value, wanted);
  const n = value as number;
  if (n < 1 || n > max) throw outOfRange(where, n, { min: 1, max }, unit);
}

/** The given names, each once, when all of them are known. */
function chosen<N extends string>(given: unknown, known: readonly N[], where: string, kind: string): N[] {
  if (!Array.isArray(given) || given.length === 0)
    throw wrongType(where, given, `a list of names: ${known.join(", ")}`);
  for (const name of given as unknown[])
    if (!known.includes(name as N)) throw unknownName(where, kind, String(name), known);
  return [...new Set(given as N[])];
}
