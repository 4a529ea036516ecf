import { badInput } from "../../errors/catalogue.ts";
import { deepFreeze } from "../../params/canonical.ts";
import { checkTile } from "../../tile/check-tile.ts";
import { measureRoles } from "../../tile/figures/role-figures.ts";
import type { Tile } from "../../tile/tile.ts";
import type { Colorway } from "../colorway.ts";
import type { Palette } from "../palette.ts";
import { colorwayDistance } from "./apart.ts";
import type { Candidate } from "./assign.ts";
import { goodCandidates } from "./candidates.ts";
import { choose } from "./choose.ts";
import type { InkTable } from "./ink-table.ts";
import { inkTable } from "./ink-table.ts";
import { judge } from "./judge.ts";
import { colorwayNames } from "./name.ts";
import { type ColorwaysOptions, type ColorwaysPlan, readColorwaysOptions } from "./options.ts";
import { type Rating, ratingOf } from "./rating.ts";
import { valueOrder } from "./rules.ts";
import type { Rules } from "./search.ts";
import { type Sight, sightOf } from "./sight.ts";

/** A colorway that was planned: it goes wherever a colorway goes. */
export interface PlannedColorway<R extends string = string> extends Colorway<R>, Rating<R> {
  /** Name of the palette that its inks come from. */
  readonly palette: string;
}

/**
 * Plans colorways of a tile: gives the inks of palettes to its roles in all ways there are, ranks them by how well they
 * read in this very pattern, and chooses the best of all and some that are good and far apart. Best first; the same every
 * time. What scores below 75 is offered only where there is nothing better.
 *
 * What is good: roles that meet are told apart (CIEDE2000 and lightness, by the length of their common edges as measured on
 * the tile), motifs stand off the ground, large areas are quiet and a small one is strong. Where there are too many ways to
 * try them all, the most promising are searched for.
 *
 * @example const [best] = colorways(tile, { palettes: [quay, orchard], count: 12, hold: { ground: "chalk" } });
 * toSvg(tile, best!);
 * @throws SprigwrightError `palette-too-small`, `same-name`, `same-ink`, `out-of-gamut`, `bad-color`, `unknown-role`,
 * `unknown-ink`, `unknown-choice`, `unknown-option`, `number-range`, `list-length`, `too-many-inks`, `wrong-type`;
 * `no-colorway` when nothing keeps all the rules
 */
export function colorways<R extends string, const P extends readonly Palette[]>(
  tile: Tile<R>,
  options: ColorwaysOptions<R, P>,
): readonly PlannedColorway<R>[] {
  checkTile(tile, "colorways > tile");
  const { roles } = tile.recipe;
  const where = `colorways > ${tile.name}`;
  const plan = readColorwaysOptions(options, roles, where);
  const table = inkTable([...new Set(plan.palettes.flatMap(({ inks }) => Object.values(inks)))]);
  const sight = sightOf(measureRoles(tile), roles);
  const candidates = goodCandidates(plan, sight, table, orderOf(tile, plan));
  if (candidates.length === 0) throw noColorway(where, plan);
  const distance = colorwayDistance(sight, table, candidates);
  const chosen = choose(candidates.length, plan.count, distance).map((i) => candidates[i]!);
  return named(chosen, plan, sight, table) as readonly PlannedColorway<R>[];
}

function orderOf({ recipe }: Tile, { keep }: ColorwaysPlan): Rules["order"] {
  const [first] = Object.values(recipe.colorways);
  if (keep === "free" || !first) return [];
  const { lightness } = inkTable(recipe.roles.map((role) => first[role]!));
  return valueOrder([...lightness]);
}

function named(
  chosen: readonly Candidate[],
  { palettes }: ColorwaysPlan,
  sight: Sight,
  table: InkTable,
): readonly PlannedColorway[] {
  const { roles, weights } = sight;
  // The ground first, then what is seen most.
  const order = roles
    .map((_, role) => role)
    .sort((a, b) => Number(b === 0) - Number(a === 0) || weights[b]! - weights[a]! || a - b);
  const names = colorwayNames(
    chosen.map(({ palette, inks }) => {
      const { name, inks: all } = palettes[palette]!;
      const inkNames = new Map(Object.entries(all).map(([ink, color]) => [color, ink]));
      return [name, ...order.map((role) => inkNames.get(table.inks[inks[role]!]!)!)];
    }),
  );
  return deepFreeze(
    chosen.map(({ palette, inks }, i) => ({
      name: names[i]!,
      inks: Object.fromEntries(roles.map((role, r) => [role, table.inks[inks[r]!]!])),
      palette: palettes[palette]!.name,
      ...ratingOf(sight, table, inks, judge(sight, table, inks)),
    })),
  ) as readonly PlannedColorway[];
}

function noColorway(where: string, { hold, keep, minContrast }: ColorwaysPlan): Error {
  const rules = [
    ...[...hold].map(([role, inks]) => `${role} on ${inks.join(" or ")}`),
    ...(keep === "value-order" ? ["the value order of the pattern's first colorway"] : []),
    `a contrast of ${minContrast} with the ground`,
  ];
  return badInput(
    "no-colorway",
    where,
    `no way to give the inks of a palette to the roles keeps all of this: ${rules.join("; ")}`,
    'lower minContrast, keep: "free", hold less, or add inks that are lighter and darker',
  );
}
