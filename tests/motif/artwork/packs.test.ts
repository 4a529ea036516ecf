// A sample of what `npm run sweep:artwork` runs over whole packs.
import { describe, expect, it } from "vitest";
import { attempt, drawingsOf, quantile } from "./packs.ts";

describe("drawings by other hands, every so many of thousands", () => {
  it("are read and look as resvg draws them, in few roles", () => {
    const all = [...drawingsOf("fluent-emoji-flat"), ...drawingsOf("noto")].filter(
      (one) => !one.hasGradients,
    );
    const tried = all.filter((_, i) => i % 130 === 7).map((one) => attempt(one));
    expect(tried.length).toBeGreaterThan(35);
    expect(tried.filter((one) => one.crash !== undefined || one.refused !== undefined)).toEqual([]);
    const likeness = tried.map((one) => one.db!);
    expect(Math.min(...likeness)).toBeGreaterThan(30);
    expect(quantile(likeness, 0.5)).toBeGreaterThan(44);
    const roles = tried.map((one) => one.roles!);
    expect(quantile(roles, 0.5)).toBeLessThanOrEqual(7); // under 7 over whole packs
  });

  it("are read when they are shaded, too", () => {
    const sample = drawingsOf("noto").filter((one, i) => i % 190 === 3 && one.hasGradients);
    expect(sample.length).toBeGreaterThan(5);
    for (const one of sample) expect(attempt(one, false)).not.toHaveProperty("crash");
  });
});
