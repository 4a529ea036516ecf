import { badInput } from "../../errors/catalogue.ts";
import type { Plugin } from "../../plugin/plugin.ts";
import { ownError } from "../faults.ts";
import { loadPatterns, loadPlugin } from "./load-patterns.ts";
import { piecesOf } from "./pieces-of.ts";

/**
 * The pieces of scripts: those of a plugin, or those that a pattern uses. Scripts are run.
 * @throws SprigwrightError `duplicate-plugin`, and what `loadPlugin` and `loadPatterns` throw
 */
export async function loadPieces(files: readonly string[]): Promise<readonly Plugin[]> {
  const plugins = new Map<string, Plugin>();
  for (const file of files)
    for (const plugin of await piecesIn(file)) {
      if (plugins.has(plugin.name))
        throw badInput(
          "duplicate-plugin",
          file,
          `pieces of "${plugin.name}" were given before`,
          "give one script for each",
        );
      plugins.set(plugin.name, plugin);
    }
  return [...plugins.values()];
}

async function piecesIn(file: string): Promise<readonly Plugin[]> {
  try {
    return piecesOf(await loadPatterns(file));
  } catch (error) {
    if (ownError(error)?.code !== "not-a-pattern") throw error;
    return [await loadPlugin(file)];
  }
}
