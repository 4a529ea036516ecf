import { missingOption } from "../../../errors/catalogue.ts";
import { optional, readParams } from "../../../params/compound.ts";
import { text } from "../../../params/kinds.ts";
import { inksFor } from "../../inks.ts";
import type { PageItem } from "../../pdf/page.ts";
import { writePdf } from "../../pdf/write.ts";
import type { Page, SheetItem } from "../page.ts";
import { checkPage } from "./check-page.ts";

/** Options of {@link pagesToPdf}: what the file says about itself. */
export interface PagesPdfOptions {
  /** Default: the title of the first page. */
  readonly title?: string;
  /** What it shows, in a sentence. */
  readonly subject?: string;
  /** Who holds the rights. */
  readonly rights?: string;
  /** Who made it. */
  readonly creator?: string;
}

/**
 * One page or several as a PDF 1.7 file: vector, at true size, in sRGB, letters as outlines, TrimBox and BleedBox set. A
 * pattern's block is there once, however often it repeats. The same bytes every time.
 *
 * @throws SprigwrightError `missing-option` without a page, `bad-page`, `missing-ink`, `wrong-type`, `unknown-option`
 */
export async function pagesToPdf(
  pages: Page | readonly Page[],
  options: PagesPdfOptions = {},
): Promise<Uint8Array> {
  const where = "pagesToPdf";
  const all = Array.isArray(pages) ? (pages as readonly Page[]) : [pages as Page];
  if (all.length === 0) throw missingOption(`${where} > pages`, "at least one page");
  for (const page of all) checkPage(page, where);
  const about = readParams(
    {
      title: optional(text({ about: "Title of the file.", max: 200 })),
      subject: optional(text({ about: "What it shows.", max: 500 })),
      rights: optional(text({ about: "Who holds the rights.", max: 500 })),
      creator: optional(text({ about: "Who made it.", max: 500 })),
    },
    options,
    where,
  );
  return writePdf({
    ...about,
    title: about.title ?? all[0]!.title,
    pages: all.map(({ size, bleed, items }) => ({ size, bleed, slug: 0, items: items.map(itemOf) })),
  });
}

function itemOf(item: SheetItem): PageItem {
  if (item.kind === "fill") return { path: item.path, ink: { rgb: item.ink } };
  const { tile, colorway, area, at, scale } = item;
  const [ground, ...inks] = inksFor(tile, colorway);
  return {
    ...{ area, at, scale, block: tile.block, ground: { ink: { rgb: ground! } } },
    layers: tile.layers.map(({ path }, i) => ({ path, ink: { rgb: inks[i]! } })),
  };
}
