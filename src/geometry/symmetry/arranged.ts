import { blockOf } from "../block.ts";
import type { Arrangement, Vector } from "../lattice.ts";
import type { Matrix } from "../matrix.ts";
import { framed } from "../region.ts";
import { type Operation, TWELFTHS } from "./operation.ts";
import type { PlaneGroup } from "./plane-groups.ts";

/**
 * A plane group on a cell with the edges a and b (whole µm, no half of them odd where the group needs halves):
 * its asymmetric unit, moved so that its box starts at the origin, and its operations there.
 */
export function arrangedOn(group: PlaneGroup, a: Vector, b: Vector): Arrangement {
  const corners = group.unit.map(
    ([x, y]) => [(x * a[0] + y * b[0]) / TWELFTHS, (x * a[1] + y * b[1]) / TWELFTHS] as const,
  );
  const { region, unit, left, top } = framed(corners);
  const [p, q] = group.centred ? centredPair(a, b) : [a, b];
  return {
    unit,
    region,
    lattice: { a: p, b: q, block: blockOf(p, q) },
    operations: group.operations.map((operation) => movedTo(onPage(operation, a, b), left, top)),
  };
}

const centredPair = (a: Vector, b: Vector): readonly [Vector, Vector] => [
  [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2],
  [(b[0] - a[0]) / 2, (b[1] - a[1]) / 2],
];

/**
 * An operation as a matrix on the page: B R B⁻¹ with B = (a b). Sums and products of whole numbers come first and
 * one division last, so that what is whole comes out whole, and the rest rounded once.
 */
export function onPage([r, s, t, u, p, q]: Operation, a: Vector, b: Vector): Matrix {
  const cell = a[0] * b[1] - a[1] * b[0];
  // Images of a and b, in µm.
  const [ax, ay] = [r * a[0] + t * b[0], r * a[1] + t * b[1]];
  const [bx, by] = [s * a[0] + u * b[0], s * a[1] + u * b[1]];
  return [
    (ax * b[1] - bx * a[1]) / cell + 0,
    (ay * b[1] - by * a[1]) / cell + 0,
    (bx * a[0] - ax * b[0]) / cell + 0,
    (by * a[0] - ay * b[0]) / cell + 0,
    (p * a[0] + q * b[0]) / TWELFTHS + 0,
    (p * a[1] + q * b[1]) / TWELFTHS + 0,
  ];
}

/** The same operation where the origin lies at (left, top). */
const movedTo = ([a, b, c, d, e, f]: Matrix, left: number, top: number): Matrix => [
  a,
  b,
  c,
  d,
  a * left + c * top + e - left + 0,
  b * left + d * top + f - top + 0,
];
