import { deepFreeze } from "../params/canonical.ts";
import { recipeOf, type TilePlan } from "./recipe.ts";
import type { Tile } from "./tile.ts";

/** What tiles were built from, pieces and all, and tiles that are there before their pattern is built. */
const plans: WeakMap<Tile, TilePlan> = /* @__PURE__ */ new WeakMap();
const tiles: WeakMap<TilePlan, Tile> = /* @__PURE__ */ new WeakMap();

/** The pattern that a tile was built from; undefined for one that was changed since, or came from elsewhere. */
export const planOf = (tile: Tile): TilePlan | undefined => plans.get(tile);

/** Remembers what a tile was built from, as long as the tile lives. */
export function builtFrom(tile: Tile, plan: TilePlan): Tile {
  plans.set(tile, plan);
  return tile;
}

/** The tile that is there for a pattern already. */
export const readyTile = (plan: TilePlan): Tile | undefined => tiles.get(plan);

/** Colour never touches geometry: a pattern that differs from a tile's in colorways alone needs no building. */
export function makeReady(tile: Tile, plan: TilePlan): void {
  tiles.set(plan, builtFrom(Object.freeze({ ...tile, recipe: deepFreeze(recipeOf(plan)) }), plan));
}
