import { imagesOf } from "../geometry/images.ts";
import { type Arrangement, cellsInBlock } from "../geometry/lattice.ts";
import { compose, isWhole, movePath, placing, transformPath } from "../geometry/matrix.ts";
import { joinPaths, type Path } from "../geometry/path.ts";
import { fixing } from "../geometry/symmetry/fixed.ts";
import type { Placement } from "../layout/layout.ts";
import type { Shape } from "../motif/motif.ts";
import { differing, seatedFigure } from "./seated.ts";
import type { Layer } from "./tile.ts";
import { comparePaths, intoBlock } from "./wrap.ts";

/**
 * One layer for each role: every shape of every placement, under every operation and in every cell of the block.
 *
 * A shape is scaled and turned about its motif's origin and rounded to whole µm once; wherever it stands, it is
 * that shape moved (and mirrored) by whole µm, so copies are exactly alike and seams close by construction.
 * Under an operation that is no whole-number matrix (a third of a turn), each image is rounded once, from the
 * motif itself; its copies in all cells are then exactly alike.
 *
 * A motif whose origin some operation leaves where it is, on a mirror line or a centre of rotation, is drawn as one
 * figure with its images there: see {@link seatedFigure}.
 */
export function makeLayers(
  placements: readonly Placement[],
  stacked: readonly (readonly Shape[])[],
  arrangement: Arrangement,
  roles: readonly string[],
): Layer[] {
  const { lattice, operations } = arrangement;
  const cells = cellsInBlock(lattice);
  const images = imagesOf(arrangement);
  const byRole = new Map<string, Path[]>(roles.map((role) => [role, []]));
  for (const { motif, x, y, turn, scale, flip } of placements) {
    const matrix = placing(0, 0, turn, scale, flip);
    const about = operations.length > 1 ? fixing(images, x, y) : [];
    const shown = about.length > 0 ? differing(images, x, y) : undefined;
    for (const { role, path } of stacked[motif]!) {
      const alone = movePath(transformPath(path, matrix), x, y);
      const placed = shown ? seatedFigure(alone, about) : alone;
      for (const [i, operation] of operations.entries()) {
        if (shown && !shown.has(operation)) continue;
        const image =
          i === 0
            ? placed
            : shown || isWhole(operation)
              ? transformPath(placed, operation)
              : transformPath(path, compose(placing(x, y, turn, scale, flip), operation));
        for (const [dx, dy] of cells)
          byRole.get(role)!.push(intoBlock(movePath(image, dx, dy), lattice.block));
      }
    }
  }
  return [...byRole].flatMap(([role, paths]) =>
    paths.length === 0 ? [] : [Object.freeze({ role, path: joinPaths(paths.sort(comparePaths)) })],
  );
}
