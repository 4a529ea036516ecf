import { basename, dirname } from "node:path";
import { SprigwrightError } from "../../errors/error.ts";
import { artworkPlugin } from "../../plugin/artwork.ts";
import { createKit } from "../../plugin/kit.ts";
import { letteringPlugin } from "../../plugin/lettering.ts";
import type { Tile } from "../../tile/tile.ts";
import { ownError } from "../faults.ts";
import { readKeptRecipe } from "../load/kept.ts";
import { loadPieces } from "../load/load-pieces.ts";
import { isSamePicture } from "../load/same-picture.ts";
import { putFile } from "../write/job.ts";
import { type Arguments, single } from "./arguments.ts";
import { factsOf } from "./facts.ts";
import { EXIT, type Host } from "./host.ts";
import { progressOf } from "./progress.ts";
import { type Style, styleFor } from "./style.ts";

/** `sprigwright reproduce`: builds what a file shows again from the recipe in it, compares digests, and pictures. */
export async function reproduce({ names, flags }: Arguments, host: Host): Promise<number> {
  const [file] = names as readonly [string];
  const kept = await readKeptRecipe(file);
  const pieces = await loadPieces(flags.get("at") ?? []);
  const kit = createKit({ plugins: [artworkPlugin(), letteringPlugin(), ...pieces] });
  const progress = progressOf(file, host);
  let tile: Tile;
  try {
    const onProgress = (done: number): void => progress.show({ stage: "tile", done });
    tile = await kit.build(kept.recipe, { signal: host.signal, onProgress });
  } catch (error) {
    throw withHint(ownError(error, file)) ?? error;
  } finally {
    progress.clear();
  }
  const place = single(flags, "recipe");
  if (place !== undefined)
    await putFile(
      dirname(place),
      basename(place),
      `${JSON.stringify(tile.recipe, null, 2)}\n`,
      dirname(place),
    );
  const style = styleFor(host.out, host.env);
  const same = tile.digest === kept.digest;
  // What the file says is from outside: only what is as it should be is printed.
  const known = Object.hasOwn(tile.recipe.colorways, kept.colorway);
  const colorway = known ? kept.colorway : "that the recipe lacks";
  const inks = known ? tile.recipe.colorways[kept.colorway]! : undefined;
  const picture = same && inks ? await isSamePicture(kept.bytes, tile, { name: colorway, inks }) : undefined;
  const written = (kept.recipe as { readonly sprigwright: string }).sprigwright;
  const verdict = same
    ? `${style.good("the same tile")}: the digests match`
    : `${style.fault("another tile")}: the digests differ; the file was changed, or made by another version, or by pieces that are others now`;
  host.out.write(
    [
      `${style.name(tile.name)}  ${style.quiet(factsOf(tile))}`,
      `  in colorway ${colorway}, written by version ${written}`,
      `  ${style.quiet("in the file")}  ${/^[0-9a-f]{64}$/.test(kept.digest) ? kept.digest : "no digest"}`,
      `  ${style.quiet("built again")}  ${tile.digest}`,
      `  ${verdict}`,
      ...(same ? [`  ${sayPicture(picture, style)}`] : []),
      ...(place === undefined ? [] : [`  wrote the recipe to ${place}`]),
      "",
    ].join("\n"),
  );
  return same && picture !== false ? EXIT.done : EXIT.faults;
}

const sayPicture = (same: boolean | undefined, style: Style): string => {
  if (same === undefined) return style.quiet("the picture in the file was not compared with it");
  return same
    ? `${style.good("the same picture")}: drawn again, it is the same to the byte`
    : `${style.fault("another picture")}: it was changed or cut short, saved again by another program, or drawn by another version`;
};

/** Pieces that the library lacks are in a script of the user's. */
function withHint(error: SprigwrightError | undefined): SprigwrightError | undefined {
  if (error?.code !== "unknown-piece") return error;
  const { code, where, what } = error;
  return new SprigwrightError({ code, where, what, fix: "name the script that has it: --at SCRIPT" });
}
