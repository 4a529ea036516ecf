import Color from "colorjs.io";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { deltaE, deltaOf } from "../../src/colorway/delta-e.ts";
import { refusal } from "../given.ts";
import sharma from "./ciede2000.json" with { type: "json" };

const hex = fc.integer({ min: 0, max: 0xffffff }).map((v) => `#${v.toString(16).padStart(6, "0")}`);

describe("ΔE00", () => {
  // Sharma, Wu, Dalal, "The CIEDE2000 color-difference formula", Color Research and Application 30 (1), 2005, Table 1.
  it("is that of all 34 pairs of Sharma, Wu and Dalal, in both orders, to 1e-4", () => {
    expect(sharma.rows).toHaveLength(34);
    for (const row of sharma.rows) {
      const [l1, a1, b1, l2, a2, b2, want] = row as [number, number, number, number, number, number, number];
      const [p, q] = [
        { mode: "lab65", l: l1, a: a1, b: b1 } as const,
        { mode: "lab65", l: l2, a: a2, b: b2 } as const,
      ];
      expect(Math.abs(deltaOf(p, q) - want), row.join(" ")).toBeLessThan(1e-4);
      expect(Math.abs(deltaOf(q, p) - want), row.join(" ")).toBeLessThan(1e-4);
    }
  });

  it("of inks is that of colorjs.io for the same Lab of D65, on 1000 random pairs", () => {
    // colorjs.io takes ΔE00 of its D50 "lab"; given D65 values under that name, it takes them as they are.
    const lab = (ink: string): Color => new Color("lab", new Color(ink).to("lab-d65").coords);
    fc.assert(
      fc.property(hex, hex, (a, b) => {
        expect(Math.abs(deltaE(a, b) - lab(a).deltaE2000(lab(b)))).toBeLessThan(2e-3);
      }),
      { seed: 31, numRuns: 1000 },
    );
  });

  it("is nothing between an ink and itself, the same both ways, and 100 from black to white", () => {
    fc.assert(
      fc.property(hex, hex, (a, b) => {
        expect(deltaE(a, a)).toBe(0);
        expect(deltaE(a, b)).toBe(deltaE(b, a));
      }),
      { seed: 32 },
    );
    expect(deltaE("black", "white")).toBeCloseTo(100, 3);
  });

  it("takes any opaque CSS colour, and refuses what is none", () => {
    expect(deltaE("tomato", "#ff6347")).toBe(0);
    expect(refusal(() => deltaE("tomatoe", "#ff6347")).code).toBe("bad-color");
  });
});
