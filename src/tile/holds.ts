import { badInput, unknownName, wrongType } from "../errors/catalogue.ts";
import { modulo } from "../geometry/lattice.ts";
import type { ChangeInput } from "../layout/adjusted/changes.ts";
import type { Placement } from "../layout/layout.ts";
import { shortName } from "../motif/define.ts";
import { isRecord } from "../params/compound.ts";
import { isUse } from "../params/use.ts";
import { checkTile } from "./check-tile.ts";
import type { Tile } from "./tile.ts";

/** A change that holds one placement: see `adjusted`. */
export type Hold = Extract<ChangeInput, { readonly do: "hold" }>;

/**
 * Changes that hold placements where a tile has them, for `adjusted`: what one likes of a toss stays, and the rest can
 * be tossed anew with another seed, gap or mix.
 *
 * @example adjusted({ layout: toss({ motifs }), changes: holdsOf(tile, ["1-1", "2-5"]) })
 * @throws SprigwrightError `unknown-placement`; `scaled-before` for a tile that was scaled; `added-by-hand` for what
 * an earlier change added or swapped: that change itself can hold it
 */
export function holdsOf(tile: Tile, ids: readonly string[]): Hold[] {
  checkTile(tile, "holdsOf > tile");
  if (!Array.isArray(ids)) throw wrongType("holdsOf > ids", ids, 'a list of ids, such as ["2-5"]');
  if (tile.recipe.scale !== undefined)
    throw badInput(
      "scaled-before",
      "holdsOf > tile",
      `this tile was scaled by ${tile.recipe.scale}, so it has other places and sizes than its layout gave`,
      "take the holds from the tile that it was scaled from",
    );
  const byId = new Map(tile.placements.map((placement) => [placement.id, placement]));
  const foreign = foreignIds(tile);
  return (ids as readonly string[]).map((id, i) => {
    const placement = byId.get(id);
    if (!placement) throw unknownName(`holdsOf > ids[${i}]`, "placement", String(id), [...byId.keys()]);
    const how = foreign.get(id);
    if (how)
      throw badInput(
        "added-by-hand",
        `holdsOf > ids[${i}]`,
        `"${id}" shows a motif that a change gave it (${how}), not the layout`,
        how === "add" ? "say held: true in that change" : "write a hold with that motif in its place",
      );
    return holdOf(tile, placement);
  });
}

function holdOf(tile: Tile, { id, motif, x, y, turn, scale, flip }: Placement): Hold {
  const { width, height } = tile.lattice.block;
  const drawing = drawingNumber(tile, tile.motifs[motif]!.name);
  return Object.freeze({
    do: "hold",
    id,
    x: modulo(x, width) / 1000,
    y: modulo(y, height) / 1000,
    turn,
    scale,
    flip,
    ...(drawing === 1 ? {} : { drawing }),
  });
}

/** Which of a motif's drawings bears a name: those of a motif with variants end with their number. */
function drawingNumber({ recipe }: Tile, name: string): number {
  const [, short, number] = /^(.*)-(\d+)$/.exec(name) ?? [];
  if (number === undefined) return 1;
  let varied = false;
  const visit = (value: unknown): void => {
    if (Array.isArray(value)) for (const entry of value) visit(entry);
    else if (isRecord(value)) {
      if (isUse(value) && shortName(value.use) === short)
        varied ||= ((value as { readonly variants?: unknown }).variants ?? 1) !== 1;
      for (const entry of Object.values(value)) visit(entry);
    }
  };
  visit(recipe.layout.params);
  return varied ? Number(number) : 1;
}

/** Ids of placements whose motif is not the layout's own, with the change that gave it to them. */
function foreignIds({ recipe }: Tile): Map<string, string> {
  const found = new Map<string, string>();
  const visit = (use: unknown, prefix: string): void => {
    if (!isUse(use)) return;
    const { changes, layout, layouts } = use.params;
    for (const change of Array.isArray(changes)
      ? (changes as readonly Readonly<Record<string, unknown>>[])
      : [])
      if (["add", "swap"].includes(change["do"] as string) || (change["do"] === "hold" && change["motif"]))
        found.set(`${prefix}${change["id"]}`, change["do"] as string);
    visit(layout, prefix);
    // Layouts in layers have their number before their ids.
    if (Array.isArray(layouts))
      for (const [i, layer] of layouts.entries()) visit(layer, `${prefix}${i + 1}:`);
  };
  visit(recipe.layout, "");
  return found;
}
