import Color from "colorjs.io";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { colorDistance, mergeFills } from "../../../src/motif/artwork/merge.ts";
import { readArtwork } from "../../../src/motif/artwork/read-artwork.ts";
import { refusal } from "../../given.ts";
import { drawingsOf } from "./packs.ts";
import { likeness, redrawn, svgOf } from "./picture.ts";

const fill = fc.integer({ min: 0, max: 0xffffff }).map((n) => `#${n.toString(16).padStart(6, "0")}`);
const strip = (fills: readonly string[]): string =>
  svgOf(fills.map((color, i) => `<rect fill="${color}" x="${2 * i}" width="2" height="${9 - i}"/>`).join(""));
const rolesOf = (fills: readonly string[], options = {}): string[] =>
  Object.values(readArtwork(strip(fills), options).roles);

describe("the difference of two colours", () => {
  it("is CIEDE2000 as colorjs.io has it", () => {
    // colorjs.io takes its Lab under D50; given the values under D65, its formula is the same.
    const lab = (color: string) => new Color("lab", new Color(color).to("lab-d65").coords);
    fc.assert(
      fc.property(fill, fill, (a, b) => {
        expect(colorDistance()(a, b)).toBeCloseTo(lab(a).deltaE(lab(b), "2000"), 2);
      }),
      { seed: 5, numRuns: 200 },
    );
  });
});

describe("near colours", () => {
  it("stay apart unless they are told to merge", () => {
    expect(rolesOf(["#ff822d", "#ff7f2a", "#2a5599"])).toEqual(["orange", "orange-2", "blue"]);
    expect(rolesOf(["#ff822d", "#ff7f2a", "#2a5599"], { merge: 2 })).toEqual(["orange", "orange", "blue"]);
  });

  it("join the largest near them, and none is taken farther than was said", () => {
    const heap = fc.array(fc.record({ fill, area: fc.integer({ min: 1, max: 99 }) }), {
      minLength: 1,
      maxLength: 30,
    });
    fc.assert(
      fc.property(heap, fc.integer({ min: 0, max: 40 }), (fills, apart) => {
        const merged = mergeFills(fills, apart);
        const difference = colorDistance();
        const leaders = new Set(merged.values());
        for (const [one, leader] of merged) expect(difference(one, leader)).toBeLessThanOrEqual(apart);
        for (const one of leaders)
          for (const other of leaders)
            if (one !== other) expect(difference(one, other)).toBeGreaterThan(apart);
      }),
      { seed: 6, numRuns: 60 },
    );
  });

  it("join a colour that the user named, so that one name serves its shades", () => {
    const roles = { "#ff7f2a": "fruit", "#2a5599": "sea" };
    expect(rolesOf(["#ff822d", "#ff7f2a", "#2a5599"], { merge: 4, roles })).toEqual([
      "fruit",
      "fruit",
      "sea",
    ]);
    expect(refusal(() => readArtwork(strip(["#ff822d", "#ff7f2a", "#2a5599"]), { roles })).code).toBe(
      "missing-role",
    );
  });

  it("come back from a recipe in the same roles", () => {
    const use = readArtwork(strip(["#ff822d", "#ff7f2a", "#2a5599"]), { merge: 4 });
    const { params, roles } = JSON.parse(JSON.stringify(use));
    const { svg, ...others } = params;
    expect(readArtwork(svg, { ...others, roles })).toEqual(use);
  });

  it("change the picture no more than they were let", () => {
    const { body } = drawingsOf("fluent-emoji-flat").find((one) => one.name === "octopus")!;
    const ground = '<rect width="32" height="32" fill="#d8e4ec"/>';
    expect(likeness(svgOf(ground + body), redrawn(svgOf(body), ground, 32, { merge: 8 }))).toBeGreaterThan(
      30,
    );
  });

  it("are refused a tolerance that is none", () => {
    expect(refusal(() => readArtwork(strip(["#fff000"]), { merge: -1 })).code).toBe("number-range");
    expect(refusal(() => readArtwork(strip(["#fff000"]), { merge: Number.NaN })).code).toBe("wrong-type");
  });
});
