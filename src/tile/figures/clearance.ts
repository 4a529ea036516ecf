import { distanceBetween, isCloser } from "../../geometry/distance.ts";
import { type Outline, outlineOf, transformOutline } from "../../geometry/outline.ts";
import { copiesNear, isSelf, type Scene } from "./scene.ts";

/** Flattening for the final distances (µm). */
const FINE = 1;

/** Most pairs that are measured finely. */
const PAIRS = 400;

/** What stands nearest to a placement. */
export interface Nearest {
  /** Distance (µm) of the nearest image's outline, own images included, within four times the scene's tolerance. */
  readonly distance: number;
  /** Number of the placement whose image is the nearest of all others'; -1 when there is no other. */
  readonly other: number;
  /** Whether it is one with some of its own images: see {@link isSelf}. */
  readonly seated: boolean;
}

/** The nearest images of each placement. */
export function nearestImages(scene: Scene): Nearest[] {
  return scene.placements.map((_, i) => nearestTo(scene, i));
}

function nearestTo(scene: Scene, placement: number): Nearest {
  const { outline } = scene.copies[placement * scene.operations.length]!;
  const { width, height } = scene.lattice.block;
  const alone = scene.placements.length === 1;
  // A look that reaches further than the block has met an image of everything.
  for (let reach = scene.spacing / 4; reach < 4 * (width + height); reach *= 2) {
    let [own, others, other, selves] = [reach, reach, -1, 0];
    copiesNear(scene, outline.box, reach, (copy, dx, dy) => {
      if (isSelf(scene, placement, copy, dx, dy)) {
        selves++;
      } else if (copy.placement === placement) {
        if (own > 0 && isCloser(outline, copy.outline, dx, dy, own))
          own = distanceBetween(outline, copy.outline, dx, dy);
      } else if (others > 0 && isCloser(outline, copy.outline, dx, dy, others)) {
        others = distanceBetween(outline, copy.outline, dx, dy);
        other = copy.placement;
      }
    });
    if (other >= 0 || (alone && own < reach))
      return { distance: Math.min(own, others), other, seated: selves > 1 };
  }
  return { distance: Infinity, other: -1, seated: false };
}

interface Pair {
  readonly distance: number;
  readonly one: number;
  readonly two: number;
  readonly dx: number;
  readonly dy: number;
}

/**
 * Clearance: the least distance (µm, from 0) between the real outlines of any two motif images, a motif's own images
 * included; 0 when any two touch or overlap. Good is what the layout was asked for, its gap.
 *
 * Pairs that the coarse outlines leave in question are measured again on outlines flattened within a micrometre, the
 * nearest 400 at most: exact to about 3 µm, rounding of the drawn coordinates included. A motif seated on a mirror
 * line or a centre of rotation is one with its image there.
 */
export function clearanceOf(scene: Scene, nearest: readonly Nearest[]): number {
  const least = nearest.reduce((min, { distance }) => Math.min(min, distance), Infinity);
  if (least === 0 || least === Infinity) return least;
  let best = Infinity;
  const fine = fineOutlines(scene);
  for (const { distance, one, two, dx, dy } of closePairs(scene, nearest, least + 4 * scene.tolerance)) {
    if (distance - 2 * scene.tolerance >= best) continue;
    const [p, q] = [fine(one), fine(two)];
    if (best === Infinity || isCloser(p, q, dx, dy, best)) best = distanceBetween(p, q, dx, dy);
    if (best === 0) return 0;
  }
  return best;
}

/** Pairs of copies closer than `limit` on the coarse outlines, the nearest first. */
function closePairs(scene: Scene, nearest: readonly Nearest[], limit: number): Pair[] {
  const pairs: Pair[] = [];
  nearest.forEach(({ distance }, placement) => {
    if (distance >= limit) return;
    const one = placement * scene.operations.length;
    const { outline } = scene.copies[one]!;
    copiesNear(scene, outline.box, limit, (copy, dx, dy, two) => {
      // Between two placements one look is enough: the other sees the same.
      if (copy.placement < placement || isSelf(scene, placement, copy, dx, dy)) return;
      if (!isCloser(outline, copy.outline, dx, dy, limit)) return;
      pairs.push({ distance: distanceBetween(outline, copy.outline, dx, dy), one, two, dx, dy });
    });
  });
  return pairs
    .sort((p, q) => p.distance - q.distance || p.one - q.one || p.two - q.two || p.dx - q.dx || p.dy - q.dy)
    .slice(0, PAIRS);
}

/** Outlines of copies flattened finely; motifs are flattened once, copies made as asked for. */
function fineOutlines({ copies, motifs, placements }: Scene): (index: number) => Outline {
  const flat = new Map<number, Outline>();
  return (index) => {
    const { placement, matrix } = copies[index]!;
    const { motif } = placements[placement]!;
    const known = flat.get(motif) ?? outlineOf(motifs[motif]!.outline, FINE);
    flat.set(motif, known);
    return transformOutline(known, matrix);
  };
}
