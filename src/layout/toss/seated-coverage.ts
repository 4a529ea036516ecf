import { ringsArea, uniteRings } from "../../geometry/clip.ts";
import { flatten } from "../../geometry/flatten.ts";
import { imagesOf } from "../../geometry/images.ts";
import { type Arrangement, cellAreaOf } from "../../geometry/lattice.ts";
import { placing, transformPath } from "../../geometry/matrix.ts";
import { fixing } from "../../geometry/symmetry/fixed.ts";
import type { Standing } from "../layout.ts";
import { TOLERANCE } from "./body.ts";

/** Share of the ground that motifs cover with their images; those of a seated one that lie over it count once. */
export function seatedCoverage(seated: readonly Standing[], arrangement: Arrangement): number {
  const images = imagesOf(arrangement);
  const cell = cellAreaOf(arrangement.lattice);
  return seated.reduce((sum, { motif, placement: { x, y, turn, scale, flip } }) => {
    const path = transformPath(motif.outline, placing(x, y, turn, scale, flip));
    const about = fixing(images, x, y);
    const figure = [path, ...about.map((operation) => transformPath(path, operation))];
    const area = ringsArea(uniteRings(figure.flatMap((one) => flatten(one, TOLERANCE))));
    return sum + (area * images.operations.length) / (figure.length * cell);
  }, 0);
}
