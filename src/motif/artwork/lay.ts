import { evenOdd, intersect, subtract, unite } from "../../geometry/boolean.ts";
import type { Matrix } from "../../geometry/matrix.ts";
import { areaOf, boxOf, type Path } from "../../geometry/path.ts";
import { pathOfRuns } from "../../geometry/path-of-runs.ts";
import { transformRuns } from "../../geometry/sketch.ts";
import { cuttingClips } from "./frame.ts";
import type { Clip, Mark, Painted, Region } from "./journey.ts";
import type { Dropped } from "./report.ts";
import { blender, type Sheet } from "./veil.ts";

/** Areas below this are dust of rounding: a hundredth of a millimetre squared (µm²). */
const DUST = 100;

/**
 * Marks as sheets of colour in paint order, at their size in the pattern: clipped, and veils worked out into what is
 * seen through them. Where sheets overlap, only the topmost shows.
 */
export function layMarks(
  marks: readonly Mark[],
  placed: Matrix,
  drop: (element: string, why: Dropped["why"]) => void,
): Sheet[] {
  const clips = new Map<Clip, Path>();
  const blend = blender();
  const pathOf = (region: Region, cutting: readonly Clip[]): Path => {
    const drawn = pathOfRuns(transformRuns(region.outline, placed));
    const path = region.rule === "evenodd" ? evenOdd(drawn) : unite([drawn]);
    return cutting.reduce(
      (left, clip) => (areaOf(left) < DUST ? left : intersect(left, clipPath(clip))),
      path,
    );
  };
  const clipPath = (clip: Clip): Path => {
    const known = clips.get(clip);
    if (known) return known;
    let open: readonly Path[] = [];
    for (const region of clip.regions) {
      const part = pathOf(region, region.clips);
      open = region.away ? [subtract(unite(open), part)] : [...open, part];
    }
    const path = unite(open);
    clips.set(clip, path);
    return path;
  };
  const sheetOf = (painted: Painted): Sheet[] => {
    const cutting = cuttingClips(painted);
    const path = pathOf(painted, cutting);
    if (areaOf(path) < DUST) {
      drop(painted.from, cutting.length > 0 ? "clipped" : "no-area");
      return [];
    }
    const { fill, alpha, from, trail, holder } = painted;
    return [{ fill, alpha, from, trail, holder, path, box: boxOf(path) }];
  };
  const lay = (all: readonly Mark[]): Sheet[] => {
    const laid: Sheet[] = [];
    for (const mark of all) {
      const group = mark.kind === "veil" ? lay(mark.marks) : sheetOf(mark);
      const share = mark.kind === "veil" ? mark.alpha : 1;
      const below = laid.slice();
      for (const sheet of group) laid.push(...blend(below, { ...sheet, alpha: sheet.alpha * share }));
    }
    return laid;
  };
  return lay(marks);
}
