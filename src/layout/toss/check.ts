import { isCloser } from "../../geometry/distance.ts";
import { type Images, imagesOf, transformBounds } from "../../geometry/images.ts";
import type { Arrangement } from "../../geometry/lattice.ts";
import { placing } from "../../geometry/matrix.ts";
import { type Outline, transformOutline } from "../../geometry/outline.ts";
import type { Placement } from "../layout.ts";
import { selfCopies } from "./board.ts";
import { type Body, SLACK } from "./body.ts";

/** Two placements (or one and its own copy) that stand closer than they should. */
export interface Clash {
  readonly first: string;
  readonly second: string;
}

/**
 * The first pair that stands closer than `gap` µm, each placement's own copies included; undefined when all is
 * well. Looks at every pair anew, without the board that packed them: what is returned has passed here.
 */
export function findClash(
  placements: readonly Placement[],
  bodyOf: (motif: number) => Body,
  arrangement: Arrangement,
  gap: number,
): Clash | undefined {
  const images = imagesOf(arrangement);
  const limit = gap + SLACK;
  const placed = placements.map((p) => {
    const body = bodyOf(p.motif);
    return {
      id: p.id,
      body,
      outline: transformOutline(body.outline, placing(p.x, p.y, p.turn, p.scale, p.flip)),
    };
  });
  for (const [i, one] of placed.entries()) {
    const own = limit + one.body.extra;
    if (selfCopies(images, one.outline, own, (copy, dx, dy) => isCloser(one.outline, copy, dx, dy, own)))
      return { first: one.id, second: one.id };
    for (const two of placed.slice(i + 1)) {
      const apart = limit + Math.max(one.body.extra, two.body.extra);
      if (anyCloser(images, one.outline, two.outline, apart)) return { first: one.id, second: two.id };
    }
  }
  return undefined;
}

function anyCloser(images: Images, still: Outline, moving: Outline, limit: number): boolean {
  let found = false;
  images.operations.forEach((operation, index) => {
    let copy: Outline | undefined = index === 0 ? moving : undefined;
    const box = index === 0 ? moving.box : transformBounds(moving.box, operation);
    images.between(box, still.box, limit, (dx, dy) => {
      if (found) return;
      copy ??= transformOutline(moving, operation);
      found = isCloser(still, copy, dx, dy, limit);
    });
  });
  return found;
}
