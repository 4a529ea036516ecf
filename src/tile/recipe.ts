import type { Use } from "../params/use.ts";
import { VERSION } from "./version.ts";

/** All that a tile is built from: what `definePattern` returns, seen without its types. */
export interface TilePlan {
  readonly name: string;
  /** The one thing the pattern shows, in a word or two; may be empty. */
  readonly subject: string;
  readonly seed: string;
  readonly repeat: Use;
  readonly layout: Use;
  /** Back to front, the ground first. */
  readonly roles: readonly string[];
  /** Factor by which the finished tile is scaled; absent for 1. */
  readonly scale?: number | undefined;
  readonly colorways: Readonly<Record<string, { readonly inks: Readonly<Record<string, string>> }>>;
}

/** A pattern as JSON: all that is needed to build the same tile again with the same version. */
export interface Recipe {
  /** The version of this library that wrote it. */
  readonly sprigwright: string;
  readonly name: string;
  readonly subject: string;
  readonly seed: string;
  readonly repeat: Use;
  readonly layout: Use;
  /** Back to front, the ground first. */
  readonly roles: readonly string[];
  /** Factor by which the finished tile was scaled (see `scaleTile`); absent for 1. */
  readonly scale?: number;
  /** Colorway name → role → colour, `#rrggbb`. */
  readonly colorways: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

/** The recipe of a pattern: plain JSON that `kit.build` turns into the same tile, to the byte. */
export function recipeOf(pattern: TilePlan): Recipe {
  const colorways: Record<string, Readonly<Record<string, string>>> = {};
  for (const [name, { inks }] of Object.entries(pattern.colorways)) colorways[name] = inks;
  const { name, subject, seed, repeat, layout, roles, scale } = pattern;
  // Through JSON and back: the copies have forgotten their definitions, as any recipe from outside has.
  const plain = { sprigwright: VERSION, name, subject, seed, repeat, layout, roles, scale, colorways };
  return JSON.parse(JSON.stringify(plain)) as Recipe;
}
