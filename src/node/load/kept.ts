import { readFile, stat } from "node:fs/promises";
import { badInput } from "../../errors/catalogue.ts";
import type { KeptRecipe } from "../../output/kept-recipe.ts";
import { recipeInPng } from "../../output/png/recipe-in-png.ts";
import { recipeInSvg } from "../../output/svg/recipe-in-svg.ts";
import { ownError, reasonOf } from "../faults.ts";

/** Largest file read (bytes). */
const LARGEST = 1_000_000_000;

/** A file, and what it was made from. */
export interface KeptFile extends KeptRecipe {
  readonly bytes: Uint8Array;
}

/**
 * The recipe in a PNG, SVG or PDF, told apart by their first bytes, and the file itself.
 * @throws SprigwrightError `no-such-file`, `unknown-file-type`, `no-recipe`, `bad-png`, `bad-pdf`, `recipe-too-large`
 */
export async function readKeptRecipe(path: string): Promise<KeptFile> {
  const bytes = await read(path);
  let kept: KeptRecipe | undefined;
  try {
    kept = await find(bytes);
  } catch (error) {
    throw ownError(error, path) ?? error;
  }
  if (kept) return { ...kept, bytes };
  throw badInput(
    "no-recipe",
    path,
    "there is no recipe in it",
    "give a PNG, an SVG or a PDF of the pattern, as it was written: sheets and plates hold none, nor do files made with --no-recipe, nor many that another program saved again",
  );
}

async function read(path: string): Promise<Uint8Array> {
  try {
    const found = await stat(path);
    if (found.isFile() && found.size <= LARGEST) return await readFile(path);
    throw new Error(found.isFile() ? `it is ${found.size} bytes long` : "it is no file");
  } catch (cause) {
    throw badInput(
      "no-such-file",
      path,
      `it cannot be read: ${reasonOf(cause)}`,
      "give a PNG, SVG or PDF file",
      cause,
    );
  }
}

async function find(bytes: Uint8Array): Promise<KeptRecipe | undefined> {
  const start = Buffer.from(bytes.subarray(0, 1024)).toString("latin1");
  if (start.startsWith("\x89PNG")) return recipeInPng(bytes);
  if (start.startsWith("%PDF-")) {
    const { recipeInPdf } = await import("../../output/pdf/recipe.ts");
    return recipeInPdf(bytes);
  }
  if (/<(\?xml|svg|!--|!DOCTYPE)/.test(start)) return recipeInSvg(Buffer.from(bytes).toString("utf8"));
  throw badInput(
    "unknown-file-type",
    "file",
    "it is neither a PNG, an SVG nor a PDF",
    "give a PNG, an SVG or a PDF that build wrote; from a recipe.json, build makes the files again",
  );
}
