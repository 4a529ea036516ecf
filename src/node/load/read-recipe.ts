import { readFile, stat } from "node:fs/promises";
import { badInput } from "../../errors/catalogue.ts";
import { within } from "../../errors/error.ts";
import type { Pattern } from "../../pattern/pattern.ts";
import { artworkPlugin } from "../../plugin/artwork.ts";
import { createKit } from "../../plugin/kit.ts";
import { letteringPlugin } from "../../plugin/lettering.ts";
import type { Plugin } from "../../plugin/plugin.ts";
import { reasonOf } from "../faults.ts";

/** Largest recipe file taken (bytes): far above any real one. */
const LARGEST = 20_000_000;

/** Deepest nesting of text that is parsed at all; `kit.read` then holds it to less. */
const DEEPEST = 64;

/**
 * The pattern of a recipe file, as `recipeOf` or `writePattern` made it.
 * @throws SprigwrightError `no-such-file`, `recipe-too-large`, `recipe-too-deep`, `bad-json`, and what `kit.read` throws, with the file's name
 */
export async function readRecipe(path: string, shown: string, plugins: readonly Plugin[]): Promise<Pattern> {
  const text = await readText(path, shown);
  if (isTooDeep(text))
    throw badInput("recipe-too-deep", shown, `it nests more than ${DEEPEST} levels deep`, REMEDY);
  const recipe = parse(text, shown);
  return within(shown, () =>
    createKit({ plugins: [artworkPlugin(), letteringPlugin(), ...plugins] }).read(recipe),
  );
}

const REMEDY = "give a recipe.json as it was written";

async function readText(path: string, shown: string): Promise<string> {
  let size: number;
  try {
    size = (await stat(path)).size;
    if (size <= LARGEST) return await readFile(path, "utf8");
  } catch (cause) {
    throw badInput(
      "no-such-file",
      shown,
      `it cannot be read: ${reasonOf(cause)}`,
      "give a file that may be read",
      cause,
    );
  }
  throw badInput(
    "recipe-too-large",
    shown,
    `it is ${size} bytes long`,
    `give a recipe of at most ${LARGEST} bytes`,
  );
}

function parse(text: string, shown: string): unknown {
  try {
    return JSON.parse(text);
  } catch (cause) {
    throw badInput("bad-json", shown, `it cannot be read as JSON: ${reasonOf(cause)}`, REMEDY, cause);
  }
}

/** Whether brackets nest too deep. Looked at before parsing, which takes seconds for ten megabytes of brackets. */
function isTooDeep(text: string): boolean {
  let depth = 0;
  let quoted = false;
  for (let i = 0; i < text.length; i++) {
    const letter = text[i];
    if (quoted) {
      if (letter === "\\") i++;
      else if (letter === '"') quoted = false;
    } else if (letter === '"') quoted = true;
    else if (letter === "[" || letter === "{") {
      if (++depth > DEEPEST) return true;
    } else if (letter === "]" || letter === "}") depth--;
  }
  return false;
}
