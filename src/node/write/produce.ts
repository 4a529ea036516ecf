import { join } from "node:path";
import { planRaster } from "../../output/png/options.ts";
import { type Raster, rasterize } from "../../output/png/rasterize.ts";
import { toSvg } from "../../output/svg/to-svg.ts";
import type { Pattern } from "../../pattern/pattern.ts";
import { arrangementOf } from "../../repeat/arrangement.ts";
import { buildTile } from "../../tile/build.ts";
import type { Tile } from "../../tile/tile.ts";
import { FIELD_WIDTH, fieldRepeats } from "./field-view.ts";
import type { WritePlan, WriteProgress } from "./options.ts";
import type { WrittenFile } from "./written.ts";

/** A pattern's files as they were made, with the tile they show. */
export interface Production {
  readonly tile: Tile;
  readonly print: Raster | undefined;
  readonly field: Raster | undefined;
  readonly files: readonly WrittenFile[];
}

/** Where the stages begin, as shares of the whole: laying out takes longest, and colorways are nearly free. */
const BEGIN = { tile: 0, print: 0.55, field: 0.85, files: 0.9 } as const;

/** Builds the tile once, paints it once without colour, and puts one set of files for every colorway. */
export async function produce(
  pattern: Pattern,
  plan: WritePlan,
  folder: string,
  put: (name: string, bytes: Uint8Array | string) => Promise<void>,
): Promise<Production> {
  const { dpi, kinds, signal } = plan;
  const report = (stage: WriteProgress["stage"], from: number, to: number) => (done: number) =>
    plan.onProgress({ stage, done: from + (to - from) * done });
  // The dpi is held against the block before anything is laid out, which takes long.
  if (kinds.has("png") && pattern.scale === undefined)
    planRaster(arrangementOf(pattern.repeat).lattice.block, { dpi }, `${pattern.name} > rasterize`);
  const tile = await buildTile(pattern, { signal, onProgress: report("tile", BEGIN.tile, BEGIN.print) });
  const print = kinds.has("png")
    ? await rasterize(tile, { dpi, signal, onProgress: report("raster", BEGIN.print, BEGIN.field) })
    : undefined;
  const field = kinds.has("field")
    ? await rasterize(tile, {
        width: FIELD_WIDTH,
        repeats: fieldRepeats(tile.block),
        signal,
        onProgress: report("raster", BEGIN.field, BEGIN.files),
      })
    : undefined;

  const files: WrittenFile[] = [];
  const total = plan.colorways.length * kinds.size + 1;
  const add = async (
    name: string,
    content: Uint8Array | string,
    about: Pick<WrittenFile, "kind" | "colorway">,
  ) => {
    signal?.throwIfAborted();
    const bytes = typeof content === "string" ? Buffer.from(content) : content;
    await put(name, bytes);
    const file = join(folder, name);
    files.push({ file, bytes: bytes.length, ...about });
    plan.onProgress({ stage: "files", done: BEGIN.files + (1 - BEGIN.files) * (files.length / total), file });
  };
  for (const name of plan.colorways) {
    const colorway = pattern.colorways[name]!;
    const stem = `${pattern.name}-${name}`;
    if (kinds.has("svg")) await add(`${stem}.svg`, toSvg(tile, colorway), { kind: "svg", colorway: name });
    if (print) await add(`${stem}-${dpi}dpi.png`, print.png(colorway), { kind: "png", colorway: name });
    if (field) await add(`${stem}-field.png`, field.png(colorway), { kind: "field", colorway: name });
  }
  await add("recipe.json", `${JSON.stringify(tile.recipe, null, 2)}\n`, { kind: "recipe" });
  signal?.throwIfAborted();
  return { tile, print, field, files };
}
