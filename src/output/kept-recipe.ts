import { isRecord } from "../params/compound.ts";
import type { Tile } from "../tile/tile.ts";

/** What a file of this library was made from. The recipe comes from outside: only `kit.build` may trust it. */
export interface KeptRecipe {
  readonly recipe: unknown;
  /** Name of the colorway that the file shows. */
  readonly colorway: string;
  /** The digest that the tile had. */
  readonly digest: string;
}

/** The text that a file keeps: enough to make it again. */
export const keptText = ({ recipe, digest }: Pick<Tile, "recipe" | "digest">, colorway: string): string =>
  JSON.stringify({ recipe, colorway, digest });

/** What such a text says; undefined for any other. */
export function readKept(text: string): KeptRecipe | undefined {
  let kept: unknown;
  try {
    kept = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (!isRecord(kept)) return undefined;
  const { recipe, colorway, digest } = kept;
  return isRecord(recipe) && typeof colorway === "string" && typeof digest === "string"
    ? { recipe, colorway, digest }
    : undefined;
}
