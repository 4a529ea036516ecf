import { badInput, shown } from "../../errors/catalogue.ts";
import type { SprigwrightError } from "../../errors/error.ts";
import { isRecord } from "../../params/compound.ts";
import { definitionOf, isUse, type PieceInfo } from "../../params/use.ts";
import type { Pattern } from "../../pattern/pattern.ts";
import { definePlugin, type Plugin } from "../../plugin/plugin.ts";
import { ownError } from "../faults.ts";

/**
 * Whether a value is what `definePattern` returned, this copy's or another's:
 * its pieces remember their definitions, and its colorways are complete.
 */
export function isPattern(value: unknown): value is Pattern {
  if (!isRecord(value) || typeof value["name"] !== "string" || !Array.isArray(value["roles"])) return false;
  const { repeat, layout, colorways } = value;
  return (
    isBound(repeat) && isBound(layout) && isRecord(colorways) && Object.values(colorways).every(isColorway)
  );
}

const isColorway = (value: unknown): boolean => isRecord(value) && isRecord(value["inks"]);

function isBound(value: unknown): boolean {
  if (!isUse(value)) return false;
  try {
    return Boolean(definitionOf<PieceInfo>(value, "pattern"));
  } catch {
    return false;
  }
}

/** One pattern, or a list of them, as a list. @throws SprigwrightError `not-a-pattern` */
export function asPatterns(value: unknown, where: string): readonly Pattern[] {
  const patterns: readonly unknown[] = Array.isArray(value) ? value : [value];
  if (patterns.length === 0) throw notAPattern(where, value, "an empty list");
  patterns.forEach((entry, i) => {
    if (!isPattern(entry))
      throw notAPattern(Array.isArray(value) ? `${where} > default[${i}]` : where, entry);
  });
  return patterns as readonly Pattern[];
}

/** A plugin from a script's default export. @throws SprigwrightError `bad-plugin`, `wrong-type` */
export function asPlugin(value: unknown, where: string): Plugin {
  try {
    return definePlugin(value as Plugin);
  } catch (error) {
    throw ownError(error, where) ?? error;
  }
}

function notAPattern(where: string, value: unknown, named?: string): SprigwrightError {
  const plugin = isRecord(value) && Array.isArray(value["pieces"]);
  const plain = isRecord(value) && isUse(value["layout"]);
  return badInput(
    "not-a-pattern",
    where,
    `its default export is ${named ?? (plugin ? "a plugin" : shown(value))}, not a pattern`,
    plugin
      ? "give a script that uses the plugin; for a recipe, name the plugin beside it with --plugin"
      : plain
        ? 'pass that object through definePattern: "export default definePattern({ ... })"'
        : "export what definePattern returns, or a list of such patterns",
  );
}
