import { isCloser } from "../../geometry/distance.ts";
import { flatten } from "../../geometry/flatten.ts";
import type { Size } from "../../geometry/lattice.ts";
import { type Outline, outlineOfRings } from "../../geometry/outline.ts";
import { eachContour, type Path } from "../../geometry/path.ts";
import { eachNeighbour } from "./each-neighbour.ts";
import { movedSets } from "./moved-sets.ts";

/** How finely curves are cut into sides (µm): finer than any plate is made. */
export const FINENESS = 2;

/** Contours nearer than this count as touching (µm): both were rounded. */
export const TOUCHING = 2;

/** One contour of one layer, moved by whole blocks to where its cluster has it. */
export interface Member {
  readonly layer: number;
  readonly contour: Path;
  readonly x: number;
  readonly y: number;
}

/** Contours that touch, cross or hold each other, or are nearer than the trap, of whatever layers. */
export interface Cluster {
  readonly members: readonly Member[];
  /** Whether it meets its own copies, and so goes on for ever, as stripes do. */
  readonly endless: boolean;
}

/**
 * Sorts all contours of a tile into clusters, across the edges of the block: no cluster is within `reach` µm of another.
 * Whatever is worked out within one holds for all its copies, so cost does not grow with the cloth.
 */
export function clustersOf(
  layers: readonly { readonly path: Path }[],
  block: Size,
  reach: number,
): Cluster[] {
  const contours: { layer: number; contour: Path; outline: Outline }[] = [];
  layers.forEach(({ path }, layer) => {
    eachContour(path, (from, to, index) => {
      const contour = { points: path.points.slice(from, to), contours: [path.contours[index]!] };
      const outline = outlineOfRings(flatten(contour, FINENESS));
      if (outline.rings.length > 1) contours.push({ layer, contour, outline });
    });
  });
  const sets = movedSets(contours.length);
  eachNeighbour(
    contours.map(({ outline }) => outline.box),
    block,
    reach,
    (i, j, dx, dy) => {
      if (
        !sets.areJoined(i, j, dx, dy) &&
        isCloser(contours[i]!.outline, contours[j]!.outline, dx, dy, reach)
      )
        sets.join(i, j, dx, dy);
    },
  );
  const byRoot = new Map<number, Member[]>();
  contours.forEach(({ layer, contour }, i) => {
    const { root, x, y } = sets.find(i);
    const members = byRoot.get(root) ?? [];
    if (members.length === 0) byRoot.set(root, members);
    members.push({ layer, contour, x, y });
  });
  return [...byRoot].map(([root, members]) => ({ members, endless: sets.isEndless(root) }));
}
