import { badInput } from "../../errors/catalogue.ts";
import { uniteRings } from "../../geometry/clip.ts";
import { flatten, type Ring } from "../../geometry/flatten.ts";
import { growRings } from "../../geometry/grow.ts";
import { type Bounds, imagesOf, transformBounds } from "../../geometry/images.ts";
import type { Arrangement } from "../../geometry/lattice.ts";
import type { Matrix } from "../../geometry/matrix.ts";
import { outlineOfRings } from "../../geometry/outline.ts";
import { boxOf } from "../../geometry/path.ts";
import { type Area, areaPath } from "../area.ts";
import { stripeRings } from "../stripes.ts";

/** Where the motifs of a toss may lie. */
export interface Confines {
  /** Every motif lies wholly in this area or one of its copies. */
  readonly inside?: Area | undefined;
  /** No motif lies in this area or one of its copies. */
  readonly outside?: Area | undefined;
  /** How far motifs keep from the boundary of either (mm). */
  readonly edge?: number | undefined;
}

/** How far a flattened area may stray from its curves (µm). */
const TOLERANCE = 4;
/** Copies of an area that are this close (µm, twice) are one: where copies touch, rounding may leave a crack. */
const CRACK = 2;
/** Most sides of all copies together. */
const MOST_SIDES = 100_000;

/**
 * What motifs may not touch, within `zone` (µm): filled polygons (nonzero), the ground beyond `inside` and the copies
 * of `outside`. Copies under the lattice and the operations are united, so where the copies of an area meet there is
 * no wall between them.
 *
 * @throws SprigwrightError `area-outside-unit`, `area-too-detailed`, `stripes-do-not-close`
 */
export function forbiddenRings(confines: Confines, arrangement: Arrangement, zone: Bounds): Ring[][] {
  const { inside, outside } = confines;
  return [
    ...(inside === undefined ? [] : [beyond(covered(inside, arrangement, zone, "inside", CRACK), zone)]),
    ...(outside === undefined ? [] : [covered(outside, arrangement, zone, "outside", 0)]),
  ];
}

/** All copies of an area that meet the zone, united. */
function covered(area: Area, arrangement: Arrangement, zone: Bounds, option: string, grow: number): Ring[] {
  const where = `toss > ${option}`;
  if (typeof area !== "string") return stripeRings(area, arrangement, zone, where);
  const path = areaPath(area, where);
  checkPlace(boxOf(path), arrangement, where);
  const united = uniteRings(flatten(path, TOLERANCE));
  const rings = grow > 0 ? growRings(united, grow, 1) : united;
  const { box } = outlineOfRings(rings);
  const own = rings.reduce((sum, ring) => sum + ring.length / 2, 0);
  const images = imagesOf(arrangement);
  const copies: Ring[] = [];
  let sides = 0;
  for (const operation of images.operations) {
    const shown = rings.map((ring) => transformRing(ring, operation));
    images.between(transformBounds(box, operation), zone, 0, (dx, dy) => {
      sides += own;
      if (sides > MOST_SIDES)
        throw badInput(
          "area-too-detailed",
          where,
          `its copies have more than ${MOST_SIDES} sides together`,
          "simplify the path, or make it larger",
        );
      for (const ring of shown) copies.push(ring.map((v, i) => v + (i % 2 === 0 ? dx : dy)));
    });
  }
  return uniteRings(copies);
}

/** A ring under a matrix, in whole µm; outer rings stay positive when it mirrors. */
function transformRing(ring: Ring, [a, b, c, d, e, f]: Matrix): Ring {
  const moved = new Float64Array(ring.length);
  const mirrors = a * d - b * c < 0;
  for (let i = 0; i < ring.length; i += 2) {
    const to = mirrors ? ring.length - 2 - i : i;
    moved[to] = Math.round(a * ring[i]! + c * ring[i + 1]! + e);
    moved[to + 1] = Math.round(b * ring[i]! + d * ring[i + 1]! + f);
  }
  return moved;
}

/** A frame well around everything, with united rings cut out. */
function beyond(rings: readonly Ring[], zone: Bounds): Ring[] {
  let [left, top, right, bottom] = [zone[0]!, zone[1]!, zone[2]!, zone[3]!];
  for (const ring of rings)
    for (let i = 0; i < ring.length; i += 2) {
      left = Math.min(left, ring[i]!);
      right = Math.max(right, ring[i]!);
      top = Math.min(top, ring[i + 1]!);
      bottom = Math.max(bottom, ring[i + 1]!);
    }
  [left, top, right, bottom] = [left - 1000, top - 1000, right + 1000, bottom + 1000];
  const frame = Float64Array.from([left, top, right, top, right, bottom, left, bottom]);
  return [frame, ...rings.map(reversed)];
}

function reversed(ring: Ring): Ring {
  const back = new Float64Array(ring.length);
  for (let i = 0; i < ring.length; i += 2) {
    back[ring.length - 2 - i] = ring[i]!;
    back[ring.length - 1 - i] = ring[i + 1]!;
  }
  return back;
}

/** Copies of a path that lies beside the unit do come into it, but whoever drew it there did not mean that. */
function checkPlace(
  box: { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number },
  { unit }: Arrangement,
  where: string,
): void {
  if (box.maxX > 0 && box.maxY > 0 && box.minX < unit.width && box.minY < unit.height) return;
  const mm = (um: number): number => um / 1000;
  throw badInput(
    "area-outside-unit",
    where,
    `the path lies from ${mm(box.minX)}, ${mm(box.minY)} to ${mm(box.maxX)}, ${mm(box.maxY)} mm, beside the unit of ${mm(unit.width)} x ${mm(unit.height)} mm`,
    "draw it in mm from the unit's upper left corner",
  );
}
