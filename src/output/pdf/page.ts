import type { Size, Vector } from "../../geometry/lattice.ts";
import type { Box, Path } from "../../geometry/path.ts";
import type { About } from "../xmp.ts";

// What goes onto the pages of a PDF, as plain data: `writePdf` turns it into bytes.
// All lengths are whole µm; x to the right and y downwards from the upper left corner of the trimmed page.

/** A colour by its values: `#rrggbb` (8-bit sRGB), or cyan, magenta, yellow and black as shares 0..1. */
export type ProcessInk =
  | { readonly rgb: string }
  | { readonly cmyk: readonly [cyan: number, magenta: number, yellow: number, black: number] };

/** An ink of its own: a plate of this name, with the colour that stands for it where there is no such ink. */
export interface SpotInk {
  /** The plate's name, any text. */
  readonly spot: string;
  readonly shownAs: ProcessInk;
}

/** What a shape is painted with. */
export type PdfInk = ProcessInk | SpotInk;

/** A shape in one ink, filled nonzero, over all that comes before it. */
export interface FilledPath {
  readonly path: Path;
  readonly ink: PdfInk;
  /** Name of the layer (optional content group) it is on; none when left out. */
  readonly layer?: string | undefined;
  /** Only what lies within it (µm) is painted. */
  readonly clip?: Box | undefined;
}

/**
 * A rectangle of cloth: a block that repeats straight, drawn once and set down as often as it takes. Each layer's shapes
 * are there once, as a tile has them: they may reach over the block's edges, and are never cut there.
 */
export interface PdfCloth {
  /** The part of the page that is covered (µm on the page). */
  readonly area: Box;
  /** Where the upper left corner of a block lies (µm on the page). */
  readonly at: Vector;
  /** Size on the page over size in the tile; 1 is true size. */
  readonly scale: number;
  /** The block (µm, before scaling). */
  readonly block: Size;
  /** What fills the whole area, and the name of its layer. */
  readonly ground: { readonly ink: PdfInk; readonly layer?: string | undefined };
  /** Back to front. */
  readonly layers: readonly Omit<FilledPath, "clip">[];
}

/** One thing on a page. */
export type PageItem = FilledPath | PdfCloth;

/** A page: its TrimBox is `size`, its BleedBox `bleed` larger on every side, its MediaBox another `slug` larger. */
export interface PdfPage {
  /** The trimmed page (µm). */
  readonly size: Size;
  /** µm that are painted beyond the trimmed page on every side, to be cut off. */
  readonly bleed: number;
  /** µm beyond the bleed on every side, for marks. */
  readonly slug: number;
  /** Back to front; the same path object in several places is written once. */
  readonly items: readonly PageItem[];
}

/** The printing condition that a file is made for: an ICC profile and what to call it. */
export interface PrintCondition {
  readonly profile: Uint8Array;
  readonly name: string;
}

/** A whole PDF file. Its bytes depend on nothing but this. */
export interface PdfDocument extends About {
  readonly pages: readonly PdfPage[];
  /** Layers (optional content groups) in the order in which viewers list them; those only items name come after. */
  readonly layers?: readonly string[] | undefined;
  readonly condition?: PrintCondition | undefined;
  /** Text to be kept in the file and read back by `notesInPdf`: a recipe as JSON, say. */
  readonly notes?: string | undefined;
}
