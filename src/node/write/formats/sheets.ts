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
    const { colorwaySheet: sheet } = await import("../../../output/sheet/colorway-sheet.ts");
    const { tile, colorways } = order;
    await putPage(order, sheet({ tile, colorways, font: await fontOf() }), "-colorways");
  },
};

/** What a buyer is shown. */
export const lineSheet: Format = {
  about: "what a buyer is shown as PDF: the pattern, its size, its palette, its colorways",
  together: true,
  says: () => "the pattern with size, palette and colorways, for buyers",
  make: async (order) => {
    const { lineSheet: sheet } = await import("../../../output/sheet/line-sheet.ts");
    const { tile, colorways } = order;
    await putPage(order, sheet({ tile, colorways, font: await fontOf() }), "-line-sheet");
  },
};

/** What a shop asks. */
export const listing: Format = {
  about: "title, tags, alt text, sizes and file names as JSON and CSV, for shops",
  together: true,
  last: true,
  says: () => "title, tags, alt text, sizes and file names",
  async make({ tile, colorways, settings, others, put }) {
    const { listing: list } = await import("../../../output/listing/listing.ts");
    const { listingCsv, listingJson } = await import("../../../output/listing/files.ts");
    const listed = list({ tile, colorways, dpi: settings.dpi, files: others });
    await put("listing.json", listingJson(listed));
    await put("listing.csv", listingCsv(listed));
  },
};

const fontOf = async (): ReturnType<typeof import("../../default-font.ts").defaultFont> =>
  (await import("../../default-font.ts")).defaultFont();

async function putPage(
  { tile, settings, put }: Order,
  page: Parameters<typeof import("../../../output/sheet/draw/to-pdf.ts").pagesToPdf>[0],
  ending: string,
  colorway?: string,
): Promise<void> {
  const { pagesToPdf } = await import("../../../output/sheet/draw/to-pdf.ts");
  const { rights, creator } = settings;
  const { subject } = tile.recipe;
  const bytes = await pagesToPdf(page, given({ subject: subject || undefined, rights, creator }));
  await put(`${tile.name}${ending}.pdf`, bytes, colorway);
}
