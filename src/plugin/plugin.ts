import type { CheckPiece } from "../check/check.ts";
import type { SchemePiece } from "../colorway/schemes/scheme.ts";
import { badInput, wrongType } from "../errors/catalogue.ts";
import type { LayoutPiece } from "../layout/layout.ts";
import type { MotifPiece } from "../motif/motif.ts";
import { isRecord } from "../params/compound.ts";
import type { RepeatPiece } from "../repeat/repeat.ts";
import { VERSION } from "../tile/version.ts";
import { fits, isVersion } from "./version.ts";

/** Any piece that a plugin can bring. */
export type Piece = MotifPiece | LayoutPiece | RepeatPiece | SchemePiece | CheckPiece;

/** A set of pieces under one name. */
export interface Plugin {
  /** Kebab-case; every piece's name starts with it and a slash. */
  readonly name: string;
  /** Semantic version of the plugin, `1.0.0`. */
  readonly version: string;
  /** Least version of this library that it needs; a later one of the same major (for 0: minor) version will do. */
  readonly needs?: string;
  readonly pieces: readonly Piece[];
}

/** What `definePlugin` is given: pieces, or the factories that `defineMotif` and its like return. */
export interface PluginInput extends Omit<Plugin, "pieces"> {
  readonly pieces: readonly (Piece | { readonly piece: Piece })[];
}

/** What each kind of piece does its work with. */
const WORK: Readonly<Record<string, string>> = {
  motif: "draw",
  layout: "place",
  repeat: "arrange",
  scheme: "make",
  check: "look",
};

/** Whether a value has all that a piece needs, as far as can be told without running it. */
function isPiece(value: unknown): value is Piece {
  if (!isRecord(value)) return false;
  const { kind, name, about, params } = value;
  if (typeof kind !== "string" || !Object.hasOwn(WORK, kind) || typeof value[WORK[kind]!] !== "function")
    return false;
  return typeof name === "string" && typeof about === "string" && isRecord(params);
}

const NAME = /^[a-z][a-z0-9-]{0,39}$/;

/**
 * Checks and freezes a plugin.
 * @throws SprigwrightError `bad-plugin` for a name, a version or a piece that is not sound, and for twins
 */
export function definePlugin(input: PluginInput): Plugin {
  if (!isRecord(input)) throw wrongType("plugin", input, "an object with name, version and pieces");
  const { name, version, needs, pieces } = input;
  const wrong = (where: string, what: string, fix: string): Error =>
    badInput("bad-plugin", `plugin ${String(name)}${where}`, what, fix);
  if (typeof name !== "string" || !NAME.test(name))
    throw wrong(" > name", "it is not in kebab-case", 'give a name such as "orchard"');
  if (!isVersion(version))
    throw wrong(" > version", "it is not a semantic version", 'give one such as "1.0.0"');
  if (needs !== undefined && (!isVersion(needs) || !fits(VERSION, needs)))
    throw wrong(" > needs", `it needs sprigwright ${needs}, this is ${VERSION}`, "update one of the two");
  if (!Array.isArray(pieces)) throw wrong(" > pieces", "it is not a list", "give a list of pieces");
  const bare = (pieces as PluginInput["pieces"]).map((entry) =>
    typeof entry === "function" ? (entry as { readonly piece: Piece }).piece : (entry as Piece),
  );
  const names = new Set<string>();
  for (const [i, piece] of bare.entries()) {
    const where = ` > pieces[${i}]`;
    if (!isPiece(piece))
      throw wrong(
        where,
        "it is not a piece",
        "make it with defineMotif, defineLayout, defineRepeat, defineScheme or defineCheck",
      );
    if (piece.name.slice(0, name.length + 1) !== `${name}/` || !NAME.test(piece.name.slice(name.length + 1)))
      throw wrong(where, `its name is "${piece.name}"`, `call it "${name}/" and a word in kebab-case`);
    if (names.has(piece.name))
      throw wrong(where, `"${piece.name}" is there twice`, "give each piece its own name");
    names.add(piece.name);
  }
  return Object.freeze({
    name,
    version,
    ...(needs === undefined ? {} : { needs }),
    pieces: Object.freeze(bare),
  });
}
