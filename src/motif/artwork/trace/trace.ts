import { badInput, outOfRange } from "../../../errors/catalogue.ts";
import { ringArea } from "../../../geometry/flatten.ts";
import { type Analysis, analyse } from "./analyse.ts";
import { fitOutline, type Outline } from "./fit/outline.ts";
import type { Point } from "./fit/point.ts";
import { type Covered, groupInks, type InkGroup } from "./ink-roles.ts";
import { type Layer, layersOf } from "./layers.ts";
import type { TraceSetting } from "./options.ts";
import type { Picture } from "./picture.ts";
import { rasterOf } from "./raster.ts";

/** A picture as outlines. */
export interface Trace {
  /** Back to front. */
  readonly layers: readonly { readonly group: InkGroup; readonly outlines: readonly Outline[] }[];
  readonly analysis: Analysis;
  /** Middle of all that is traced, and its longer side, in pixels of the traced raster. */
  readonly middle: Point;
  readonly longer: number;
  /** Pixels of the traced raster in a mm. */
  readonly perMm: number;
  /** By which factor the picture was averaged down. */
  readonly factor: number;
  /** Where the size comes from. */
  readonly sized: "size" | "width" | "dpi" | "file" | "default";
  /** Points of the edges before curves were fitted. */
  readonly points: number;
}

/** How far an ink spreads under those that lie on it (mm), and least and most pixels of that. */
const SPREAD = 0.15;
const SPREAD_LEAST = 3.5;
const SPREAD_MOST = 12;
/**
 * Share of the tolerance that curves may use up; the rest is for what pixels hide of the true edge. Grain makes edges
 * tremble, and curves should not follow that.
 */
const AIM = 0.5;
const AIM_ROUGH = 0.8;
/** Longer side in mm where nothing says how large a picture is. */
const PLAIN_SIZE = 30;
/** Most points of edges, and most nodes of curves. */
const MOST_POINTS = 4_000_000;
const MOST_NODES = 60_000;

/** Traces a picture. @throws SprigwrightError `empty-artwork`, `picture-too-rich`, `length-range`, and for roles */
export function trace(picture: Picture, setting: TraceSetting, where: string): Trace {
  const { raster, factor } = rasterOf(picture);
  const { perMm: known, sized } = scaleOf(picture, setting, raster.width, factor);
  const size = setting.size ?? PLAIN_SIZE;
  const leastOf = (longer: number): number => {
    const side = setting.specks(known ?? longer / size);
    return side * side;
  };
  const analysis = analyse(raster, setting.wish, leastOf, where);
  const groups = groupInks(coveredBy(analysis, where), setting.roles, `${where} > roles`);
  const { found, middle, longer } = edges(analysis, groups, known, size, where);
  const perMm = known ?? longer / size;
  if (longer / perMm < 1 || longer / perMm > 2000)
    throw outOfRange(
      `${where} > size`,
      Math.round(longer / perMm),
      { min: 1, max: 2000 },
      "mm",
      "length-range",
    );
  const aim = (analysis.rough ? AIM_ROUGH : AIM) * setting.tolerance(perMm);
  const layers = groups.flatMap((group, i) => {
    const outlines = found[i]!.rings.map((ring) =>
      fitOutline(ring, aim, analysis.softness, found[i]!.isHidden),
    );
    return outlines.length > 0 ? [{ group, outlines }] : [];
  });
  const nodes = layers.reduce(
    (sum, { outlines }) => sum + outlines.reduce((n, { spans }) => n + spans.length, 0),
    0,
  );
  if (nodes > MOST_NODES) throw tooRich(`its outlines need ${nodes} nodes`, where);
  const points = found.flatMap(({ rings }) => rings).reduce((sum, ring) => sum + ring.length / 2, 0);
  return { layers, analysis, middle, longer, perMm, factor, sized, points };
}

function scaleOf(
  picture: Picture,
  { size, width, dpi }: TraceSetting,
  columns: number,
  factor: number,
): { perMm: number | undefined; sized: Trace["sized"] } {
  if (size !== undefined) return { perMm: undefined, sized: "size" };
  if (width !== undefined) return { perMm: columns / width, sized: "width" };
  if (dpi !== undefined) return { perMm: dpi / 25.4 / factor, sized: "dpi" };
  if (picture.perMm !== undefined) return { perMm: picture.perMm / factor, sized: "file" };
  return { perMm: undefined, sized: "default" };
}

function coveredBy({ palette, shares, isPaper }: Analysis, where: string): Covered[] {
  const pixels = new Array<number>(palette.inks.length).fill(0);
  for (const label of shares.major) pixels[label]!++;
  const covered = palette.inks
    .map((ink, label) => ({ ink, label, pixels: pixels[label]! }))
    .filter(({ label, pixels }) => !isPaper(label) && pixels > 0);
  if (covered.length === 0)
    throw badInput(
      "empty-artwork",
      where,
      "nothing is left but paper and specks",
      'give a lower limit, such as specks: "1px"',
    );
  return covered;
}

/** Rings of every layer in pixels, and the box of them all. */
function edges(
  analysis: Analysis,
  groups: readonly InkGroup[],
  known: number | undefined,
  size: number,
  where: string,
): { found: readonly Layer[]; middle: Point; longer: number } {
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
  return {
    found,
    middle: [(left + right) / 2, (top + bottom) / 2],
    longer: Math.max(right - left, bottom - top),
  };
}

const tooRich = (what: string, where: string): Error =>
  badInput(
    "picture-too-rich",
    where,
    `${what}, too many for a motif`,
    'take more for specks, such as specks: "12px", allow a wider tolerance, or ask for fewer inks',
  );
