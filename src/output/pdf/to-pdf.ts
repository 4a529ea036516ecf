import type { Colorway } from "../../colorway/colorway.ts";
import { badInput } from "../../errors/catalogue.ts";
import type { Tile } from "../../tile/tile.ts";
import { notesOf } from "../about.ts";
import { inksFor } from "../inks.ts";
import { type PdfOptions, readPdfOptions } from "./options.ts";
import type { PdfPage } from "./page.ts";
import { writePdf } from "./write.ts";

export type { PdfOptions } from "./options.ts";

/** Longest side of a page: 14 400 points (ISO 32000-1, annex C.2), here in µm. */
const LONGEST = 5_080_000;

/**
 * A tile in a colorway as a PDF 1.7 file: vector, at true size, one layer (optional content group) for each role, with
 * TrimBox and BleedBox; the bleed shows the pattern going on. No shape is cut at the edges of a repeat.
 *
 * The recipe goes with the file, for `recipeInPdf`, unless `recipe` is false. The same call gives the same bytes.
 *
 * @example await toPdf(tile, colorway, { cut: { width: "50cm", height: "70cm" }, bleed: 3, inks: "spot" })
 * @throws SprigwrightError `missing-ink`, `unknown-option`, `unknown-cut`, `length-range`, `page-too-large`,
 * `bad-profile`, `wrong-profile`, and what {@link InkChoice} says
 */
export async function toPdf(tile: Tile, colorway: Colorway, options: PdfOptions = {}): Promise<Uint8Array> {
  const rgb = inksFor(tile, colorway);
  const where = `${tile.name} > toPdf`;
  const roles = ["ground", ...tile.layers.map((layer) => layer.role)];
  const { size, bleed, inks, notes, condition } = readPdfOptions(tile, roles, rgb, options, where);
  const longer = Math.max(size.width, size.height) + 2 * bleed;
  if (longer > LONGEST)
    throw badInput(
      "page-too-large",
      where,
      `a page of ${longer / 1000} mm with its bleed`,
      `a PDF page is at most ${LONGEST / 1000} mm long: cut the cloth in pieces`,
    );
  const page: PdfPage = {
    size,
    bleed,
    slug: 0,
    items: [
      {
        area: { minX: -bleed, minY: -bleed, maxX: size.width + bleed, maxY: size.height + bleed },
        at: [0, 0],
        scale: 1,
        block: tile.block,
        ground: { ink: inks[0]!, layer: "ground" },
        layers: tile.layers.map(({ role, path }, i) => ({ path, ink: inks[i + 1]!, layer: role })),
      },
    ],
  };
  const { about, kept } = notesOf(tile, colorway, notes);
  return writePdf({
    ...about,
    pages: [page],
    // Lists of layers show what lies in front at the top.
    layers: [...roles].reverse(),
    condition,
    notes: kept,
  });
}
