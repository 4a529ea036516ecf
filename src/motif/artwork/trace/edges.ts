import { badInput } from "../../../errors/catalogue.ts";
import { ringArea } from "../../../geometry/flatten.ts";
import type { Analysis } from "./analyse.ts";
import type { InkGroup } from "./ink-roles.ts";
import { type Layer, layersOf } from "./layers.ts";

/** How far an ink spreads under those that lie on it (mm), and least and most pixels of that. */
const SPREAD = 0.15;
const SPREAD_LEAST = 3.5;
const SPREAD_MOST = 12;
/** Most points of all edges. */
const MOST_POINTS = 4_000_000;

/** Rings of every layer in pixels, and about how long all is. */
export function edgesOf(
  analysis: Analysis,
  groups: readonly InkGroup[],
  known: number | undefined,
  size: number,
  where: string,
): { found: readonly Layer[]; about: number } {
  const perMm = known ?? Math.max(analysis.shares.width, analysis.shares.height) / size;
  const spread = Math.max(SPREAD_LEAST, Math.min(SPREAD_MOST, SPREAD * perMm));
  const found = layersOf(analysis, groups, spread).map((layer) => ({
    ...layer,
    rings: layer.rings.filter((ring) => Math.abs(ringArea(ring)) >= 1),
  }));
  let [left, top, right, bottom, points] = [Infinity, Infinity, -Infinity, -Infinity, 0];
  for (const ring of found.flatMap(({ rings }) => rings)) {
    points += ring.length / 2;
    for (let i = 0; i < ring.length; i += 2) {
      left = Math.min(left, ring[i]!);
      right = Math.max(right, ring[i]!);
      top = Math.min(top, ring[i + 1]!);
      bottom = Math.max(bottom, ring[i + 1]!);
    }
  }
  if (points > MOST_POINTS) throw tooRich(`its edges have ${points} points`, where);
  if (points === 0)
    throw badInput("empty-artwork", where, "its shapes are too thin to be traced", "scan at more dpi");
  return { found, about: Math.max(right - left, bottom - top) };
}

/** A picture that takes more than a motif should. */
export const tooRich = (what: string, where: string): Error =>
  badInput(
    "picture-too-rich",
    where,
    `${what}, too many for a motif`,
    'take more for specks, such as specks: "12px", allow a wider tolerance, or ask for fewer inks',
  );
