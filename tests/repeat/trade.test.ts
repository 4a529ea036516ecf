// What the names mean is common practice in the trade; the numbers are worked out by hand or by brute force.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Arrangement, Vector } from "../../src/geometry/lattice.ts";
import { areaOf, boxOf } from "../../src/geometry/path.ts";
import {
  brick,
  diamond,
  drop,
  halfBrick,
  halfDrop,
  hexagonal,
  ogee,
  ogeeCurve,
  planeGroup,
  type RepeatUse,
  skew,
  straight,
  straightEquivalent,
  turnover,
  unitOutline,
} from "../../src/index.ts";
import { arrangementOf } from "../../src/repeat/arrangement.ts";
import { checkArrangement } from "../../src/tile/check-arrangement.ts";
import { refusal } from "../given.ts";

/** Whether the lattice brings a point by (x, y), by brute force. */
function recurs({ lattice: { a, b } }: Arrangement, x: number, y: number): boolean {
  for (let i = -12; i <= 12; i++)
    for (let j = -12; j <= 12; j++) if (i * a[0] + j * b[0] === x && i * a[1] + j * b[1] === y) return true;
  return false;
}
const sized = { width: 120, height: 90 } as const;
const [W, H] = [120_000, 90_000];
const fractions = ["1/2", "1/3", "2/3", "1/4", "3/4", "1/5", "2/5", "3/5", "4/5"] as const;

describe("drops and bricks", () => {
  it.each(fractions)("at %s step by that part of the unit, and close after as many units", (fraction) => {
    const [part, parts] = fraction.split("/").map(Number) as [number, number];
    const dropped = arrangementOf(drop({ ...sized, fraction }));
    const laid = arrangementOf(brick({ ...sized, fraction }));
    for (let k = 0; k <= 5; k++) {
      expect(recurs(dropped, k * W, (k * H * part) / parts)).toBe(true);
      expect(recurs(laid, (k * W * part) / parts, k * H)).toBe(true);
      expect(recurs(dropped, k * W, 0)).toBe(k % parts === 0);
      expect(recurs(laid, 0, k * H)).toBe(k % parts === 0);
    }
    expect(dropped.lattice.block).toEqual({ width: parts * W, height: H });
    expect(laid.lattice.block).toEqual({ width: W, height: parts * H });
  });

  it("by halves are the half-drop and the half-brick", () => {
    const { distortion: _, ...dropped } = arrangementOf(drop({ ...sized, fraction: "1/2" }));
    const { distortion: __, ...laid } = arrangementOf(brick({ ...sized, fraction: "1/2" }));
    expect(dropped).toEqual(arrangementOf(halfDrop(sized)));
    expect(laid).toEqual(arrangementOf(halfBrick(sized)));
  });

  it("that do not close are refused with the nearest sizes, or changed within the distortion allowed", () => {
    const error = refusal(() => arrangementOf(drop({ width: 100, height: 100, fraction: "1/3" })));
    expect(error.message).toBe(
      "drop > height: 100 mm does not part into 3 of whole micrometres, so the repeat would not close\n" +
        "  fix: give 99.999 mm or 100.002 mm, or allow a distortion of 0.00001 [uneven-length]",
    );
    const bent = arrangementOf(drop({ width: 100, height: 100, fraction: "1/3", distortion: 0.00001 }));
    expect(bent.unit).toEqual({ width: 100_000, height: 99_999 });
    expect(bent.distortion).toBe(1e-5);
    const refused = refusal(() => arrangementOf(brick({ width: 100.004, height: 100, fraction: "1/5" })));
    expect(refused.fix).toContain("give 100 mm or 100.005 mm");
  });

  it.each([
    ["0", 'fraction: "0" is not more than 0 and less than 1'],
    ["1/1", 'fraction: "1/1" is not more than 0 and less than 1'],
    ["3/2", 'fraction: "3/2" is not more than 0 and less than 1'],
    [1, "fraction: 1 is not more than 0 and less than 1"],
    [0.5, 'fraction: 0.5 is not one of "1/2"'],
    ["1/7", 'fraction: there is no choice "1/7"'],
    ["1/0", 'fraction: "1/0" is not more than 0 and less than 1'],
    [undefined, "fraction: nothing was given"],
  ])("with the fraction %j are refused", (fraction, what) => {
    expect(refusal(() => drop({ ...sized, fraction: fraction as never })).message).toContain(
      `drop > ${what}`,
    );
    expect(refusal(() => brick({ ...sized, fraction: fraction as never })).message).toContain(
      `brick > ${what}`,
    );
  });
});

describe("a turnover", () => {
  it.each([
    ["across", [W, 0], [0, H]],
    ["down", [0, H], [W, 0]],
  ] as const)("%s turns its neighbours there, and no others", (axis, turned, kept) => {
    const repeat = arrangementOf(turnover({ ...sized, axis }));
    const [, , , , e, f] = repeat.operations[1]!;
    // The middle of the unit goes to the middle of the neighbour.
    expect([e - W / 2 - W / 2, f - H / 2 - H / 2]).toEqual(turned);
    expect(recurs(repeat, kept[0], kept[1])).toBe(true);
    expect(recurs(repeat, turned[0], turned[1])).toBe(false);
  });

  it("both ways is a chequerboard, and what is meant when nothing is said", () => {
    const repeat = arrangementOf(turnover(sized));
    for (let i = -3; i <= 3; i++)
      for (let j = -3; j <= 3; j++) expect(recurs(repeat, i * W, j * H)).toBe((i + j) % 2 === 0);
    expect(repeat.lattice.block).toEqual({ width: 2 * W, height: 2 * H });
  });
});

describe("diamonds and ogees", () => {
  it.each([
    ["diamond", diamond],
    ["ogee", ogee],
  ])("%s: rows stand in the gaps of the rows above", (name, factory) => {
    const repeat = arrangementOf(factory(sized));
    expect(recurs(repeat, W / 2, H / 2) && recurs(repeat, W, 0) && recurs(repeat, 0, H)).toBe(true);
    expect(recurs(repeat, W / 2, 0)).toBe(false);
    expect(repeat.lattice.block).toEqual({ width: W, height: H });
    expect(areaOf(unitOutline(factory(sized)))).toBe((W * H) / 2);
    const error = refusal(() => arrangementOf(factory({ width: 120.001, height: 90 })));
    expect(error.where).toBe(`${name} > width`);
    expect(error.fix).toContain("give 120 mm or 120.002 mm");
  });

  it("an ogee's curve fits into its neighbours: facing sides are the same curve, moved", () => {
    for (const swing of [0, 0.3, 0.6, 1]) {
      const { points } = ogeeCurve({ ...sized, swing });
      const side = (i: number): number[][] =>
        [0, 1, 2, 3].map((k) => [0, 1].map((axis) => points[(6 * i + 2 * k + axis) % points.length]!));
      for (const [one, other, dx, dy] of [
        [0, 2, -W / 2, H / 2],
        [1, 3, -W / 2, -H / 2],
      ] as const)
        expect(side(one).map(([x, y]) => [x! + dx, y! + dy])).toEqual(side(other).reverse());
      expect(areaOf({ points, contours: [4] })).toBe((W * H) / 2);
      expect(boxOf({ points, contours: [4] })).toEqual({
        minX: -W / 2,
        minY: -H / 2,
        maxX: W / 2,
        maxY: H / 2,
      });
    }
  });

  it.each([
    [{ width: 0, height: 90 }, "ogeeCurve > width: 0 mm is not over 0"],
    [{ width: 120, height: -3 }, "ogeeCurve > height: -3 mm is not over 0"],
    [{ ...sized, swing: 1.2 }, "ogeeCurve > swing: 1.2 is outside 0 to 1"],
    [{ width: "wide", height: 3 }, 'ogeeCurve > width: "wide" is not a length'],
  ])("an ogee's curve of %j is refused", (options, message) => {
    expect(refusal(() => ogeeCurve(options as never)).message).toContain(message);
  });
});

describe("a hexagonal repeat", () => {
  const lengthOf = ([x, y]: Vector): number => Math.sqrt(x * x + y * y);
  it("has six neighbours at the same distance to within half a µm, and says how far off it is", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2500, max: 5_000_000 }), (half) => {
        const repeat = arrangementOf(hexagonal({ width: half / 500 }));
        const { a, b, block } = repeat.lattice;
        expect(Math.abs(lengthOf(b) - a[0])).toBeLessThan(0.5);
        expect(repeat.distortion).toBeLessThanOrEqual(0.5 / (repeat.unit.width * 0.866));
        expect(repeat.distortion).toBeCloseTo(Math.abs((2 * b[1]) / (Math.sqrt(3) * a[0]) - 1), 12);
        expect(block).toEqual({ width: a[0], height: 2 * b[1] });
        checkArrangement(repeat, "x");
      }),
      { seed: 8, numRuns: 200 },
    );
  });

  it("of another row height is refused, and taken where so much distortion is allowed", () => {
    const error = refusal(() => arrangementOf(hexagonal({ width: 80, height: 69.2 })));
    expect(error.message).toContain("hexagonal > height: rows 69.2 mm apart are 0.1184 % off");
    expect(error.fix).toContain("give 69.282 mm, or allow a distortion of 0.0012");
    const bent = arrangementOf(hexagonal({ width: 80, height: 69.2, distortion: 0.0012 }));
    expect(bent.lattice.block).toEqual({ width: 80_000, height: 138_400 });
    expect(bent.distortion).toBeCloseTo(0.001184, 6);
  });

  it("of an odd width is refused with the nearest", () => {
    expect(refusal(() => arrangementOf(hexagonal({ width: 80.001 }))).fix).toContain(
      "give 80 mm or 80.002 mm",
    );
  });
});

describe("a skew repeat", () => {
  it("takes any two moves: the block is found exactly, the unit is a cell", () => {
    const repeat = arrangementOf(skew({ a: [80, 20], b: [-20, 90] }));
    expect(repeat.lattice.a).toEqual([80_000, 20_000]);
    expect(repeat.lattice.block).toEqual({ width: 760_000, height: 380_000 });
    expect(areaOf(unitOutline(skew({ a: [80, 20], b: [-20, 90] })))).toBe(7_600_000_000);
    expect(checkArrangement(repeat, "x")).toEqual(repeat);
  });

  it("has the unit of the shortest moves, however long-winded they are given", () => {
    const plain = arrangementOf(skew({ a: [80, 0], b: [20, 90] }));
    const wound = arrangementOf(skew({ a: [80, 0], b: [420, 90] }));
    expect(wound.unit).toEqual(plain.unit);
    expect(wound.lattice.block).toEqual(plain.lattice.block);
  });

  it.each([
    [{ a: [80, 20], b: [-160, -40] }, "collinear", "skew > b: [80, 20] and [-160, -40] lie in one line"],
    [{ a: [0, 0], b: [10, 10] }, "collinear", "lie in one line"],
    [{ a: [80, 20], b: [81, 20] }, "collinear", "bring a unit within 5 mm of its own copy"],
    [{ a: [80.001, 20.003], b: [-20.007, 90] }, "block-too-large", "the smallest upright rectangle"],
    [{ a: [80, 20, 1], b: [1, 2] }, "wrong-type", "skew > a: a list of 3 is not a pair of lengths"],
    [{ a: 7, b: [1, 2] }, "wrong-type", "skew > a: 7 is not a pair of lengths"],
    [{ a: [80, "20px"], b: [1, 2] }, "wrong-type", 'skew > a[1]: "20px" is not a length'],
    [{ a: [80, 0], b: [0, 20_000] }, "length-range", "skew > b[1]: 20000 mm is outside"],
  ])("%j is refused", (options, code, message) => {
    const error = refusal(() => arrangementOf(skew(options as never)));
    expect(error.code).toBe(code);
    expect(error.message).toContain(message);
  });

  it("is advised rounder moves that work, where its block would be huge", () => {
    const { fix } = refusal(() => arrangementOf(skew({ a: [80.001, 20.003], b: [-20.007, 90] })));
    const [, a, b] = /a: (\[.*?\]) and b: (\[.*?\])/.exec(fix)!;
    arrangementOf(skew({ a: JSON.parse(a!) as never, b: JSON.parse(b!) as never }));
  });
});

describe("the straight equivalent", () => {
  it.each([
    [straight(sized), 1, { width: 120, height: 90, step: "straight", by: 0, part: 0 }],
    [halfDrop(sized), 2, { width: 120, height: 90, step: "drop", by: 45, part: 0.5 }],
    [halfBrick(sized), 2, { width: 120, height: 90, step: "brick", by: 60, part: 0.5 }],
    [drop({ ...sized, fraction: "2/5" }), 5, { width: 120, height: 90, step: "drop", by: 36, part: 0.4 }],
    [brick({ ...sized, fraction: "3/4" }), 4, { width: 120, height: 90, step: "brick", by: 90, part: 0.75 }],
    [turnover(sized), 4, { width: 120, height: 180, step: "drop", by: 90, part: 0.5 }],
    [diamond(sized), 2, { width: 60, height: 90, step: "drop", by: 45, part: 0.5 }],
    [
      planeGroup({ group: "p4mm", width: 100 }),
      8,
      { width: 100, height: 100, step: "straight", by: 0, part: 0 },
    ],
    [skew({ a: [80, 20], b: [0, 90] }), 9, { width: 80, height: 90, step: "drop", by: 20, part: 20 / 90 }],
  ] as [RepeatUse, number, object][])("case %#", (repeat, units, bare) => {
    const report = straightEquivalent(repeat);
    expect(report.bare).toEqual(bare);
    expect(report.units).toBe(units);
    const { block } = arrangementOf(repeat).lattice;
    expect(report.block).toEqual({ width: block.width / 1000, height: block.height / 1000 });
  });

  it("its bare unit, stepped as it says, is the same lattice", () => {
    const mm = fc.integer({ min: -12, max: 12 }).map((n) => n * 10);
    fc.assert(
      fc.property(mm, mm, mm, mm, (p, q, r, s) => {
        fc.pre(p * s - q * r !== 0 && Math.abs(p * s - q * r) <= 14_400);
        const repeat = skew({ a: [p, q], b: [r, s] });
        const { width, height, step, by } = straightEquivalent(repeat).bare;
        const { a, b } = arrangementOf(repeat).lattice;
        const det = a[0] * b[1] - a[1] * b[0];
        const um = (n: number): number => Math.round(n * 1000);
        const vectors =
          step === "brick"
            ? [
                [um(width), 0],
                [um(by), um(height)],
              ]
            : [
                [um(width), um(by)],
                [0, um(height)],
              ];
        expect(um(width) * um(height)).toBe(Math.abs(det));
        for (const [x, y] of vectors) {
          expect(Number.isInteger((x! * b[1] - y! * b[0]) / det)).toBe(true);
          expect(Number.isInteger((a[0] * y! - a[1] * x!) / det)).toBe(true);
        }
      }),
      { seed: 12, numRuns: 300 },
    );
  });

  it("says how far a size was changed", () => {
    const bent = drop({ width: 100, height: 100, fraction: "1/3", distortion: 0.001 });
    expect(straightEquivalent(bent).distortion).toBe(1e-5);
    expect(straightEquivalent(straight(sized)).distortion).toBe(0);
  });
});

describe("a plane group put to use", () => {
  it("by a short symbol is the same, with the full one in its recipe", () => {
    expect(planeGroup({ group: "p4m", width: 100 })).toEqual(planeGroup({ group: "p4mm", width: 100 }));
    expect(planeGroup({ group: "cmm", width: 100, height: 80 }).params).toMatchObject({ group: "c2mm" });
  });

  it.each([
    [{ group: "p7", width: 100 }, 'plane-group > group: there is no choice "p7"'],
    [{ group: "p4", width: 0 }, "plane-group > width: 0 mm is outside 5 mm"],
    [{ group: "p4", width: -100 }, "plane-group > width: -100 mm is outside 5 mm"],
    [{ group: "pmm", width: 100 }, "plane-group p2mm > height: nothing was given"],
    [
      { group: "p4", width: 100, height: 90 },
      "plane-group p4 > height: 90 mm high and 100 mm wide is not square",
    ],
    [{ group: "p6", width: 100, height: 90 }, "plane-group p6 > height: rows 90 mm apart are 3.923 % off"],
    [{ group: "pm", width: 100, height: 90, lean: 5 }, "plane-group pm > lean: its cell is rectangular"],
    [{ group: "pg", width: 100, height: 90.001 }, "plane-group pg > height: 90.001 mm does not part into 2"],
    [{ group: "p2", width: 100, height: 90, lean: 33.333 }, "recurs only after 100000 rows"],
  ])("%j is refused", (options, message) => {
    expect(refusal(() => arrangementOf(planeGroup(options as never))).message).toContain(message);
  });

  it("may lean, and by a whole width more it is the same", () => {
    const plain = arrangementOf(planeGroup({ group: "p2", width: 100, height: 90, lean: 20 }));
    expect(arrangementOf(planeGroup({ group: "p2", width: 100, height: 90, lean: 220 }))).toEqual(plain);
    expect(plain.lattice.block).toEqual({ width: 100_000, height: 450_000 });
  });
});
