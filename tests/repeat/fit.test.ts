// 54 in is a common width of cloth, and 640, 820, 914 and 1018 mm are common circumferences of rotary screens
// (common practice).
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { arrangementOf } from "../../src/repeat/arrangement.ts";
import { border } from "../../src/repeat/border.ts";
import { diamond } from "../../src/repeat/diamond.ts";
import { drop } from "../../src/repeat/drop.ts";
import { type FitTarget, fitTo } from "../../src/repeat/fit.ts";
import { halfBrick } from "../../src/repeat/half-brick.ts";
import { halfDrop } from "../../src/repeat/half-drop.ts";
import { hexagonal } from "../../src/repeat/hexagonal.ts";
import { mirror } from "../../src/repeat/mirror.ts";
import { planeGroup } from "../../src/repeat/plane-group.ts";
import type { RepeatUse } from "../../src/repeat/repeat.ts";
import { skew } from "../../src/repeat/skew.ts";
import { straight } from "../../src/repeat/straight.ts";
import { refusal } from "../given.ts";

const some: Readonly<Record<string, RepeatUse>> = {
  straight: straight({ width: 161.003, height: 117 }),
  "half-drop": halfDrop({ width: 160, height: 120 }),
  "half-brick": halfBrick({ width: 161, height: 120 }),
  "third drop": drop({ width: 100, height: 120, fraction: "1/3" }),
  mirror: mirror({ width: 80, height: 70, axis: "both" }),
  diamond: diamond({ width: 80, height: 110 }),
  hexagonal: hexagonal({ width: 60 }),
  p4mm: planeGroup({ group: "p4mm", width: 90 }),
  p6mm: planeGroup({ group: "p6mm", width: 90 }),
};

describe.each(Object.entries(some))("fitting a %s repeat", (_, repeat) => {
  const before = arrangementOf(repeat).lattice.block;

  it("to 54 in of cloth gives a block that divides it exactly, of the same proportions within 0.01 %", () => {
    const fitted = fitTo(repeat, { width: "54in" });
    const { block } = arrangementOf(fitted.repeat).lattice;
    expect(fitted.repeat.use).toBe(repeat.use);
    expect(block.width * fitted.repeats).toBe(1_371_600);
    expect(fitted.to).toEqual(block);
    expect(fitted.from).toEqual(before);
    expect(fitted.factor).toBe(block.width / before.width);
    expect(fitted.distortion).toBeCloseTo(
      (block.height / block.width) * (before.width / before.height) - 1,
      8,
    );
    expect(Math.abs(fitted.distortion)).toBeLessThan(1e-4);
    expect(fitTo(fitted.repeat, { width: "54in" }).to).toEqual(block);
  });

  it.each([820, 914, 1018])(
    "to a screen of %i mm goes into it exactly, or says which lengths would",
    (roller) => {
      let length = roller * 1000;
      let fitted: ReturnType<typeof fitTo>;
      try {
        fitted = fitTo(repeat, { roller });
      } catch {
        const { fix } = refusal(() => fitTo(repeat, { roller }));
        const offered = Number(/give ([\d.]+) mm/.exec(fix)?.[1]);
        length = Math.round(offered * 1000);
        fitted = fitTo(repeat, { roller: offered });
      }
      expect(arrangementOf(fitted.repeat).lattice.block.height * fitted.repeats).toBe(length);
    },
  );

  it("keeps everything that is no length", () => {
    const { repeat: fitted } = fitTo(repeat, { width: "54in" });
    const kept = (use: RepeatUse): unknown =>
      Object.entries(use.params).filter(([, value]) => typeof value === "string");
    expect(kept(fitted)).toEqual(kept(repeat));
  });
});

describe("fitting", () => {
  it("to pixels gives whole pixels and whole µm both ways, at any dpi that such a size has", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(72, 96, 150, 200, 254, 300),
        fc.integer({ min: 4, max: 150 }),
        fc.constantFrom(some["straight"]!, some["half-drop"]!, some["mirror"]!),
        (dpi, count, repeat) => {
          const pixels = count * 72;
          const { to } = fitTo(repeat, { pixels, dpi });
          expect(to.width).toBe((pixels * 25_400) / dpi);
          expect(Number.isInteger((to.height * dpi) / 25_400)).toBe(true);
          expect(Number.isInteger(to.height)).toBe(true);
        },
      ),
      { seed: 5, numRuns: 40 },
    );
  });

  it("takes the number of repeats that changes the size least, unless it is told one", () => {
    // 54 in hold 4.286 blocks of 320 mm.
    expect(fitTo(some["half-drop"]!, { width: "54in" })).toMatchObject({
      repeats: 4,
      to: { width: 342_900 },
    });
    expect(fitTo(some["half-drop"]!, { width: "54in", repeats: 5 }).to.width).toBe(274_320);
  });

  it("scales moves and margins as well", () => {
    const slanted = fitTo(skew({ a: [80, 0], b: [20, 90] }), { width: 800, repeats: 5 });
    expect(slanted.repeat.params).toEqual({ a: [160, 0], b: [40, 180] });
    const hem = fitTo(border({ width: 100, height: 50, margin: 4 }), { width: 800, repeats: 4 });
    expect(hem.repeat.params).toEqual({ width: 200, height: 100, margin: 8, piece: "band" });
  });

  it("leaves a third of 640 mm alone, since it is no whole number of µm, and offers the lengths beside it", () => {
    const error = refusal(() => fitTo(some["third drop"]!, { roller: 640 }));
    expect(error.code).toBe("does-not-fit");
    expect(error.message).toBe(
      "fit > roller: the drop block of 300 x 120 mm does not lie any number of times around 640 mm in whole micrometres\n" +
        "  fix: give 639.99 mm or 640.005 mm [does-not-fit]",
    );
    expect(fitTo(some["third drop"]!, { roller: 640.005 }).repeats).toBe(5);
  });

  it("offers the numbers of repeats that fit, all of which do", () => {
    const { fix } = refusal(() => fitTo(some["half-drop"]!, { width: "54in", repeats: 7 }));
    expect(fix).toContain("ask for 3, 4, 5, 6, 8 repeats");
    for (const repeats of [3, 4, 5, 6, 8])
      expect(fitTo(some["half-drop"]!, { width: "54in", repeats }).repeats).toBe(repeats);
  });

  it("offers pixels that are whole µm, and for thirds those that part into three", () => {
    expect(refusal(() => fitTo(some["straight"]!, { pixels: 3001, dpi: 300 })).fix).toBe(
      "give 3000 or 3003 pixels, or another dpi",
    );
    expect(refusal(() => fitTo(some["third drop"]!, { pixels: 3000, dpi: 300 })).fix).toContain(
      "2997 and 3006 pixels",
    );
    expect(fitTo(some["third drop"]!, { pixels: 3006, dpi: 300 }).to.width).toBe(254_508);
  });

  it("bends a hexagonal lattice only as far as it allows itself", () => {
    expect(refusal(() => fitTo(hexagonal({ width: 60 }), { pixels: 3000, dpi: 300 })).code).toBe(
      "does-not-fit",
    );
    const loose = hexagonal({ width: 60, height: 52, distortion: 0.01 });
    const { to } = fitTo(loose, { pixels: 3000, dpi: 300 });
    expect([to.width, (to.height * 300) % 25_400]).toEqual([254_000, 0]);
  });

  it.each([
    ["nothing", undefined, "wrong-type", "undefined is not one of"],
    ["an empty target", {}, "missing-option", "nothing was given"],
    ["two targets", { width: 1000, roller: 640 }, "wrong-type", "is not one of"],
    ["a width of nothing", { width: 0 }, "length-range", "0 mm is outside 20 mm to 10000 mm"],
    ["a negative roller", { roller: -640 }, "length-range", "-640 mm is outside 100 mm to 5000 mm"],
    ["pixels as a length", { width: "54px" }, "wrong-type", '"54px" is not a length'],
    ["half a pixel", { pixels: 100.5, dpi: 300 }, "wrong-type", "100.5 is not a whole number"],
    ["no dpi", { pixels: 3000 }, "missing-option", "nothing was given"],
    ["NaN dpi", { pixels: 3000, dpi: Number.NaN }, "wrong-type", "NaN is not a whole number"],
    ["no repeats", { width: 1000, repeats: 0 }, "number-range", "0 is outside 1 to 500"],
    ["a slip", { width: 1000, repeat: 3 }, "unknown-option", 'there is no option "repeat"'],
  ])("refuses %s", (__, target, code, what) => {
    const error = refusal(() => fitTo(some["straight"]!, target as FitTarget));
    expect(error.code).toBe(code);
    expect(error.what).toContain(what);
  });

  it("refuses a repeat that was parsed, as all do", () => {
    const parsed = JSON.parse(JSON.stringify(some["straight"])) as RepeatUse;
    expect(refusal(() => fitTo(parsed, { width: 1000 })).code).toBe("unbound-piece");
  });
});
