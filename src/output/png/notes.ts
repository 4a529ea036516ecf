import { strToU8, zlibSync } from "fflate";
import type { Tile } from "../../tile/tile.ts";
import { chunk, joinBytes } from "./chunks.ts";

/** Keyword of the iTXt chunk that holds what the picture was made from. */
const RECIPE_KEYWORD = "sprigwright:recipe";

/** Longer notes are compressed (bytes). */
const LONG = 1024;

/** The `Software` and recipe chunks: `{ recipe, colorway, digest }` as JSON, enough to make the picture again. */
export function noteChunks(tile: Pick<Tile, "recipe" | "digest">, colorway: string): Uint8Array {
  const { recipe, digest } = tile;
  const software = latin(`Software\0Sprigwright ${recipe.sprigwright}`);
  const text = strToU8(JSON.stringify({ recipe, colorway, digest }));
  const long = text.length > LONG;
  // Keyword, compressed or not, method 0, no language, no translated keyword (PNG, third edition, 11.3.3.4).
  const head = [...latin(`${RECIPE_KEYWORD}\0`), long ? 1 : 0, 0, 0, 0];
  // `mem` is given because fflate's own choice of it goes through Math.log, which differs between engines.
  const body = long ? zlibSync(text, { level: 9, mem: 4 }) : text;
  return joinBytes([chunk("tEXt", software), chunk("iTXt", joinBytes([head, body]))]);
}

const latin = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0) & 255);
