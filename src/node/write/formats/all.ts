import type { Format } from "./format.ts";
import { field, png } from "./png.ts";
import { pdf, plates, tiff } from "./print.ts";
import { colorwaySheet, lineSheet, listing, strikeOff } from "./sheets.ts";
import { pattern, svg } from "./svg.ts";

/** Kinds of files that can be asked for. */
export type FileKind =
  | "svg"
  | "png"
  | "field"
  | "pattern"
  | "pdf"
  | "tiff"
  | "plates"
  | "strike-off"
  | "colorway-sheet"
  | "line-sheet"
  | "listing";

/** Every kind of files, in the order in which they are listed. */
const FORMATS: Readonly<Record<FileKind, Format>> = {
  svg,
  png,
  field,
  pattern,
  pdf,
  tiff,
  plates,
  "strike-off": strikeOff,
  "colorway-sheet": colorwaySheet,
  "line-sheet": lineSheet,
  listing,
};

export const FILE_KINDS: readonly FileKind[] = Object.keys(FORMATS) as FileKind[];

/** What is written when nothing is asked for. */
export const USUAL_KINDS: readonly FileKind[] = FILE_KINDS.filter((kind) => FORMATS[kind].usual);

export const formatOf = (kind: FileKind): Format => FORMATS[kind];
