import { badInput } from "../../errors/catalogue.ts";
import type { Pattern } from "../../pattern/pattern.ts";
import type { Plugin } from "../../plugin/plugin.ts";
import { ownError } from "../faults.ts";
import { findPath, scriptsIn } from "../load/find-script.ts";
import { loadPatterns, loadPlugin } from "../load/load-patterns.ts";

/** Patterns that were asked for, in order, and scripts of folders that had none. */
export interface Gathered {
  readonly patterns: readonly Pattern[];
  readonly leftAside: readonly string[];
  /** The file that each pattern comes from, by the pattern's name. */
  readonly files: ReadonlyMap<string, string>;
}

/**
 * Reads every script, recipe and folder before any work begins.
 * @throws SprigwrightError `no-patterns` for a folder without any, `duplicate-pattern`, and what `loadPatterns` throws
 */
export async function gather(names: readonly string[], pluginFiles: readonly string[]): Promise<Gathered> {
  const plugins: Plugin[] = [];
  for (const file of pluginFiles) plugins.push(await loadPlugin(file));
  const patterns: Pattern[] = [];
  const leftAside: string[] = [];
  const from = new Map<string, string>();
  for (const name of names)
    for (const [file, pattern] of await load(name, plugins, leftAside)) {
      const before = from.get(pattern.name);
      if (before !== undefined)
        throw badInput(
          "duplicate-pattern",
          file,
          `"${pattern.name}" is also the name of a pattern in ${before}`,
          "give each pattern its own name: it names the files",
        );
      from.set(pattern.name, file);
      patterns.push(pattern);
    }
  return { patterns, leftAside, files: from };
}

async function load(
  name: string,
  plugins: readonly Plugin[],
  leftAside: string[],
): Promise<(readonly [file: string, pattern: Pattern])[]> {
  if ((await findPath(name)).kind !== "folder")
    return (await loadPatterns(name, { plugins })).map((pattern) => [name, pattern] as const);
  const found: (readonly [string, Pattern])[] = [];
  for (const file of await scriptsIn(name)) {
    try {
      for (const pattern of await loadPatterns(file)) found.push([file, pattern]);
    } catch (error) {
      if (!["no-default-export", "not-a-pattern"].includes(ownError(error)?.code ?? "")) throw error;
      leftAside.push(file);
    }
  }
  if (found.length === 0)
    throw badInput(
      "no-patterns",
      name,
      "no script in this folder exports a pattern",
      "give a script, or a folder of scripts",
    );
  return found;
}
