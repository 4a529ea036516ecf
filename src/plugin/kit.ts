import type { Palette } from "../colorway/palette.ts";
import { type MakeOptions, makePalette } from "../colorway/schemes/make-palette.ts";
import { badInput, unknownName, wrongType } from "../errors/catalogue.ts";
import { type Bounds, checkBounds } from "../params/bounds.ts";
import { isRecord, schemaOf } from "../params/compound.ts";
import type { JsonSchema } from "../params/param.ts";
import type { PieceKind } from "../params/use.ts";
import { type Pattern, readPattern } from "../pattern/pattern.ts";
import { buildTile } from "../tile/build.ts";
import type { Watch } from "../tile/steps.ts";
import type { Tile } from "../tile/tile.ts";
import { VERSION } from "../tile/version.ts";
import { builtIn } from "./built-in.ts";
import { definePlugin, type Piece, type Plugin } from "./plugin.ts";
import { revive, reviveAs } from "./revive.ts";
import { fits, isVersion } from "./version.ts";

/** What a program needs to know of a piece to offer it: its parameters are a JSON Schema (2020-12). */
export interface PieceDescription {
  readonly kind: PieceKind;
  readonly name: string;
  readonly about: string;
  /** Parts of a motif, back to front; `"drawn"` where the drawing decides. */
  readonly parts?: readonly string[] | "drawn";
  readonly params: JsonSchema;
}

/** What `kit.describe()` returns. */
export interface KitDescription {
  readonly sprigwright: string;
  readonly plugins: readonly { readonly name: string; readonly version: string }[];
  readonly pieces: readonly PieceDescription[];
}

/** Named access to pieces, for apps, recipes and the command. Holds no state. */
export interface Kit {
  /** Every piece with its parameters, as plain JSON: an app can draw its controls from it. */
  describe(): KitDescription;
  /**
   * A recipe as a pattern, checked throughout: bounded, never evaluated, unknown keys refused with their path.
   * @throws SprigwrightError `recipe-too-deep`, `recipe-too-large`, `unknown-key`, `unknown-piece`, `recipe-version` …
   */
  read(recipe: unknown): Pattern;
  /** The tile of a recipe: the same digest as that of the script it was written from. */
  build(recipe: unknown, watch?: Watch): Promise<Tile>;
  /**
   * A palette by one of the kit's schemes, named as `describe` lists it: `{ use: "sprigwright/dusk", params: {} }`.
   * @throws SprigwrightError `unknown-piece`, `wrong-kind`, and what {@link makePalette} throws
   */
  palette(scheme: unknown, options: MakeOptions): Palette;
}

const KEYS = ["sprigwright", "name", "subject", "seed", "repeat", "layout", "roles", "scale", "colorways"];
/** Far above any real recipe. */
const BOUNDS: Bounds = {
  what: "recipe",
  deepest: 32,
  mostValues: 500_000,
  mostText: 16_000_000,
  fix: "give a recipe that recipeOf wrote",
};
const SCHEMA = "https://json-schema.org/draft/2020-12/schema";

/**
 * A kit of the library's own pieces and those of plugins.
 * @throws SprigwrightError `duplicate-plugin` when two plugins share a name, `bad-plugin` when one is not sound
 */
export function createKit(options: { readonly plugins?: readonly Plugin[] } = {}): Kit {
  const plugins = [builtIn(), ...(options.plugins ?? []).map(definePlugin)];
  const pieces = collect(plugins);
  const read = (recipe: unknown): Pattern => readRecipe(recipe, pieces);
  return Object.freeze({
    describe: () => ({
      sprigwright: VERSION,
      plugins: plugins.map(({ name, version }) => ({ name, version })),
      pieces: [...pieces.values()].map(describePiece),
    }),
    read,
    build: async (recipe: unknown, watch: Watch = {}) => buildTile(read(recipe), watch),
    palette(scheme: unknown, options: MakeOptions) {
      checkBounds(scheme, { ...BOUNDS, what: "scheme", fix: "give { use, params }" });
      return makePalette(reviveAs("scheme", scheme, pieces, "scheme"), options);
    },
  });
}

function collect(plugins: readonly Plugin[]): ReadonlyMap<string, Piece> {
  const pieces = new Map<string, Piece>();
  const names = new Set<string>();
  for (const { name, pieces: own } of plugins) {
    if (names.has(name))
      throw badInput("duplicate-plugin", "kit", `two plugins are called "${name}"`, "give each plugin once");
    names.add(name);
    for (const piece of own) pieces.set(piece.name, piece);
  }
  return pieces;
}

function describePiece(piece: Piece): PieceDescription {
  const { kind, name, about } = piece;
  const params = { $schema: SCHEMA, title: name, ...schemaOf(piece.params) };
  return piece.kind === "motif"
    ? { kind, name, about, parts: piece.parts, params }
    : { kind, name, about, params };
}

function readRecipe(recipe: unknown, pieces: ReadonlyMap<string, Piece>): Pattern {
  checkBounds(recipe, BOUNDS);
  if (!isRecord(recipe)) throw wrongType("recipe", recipe, "a recipe: the object that recipeOf returned");
  for (const key of Object.keys(recipe))
    if (!KEYS.includes(key)) throw unknownName(`recipe > ${key}`, "key", key, KEYS);
  const { sprigwright: written, repeat, layout, ...rest } = recipe;
  if (!isVersion(written) || !fits(VERSION, written))
    throw badInput(
      "recipe-version",
      "recipe > sprigwright",
      `it was written by version ${String(written)}, this is ${VERSION}`,
      "build it with the version that wrote it: other versions may draw other bytes",
    );
  return readPattern({
    ...(revive(rest, pieces, "recipe") as object),
    repeat: reviveAs("repeat", repeat, pieces, "recipe > repeat"),
    layout: reviveAs("layout", layout, pieces, "recipe > layout"),
  });
}
