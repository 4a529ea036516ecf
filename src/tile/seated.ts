import { unite } from "../geometry/boolean.ts";
import { ringsArea, ringsPerimeter, uniteRings } from "../geometry/clip.ts";
import { flatten } from "../geometry/flatten.ts";
import type { Images } from "../geometry/images.ts";
import { type Matrix, transformPath } from "../geometry/matrix.ts";
import type { Path } from "../geometry/path.ts";

/** How finely shapes are flattened to see whether they coincide (µm). */
const TOLERANCE = 2;
/** Shapes whose outlines are no farther apart than this coincide (µm). */
const NEAR = 3;
/** Images of an origin nearer than this are one (µm). */
const ONE = 4;

/**
 * A shape of a motif that sits on a mirror line or a centre of rotation, united with its images under the operations
 * that leave its origin where it is. What is drawn is then one figure, not several in one place: its edges are smoothed
 * once, and its area counts once. An image that is as good as the shape itself is left out, so a motif that has the
 * symmetry of its seat is drawn as it is.
 */
export function seatedFigure(path: Path, fixing: readonly Matrix[]): Path {
  const distinct = [path];
  for (const operation of fixing) {
    const image = transformPath(path, operation);
    if (!distinct.some((other) => coincide(other, image))) distinct.push(image);
  }
  return distinct.length === 1 ? path : unite(distinct);
}

function coincide(one: Path, two: Path): boolean {
  const [p, q] = [flatten(one, TOLERANCE), flatten(two, TOLERANCE)];
  return ringsArea(uniteRings([...p, ...q])) - ringsArea(p) <= NEAR * ringsPerimeter(p);
}

/** The operations that show a seated figure in different places: those that map its origin to different ones. */
export function differing(images: Images, x: number, y: number): ReadonlySet<Matrix> {
  const kept = new Map<Matrix, readonly [number, number]>();
  for (const operation of images.operations) {
    const [a, b, c, d, e, f] = operation;
    const [u, v] = [a * x + c * y + e, b * x + d * y + f];
    const known = [...kept.values()].some(([p, q]) =>
      images.between([u, v, u, v], [p, q, p, q], ONE, () => true),
    );
    if (!known) kept.set(operation, [u, v]);
  }
  return new Set(kept.keys());
}
