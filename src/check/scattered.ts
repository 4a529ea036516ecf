import { specialPlaces } from "../geometry/symmetry/special.ts";
import { isRecord } from "../params/compound.ts";
import type { Tile } from "../tile/tile.ts";

/** A layout as a recipe has it: not to be trusted, since a recipe may come from anywhere. */
const paramsOf = (layout: unknown): Readonly<Record<string, unknown>> =>
  isRecord(layout) && isRecord(layout["params"]) ? layout["params"] : {};

/** The tosses that make up a layout, alone, adjusted by hand or in layers; none when anything else takes part. */
function tossesIn(layout: unknown, depth = 0): readonly Readonly<Record<string, unknown>>[] {
  if (!isRecord(layout) || depth > 8) return [];
  const params = paramsOf(layout);
  if (layout["use"] === "sprigwright/toss") return [params];
  if (layout["use"] === "sprigwright/adjusted") return tossesIn(params["layout"], depth + 1);
  const layers = params["layouts"];
  if (layout["use"] !== "sprigwright/layered" || !Array.isArray(layers)) return [];
  const tosses = layers.map((layer) => tossesIn(layer, depth + 1));
  return tosses.some((list) => list.length === 0) ? [] : tosses.flat();
}

/**
 * Whether a tile's motifs are scattered with the intention of an even ground: tossed, over the whole of the unit, in a
 * pattern that repeats both ways. Rows, stripes, borders and places by hand are as uneven as their designer wants them.
 *
 * The limits of the checks that ask this were set on the tosses of docs/figures.md.
 */
export function isScattered({ recipe, arrangement }: Tile): boolean {
  const tosses = tossesIn(recipe.layout);
  const whole = ({ inside, outside }: Readonly<Record<string, unknown>>): boolean =>
    inside === undefined && outside === undefined;
  return !arrangement.border && tosses.length > 0 && tosses.every(whole);
}

/** Whether all motifs are meant to face every way: seated ones are laid along their mirror lines. */
export function facesEveryWay(tile: Tile): boolean {
  const tosses = tossesIn(tile.recipe.layout);
  return tosses.length > 0 && tosses.every(({ direction }) => direction === "tossed") && !hasSeats(tile);
}

/** The share of the whole ground that a toss, when it is alone, was to cover; undefined when it was not said. */
export function coverageAsked({ recipe: { layout } }: Tile): number | undefined {
  const { coverage, inside, outside } = layout.use === "sprigwright/toss" ? paramsOf(layout) : {};
  return typeof coverage === "number" && inside === undefined && outside === undefined ? coverage : undefined;
}

/** Whether motifs are seated on mirror lines or centres of rotation: the grid of seats is meant, and no chance. */
export const hasSeats = ({ recipe }: Tile): boolean =>
  tossesIn(recipe.layout).some(
    ({ motifs }) =>
      Array.isArray(motifs) &&
      motifs.some((entry) => isRecord(entry) && !["anywhere", undefined].includes(entry["seat"] as string)),
  );

/** Whether the repeat has mirror lines: nothing may cross one, so there is a lane along it by nature. */
export const isMirrored = ({ arrangement }: Tile): boolean => specialPlaces(arrangement).mirrors.length > 0;
