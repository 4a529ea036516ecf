import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  gcd,
  isWholePixels,
  nearestWholeDpis,
  nearestWholeLengths,
  pixelsAt,
  pixelsPerMetre,
  wholePixelStep,
} from "../../src/units/pixels.ts";

describe("pixels", () => {
  it("24 in at 300 dpi are 7200 px", () => {
    expect(pixelsAt(24 * 25_400, 300)).toBe(7200);
    expect(isWholePixels(24 * 25_400, 300)).toBe(true);
  });

  // The figure that every 300 dpi PNG carries in its pHYs chunk (300 / 0.0254 = 11811.02…).
  it("300 dpi are 11 811 pixels a metre, 150 dpi 5906", () => {
    expect(pixelsPerMetre(7200, 24 * 25_400)).toBe(11_811);
    expect(pixelsPerMetre(3600, 24 * 25_400)).toBe(5906);
  });

  it("160 mm at 150 dpi are not whole, and the nearest lengths that are lie half a step around", () => {
    expect(isWholePixels(160_000, 150)).toBe(false);
    expect(nearestWholeLengths(160_000, 150)).toEqual([160_020, 159_512]);
  });

  it("takes a dpi that is not a whole number at its word", () => {
    expect(isWholePixels(25_400, 72.5)).toBe(false);
    expect(isWholePixels(50_800, 72.5)).toBe(true);
  });

  it("gives the dpi below and above at which all lengths are whole pixels, and none nearer", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 1, max: 2400 }),
        (w, h, dpi) => {
          const lengths = [w * 254, h * 254]; // hundredths of an inch
          const fits = (at: number): boolean => lengths.every((um) => isWholePixels(um, at));
          const found = nearestWholeDpis(lengths, dpi);
          for (const at of found) expect(fits(at)).toBe(true);
          for (let at = dpi; at >= 1 && !found.includes(at); at--) expect(fits(at)).toBe(false);
          for (let at = dpi + 1; !found.includes(at); at++) expect(fits(at)).toBe(false);
        },
      ),
    );
  });

  it("gives lengths that are whole pixels and whole µm, the nearest first and nothing nearer", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10_000_000 }), fc.integer({ min: 1, max: 2400 }), (um, dpi) => {
        const found = nearestWholeLengths(um, dpi);
        const step = wholePixelStep(dpi);
        for (const length of found) {
          expect(Number.isInteger(length) && length > 0).toBe(true);
          expect((BigInt(length) * BigInt(dpi)) % 25_400n).toBe(0n);
          expect(Math.abs(length - um)).toBeLessThanOrEqual(step);
        }
        expect(Math.abs(found[0]! - um)).toBeLessThanOrEqual(Math.abs(found.at(-1)! - um));
        // No smaller step would do: brute force over the divisors of an inch.
        for (let s = 1; s < step; s++) if ((s * dpi) % 25_400 === 0) throw new Error(`${s} would do`);
      }),
      { seed: 2, numRuns: 300 },
    );
  });

  it("finds common divisors", () => {
    expect(gcd(25_400, 300)).toBe(100);
    expect(gcd(-12, 18)).toBe(6);
    expect(gcd(0, 5)).toBe(5);
  });
});
