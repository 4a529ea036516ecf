// Tiles and palettes whose colours and edges are known by making.
import { type Palette, palette } from "../../../src/colorway/palette.ts";
import type { Motif } from "../../../src/motif/motif.ts";
import { exactMath } from "../../../src/seed/math.ts";
import { finishTile } from "../../../src/tile/finish.ts";
import type { Recipe } from "../../../src/tile/recipe.ts";
import type { Tile } from "../../../src/tile/tile.ts";
import { disc } from "../../layout/toss/fixtures.ts";
import { at, straight } from "../../tile/figures/given.ts";

/** Eight inks of the studio on the quay, light to dark and quiet to strong. */
export const quay: Palette = palette({
  name: "quay",
  inks: {
    chalk: "#f7efe2",
    shell: "#f2cdb8",
    coral: "#e0705a",
    rust: "#a9432f",
    sage: "#8ea68a",
    kelp: "#3f5f4e",
    butter: "#efc065",
    ink: "#1f3340",
  },
});

/** So many inks, all round the hues, in four lightnesses. */
export const manyInks = (count: number): Palette =>
  palette({
    name: "many",
    gamut: "map",
    inks: Object.fromEntries(
      Array.from({ length: count }, (_, i) => [
        `ink-${i}`,
        `oklch(${0.3 + 0.18 * (i % 4)} 0.1 ${Math.round((i * 360) / count)})`,
      ]),
    ),
  });

/** Names of so many roles, the ground first. */
export const rolesOf = (count: number): string[] => [
  "ground",
  ...["petal", "heart", "leaf", "stem", "berry", "moss", "seed", "bud", "vein", "rim", "dot"].slice(
    0,
    count - 1,
  ),
];

/** A tile of `count` roles: discs of falling sizes, each with the next role's disc on it, one after the other in a ring. */
export function cluster(count: number, first: Readonly<Record<string, string>> = {}): Tile {
  const roles = rolesOf(count);
  const motifs = roles.slice(1).map((role, i): Motif => {
    const next = roles[2 + i];
    const outline = disc(9 - i * 0.6);
    const inner = next ? [{ role: next, path: disc(3) }] : [];
    return { name: role, shapes: [{ role, path: outline }, ...inner], outline };
  });
  const places = motifs.map((_, i) => {
    const turn = i / motifs.length;
    return at(60 + 40 * exactMath.cos(turn), 60 + 40 * exactMath.sin(turn), {
      motif: i,
      id: `m${i}`,
    });
  });
  const colorways = Object.keys(first).length > 0 ? { first } : {};
  const recipe = { name: "cluster", roles, colorways } as unknown as Recipe;
  return finishTile({ motifs, placements: places, arrangement: straight(120, 120), recipe });
}
