import { evenOddRings, intersectRings, subtractRings, uniteRings } from "../../geometry/clip.ts";
import { flatten, type Ring } from "../../geometry/flatten.ts";
import type { Matrix } from "../../geometry/matrix.ts";
import type { Box } from "../../geometry/path.ts";
import { pathOfRuns } from "../../geometry/path-of-runs.ts";
import { type Runs, transformRuns } from "../../geometry/sketch.ts";
import { extentOf } from "./extent.ts";
import { type Clip, leavesOf, type Mark, type Painted, type Region } from "./journey.ts";

/** Whole steps across all that is drawn, when clipped areas are measured. */
const STEPS = 4_000_000;
const TOLERANCE = 20;

/** The box of what is seen of marks: areas that are clipped count as far as their clips let them. */
export function boxOfMarks(marks: readonly Mark[]): Box {
  const painted = marks.flatMap(leavesOf);
  const free = painted.filter((one) => one.clips.length === 0).map((one) => one.outline);
  const clipped = painted.filter((one) => one.clips.length > 0);
  const box = extentOf(free);
  if (clipped.length === 0) return box;
  const whole = extentOf(painted.map((one) => one.outline));
  const longer = Math.max(whole.maxX - whole.minX, whole.maxY - whole.minY);
  if (!(longer > 0) || !Number.isFinite(longer)) return whole;
  const scale = STEPS / longer;
  // The path counts in thousandths, so a step is a thousandth of its unit.
  const unit = scale / 1000;
  const measure = ringsBy([unit, 0, 0, unit, -whole.minX * unit, -whole.minY * unit]);
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const ring of clipped.flatMap(measure))
    for (let i = 0; i < ring.length; i += 2) {
      minX = Math.min(minX, ring[i]!);
      maxX = Math.max(maxX, ring[i]!);
      minY = Math.min(minY, ring[i + 1]!);
      maxY = Math.max(maxY, ring[i + 1]!);
    }
  return {
    minX: Math.min(box.minX, minX / scale + whole.minX),
    minY: Math.min(box.minY, minY / scale + whole.minY),
    maxX: Math.max(box.maxX, maxX / scale + whole.minX),
    maxY: Math.max(box.maxY, maxY / scale + whole.minY),
  };
}

/** Measures regions as polygons under a matrix; each clip once. */
function ringsBy(matrix: Matrix): (region: Region) => Ring[] {
  const known = new Map<Clip, Ring[]>();
  const ringsOf = (region: Region): Ring[] => {
    const drawn = flatten(pathOfRuns(transformRuns(region.outline, matrix)), TOLERANCE);
    const rings = region.rule === "evenodd" ? evenOddRings(drawn) : drawn;
    return region.clips.reduce((left, clip) => intersectRings(left, clipRings(clip)), rings);
  };
  const clipRings = (clip: Clip): Ring[] => {
    const before = known.get(clip);
    if (before) return before;
    let open: Ring[] = [];
    for (const region of clip.regions) {
      const part = ringsOf(region);
      open = region.away ? subtractRings(uniteRings(open), part) : [...open, ...part];
    }
    const rings = uniteRings(open);
    known.set(clip, rings);
    return rings;
  };
  return ringsOf;
}

/** The clips of an area that may cut it: not those that are a plain box around all of it. */
export function cuttingClips(painted: Painted): readonly Clip[] {
  if (painted.clips.length === 0) return painted.clips;
  const { minX, minY, maxX, maxY } = extentOf([painted.outline]);
  return painted.clips.filter(({ regions: [region, ...more] }) => {
    if (!region || region.away || more.length > 0 || region.clips.length > 0) return true;
    if (!isBox(region.outline)) return true;
    const box = extentOf([region.outline]);
    return !(box.minX <= minX && box.minY <= minY && box.maxX >= maxX && box.maxY >= maxY);
  });
}

/** Whether an outline is one upright box, drawn side by side. */
export function isBox(outline: Runs): boolean {
  const [run, ...more] = outline;
  if (!run || more.length > 0) return false;
  const p = run.points;
  return p.length >= 20 && p.length <= 26 && isUpright(p, extentOf([outline]));
}

/** Whether every point and control is at a corner of the box, one after the other around it. */
function isUpright(p: readonly number[], box: Box): boolean {
  const corners = new Set<number>();
  for (let i = 0; i < p.length; i += 2) {
    const [x, y] = [p[i]!, p[i + 1]!];
    if ((x !== box.minX && x !== box.maxX) || (y !== box.minY && y !== box.maxY)) return false;
    if (i >= 2 && x !== p[i - 2] && y !== p[i - 1]) return false;
    corners.add((x === box.minX ? 0 : 1) + (y === box.minY ? 0 : 2));
  }
  return corners.size === 4;
}
