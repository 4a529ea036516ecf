// What a user's program looks like to the compiler: the main job through the public doors alone.
import {
  buildTile,
  createKit,
  defineMotif,
  definePattern,
  definePlugin,
  dot,
  halfDrop,
  inspect,
  leaf,
  type Pattern,
  param,
  pen,
  type Report,
  rasterize,
  recipeOf,
  SprigwrightError,
  toSvg,
  toss,
} from "sprigwright";
import { readArtwork } from "sprigwright/artwork";
import { defaultFont, loadPatterns, type WrittenFile, writePattern } from "sprigwright/node";
import { lineSheet, type Page, pagesToPdf, strikeOffSheet } from "sprigwright/sheets";

const quays = definePattern({
  name: "quays",
  seed: "ebb-1",
  repeat: halfDrop({ width: "4in", height: 101.6 }),
  layout: toss({
    gap: 2,
    motifs: [
      { motif: leaf({ length: 18, roles: { blade: "moss" } }), share: 2 },
      { motif: dot({ size: 3 }) },
    ],
  }),
  colorways: {
    dawn: { ground: "#fff", moss: "#345", vein: "#fff", dot: "tomato" },
    // @ts-expect-error: the vein has no ink.
    dusk: { ground: "#000", moss: "#987", dot: "gold" },
  },
});

definePattern({
  name: "strangers",
  seed: "ebb-1",
  repeat: halfDrop({ width: "4in", height: "4in" }),
  layout: toss({ motifs: [{ motif: dot({ size: 3 }) }] }),
  // @ts-expect-error: nothing draws an anchor.
  colorways: { dawn: { ground: "#fff", dot: "#345", anchor: "#678" } },
});

// @ts-expect-error: a pixel has no size.
halfDrop({ width: "50px", height: 20 });

// @ts-expect-error: there is no such option.
toss({ motifs: [], spacing: 3 });

const square = defineMotif({
  name: "quay/crate",
  about: "A crate.",
  params: { side: param.length({ about: "Its side.", min: 1, max: 100, default: 8 }) },
  parts: ["crate"],
  draw: ({ side }) => {
    const length: number = side;
    return { crate: pen().moveTo(0, 0).lineTo(length, 0).lineTo(length, length).close().path() };
  },
});

export const kit = createKit({
  plugins: [definePlugin({ name: "quay", version: "1.0.0", pieces: [square] })],
});

export async function main(signal: AbortSignal): Promise<readonly WrittenFile[]> {
  const tile = await buildTile(quays, { signal, onProgress: (done) => done.toFixed(2) });
  const svg: string = toSvg(tile, quays.colorways.dawn);
  const raster = await rasterize(tile, { dpi: 150 });
  const png: Uint8Array = raster.png(quays.colorways.dawn);
  const font = await defaultFont();
  const page: Page = strikeOffSheet({ tile, colorway: quays.colorways.dawn, font, size: "8x10in" });
  const pdf: Uint8Array = await pagesToPdf([page, lineSheet({ tile, colorways: quays.colorways, font })]);
  // @ts-expect-error: no sheet has this size.
  strikeOffSheet({ tile, colorway: quays.colorways.dawn, font, size: "A11" });
  const report: Report = inspect(tile, { surface: "fabric" });
  const again = await kit.build(recipeOf(quays));
  const [loaded]: readonly Pattern[] = await loadPatterns("quays.ts");
  if (loaded) await writePattern(loaded, { out: "out" });
  // @ts-expect-error: the pattern has no colorway "noon".
  await writePattern(quays, { out: "out", colorways: ["noon"] });
  const artwork = readArtwork("<svg/>");
  if (!report.ok || svg.length + png.length + pdf.length === 0 || again.digest !== tile.digest)
    throw new SprigwrightError({ code: "not-so", where: "main", what: String(artwork), fix: "look again" });
  return writePattern(quays, { out: "out", colorways: ["dawn"], files: ["svg", "field"] });
}
