import { outOfRange } from "../../../errors/catalogue.ts";
import { type Analysis, analyse } from "./analyse.ts";
import { edgesOf, tooRich } from "./edges.ts";
import { fitOutline, type Outline } from "./fit/outline.ts";
import type { Point } from "./fit/point.ts";
import { coveredBy, groupInks, type InkGroup } from "./ink-roles.ts";
import type { TraceSetting } from "./options.ts";
import { boxOf } from "./outline-box.ts";
import type { Picture } from "./picture.ts";
import { rasterOf } from "./raster.ts";
import { type Sized, scaleOf } from "./scale.ts";

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
  readonly sized: Sized;
  /** Points of the edges before curves were fitted. */
  readonly points: number;
}

/**
 * Share of the tolerance that curves may use up; the rest is for what pixels hide of the true edge. Grain makes edges
 * tremble, and curves should not follow that.
 */
const AIM = 0.5;
const AIM_ROUGH = 0.8;
/** Longer side in mm where nothing says how large a picture is. */
const PLAIN_SIZE = 30;
/** Most nodes of curves. */
const MOST_NODES = 60_000;

/** Traces a picture. @throws SprigwrightError `empty-artwork`, `picture-too-rich`, `length-range`, and for roles */
export function trace(picture: Picture, setting: TraceSetting, where: string): Trace {
  const { raster, factor } = rasterOf(picture);
  const { perMm: known, sized } = scaleOf(picture, setting, factor);
  const size = setting.size ?? PLAIN_SIZE;
  const leastOf = (longer: number): number => {
    const side = setting.specks(known ?? longer / size);
    return side * side;
  };
  const analysis = analyse(raster, setting.wish, leastOf, where);
  const groups = groupInks(coveredBy(analysis, where), setting.roles, `${where} > roles`);
  const { found, about } = edgesOf(analysis, groups, known, size, where);
  const aim = (analysis.rough ? AIM_ROUGH : AIM) * setting.tolerance(known ?? about / size);
  const layers = groups.flatMap((group, i) => {
    const outlines = found[i]!.rings.map((ring) =>
      fitOutline(ring, aim, analysis.softness, found[i]!.isHidden),
    );
    return outlines.length > 0 ? [{ group, outlines }] : [];
  });
  const { middle, longer } = boxOf(layers.flatMap(({ outlines }) => outlines));
  const perMm = known ?? longer / size;
  if (longer / perMm < 1 || longer / perMm > 2000)
    throw outOfRange(
      `${where} > size`,
      Math.round(longer / perMm),
      { min: 1, max: 2000 },
      "mm",
      "length-range",
    );
  const nodes = layers.reduce(
    (sum, { outlines }) => sum + outlines.reduce((n, { spans }) => n + spans.length, 0),
    0,
  );
  if (nodes > MOST_NODES) throw tooRich(`its outlines need ${nodes} nodes`, where);
  const points = found.flatMap(({ rings }) => rings).reduce((sum, ring) => sum + ring.length / 2, 0);
  return { layers, analysis, middle, longer, perMm, factor, sized, points };
}
