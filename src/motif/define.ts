import { badInput, unknownName, wrongType } from "../errors/catalogue.ts";
import { within } from "../errors/error.ts";
import { isRecord, readParams } from "../params/compound.ts";
import { integer, share } from "../params/kinds.ts";
import type { ParamSpec, ParamsIn, ParamsOut } from "../params/param.ts";
import { bindUse } from "../params/use.ts";
import type { Drawing, MotifPiece, MotifTools, MotifUse } from "./motif.ts";

/** What `defineMotif` is given. */
export interface MotifDefinition<S extends ParamSpec, Part extends string> {
  /** `namespace/name`, in kebab-case. */
  readonly name: string;
  /** One sentence for a person who chooses among motifs. */
  readonly about: string;
  readonly params: S;
  /** Parts of the drawing, back to front. Each fills the role of its own name unless the user maps it. */
  readonly parts: readonly Part[];
  /**
   * Draws the motif about the origin, which it is turned around and placed by.
   * A pure function: all chance from `tools.random`, all mathematics from `tools.math`.
   */
  readonly draw: (params: ParamsOut<S>, tools: MotifTools) => Drawing<Part>;
}

/** Options that every motif takes besides its own. */
export interface MotifOptions<Map> {
  /** Part of the drawing → role of the pattern. A part that is left out fills the role of its own name. */
  readonly roles?: Map;
  /** How far drawings stray from the plain one, 0 (default: all alike) to 1, by the pattern's seed. */
  readonly vary?: number;
  /** How many different drawings, 1 to 64. Default: 4 when `vary` is above 0, else 1. */
  readonly variants?: number;
}

/** The roles that remain when parts are mapped. */
export type MappedRoles<Part extends string, Map> = {
  [P in Part]: P extends keyof Map ? (Map[P] extends string ? Map[P] : P) : P;
}[Part];

/** The one argument of a factory: it may be left out when every parameter has a default. */
export type Given<S extends ParamSpec, More> =
  Record<never, never> extends ParamsIn<S> ? [options?: ParamsIn<S> & More] : [options: ParamsIn<S> & More];

/** Puts a motif to use: `leaf({ length: 18, roles: { blade: "moss" } })`. */
export interface MotifFactory<S extends ParamSpec, Part extends string> {
  <const Map extends { readonly [P in Part]?: string } = Record<never, never>>(
    ...options: Given<S, MotifOptions<Map>>
  ): MotifUse<MappedRoles<Part, Map>>;
  readonly piece: MotifPiece;
}

const varySpec = share({ about: "How far drawings stray from the plain one.", default: 0 });
const variantsSpec = integer({ about: "How many different drawings.", min: 1, max: 64, default: 1 });
const ROLE_NAME = /^[a-z][a-z0-9-]{0,39}$/;

/** A role's name, if it is one: kebab-case, at most 40 characters. `"ground"` is one: such a part is a knock-out. */
export function checkRoleName(role: unknown, where: string): string {
  if (typeof role !== "string" || !ROLE_NAME.test(role))
    throw wrongType(where, role, 'a role name in kebab-case, such as "leaf" or "outer-petal"');
  return role;
}

/**
 * Defines a motif piece and returns the function that puts it to use.
 * The same definition serves scripts, recipes, `describe()` and tests.
 */
export function defineMotif<S extends ParamSpec, const Part extends string>(
  definition: MotifDefinition<S, Part>,
): MotifFactory<S, Part> {
  const piece: MotifPiece = { kind: "motif", ...definition, draw: definition.draw as MotifPiece["draw"] };
  const factory = (options: unknown = {}) => useMotif(piece, options);
  return Object.freeze(Object.assign(factory, { piece })) as unknown as MotifFactory<S, Part>;
}

/** A use of a motif piece from unchecked options: what every factory and every recipe goes through. */
export function useMotif(piece: MotifPiece, options: unknown): MotifUse {
  const where = shortName(piece.name);
  if (!isRecord(options)) throw wrongType(where, options, "an object of options");
  const { roles = {}, vary, variants, ...params } = options;
  const strays = varySpec.read(vary, `${where} > vary`);
  const drawings = variantsSpec.read(variants ?? (strays > 0 ? 4 : 1), `${where} > variants`);
  if (drawings > 1 && strays === 0)
    throw badInput(
      "variants-alike",
      `${where} > variants`,
      `all ${drawings} drawings would be alike, since vary is 0`,
      "say how far they may stray, such as vary: 0.3, or leave variants out",
    );
  const read = readParams(piece.params, params, where);
  const use = {
    use: piece.name,
    params: read,
    roles: rolesFor(piece, read, roles, where),
    vary: strays,
    variants: drawings,
  };
  return bindUse(use, piece);
}

/** A piece with fixed parts maps those; one that draws its own parts says from its parameters what they are. */
function rolesFor(
  piece: MotifPiece,
  params: object,
  roles: unknown,
  where: string,
): Readonly<Record<string, string>> {
  const given = readRoles(piece.parts, roles, `${where} > roles`);
  if (piece.parts !== "drawn" || !piece.rolesOf) return given;
  const complete = within(where, () => piece.rolesOf!(params as never, given));
  return readRoles(Object.keys(complete), complete, `${where} > roles`);
}

function readRoles(
  parts: readonly string[] | "drawn",
  roles: unknown,
  where: string,
): Readonly<Record<string, string>> {
  if (!isRecord(roles)) throw wrongType(where, roles, "an object that maps parts to roles");
  const map: Record<string, string> = {};
  for (const [part, role] of Object.entries(roles)) {
    if (role === undefined) continue;
    const known = parts === "drawn" ? part !== "__proto__" : parts.includes(part);
    if (!known) throw unknownName(`${where} > ${part}`, "part", part, parts === "drawn" ? [] : parts);
    map[part] = checkRoleName(role, `${where} > ${part}`);
  }
  const ordered: Record<string, string> = {};
  for (const part of parts === "drawn" ? Object.keys(map) : parts)
    ordered[part] = map[part] ?? checkRoleName(part, `${where} > ${part}`);
  return Object.freeze(ordered);
}

/** A piece's name without its namespace, as scripts write it. */
export const shortName = (name: string): string => name.slice(name.indexOf("/") + 1);

/** What a piece's factory is called in scripts, by custom: "sprigwright/place-at" is `placeAt`. */
export const factoryName = (name: string): string =>
  shortName(name).replace(/-+(.)/g, (_, letter: string) => letter.toUpperCase());
