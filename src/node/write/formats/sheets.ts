import type { Format, Order } from "./format.ts";
import { given } from "./print.ts";

/** A test print. */
export const strikeOff: Format = {
  about: "a test print as PDF: a cut at true size, ink chips and a ruler",
  says: () => "a test print at true size, with ink chips and a ruler",
  make: async (order) => {
    const { strikeOffSheet } = await import("../../../output/sheet/strike-off.ts");
    const { tile, colorways } = order;
    const font = await fontOf();
    for (const colorway of colorways)
      await putPage(
        order,
        strikeOffSheet({ tile, colorway, font }),
        `-${colorway.name}-strike-off`,
        colorway.name,
      );
  },
};

/** All colorways side by side. */
export const colorwaySheet: Format = {
  about: "all colorways side by side as PDF, with ink chips and a check of values",
  together: true,
  says: () => "all colorways side by side, in colour and in greys",
  make: async (order) => {
    const { colorwaySheet: sheet, MOST_ON_COLORWAY_SHEET } = await import(
      "../../../output/sheet/colorway-sheet.ts"
    );
    const { tile } = order;
    const font = await fontOf();
    const pages = inPages(order.colorways, MOST_ON_COLORWAY_SHEET);
    await putPage(
      order,
      pages.map((colorways) => sheet({ tile, colorways, font })),
      "-colorways",
    );
  },
};

/** What a buyer is shown. */
export const lineSheet: Format = {
  about: "what a buyer is shown as PDF: the pattern, its size, its palette, its colorways",
  together: true,
  says: () => "the pattern with size, palette and colorways, for buyers",
  make: async (order) => {
    const { lineSheet: sheet, MOST_ON_LINE_SHEET } = await import("../../../output/sheet/line-sheet.ts");
    const { tile, settings } = order;
    const font = await fontOf();
    const pages = inPages(order.colorways, MOST_ON_LINE_SHEET);
    await putPage(
      order,
      pages.map((colorways) => sheet({ tile, colorways, font, ...given({ studio: settings.studio }) })),
      "-line-sheet",
    );
  },
};

/** What a shop asks. */
export const listing: Format = {
  about: "title, tags, alt text, sizes and file names as JSON and CSV, for shops",
  together: true,
  last: true,
  says: () => "title, tags, alt text, sizes and file names",
  async warns(tile, colorways, { hero }) {
    const { listing: list, sayListingWarning } = await import("../../../output/listing/listing.ts");
    return list({ tile, colorways, hero }).warnings.map(sayListingWarning);
  },
  async make({ tile, colorways, settings, others, put }) {
    const { listing: list } = await import("../../../output/listing/listing.ts");
    const { listingCsv, listingJson } = await import("../../../output/listing/files.ts");
    const listed = list({ tile, colorways, dpi: settings.dpi, hero: settings.hero, files: others });
    await put("listing.json", listingJson(listed));
    await put("listing.csv", listingCsv(listed));
  },
};

/** A list in as few parts as hold at most so many each, as even as can be. */
export function inPages<T>(list: readonly T[], most: number): (readonly T[])[] {
  const pages = Math.ceil(list.length / most);
  const end = (page: number): number => Math.ceil((page * list.length) / pages);
  return Array.from({ length: pages }, (_, page) => list.slice(end(page), end(page + 1)));
}

const fontOf = async (): ReturnType<typeof import("../../default-font.ts").defaultFont> =>
  (await import("../../default-font.ts")).defaultFont();

async function putPage(
  { tile, settings, put }: Order,
  pages: Parameters<typeof import("../../../output/sheet/draw/to-pdf.ts").pagesToPdf>[0],
  ending: string,
  colorway?: string,
): Promise<void> {
  const { pagesToPdf } = await import("../../../output/sheet/draw/to-pdf.ts");
  const { rights, creator } = settings;
  const { subject } = tile.recipe;
  const bytes = await pagesToPdf(pages, given({ subject: subject || undefined, rights, creator }));
  await put(`${tile.name}${ending}.pdf`, bytes, colorway);
}
