import { describe, expect, it } from "vitest";
import { areaOf, type Path } from "../../src/geometry/path.ts";
import { pen } from "../../src/geometry/pen.ts";
import { ellipse } from "../../src/geometry/shapes.ts";
import { defineMotif } from "../../src/motif/define.ts";
import { drawMotif } from "../../src/motif/draw.ts";
import type { Drawing } from "../../src/motif/motif.ts";
import { createRandom } from "../../src/seed/random.ts";
import { buoy, rectangle, refusal } from "../given.ts";

const random = createRandom("drawn");
const mm2 = (path: Path): number => areaOf(path) / 1e6;

/** A motif whose parts are whatever `draw` returns. */
const odd = (draw: () => unknown, parts: readonly string[] | "drawn" = ["a", "b", "c"]) =>
  defineMotif({
    name: "test/odd",
    about: "Whatever it is.",
    params: {},
    parts: parts as readonly string[],
    draw: draw as () => Drawing,
  });
const stacked = (roles: Record<string, string>, draw: () => unknown) =>
  drawMotif(odd(draw)({ roles: roles as never }), random)[0]!;

describe("drawMotif", () => {
  it("draws one shape a role, back to front, and an outline that unites them", () => {
    const [motif] = drawMotif(buoy({ size: 20 }), random);
    expect(motif!.name).toBe("buoy");
    expect(motif!.shapes.map(({ role }) => role)).toEqual(["float", "flag"]);
    expect(mm2(motif!.outline)).toBeLessThan(mm2(motif!.shapes[0]!.path) + mm2(motif!.shapes[1]!.path));
    expect(
      Object.isFrozen(motif) && Object.isFrozen(motif!.shapes) && Object.isFrozen(motif!.shapes[0]),
    ).toBe(true);
  });

  it("draws all alike without vary, and each its own way with it, the same from the same seed", () => {
    const drawings = drawMotif(buoy({ vary: 1, variants: 5 }), random);
    expect(drawings.map(({ name }) => name)).toEqual(["buoy-1", "buoy-2", "buoy-3", "buoy-4", "buoy-5"]);
    expect(new Set(drawings.map(({ outline }) => mm2(outline))).size).toBe(5);
    expect(drawMotif(buoy({ vary: 1, variants: 5 }), createRandom("drawn"))).toEqual(drawings);
    expect(drawMotif(buoy({ vary: 1, variants: 7 }), random).slice(0, 5)).toEqual(drawings);
  });

  it("unites the paths of a part", () => {
    const [motif] = drawMotif(odd(() => ({ a: [ellipse(0, 0, 5), ellipse(4, 0, 5)] }))(), random);
    expect(motif!.shapes).toHaveLength(1);
    expect(motif!.shapes[0]!.path.contours).toHaveLength(1);
    expect(motif!.outline).toBe(motif!.shapes[0]!.path);
  });

  it("gives parts of one role one shape, and cuts what lies between, so that the picture stays", () => {
    // a (red) under b (blue) under c (red again): what c covers of b shows red.
    const draw = () => ({ a: rectangle(0, 0, 10, 10), b: rectangle(5, 0, 10, 10), c: rectangle(8, 2, 4, 4) });
    const motif = stacked({ a: "red", b: "blue", c: "red" }, draw);
    expect(motif.shapes.map(({ role }) => role)).toEqual(["red", "blue"]);
    expect(mm2(motif.shapes[0]!.path)).toBeCloseTo(108, 3);
    expect(mm2(motif.shapes[1]!.path)).toBeCloseTo(84, 3);
    expect(mm2(motif.outline)).toBeCloseTo(150, 3);
  });

  it("takes a part of the ground as a knock-out", () => {
    const motif = stacked({ a: "red", b: "blue", c: "ground" }, () => ({
      a: rectangle(0, 0, 10, 10),
      b: rectangle(20, 0, 10, 10),
      c: rectangle(8, 4, 14, 2),
    }));
    expect(motif.shapes.map(({ role, path }) => [role, mm2(path)])).toEqual([
      ["red", 96],
      ["blue", 96],
    ]);
  });

  it("drops a shape that is covered or knocked out entirely", () => {
    const draw = () => ({ a: ellipse(0, 0, 4), b: ellipse(0, 0, 3), c: ellipse(0, 0, 3.5) });
    expect(stacked({ a: "red", b: "blue", c: "red" }, draw).shapes.map(({ role }) => role)).toEqual(["red"]);
    expect(stacked({ a: "ground" }, draw).shapes.map(({ role }) => role)).toEqual(["b", "c"]);
  });
});

describe("a drawing that is not sound is refused, by the name of the motif", () => {
  const nan = () => ({ a: pen().moveTo(0, 0).lineTo(Number.NaN, 3).lineTo(4, 4).path() });
  it.each<[string, () => unknown, string]>([
    ["nothing", () => undefined, "odd > draw: it returned undefined"],
    ["text", () => "M0 0", 'odd > draw: it returned "M0 0"'],
    ["a promise", async () => ({ a: ellipse(0, 0, 3) }), "odd > draw: nothing was drawn"],
    ["no part at all", () => ({}), "odd > draw: nothing was drawn"],
    [
      "a part of no area",
      () => ({ a: pen().moveTo(0, 0).lineTo(9, 0).path() }),
      "odd > draw: nothing was drawn",
    ],
    [
      "a part of another name",
      () => ({ z: ellipse(0, 0, 3) }),
      'it returned a part "z" that is not in its parts',
    ],
    ["NaN", nan, "odd > pen: a coordinate is NaN, not a number of mm from -100000 to 100000"],
    [
      "numbers for a path",
      () => ({ a: [0, 0, 1, 1] }),
      "odd > draw > a: it returned 0 where a path was wanted",
    ],
    [
      "a path of doubles",
      () => ({ a: { points: [Number.NaN, 0, 0, 0, 0, 0], contours: [1] } }),
      "odd > draw > a: it returned an object with points, contours where a path was wanted",
    ],
  ])("%s", (_, draw, message) => {
    const error = refusal(() => drawMotif(odd(draw)(), random));
    expect(error.message).toContain(message);
    expect(error.code).toBe("bad-shape");
    expect(error.fix).toBe("return closed paths with finite coordinates in mm, one entry for each part");
  });

  it("a motif that throws is named, with the cause", () => {
    const cause = new TypeError("petals of undefined");
    const error = refusal(() =>
      drawMotif(
        odd(() => {
          throw cause;
        })(),
        random,
      ),
    );
    expect(error.message).toBe(
      "odd > draw: the piece threw: petals of undefined\n  fix: mend the piece, or report it to its author; the cause is attached [piece-failed]",
    );
    expect(error.cause).toBe(cause);
  });

  it("names of drawn parts must be able to name a role", () => {
    const shady = odd(() => JSON.parse('{"__proto__": 1}') as unknown, "drawn");
    expect(refusal(() => drawMotif(shady(), random)).code).toMatch(/bad-shape|wrong-type/);
  });
});
