import type { Colorway } from "../colorway/colorway.ts";
import { readColorways } from "../colorway/read.ts";
import { badInput, missingOption, unknownName, wrongType } from "../errors/catalogue.ts";
import { within } from "../errors/error.ts";
import type { LayoutPiece, LayoutUse } from "../layout/layout.ts";
import { MOST_ROLES, type MotifUse } from "../motif/motif.ts";
import { isRecord } from "../params/compound.ts";
import { definitionOf, isUse, type PieceInfo, type PieceKind, type Use } from "../params/use.ts";
import type { RepeatUse } from "../repeat/repeat.ts";
import type { TilePlan } from "../tile/recipe.ts";
import { checkScale } from "../tile/scale.ts";

/** Inks by role, the ground included: any opaque CSS colours. */
export type Inks<R extends string> = { readonly [K in R | "ground"]: string };

/** What {@link definePattern} is given. */
export interface PatternInput<R extends string, C extends string> {
  /** Names files and layers, in kebab-case: `"harbour-pears"`. */
  readonly name: string;
  /** The one thing the pattern shows, for listings: `"pear"`. */
  readonly subject?: string;
  /** Any text of at most 200 characters. The same seed gives the same tile; another gives a sister. */
  readonly seed: string;
  readonly repeat: RepeatUse;
  readonly layout: LayoutUse<R>;
  /** The stacking order, back to front, when that of first use is not wanted. Every role, with or without the ground. */
  readonly roles?: readonly (NoInfer<R> | "ground")[];
  /** Factor by which the finished tile is scaled, 0.05 to 20: block and lattice must stay whole µm. Default 1. */
  readonly scale?: number;
  /** Colorway name → an ink for the ground and for every role that the motifs fill, and no others. */
  readonly colorways: { readonly [N in C]: Inks<NoInfer<R>> };
}

/** A checked, complete pattern: plain frozen data. */
export interface Pattern<R extends string = string, C extends string = string> extends TilePlan {
  readonly layout: LayoutUse<R>;
  readonly colorways: { readonly [N in C]: Colorway<R> };
}

const KEYS = ["name", "subject", "seed", "repeat", "layout", "roles", "scale", "colorways"];
const PATTERN_NAME = /^[a-z0-9][a-z0-9-]{0,79}$/;

/**
 * Says what a pattern is made of. Nothing is drawn yet: `buildTile` does that.
 *
 * The roles come from the motifs of the layout; a colorway that lacks an ink, or names a role that nothing
 * draws, does not compile, and throws in plain JavaScript.
 *
 * @throws SprigwrightError `unknown-role`, `missing-ink`, `bad-color`, `wrong-type`, `unknown-option`
 */
export function definePattern<R extends string, const C extends string>(
  input: PatternInput<R, C>,
): Pattern<R, C> {
  return readPattern(input) as Pattern<R, C>;
}

/** A pattern from unchecked values whose pieces remember their definitions. */
export function readPattern(input: unknown): Pattern {
  if (!isRecord(input)) throw wrongType("pattern", input, "an object that describes a pattern");
  for (const key of Object.keys(input))
    if (!KEYS.includes(key)) throw unknownName(`pattern > ${key}`, "option", key, KEYS);
  const { name, subject = "", seed, repeat, layout, scale = 1 } = input;
  if (typeof name !== "string" || !PATTERN_NAME.test(name))
    throw wrongType("pattern > name", name, 'a name in kebab-case, such as "harbour-pears"');
  return within(name, () => {
    if (typeof subject !== "string" || subject.length > 80)
      throw wrongType("subject", subject, "text of at most 80 characters");
    if (seed === undefined) throw missingOption("seed", "any text; it fixes every chance in the pattern");
    if (typeof seed !== "string" || seed.length > 200)
      throw typeof seed === "number"
        ? badInput("wrong-type", "seed", `${seed} is a number, and a seed is text`, `give "${seed}"`)
        : wrongType("seed", seed, "text of at most 200 characters");
    checkUse(repeat, "repeat", "halfDrop({ width: 160, height: 120 })");
    checkUse(layout, "layout", "toss({ motifs: [...] })");
    const roles = readRoles(input["roles"], rolesOf(layout));
    if (roles.length > MOST_ROLES)
      throw badInput(
        "too-many-roles",
        "layout",
        `its motifs fill ${roles.length - 1} roles`,
        `let parts share roles: at most ${MOST_ROLES - 1} beside the ground`,
      );
    const colorways = readColorways(input["colorways"], roles, "colorways");
    checkScale(scale, "scale");
    const scaling = scale === 1 ? {} : { scale };
    return Object.freeze({ name, subject, seed, repeat, layout, roles, ...scaling, colorways });
  });
}

function checkUse(value: unknown, kind: PieceKind, example: string): asserts value is Use {
  if (value === undefined) throw missingOption(kind, `a ${kind}, such as ${example}`);
  if (!isUse(value) || definitionOf<PieceInfo | LayoutPiece>(value, kind).kind !== kind)
    throw wrongType(kind, value, `a ${kind}, such as ${example}`);
}

/** Roles filled by any motif in a layout's parameters, in order of first use, the ground left out. */
function rolesOf(layout: Use): string[] {
  const found = new Set<string>();
  const visit = (value: unknown): void => {
    if (Array.isArray(value)) for (const entry of value) visit(entry);
    else if (isUse(value) && definitionOf<PieceInfo>(value, "layout").kind === "motif")
      for (const role of Object.values((value as MotifUse).roles)) found.add(role);
    else if (isRecord(value)) for (const entry of Object.values(value)) visit(entry);
  };
  visit(layout.params);
  found.delete("ground");
  return [...found];
}

function readRoles(given: unknown, drawn: readonly string[]): readonly string[] {
  if (given === undefined) return Object.freeze(["ground", ...drawn]);
  if (!Array.isArray(given)) throw wrongType("roles", given, "a list of roles, back to front");
  const order = (given as unknown[]).filter((role) => role !== "ground");
  order.forEach((role, i) => {
    if (typeof role !== "string" || !drawn.includes(role))
      throw unknownName(`roles[${i}]`, "role", String(role), drawn);
    if (order.indexOf(role) !== i) throw wrongType(`roles[${i}]`, role, "a role that was not listed before");
  });
  const absent = drawn.filter((role) => !order.includes(role));
  if (absent.length > 0) throw missingOption("roles", `every role: ${absent.join(", ")} is not in the order`);
  return Object.freeze(["ground", ...(order as string[])]);
}
