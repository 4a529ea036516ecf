import type { Element } from "@xmldom/xmldom";
import { intersect } from "../../geometry/boolean.ts";
import { intersectRings, ringsArea, subtractRings } from "../../geometry/clip.ts";
import { flatten, type Ring } from "../../geometry/flatten.ts";
import type { Box, Path } from "../../geometry/path.ts";
import { bytesOf, type FlatColor, hexOf } from "./color.ts";
import type { Named } from "./journey.ts";
import { LIMITS, tooLarge } from "./limits.ts";
import { boxesMeet } from "./stack.ts";

/** What one mark paints, at its size in the pattern; it hides what lies below it. */
export interface Sheet extends FlatColor {
  readonly path: Path;
  readonly box: Box;
  readonly from: string;
  readonly trail: readonly Named[];
  readonly holder: Element;
}

/** How finely outlines are flattened to see what lies over what (µm). */
const TOLERANCE = 5;
/** Overlaps below this do not show (µm²). */
const DUST = 100;

/**
 * What a sheet becomes on top of others: itself when it is solid; else the parts of those below it, in the colours
 * that show through it, in their own order, and itself where nothing lies below. `below` are the sheets before it.
 * @throws SprigwrightError `artwork-too-large`
 */
export function blender(): (below: readonly Sheet[], sheet: Sheet) => Sheet[] {
  const known = new Map<Path, Ring[]>();
  const ringsOf = (path: Path): Ring[] => {
    const rings = known.get(path) ?? flatten(path, TOLERANCE);
    known.set(path, rings);
    return rings;
  };
  let overlaps = 0;
  return (below, sheet) => {
    if (sheet.alpha >= 1) return [sheet];
    let bare = ringsOf(sheet.path);
    const seen: Sheet[] = [];
    for (let i = below.length - 1; i >= 0 && bare.length > 0; i--) {
      const under = below[i]!;
      if (!boxesMeet(under.box, sheet.box)) continue;
      const shared = ringsArea(intersectRings(bare, ringsOf(under.path)));
      if (shared <= DUST) continue;
      if (++overlaps > LIMITS.veils)
        throw tooLarge(sheet.from, `more than ${LIMITS.veils} overlaps of half transparent shapes`);
      const path = intersect(under.path, sheet.path);
      if (path.contours.length > 0) seen.unshift({ ...sheet, ...over(sheet, under), path });
      bare = subtractRings(bare, ringsOf(under.path));
      if (ringsArea(bare) <= DUST) bare = [];
    }
    return bare.length > 0 ? [sheet, ...seen] : seen;
  };
}

/** One colour over another, as screens mix them: in sRGB, each channel for itself (Porter and Duff, "over"). */
export function over(top: FlatColor, under: FlatColor): FlatColor {
  const alpha = top.alpha + under.alpha * (1 - top.alpha);
  const [a, b] = [bytesOf(top.fill), bytesOf(under.fill)];
  const mix = (i: 0 | 1 | 2): number => (a[i] * top.alpha + b[i] * under.alpha * (1 - top.alpha)) / alpha;
  return { fill: hexOf(mix(0), mix(1), mix(2)), alpha: alpha > 0.998 ? 1 : alpha };
}
