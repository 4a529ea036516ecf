import { Clipper, EndType, JoinType } from "clipper2-ts";
import fc from "fast-check";
import polygonClipping from "polygon-clipping";
import { describe, expect, it } from "vitest";
import { SprigwrightError } from "../../../src/errors/error.ts";
import { flatten, ringArea } from "../../../src/geometry/flatten.ts";
import { areaOf, isPath } from "../../../src/geometry/path.ts";
import {
  type AnyFactory,
  all,
  areaOfPolygons,
  crossedArea,
  drawn,
  extent,
  perimeter,
  polygons,
} from "./measure.ts";

/** The values a parameter's schema allows at its ends and between. */
function values(schema: Record<string, unknown>): fc.Arbitrary<unknown> {
  if (Array.isArray(schema["enum"])) return fc.constantFrom(...(schema["enum"] as unknown[]));
  const of = (Array.isArray(schema["anyOf"]) ? schema["anyOf"][0] : schema) as Record<string, unknown>;
  const [min, max] = [of["minimum"] as number, of["maximum"] as number];
  const between = of["type"] === "integer" ? fc.integer({ min, max }) : fc.double({ min, max, noNaN: true });
  return fc.oneof(fc.constant(min), fc.constant(max), between);
}

/** Primitives drawn before half a millimetre was the rule. */
const FIRST = new Set(["berry", "blossom", "dot", "leaf", "ring", "scallop", "sprig", "star"]);

for (const [name, factory] of all) {
  const make = factory as unknown as AnyFactory;
  const { piece } = factory;
  const plain = drawn(make());

  describe(`${name}`, () => {
    it("says what it is, and what every parameter does", () => {
      expect(piece.name).toBe(`sprigwright/${name}`);
      expect(piece.about.length).toBeGreaterThan(20);
      for (const param of Object.values(piece.params)) {
        expect(param.schema["description"]).toMatch(/\.$/);
        expect(param.schema["default"]).toBeDefined();
      }
    });

    it("draws a shape for each of its parts, sound and with area", () => {
      const motif = plain;
      expect(motif.shapes.map((shape) => shape.role)).toEqual(piece.parts);
      for (const { path } of motif.shapes) {
        expect(isPath(path)).toBe(true);
        expect(areaOf(path)).toBeGreaterThan(0);
      }
    });

    it("fills the roles that the user maps its parts to", () => {
      const parts = piece.parts as readonly string[];
      const roles = Object.fromEntries(parts.map((part) => [part, `my-${part}`]));
      expect(drawn(make({ roles })).shapes.map((s) => s.role)).toEqual(parts.map((part) => `my-${part}`));
      const one = drawn(make({ roles: Object.fromEntries(parts.map((part) => [part, "ink"])) }));
      expect(one.shapes.map((shape) => shape.role)).toEqual(["ink"]);
      expect(Math.abs(areaOf(one.shapes[0]!.path) - areaOf(one.outline))).toBeLessThan(1);
    });

    it("draws the same for the same seed, and otherwise for another", () => {
      const use = make({ vary: 0.7, variants: 1 });
      expect(drawn(use, "a").shapes).toEqual(drawn(use, "a").shapes);
      expect(drawn(use, "a").shapes).not.toEqual(drawn(use, "b").shapes);
    });

    it("does not depend on the seed when nothing strays", () => {
      expect(drawn(make(), "another").shapes).toEqual(plain.shapes);
    });

    it("keeps family likeness at the most variation", () => {
      const { reach } = extent(plain.outline);
      for (const seed of ["p", "q", "r"]) {
        const varied = extent(drawn(make({ vary: 1, variants: 1 }), seed).outline);
        expect(Math.abs(varied.reach / reach - 1)).toBeLessThan(0.25);
      }
    });

    it("is centred on the origin", () => {
      const { width, height, x, y } = extent(plain.outline);
      const size = Math.max(width, height);
      expect(Math.abs(x) / size).toBeLessThan(0.06);
      expect(Math.abs(y) / size).toBeLessThan(0.06);
    });

    it("has nothing at its default size that is too fine to print", () => {
      // An opening: half a millimetre in width is what must survive being thinned from both sides; the first eight
      // are drawn for a third.
      const MOST = FIRST.has(name) ? 165 : 245;
      for (const { path, role } of plain.shapes) {
        const rings = flatten(path, 2).map((ring) =>
          Array.from({ length: ring.length / 2 }, (_, i) => ({
            x: Math.round(ring[2 * i]!),
            y: Math.round(ring[2 * i + 1]!),
          })),
        );
        const thinned = Clipper.inflatePaths(rings, -MOST, JoinType.Round, EndType.Polygon, 2, 2);
        const opened = Clipper.inflatePaths(thinned, MOST, JoinType.Round, EndType.Polygon, 2, 2);
        const kept = Clipper.areaPaths(opened) / Clipper.areaPaths(rings);
        expect(kept, role).toBeGreaterThan(0.985);
        expect(Clipper.union(opened, 1).length, role).toBe(path.contours.length);
      }
    });

    it("refuses options it does not know or that are out of range, by name", () => {
      expect(() => make({ colour: "red" })).toThrow(/colour: there is no option "colour"/);
      for (const [key, param] of Object.entries(piece.params)) {
        const wrong = (): unknown => make({ [key]: {} });
        expect(wrong).toThrow(SprigwrightError);
        expect(wrong).toThrow(`${name} > ${key}`);
        const [low] = fc.sample(values(param.schema), { numRuns: 1, seed: 1 });
        if (typeof low === "number") expect(() => make({ [key]: -1e5 })).toThrow(`${name} > ${key}: -100000`);
      }
    });

    it("draws soundly for whatever its parameters allow", () => {
      const options = fc.record(
        Object.fromEntries(Object.entries(piece.params).map(([key, param]) => [key, values(param.schema)])),
      );
      fc.assert(
        fc.property(options, fc.constantFrom(0, 0.5, 1), fc.string(), (given, vary, seed) => {
          const motif = drawn(make({ ...given, vary, variants: 1 }), seed);
          for (const { path, role } of motif.shapes) {
            expect(areaOf(path), role).toBeGreaterThan(0);
            expect(crossedArea(path), role).toBeLessThan(1e-4 * perimeter(path));
            const outers = flatten(path, 2).filter((ring) => ringArea(ring) > 0);
            expect(outers.length).toBeGreaterThan(0);
          }
        }),
        { seed: 7, numRuns: FIRST.has(name) ? 8 : 4 },
      );
    });

    it("has an outline that contains every shape, by the word of polygon-clipping", () => {
      for (const vary of [0, 0.8]) {
        const motif = drawn(make({ vary, variants: 1 }));
        const outline = polygons(motif.outline);
        for (const { path, role } of motif.shapes) {
          const outside = areaOfPolygons(polygonClipping.difference(polygons(path), outline));
          // Rounding to whole µm and flattening to 2 µm along the edge is all that may stick out.
          expect(outside, role).toBeLessThan(0.004 * perimeter(path));
        }
      }
    });
  });
}
