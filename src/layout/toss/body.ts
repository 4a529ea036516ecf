import { badShape } from "../../errors/catalogue.ts";
import { closeHollows } from "../../geometry/close-hollows.ts";
import type { Ring } from "../../geometry/flatten.ts";
import { middleOf } from "../../geometry/middle.ts";
import { blankOutline, type Outline, outlineOfRings, silhouetteOf } from "../../geometry/outline.ts";
import { areaOf } from "../../geometry/path.ts";
import { type Circle, enclosingCircle } from "../../geometry/reach.ts";
import type { DrawnMotif } from "../layout.ts";
import type { TossEntry } from "./options.ts";
import { rimOf } from "./rim.ts";
import { spotsOf } from "./spots.ts";
import { closeTexture, type Texture, textureOf } from "./texture.ts";

/** How far a flattened outline may stray from the curve at its largest scale (µm). */
export const TOLERANCE: number = 8;

/**
 * What is added to every gap (µm), so that the drawn curves keep it: both outlines stray by the tolerance, and
 * their points are rounded to whole µm, once when placed and once more when copied by an operation.
 */
export const SLACK: number = 2 * TOLERANCE + 4;

/** Points on a side of the grid of distances, and how far it reaches from the centre, in radii. */
const GRID = 64;
const GRID_REACH = 1.35;

/** Bays narrower than this, as a share of the motif's radius, are kept free. */
const BAY = 0.4;

/** One drawing, made ready for packing. Everything is in its own coordinates and unscaled (µm). */
export interface Body {
  readonly drawn: DrawnMotif;
  /** Index of its entry. */
  readonly entry: number;
  /** Its entry's extra gap. */
  readonly extra: number;
  /** What exact distances are measured on; holes count as filled. */
  readonly outline: Outline;
  /** Room for the outline under the pose being tried. */
  readonly scratch: Outline;
  /** Area of its ink (µm²): what is knocked out of it does not count. */
  readonly area: number;
  readonly circle: Circle;
  /** Middle of its ink: what the eye takes for its place. */
  readonly middle: readonly [x: number, y: number];
  /** Discs inside, see {@link spotsOf}. */
  readonly spots: Float64Array;
  /** How far any part lies from the centre of the first disc. */
  readonly reach: number;
  readonly texture: Texture;
  /** Finer, nearer, and with its bays open, for pushing. */
  readonly grid: Texture;
  /** Points on the outline, see {@link rimOf}. */
  readonly rim: Float64Array;
}

/** Prepares every drawing of every entry; `bodies[entry]` lists those of one. See `TossOptions.hollows`. */
export function bodiesOf(entries: readonly TossEntry[], hollows = 0): readonly (readonly Body[])[] {
  return entries.map((entry, index) => entry.drawings.map((drawn) => bodyOf(drawn, entry, index, hollows)));
}

/** The same, with a breath after each drawing: hundreds of them take a second. */
export async function bodiesInTurn(
  entries: readonly TossEntry[],
  hollows: number | undefined,
  breathe: () => Promise<void>,
): Promise<readonly (readonly Body[])[]> {
  const bodies: Body[][] = [];
  for (const [index, entry] of entries.entries()) {
    const own: Body[] = [];
    for (const drawn of entry.drawings) {
      own.push(bodyOf(drawn, entry, index, hollows));
      await breathe();
    }
    bodies.push(own);
  }
  return bodies;
}

/**
 * A body flattened for another scale, as a motif that stands is held against others. What it is tried and pushed by stays as it
 * was: what stands is neither.
 */
export function flattenedFor(body: Body, scale: number, hollows = 0): Body {
  const { circle, closed, rings } = flattened(body.drawn, scale, hollows);
  const outline = closed(rings);
  return { ...body, circle, outline, scratch: blankOutline(outline) };
}

/** A drawing's silhouette at its largest scale, the circle around it, and how its hollows are closed. */
function flattened({ motif }: DrawnMotif, scale: number, hollows: number) {
  const rings = silhouetteOf(motif.outline, TOLERANCE / scale);
  const circle = enclosingCircle(outlineOfRings(rings).points);
  const closed = (open: readonly Ring[]): Outline =>
    outlineOfRings(hollows > 0 ? closeHollows(open, hollows * circle.r) : open);
  return { rings, circle, closed };
}

function bodyOf(drawn: DrawnMotif, entry: TossEntry, index: number, hollows = 0): Body {
  const { rings, circle, closed } = flattened(drawn, entry.scale[1], hollows);
  if (!(circle.r > 0))
    throw badShape(`toss > motifs[${entry.listed ?? index}]`, `"${drawn.motif.name}" encloses no area`);
  const outline = closed(rings);
  const coarse = closed(silhouetteOf(drawn.motif.outline, circle.r / 40));
  const texture = textureOf(coarse, circle);
  const spots = spotsOf(coarse, texture, circle);
  let reach = 0;
  for (let i = 0; i < outline.points.length; i += 2) {
    const dx = outline.points[i]! - spots[0]!;
    const dy = outline.points[i + 1]! - spots[1]!;
    reach = Math.max(reach, Math.sqrt(dx * dx + dy * dy));
  }
  return {
    drawn,
    entry: index,
    extra: (entry.gap ?? 0) * 1000,
    outline,
    scratch: blankOutline(outline),
    area: areaOf(drawn.motif.outline),
    circle,
    middle: middleOf(drawn.motif.outline),
    spots,
    reach,
    grid: textureOf(closed(silhouetteOf(drawn.motif.outline, circle.r / 1000)), circle, GRID, GRID_REACH),
    rim: rimOf(outline, circle),
    texture: closeTexture(texture, circle.r * BAY),
  };
}
