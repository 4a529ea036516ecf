import { subtract, unite } from "../../../geometry/boolean.ts";
import { intersectRings, pathOfRings, ringsArea, uniteRings } from "../../../geometry/clip.ts";
import { flatten, type Ring, ringArea } from "../../../geometry/flatten.ts";
import { growRings } from "../../../geometry/grow.ts";
import { areaOf, CURVE, joinPaths, type Path } from "../../../geometry/path.ts";

/** How finely letters are flattened where they cross (µm). */
const FINENESS = 5;

/** Overlaps smaller than this are touches (µm²). */
const TOUCH = 2000;

/** What rounding and flattening may take off a gap (µm). */
const SLACK = 2 * FINENESS;

/**
 * Letters laid over and under each other: from top to bottom, crossings of two letters go over and under in turn, and what goes
 * under is cut back by `gap` µm beside what goes over. Returns the letters with their cuts; they no longer overlap.
 */
export function weave(letters: readonly Path[], gap: number): Path[] {
  const meetings = meetingsOf(letters, gap);
  const cuts: Ring[][] = letters.map(() => []);
  eachPair(letters.length, (i, j) => {
    const { near, groups } = meetings(i, j);
    // Of three, the middle one goes over its neighbours first: cut by both, it could not be read.
    let turn = i;
    for (const group of groups) {
      const side = (turn++ % 2) as 0 | 1;
      const under = partsOf(near[side]).filter((part) => group.some((crossing) => meet(crossing, part)));
      cuts[side === 0 ? i : j]!.push(...intersectRings(near[side], under));
    }
  });
  const woven = letters.map((letter, i) => without(unite([letter]), cuts[i]!, gap));
  // Where letters only pass close by, the later one gives way, so that the gap is kept all along.
  eachPair(letters.length, (i, j) => {
    if (gap <= SLACK) return;
    const kept = growRings(flatten(woven[i]!, FINENESS), gap - SLACK, FINENESS);
    woven[j] = without(woven[j]!, intersectRings(kept, rimmed(flatten(woven[j]!, FINENESS))), gap);
  });
  return woven;
}

/** How often neighbours cross in places that can be told apart, at the least: below 2 nothing is woven. */
export function leastCrossings(letters: readonly Path[], gap: number): number {
  const meetings = meetingsOf(letters, gap);
  return Math.min(...letters.slice(1).map((_, i) => meetings(i, i + 1).groups.length));
}

/** Where two letters meet. */
interface Meetings {
  /** What of each may be cut at a crossing: all of the one that is too near to the other. */
  readonly near: readonly [Ring[], Ring[]];
  /** Crossings, from top to bottom, those that cannot be told apart together. */
  readonly groups: readonly (readonly Ring[])[];
}

function meetingsOf(letters: readonly Path[], gap: number): (i: number, j: number) => Meetings {
  const rings = letters.map((letter) => uniteRings(flatten(letter, FINENESS)));
  const grown = rings.map((letter) => growRings(letter, gap, FINENESS));
  const rims = rings.map(rimmed);
  return (i, j) => {
    const crossings = partsOf(intersectRings(rings[i]!, rings[j]!)).filter((part) => ringArea(part) > TOUCH);
    const near = [intersectRings(grown[j]!, rims[i]!), intersectRings(grown[i]!, rims[j]!)] as const;
    return { near, groups: together(crossings, near.map(partsOf)) };
  };
}

/** Cuts reach so far past a letter's edge that no side of theirs lies on it, where Bézier booleans go astray (µm). */
const RIM = 40;

const rimmed = (rings: readonly Ring[]): Ring[] => growRings(rings, RIM, FINENESS);

function eachPair(count: number, visit: (i: number, j: number) => void): void {
  for (let i = 0; i < count; i++) for (let j = i + 1; j < count; j++) visit(i, j);
}

/** A letter without some of it, and without the specks that a cut leaves of a serif. */
function without(letter: Path, cut: readonly Ring[], gap: number): Path {
  return cut.length === 0
    ? letter
    : withoutSpecks(subtract(letter, pathOfRings(uniteRings(cut))), 4 * gap * gap);
}

/** A path without contours that enclose less than `least` µm²: what cuts leave over of a serif. */
function withoutSpecks(path: Path, least: number): Path {
  const kept: Path[] = [];
  let from = 0;
  for (const curves of path.contours) {
    const contour = { points: path.points.slice(from, from + curves * CURVE), contours: [curves] };
    from += curves * CURVE;
    if (Math.abs(areaOf(contour)) >= least) kept.push(contour);
  }
  return joinPaths(kept);
}

/** Outer rings, from top to bottom. A crossing's holes, if any, go with it. */
const partsOf = (rings: readonly Ring[]): Ring[] =>
  rings
    .filter((ring) => ringArea(ring) > 0)
    .map((ring) => ({ ring, top: spanOf(ring, 1)[0] }))
    .sort((p, q) => p.top - q.top || p.ring[0]! - q.ring[0]!)
    .map(({ ring }) => ring);

/** Least and greatest coordinate on one axis. */
function spanOf(ring: Ring, axis: 0 | 1): readonly [number, number] {
  let [least, most] = [Infinity, -Infinity];
  for (let i = axis; i < ring.length; i += 2) {
    least = Math.min(least, ring[i]!);
    most = Math.max(most, ring[i]!);
  }
  return [least, most];
}

function meet(p: Ring, q: Ring): boolean {
  for (const axis of [0, 1] as const) {
    const [[a, b], [c, d]] = [spanOf(p, axis), spanOf(q, axis)];
    if (b < c || d < a) return false;
  }
  return ringsArea(intersectRings([p], [q])) > 0;
}

/** Crossings that share a part to cut, on either side, are decided together. */
function together(crossings: readonly Ring[], near: readonly (readonly Ring[])[]): Ring[][] {
  const groups: Ring[][] = [];
  for (const crossing of crossings) {
    const bound = near.flat().filter((part) => meet(crossing, part));
    const joined = groups.filter((group) => group.some((other) => bound.some((part) => meet(other, part))));
    for (const group of joined) groups.splice(groups.indexOf(group), 1);
    groups.push([...joined.flat(), crossing]);
  }
  return groups;
}
