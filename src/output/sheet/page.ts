import type { Colorway } from "../../colorway/colorway.ts";
import type { Size, Vector } from "../../geometry/lattice.ts";
import type { Box, Path } from "../../geometry/path.ts";
import type { Tile } from "../../tile/tile.ts";

/** A shape in one colour, filled nonzero, over all that comes before it. Letters and lines are shapes too. */
export interface Fill {
  readonly kind: "fill";
  /** µm, from the upper left corner of the trimmed page. */
  readonly path: Path;
  /** `#rrggbb`. */
  readonly ink: string;
  /** What it says, where it is letters: for readers that search a file, and for tests. */
  readonly says?: string;
}

/** A rectangle of a pattern in a colorway. */
export interface Cloth {
  readonly kind: "cloth";
  readonly tile: Tile;
  readonly colorway: Colorway;
  /** The part of the page that it covers (µm). */
  readonly area: Box;
  /** Where the upper left corner of a block lies on the page (µm). */
  readonly at: Vector;
  /** Size on the page over size in the tile: 1 is true size. */
  readonly scale: number;
}

/** One thing on a page. */
export type SheetItem = Cloth | Fill;

/**
 * A page as plain data: what `pageToSvg`, `pageToPng` and `pagesToPdf` draw.
 * All lengths are whole µm, x to the right and y downwards from the upper left corner of the trimmed page.
 */
export interface Page {
  /** What the page is, in a line: the title of the file. */
  readonly title: string;
  /** The trimmed page. */
  readonly size: Size;
  /** How far the picture goes on beyond the trimmed page on every side, to be cut off. */
  readonly bleed: number;
  /** Back to front. */
  readonly items: readonly SheetItem[];
}

/** The page with its bleed. */
export const pageBox = ({ size, bleed }: Pick<Page, "size" | "bleed">): Box => ({
  minX: -bleed,
  minY: -bleed,
  maxX: size.width + bleed,
  maxY: size.height + bleed,
});
