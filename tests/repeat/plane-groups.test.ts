// plane-groups.json: International Tables for Crystallography, Vol. A, plane groups; written from memory, then found
// equal to the projected operations of space groups in npm @chemistry/space-groups 3.1.3.
import { readFileSync } from "node:fs";
import fc from "fast-check";
import polygonClipping, { type MultiPolygon, type Polygon } from "polygon-clipping";
import { describe, expect, it } from "vitest";
import type { Vector } from "../../src/geometry/lattice.ts";
import { arrangedOn, onPage } from "../../src/geometry/symmetry/arranged.ts";
import type { Operation } from "../../src/geometry/symmetry/operation.ts";
import { type PlaneGroupSymbol, planeGroups } from "../../src/geometry/symmetry/plane-groups.ts";
import { otherSymbols } from "../../src/geometry/symmetry/symbols.ts";
import { follow, undo } from "./operations.ts";

interface Known {
  readonly number: number;
  readonly symbol: PlaneGroupSymbol;
  readonly system: string;
  readonly centering: "p" | "c";
  readonly multiplicity: number;
  readonly generalPositions: readonly string[];
}
const reference = (
  JSON.parse(readFileSync(new URL("plane-groups.json", import.meta.url), "utf8")) as {
    groups: Known[];
  }
).groups;

const ADDED = { "": 0, "+1/2": 6, "-1/2": -6 } as const;
/** One coordinate of a position such as "-x+y" or "x+1/2": factors of x and y, and twelfths. */
function coordinate(text: string): [x: number, y: number, twelfths: number] {
  const rest = text.replace(/[+-]?[xy]/g, "") as keyof typeof ADDED;
  const factor = (name: string): number => {
    const sign = new RegExp(`([+-]?)${name}`).exec(text);
    return sign ? (sign[1] === "-" ? -1 : 1) : 0;
  };
  return [factor("x"), factor("y"), ADDED[rest]];
}
const positionOf = (text: string): Operation => {
  const [[a, b, p], [c, d, q]] = text.split(",").map(coordinate) as [
    [number, number, number],
    [number, number, number],
  ];
  return [a, b, c, d, p, q];
};
const all = (symbol: PlaneGroupSymbol): Operation[] => {
  const { operations, centred } = planeGroups[symbol];
  return centred
    ? operations.flatMap((op): Operation[] => [op, follow(op, [1, 0, 0, 1, 6, 6])])
    : [...operations];
};
const key = (op: Operation): string => op.join(" ");
const keys = (ops: readonly Operation[]): Set<string> => new Set(ops.map(key));
/** A point in parts of 12 · 1009, so that the middle of an edge is a whole number. */
const PARTS = 12 * 1009;
const apply = ([a, b, c, d, p, q]: Operation, [x, y]: Vector): Vector => [
  a * x + b * y + (p * PARTS) / 12,
  c * x + d * y + (q * PARTS) / 12,
];
const inCell = ([x, y]: Vector): string =>
  `${((x % PARTS) + PARTS) % PARTS},${((y % PARTS) + PARTS) % PARTS}`;

/** Orders of the point groups 1, 2, m, 2mm, 4, 4mm, 3, 3m, 6, 6mm (Tables, part 10). */
const POINT_GROUP: Record<PlaneGroupSymbol, number> = {
  ...{ p1: 1, p2: 2, pm: 2, pg: 2, cm: 2, p2mm: 4, p2mg: 4, p2gg: 4, c2mm: 4 },
  ...{ p4: 4, p4mm: 8, p4gm: 8, p3: 3, p3m1: 6, p31m: 6, p6: 6, p6mm: 12 },
};
/** Area of the asymmetric unit as a part of the cell: 1 over the multiplicity of the general position. */
const PART: Record<PlaneGroupSymbol, number> = {
  ...{ p1: 1, p2: 2, pm: 2, pg: 2, cm: 4, p2mm: 4, p2mg: 4, p2gg: 4, c2mm: 8 },
  ...{ p4: 4, p4mm: 8, p4gm: 8, p3: 3, p3m1: 6, p31m: 6, p6: 6, p6mm: 12 },
};

const areaOf = (shape: MultiPolygon): number => {
  let sum = 0;
  for (const rings of shape)
    for (const ring of rings)
      for (let i = 1; i < ring.length; i++)
        sum += (ring[i - 1]![0] * ring[i]![1] - ring[i]![0] * ring[i - 1]![1]) / 2;
  return sum;
};

it("there are seventeen, by the symbols of the Tables", () => {
  expect(Object.keys(planeGroups)).toEqual(reference.map(({ symbol }) => symbol));
  for (const symbol of Object.values(otherSymbols)) expect(planeGroups).toHaveProperty(symbol);
});

describe.each(reference)("$symbol", (known) => {
  const { symbol } = known;
  const group = planeGroups[symbol];
  const operations = all(symbol);

  it("has the number, the cell and the general positions of the reference", () => {
    expect(group.number).toBe(known.number);
    expect(group.system).toBe(known.system);
    expect(group.centred).toBe(known.centering === "c");
    expect(operations).toHaveLength(known.multiplicity);
    expect(keys(group.operations)).toEqual(keys(known.generalPositions.map(positionOf)));
    expect(group.operations[0]).toEqual([1, 0, 0, 1, 0, 0]);
  });

  it("is closed, exactly: any two operations make a third, and each is undone by one", () => {
    const own = keys(operations);
    expect(own.size).toBe(known.multiplicity);
    for (const first of operations) {
      expect(own.has(key(undo(first)))).toBe(true);
      expect(follow(first, undo(first))).toEqual([1, 0, 0, 1, 0, 0]);
      for (const second of operations) expect(own.has(key(follow(first, second)))).toBe(true);
    }
  });

  it("has a point group of the order in the Tables", () => {
    expect(new Set(operations.map((op) => op.slice(0, 4).join(" "))).size).toBe(POINT_GROUP[symbol]);
  });

  it("takes any point to the listed general positions", () => {
    const whole = fc.integer({ min: -3 * PARTS, max: 3 * PARTS });
    const listed = known.generalPositions.map(positionOf);
    fc.assert(
      fc.property(whole, whole, (x, y) => {
        const to = (ops: readonly Operation[]): string[] => ops.map((op) => inCell(apply(op, [x, y]))).sort();
        const centred = known.centering === "c" ? listed.map((op) => follow(op, [1, 0, 0, 1, 6, 6])) : [];
        expect(to(operations)).toEqual(to([...listed, ...centred]));
      }),
      { seed: 5, numRuns: 50 },
    );
  });

  it("has an asymmetric unit of the right part of the cell, whose images cover it once", () => {
    const ring = (points: readonly (readonly [number, number])[]): Polygon => [
      points.map(([x, y]): [number, number] => [x, y]),
    ];
    const size = Math.abs(areaOf(polygonClipping.union(ring(group.unit))));
    expect(size * PART[symbol]).toBeCloseTo(144, 9);
    expect(PART[symbol]).toBe(known.multiplicity);
    const cell = ring([
      [0, 0],
      [12, 0],
      [12, 12],
      [0, 12],
    ]);
    const pieces: MultiPolygon[] = [];
    for (const [a, b, c, d, p, q] of operations)
      for (let i = -3; i <= 3; i++)
        for (let j = -3; j <= 3; j++) {
          const image = group.unit.map(
            ([x, y]) => [a * x + b * y + p + 12 * i, c * x + d * y + q + 12 * j] as const,
          );
          const piece = polygonClipping.intersection(ring(image), cell);
          if (piece.length > 0) pieces.push(piece);
        }
    const [first, ...rest] = pieces;
    // As large together as one by one, so none lies over another; and as large as the cell, so none is missing.
    expect(Math.abs(areaOf(polygonClipping.union(first!, ...rest)))).toBeCloseTo(144, 9);
    expect(pieces.reduce((sum, piece) => sum + Math.abs(areaOf(piece)), 0)).toBeCloseTo(144, 9);
  });

  it("on the page keeps its cell's lattice, and lengths too where the cell is true", () => {
    const cell: Record<string, readonly [Vector, Vector]> = {
      oblique: [
        [100_000, 0],
        [30_000, 80_000],
      ],
      rectangular: [
        [100_000, 0],
        [0, 80_000],
      ],
      square: [
        [100_000, 0],
        [0, 100_000],
      ],
      hexagonal: [
        [100_000, 0],
        [-50_000, 86_603],
      ],
    };
    const [a, b] = cell[group.system]!;
    for (const operation of group.operations) {
      const [p, q, r, s] = onPage(operation, a, b);
      expect(Math.abs(Math.abs(p * s - q * r) - 1)).toBeLessThan(1e-12);
      if (group.system !== "hexagonal")
        expect([p, q, r, s].every((n) => [-1, 0, 1].includes(n) && !Object.is(n, -0))).toBe(true);
      // Orthogonal to the distortion of the whole-µm cell, which is 5.4e-6 here.
      expect(Math.abs(p * p + q * q - 1)).toBeLessThan(2e-5);
      expect(Math.abs(p * r + q * s)).toBeLessThan(2e-5);
    }
    const { unit, region, operations: moved } = arrangedOn(group, a, b);
    expect(moved[0]).toEqual([1, 0, 0, 1, 0, 0]);
    expect(Math.min(...region!.map(([x]) => x))).toBeGreaterThanOrEqual(0);
    expect(Math.max(...region!.map(([, y]) => y))).toBeLessThanOrEqual(unit.height);
  });
});
