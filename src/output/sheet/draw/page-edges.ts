import { flatten } from "../../../geometry/flatten.ts";
import { eachContour } from "../../../geometry/path.ts";
import { UM_PER_INCH } from "../../../units/length.ts";
import { pixelsAt } from "../../../units/pixels.ts";
import { type Edges, sideList, sortSides } from "../../png/edges.ts";
import { PARTS } from "../../png/grid.ts";
import { clipSides, type Window } from "./clipped-sides.ts";
import type { Coat } from "./coats.ts";

/** The pixels of a page: where its upper left corner is (µm), and how many. */
export interface PagePixels {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly dpi: number;
}

/** Farthest that sides may stray from their curve, in pixels. */
const TOLERANCE = 0.02;

/** Parts of a µm that points on a curve are rounded to: sums and products with them are then exact. */
const FINE = 256;

/** All coats as sides in 1/256 pixel, cut to what they may cover, in bands of `rows` rows. */
export function pageEdges(coats: readonly Coat[], page: PagePixels, rows: number): Edges {
  const list = sideList();
  const ends = coats.map((coat) => {
    const window = windowOf(coat, page);
    const { left, top, right, bottom } = window;
    if (coat.floods) clipSides([left, top, right, top, right, bottom, left, bottom], window, list.put);
    else for (const ring of ringsOf(coat, page)) clipSides(ring, window, list.put);
    return list.count();
  });
  return sortSides(list.sides(), ends, page.height, rows);
}

/** What a coat may cover: whole pixels, within the page. */
function windowOf({ clip }: Coat, { left, top, width, height, dpi }: PagePixels): Window {
  const whole = (um: number): number => Math.round(pixelsAt(um, dpi)) * PARTS;
  return {
    left: Math.max(0, whole(clip.minX - left)),
    top: Math.max(0, whole(clip.minY - top)),
    right: Math.min(width * PARTS, whole(clip.maxX - left)),
    bottom: Math.min(height * PARTS, whole(clip.maxY - top)),
  };
}

/**
 * A coat's contours as polygons in 1/256 pixel. Curves are cut about the contour's own first point, so that a copy that is
 * moved by whole pixels has the same polygon, moved.
 */
function ringsOf({ path, at: [x, y] }: Coat, { left, top, dpi }: PagePixels): Float64Array[] {
  const rings: Float64Array[] = [];
  const parts = (um: number): number => Math.round((um * dpi * PARTS) / UM_PER_INCH);
  eachContour(path, (from, to) => {
    const contour = path.points.subarray(from, to);
    const [originX, originY] = [contour[0]!, contour[1]!];
    const points = contour.map((value, i) => value - (i % 2 === 0 ? originX : originY));
    const local = { points, contours: [points.length / 6] };
    const [dx, dy] = [originX + x - left, originY + y - top];
    for (const ring of flatten(local, (TOLERANCE * UM_PER_INCH) / dpi))
      rings.push(ring.map((um, i) => parts(Math.round(um * FINE) / FINE + (i % 2 === 0 ? dx : dy))));
  });
  return rings;
}
