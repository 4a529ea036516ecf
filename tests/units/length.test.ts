import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Length, mmToUm, toMm, UM_PER_INCH, umToMm } from "../../src/units/length.ts";
import { refusal } from "../given.ts";

describe("toMm", () => {
  // The international yard and pound agreement (1959): 1 in = 25.4 mm exactly.
  it("takes an inch as exactly 25.4 mm", () => {
    expect(toMm("1in")).toBe(25.4);
    expect(UM_PER_INCH).toBe(25_400);
    expect(toMm("6.4in")).toBe(162.56);
    expect(toMm("6.3in")).toBe(160.02);
  });

  it.each([
    [12, 12],
    ["12mm", 12],
    ["1.2cm", 12],
    ["-.5cm", -5],
    [" 3 mm ", 3],
    ["+2.mm", 2],
  ] as [Length, number][])("%s is %s mm", (given, mm) => {
    expect(toMm(given)).toBe(mm);
  });

  it("is the same length however it is written (to the micrometre)", () => {
    fc.assert(
      fc.property(fc.integer({ min: -90_000_000, max: 90_000_000 }), (um) => {
        const mm = `${um / 1000}mm` as const;
        if (mm.includes("e")) return;
        expect(mmToUm(toMm(mm))).toBe(um);
        expect(mmToUm(toMm(um / 1000))).toBe(um);
        const cm = `${um / 10_000}cm` as const;
        if (!cm.includes("e")) expect(mmToUm(toMm(cm))).toBe(um);
      }),
      { seed: 1, numRuns: 2000 },
    );
  });

  it.each(["50px", "12", "mm", "1e3mm", "1,2cm", "12 mm mm", "", null, {}, [], true, Number.NaN, Infinity])(
    "refuses %s and says what a length is",
    (given) => {
      const error = refusal(() => toMm(given as Length, "leaf > length"));
      expect(error.code).toBe("wrong-type");
      expect(error.what).toMatch(/ is not a length$/);
      expect(error.fix).toBe(
        given === "12"
          ? 'give 12 or "12mm"'
          : 'give a length: a number of mm, or text such as "12mm", "1.2cm" or "6.4in"',
      );
      expect(error.where).toBe("leaf > length");
    },
  );

  it("says when nothing was given, and when it is longer than a bolt of cloth", () => {
    expect(refusal(() => toMm(undefined as unknown as Length)).code).toBe("missing-option");
    expect(refusal(() => toMm("4000in")).message).toBe(
      "length: 101600 mm is outside -100000 mm to 100000 mm\n  fix: give a value from -100000 mm to 100000 mm [length-range]",
    );
    expect(refusal(() => toMm(`${"9".repeat(400)}mm` as Length)).code).toBe("wrong-type");
  });
});

describe("whole micrometres", () => {
  it("never come out as -0", () => {
    expect(Object.is(mmToUm(-0.0001), 0)).toBe(true);
    expect(umToMm(mmToUm(25.4))).toBe(25.4);
  });
});
