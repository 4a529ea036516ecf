import { fitRing } from "../../geometry/fit.ts";
import { flatten, type Ring } from "../../geometry/flatten.ts";
import { CURVE, eachContour, joinPaths, type Path } from "../../geometry/path.ts";
import { deviation } from "./deviation.ts";

/** Curves whose fitting is tried; a contour of more stays as it is. */
const MOST_CURVES = 4000;
/** Share of the tolerance that the fit may use up: the rest is for rounding to whole µm and for what it misses. */
const AIM = 0.6;

/**
 * A path with fewer nodes, none of its contours farther than `tolerance` (µm) from where it was: each is fitted anew,
 * corners kept, and the real deviation is measured both ways. A contour that would stray farther, or gain nothing,
 * stays as it is.
 */
export function simplifyPath(path: Path, tolerance: number): Path {
  if (!(tolerance > 0)) return path;
  const contours: Path[] = [];
  let changed = false;
  eachContour(path, (from, to) => {
    const contour: Path = { points: path.points.slice(from, to), contours: [(to - from) / CURVE] };
    const simpler = simplerContour(contour, tolerance);
    if (simpler) changed = true;
    contours.push(simpler ?? contour);
  });
  return changed ? joinPaths(contours) : path;
}

function simplerContour(contour: Path, tolerance: number): Path | undefined {
  const curves = contour.contours[0]!;
  if (curves < 4 || curves > MOST_CURVES) return undefined;
  const fine = Math.max(0.25, tolerance / 12);
  const [ring] = flatten(contour, fine) as [Ring];
  if (ring.length < 8) return undefined;
  const fitted = fitRing(ring, tolerance * AIM);
  if (fitted.contours[0]! >= curves) return undefined;
  const strays = deviation(ring, flatten(fitted, fine)[0]!, tolerance);
  return strays + fine <= tolerance ? fitted : undefined;
}
