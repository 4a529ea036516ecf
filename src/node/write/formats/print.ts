import type { Format } from "./format.ts";
import { cutTag, sayCut } from "./names.ts";
import { checkPrint, printOf, sayPrint } from "./png.ts";

/** Vector, in layers, for printers. */
export const pdf: Format = {
  about: "a vector PDF at true size with a layer for each role, for printers",
  says: (_, { cut }) => `${sayCut(cut)}, vector, a layer a role`,
  async make({ tile, colorways, settings, put }) {
    const { toPdf } = await import("../../../output/pdf/to-pdf.ts");
    const { cut, bleed, rights, creator, recipe } = settings;
    for (const colorway of colorways) {
      const bytes = await toPdf(tile, colorway, { cut, bleed, rights, creator, recipe });
      await put(`${tile.name}-${colorway.name}${cutTag(cut)}.pdf`, bytes, colorway.name);
    }
  },
};

/** The PNG as TIFF, for printers who want that. */
export const tiff: Format = {
  about: "a TIFF at true size; wants the package sharp beside this one",
  check: async (outline, settings) => {
    checkPrint(outline, settings);
    await (await import("../../tiff/load-sharp.ts")).loadSharp();
  },
  says: sayPrint,
  async make({ tile, colorways, settings, onProgress, put }) {
    const { rasterize } = await import("../../../output/png/rasterize.ts");
    const { toTiff } = await import("../../tiff/to-tiff.ts");
    const raster = await rasterize(tile, {
      ...printOf(settings),
      onProgress: (done) => onProgress(done / 2),
    });
    for (const colorway of colorways) {
      const name = `${tile.name}-${colorway.name}${cutTag(settings.cut)}-${settings.dpi}dpi.tif`;
      await put(name, await toTiff(raster.png(colorway)), colorway.name);
    }
  },
};

/** Separations. */
export const plates: Format = {
  about: "a plate for each role, as SVG and as grey PNG, with registration marks",
  together: true,
  check: checkPrint,
  says: (_, { cut, dpi }) => `${sayCut(cut)}, a plate a role, as SVG and as grey PNG at ${dpi} dpi`,
  async make({ tile, settings, onProgress, put }) {
    const { separations } = await import("../../../output/plates/separations.ts");
    const { plateToSvg } = await import("../../../output/plates/plate-to-svg.ts");
    const { plateToPng } = await import("../../../output/plates/plate-to-png.ts");
    const { cut, bleed, dpi } = settings;
    const all = await separations(tile, { cut, bleed }, { onProgress: (done) => onProgress(done / 2) });
    for (const [i, plate] of all.entries()) {
      const stem = `${tile.name}-plate-${plate.role}${cutTag(cut)}`;
      await put(`${stem}.svg`, plateToSvg(plate));
      await put(`${stem}-${dpi}dpi.png`, await plateToPng(plate, { dpi }));
      onProgress((1 + (i + 1) / all.length) / 2);
    }
  },
};

/** Options without those that were left out. */
export const given = <T extends object>(options: T): Partial<{ [K in keyof T]: NonNullable<T[K]> }> =>
  Object.fromEntries(Object.entries(options).filter(([, value]) => value !== undefined)) as never;
