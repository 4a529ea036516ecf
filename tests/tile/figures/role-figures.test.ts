import fc from "fast-check";
import polygonClipping from "polygon-clipping";
import { describe, expect, it } from "vitest";
import { flatten } from "../../../src/geometry/flatten.ts";
import { placing, transformPath } from "../../../src/geometry/matrix.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { holed } from "../../../src/geometry/shapes.ts";
import { measureRoles, type RoleFigures } from "../../../src/tile/figures/role-figures.ts";
import { rectangle, refusal } from "../../given.ts";
import { blossom, disc } from "../../layout/toss/fixtures.ts";
import { at, motifOf, straight, tileOf } from "./given.ts";

/** A tile of one motif for each part, all at one place, the later over the earlier. */
const stacked = (parts: readonly (readonly [role: string, path: Path])[], x = 30, y = 30, side = 60) =>
  tileOf(
    parts.map(([role, path]) => motifOf(role, path, role)),
    parts.map((_, motif) => at(x, y, { motif })),
    straight(side, side),
  );

const edge = ({ edges }: RoleFigures, below: string, above: string): number =>
  edges.find(({ roles }) => roles[0] === below && roles[1] === above)?.length ?? 0;

/** Within so many parts of the value. */
const near = (value: number, wanted: number, part: number): void =>
  expect(Math.abs(value - wanted)).toBeLessThanOrEqual(part * Math.max(wanted, 0.02));

describe("what is seen of roles, against closed forms", () => {
  it("a disc meets the ground along 2πr and takes πr², wherever it lies on the torus", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 18 }), fc.nat(60), fc.nat(60), (r, x, y) => {
        const figures = measureRoles(stacked([["plum", disc(r)]], x, y));
        near(edge(figures, "ground", "plum"), 2 * Math.PI * r, 0.004);
        near(figures.shares["plum"]!, (Math.PI * r * r) / 3600, 0.01);
        near(figures.widths["plum"]!, r, 0.02);
        expect(figures.edges).toHaveLength(1);
      }),
      { numRuns: 12, seed: 1 },
    );
  });

  it("a ring round a disc parts it from the ground", () => {
    const ring = holed(disc(14), disc(8));
    const figures = measureRoles(
      stacked([
        ["ring", ring],
        ["heart", disc(8)],
      ]),
    );
    near(edge(figures, "ring", "heart"), 2 * Math.PI * 8, 0.004);
    near(edge(figures, "ground", "ring"), 2 * Math.PI * 14, 0.004);
    expect(edge(figures, "ground", "heart")).toBe(0);
    near(figures.widths["ring"]!, 6, 0.01);
    expect(figures.edges.map(({ roles }) => roles.join("-"))).toEqual(["ground-ring", "ring-heart"]);
  });

  it("an edge that two layers share is one edge", () => {
    const figures = measureRoles(
      stacked([
        ["left", rectangle(-10, -5, 10, 10)],
        ["right", rectangle(0, -5, 10, 10)],
      ]),
    );
    near(edge(figures, "left", "right"), 10, 0.02);
    near(edge(figures, "ground", "left"), 30, 0.01);
    near(edge(figures, "ground", "right"), 30, 0.01);
  });

  it("what is painted over is not seen", () => {
    const figures = measureRoles(
      stacked([
        ["buried", disc(6)],
        ["top", disc(9)],
      ]),
    );
    expect(figures.shares["buried"]).toBe(0);
    expect(figures.widths["buried"]).toBe(0);
    expect(figures.edges.map(({ roles }) => roles.join("-"))).toEqual(["ground-top"]);
  });

  it("of two crossing discs the upper has its whole rim, the lower what is left: a lens", () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 17, noNaN: true }), (gap) => {
        const r = 10;
        const tile = tileOf(
          [motifOf("low", disc(r), "low"), motifOf("high", disc(r), "high")],
          [at(30, 30, { motif: 0 }), at(30 + gap, 30, { motif: 1 })],
          straight(60, 60),
        );
        const d = Math.round(gap * 1000) / 1000;
        // The arc of one circle within another of the same size (MathWorld, "Circle-Circle Intersection").
        const arc = 2 * r * Math.acos(d / (2 * r));
        const figures = measureRoles(tile);
        near(edge(figures, "low", "high"), arc, 0.02);
        near(edge(figures, "ground", "high"), 2 * Math.PI * r - arc, 0.02);
        near(edge(figures, "ground", "low"), 2 * Math.PI * r - arc, 0.02);
      }),
      { numRuns: 12, seed: 3 },
    );
  });

  it("a line as thin as a third of a millimetre is seen whole in a block of 290 mm", () => {
    const figures = measureRoles(stacked([["line", rectangle(-100, 0, 200, 0.33)]], 145, 145, 290));
    near(edge(figures, "ground", "line"), 400.66, 0.02);
    near(figures.widths["line"]!, 0.33, 0.35);
  });
});

it("shares are those of polygon-clipping where blossoms lie over each other at random", () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.integer({ min: 25, max: 65 }), fc.integer({ min: 25, max: 65 }), fc.nat(2)), {
        minLength: 2,
        maxLength: 7,
      }),
      (places) => {
        const roles = ["one", "two", "three"];
        const tile = tileOf(
          roles.map((role) => motifOf(role, blossom(), role)),
          places.map(([x, y, motif], i) => at(x, y, { motif, id: `${i}` })),
          straight(90, 90),
        );
        const figures = measureRoles(tile);
        const polygon = ([x, y]: readonly [number, number, number]): [number, number][][] => {
          const ring = flatten(transformPath(blossom(), placing(x * 1000, y * 1000)), 5)[0]!;
          return [Array.from({ length: ring.length / 2 }, (_, i) => [ring[2 * i]!, ring[2 * i + 1]!])];
        };
        const of = (role: number) => places.filter(([, , motif]) => motif === role).map(polygon);
        const area = (shapes: ReturnType<typeof polygonClipping.union>): number =>
          shapes.flat().reduce((sum, ring) => {
            let twice = 0;
            for (let i = 1; i < ring.length; i++)
              twice += ring[i - 1]![0] * ring[i]![1] - ring[i]![0] * ring[i - 1]![1];
            return sum + twice / 2;
          }, 0) / 8.1e9;
        for (const [role, name] of roles.entries()) {
          const own = of(role);
          if (own.length === 0) continue;
          const above = roles.flatMap((_, other) => (other > role ? of(other) : []));
          const seen = polygonClipping.difference(polygonClipping.union(own[0]!, ...own.slice(1)), ...above);
          near(figures.shares[name]!, Math.abs(area(seen)), 0.02);
        }
        expect(Object.values(figures.shares).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 5);
      },
    ),
    { numRuns: 8, seed: 5 },
  );
});

it("a tile is measured once, and what is no tile is refused", () => {
  const tile = stacked([["plum", disc(5)]]);
  expect(measureRoles(tile)).toBe(measureRoles(tile));
  expect(Object.isFrozen(measureRoles(tile).edges)).toBe(true);
  expect(refusal(() => measureRoles({} as never)).code).toBe("wrong-type");
});
