import { wrongType } from "../../errors/catalogue.ts";
import { deepFreeze } from "../../params/canonical.ts";
import { isRecord } from "../../params/compound.ts";
import { checkTile } from "../../tile/check-tile.ts";
import { measureRoles } from "../../tile/figures/role-figures.ts";
import type { Tile } from "../../tile/tile.ts";
import { readColorway } from "../read.ts";
import { type InkTable, inkTable } from "./ink-table.ts";
import { type Judged, judge, type Terms } from "./judge.ts";
import { type Sight, sightOf } from "./sight.ts";

/** The edge of a colorway that does most harm: it reads badly, and there is much of it. */
export interface WeakestEdge<R extends string = string> {
  /** The two roles, the lower first. */
  readonly roles: readonly [below: R | "ground", above: R | "ground"];
  readonly inks: readonly [below: string, above: string];
  /** Difference of the two inks, CIEDE2000. */
  readonly deltaE: number;
  /** How far they are apart in CIELAB lightness L*, 0..100. */
  readonly lightness: number;
  /** How long they meet in one block (mm). */
  readonly length: number;
  /** How well they are told apart, 0..1; below 0.5 it draws the score down. */
  readonly reads: number;
}

/** Why a colorway has its score. */
export interface Why<R extends string = string> {
  readonly terms: Terms;
  /** Left out when no two roles meet. */
  readonly weakest?: WeakestEdge<R>;
}

/** A score and its reasons. */
export interface Rating<R extends string = string> {
  /** 0..100: the terms, weighed, and drawn down by an edge that does not read. Above 75 is good. */
  readonly score: number;
  readonly why: Why<R>;
}

/**
 * How well a colorway of one's own reads on a tile, by the same measure as `colorways` ranks by: to find out why one is
 * better than another, and which two inks to move apart.
 *
 * @example sayRating(rateColorway(tile, pattern.colorways.dawn))
 * @throws SprigwrightError `missing-ink`, `unknown-role`, `bad-color`, `wrong-type`
 */
export function rateColorway<R extends string>(
  tile: Tile<R>,
  colorway: { readonly name: string; readonly inks: { readonly [K in NoInfer<R> | "ground"]: string } },
): Rating<R> {
  checkTile(tile, "rateColorway > tile");
  if (!isRecord(colorway) || !isRecord(colorway.inks))
    throw wrongType(
      "rateColorway > colorway",
      colorway,
      "a colorway: what colorwayFor(tile, name, inks) gives",
    );
  const { inks } = readColorway(
    colorway.name,
    colorway.inks,
    tile.recipe.roles,
    `rateColorway > ${tile.name}`,
  );
  const { roles } = tile.recipe;
  const table = inkTable([...new Set(Object.values(inks))]);
  const given = roles.map((role) => table.inks.indexOf(inks[role]!));
  const sight = sightOf(measureRoles(tile), roles);
  return ratingOf(sight, table, given, judge(sight, table, given)) as Rating<R>;
}

/** A judgement in names and figures that a person can read. */
export function ratingOf(
  { roles, edges }: Sight,
  table: InkTable,
  inks: ArrayLike<number>,
  { terms, weakest, worth }: Judged,
): Rating {
  const edge = edges[weakest];
  const hundredth = (value: number): number => Math.round(value * 100) / 100;
  const shown = {
    edges: hundredth(terms.edges),
    ground: hundredth(terms.ground),
    quiet: hundredth(terms.quiet),
    accent: hundredth(terms.accent),
  };
  const score = Math.round(worth * 1000) / 10;
  if (!edge) return deepFreeze({ score, why: { terms: shown } });
  const [a, b] = [inks[edge.below]!, inks[edge.above]!];
  const pair = a * table.inks.length + b;
  return deepFreeze({
    score,
    why: {
      terms: shown,
      weakest: {
        roles: [roles[edge.below]!, roles[edge.above]!],
        inks: [table.inks[a]!, table.inks[b]!],
        deltaE: hundredth(table.difference[pair]!),
        lightness: hundredth(Math.abs(table.lightness[a]! - table.lightness[b]!)),
        length: edge.length,
        reads: hundredth(table.reads[pair]!),
      },
    },
  });
}
