import { badInput } from "../../errors/catalogue.ts";
import type { Pattern } from "../../pattern/pattern.ts";
import type { Plugin } from "../../plugin/plugin.ts";
import { defaultFont } from "../default-font.ts";
import { toTiff } from "../tiff/to-tiff.ts";
import { writePattern } from "../write/write-pattern.ts";
import { findPath } from "./find-script.ts";
import { loadPicks } from "./load-picks.ts";
import { readRecipe } from "./read-recipe.ts";
import { asPatterns, asPlugin } from "./recognize.ts";
import { type NodeDoor, runScript } from "./run-script.ts";

/** Options of `loadPatterns`. */
export interface LoadOptions {
  /** Plugins whose pieces a recipe uses. Scripts import theirs and need none. */
  readonly plugins?: readonly Plugin[] | undefined;
}

/**
 * The patterns of a script (`.ts`, `.mts`, `.js`, `.mjs`) or a recipe (`.json`).
 * A script is run, so load none that you would not run yourself; its default export is a pattern or a list of them.
 * A recipe is only read and checked.
 *
 * @throws SprigwrightError `no-such-file`, `unknown-file-type`, `script-failed`, `no-default-export`, `not-a-pattern`,
 * `bad-json`, and what `definePattern` and `kit.read` throw, with the file's name in front
 */
export async function loadPatterns(file: string, options: LoadOptions = {}): Promise<readonly Pattern[]> {
  const { path, kind } = await findPath(file);
  if (kind === "folder") throw badInput("unknown-file-type", file, "it is a folder", "give a script in it");
  if (kind === "recipe") return [await readRecipe(path, file, options.plugins ?? [])];
  return asPatterns(await runScript(path, file, nodeDoor), file);
}

/**
 * The plugin that a script exports by default.
 * @throws SprigwrightError `no-such-file`, `unknown-file-type`, `script-failed`, `no-default-export`, `bad-plugin`
 */
export async function loadPlugin(file: string): Promise<Plugin> {
  const { path, kind } = await findPath(file);
  if (kind !== "script")
    throw badInput(
      "unknown-file-type",
      file,
      "it is not a script",
      "give a script that exports a plugin by default",
    );
  return asPlugin(await runScript(path, file, nodeDoor), file);
}

/** The same as the door `sprigwright/node`, for scripts that import it. */
const nodeDoor: NodeDoor = { defaultFont, loadPatterns, loadPicks, loadPlugin, toTiff, writePattern };
