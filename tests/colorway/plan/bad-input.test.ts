import { describe, expect, it } from "vitest";
import { colorways } from "../../../src/colorway/plan/colorways.ts";
import { refusal } from "../../given.ts";
import { cluster, quay } from "./given.ts";

const tile = cluster(5);
const plan = (options: unknown) => refusal(() => colorways(tile, options as never));
const small = {
  name: "small",
  inks: { chalk: "#f7efe2", ink: "#1f3340", coral: "#e0705a", sage: "#8ea68a" },
};

describe("colorways refuses, and says what would be right", () => {
  it.each([
    ["no options", undefined, "wrong-type", "palettes"],
    ["no palettes", {}, "wrong-type", "a list of palettes"],
    ["an empty list", { palettes: [] }, "list-length", "1 to 50 palettes"],
    ["a palette smaller than the roles", { palettes: [quay, small] }, "palette-too-small", "more inks"],
    [
      "two inks that are one colour",
      { palettes: [{ name: "p", inks: { ...quay.inks, lime: "#F7EFE2" } }] },
      "same-ink",
      "keep one",
    ],
    [
      "an ink out of gamut",
      { palettes: [{ name: "p", inks: { ...quay.inks, lime: "oklch(0.8 0.4 140)" } }] },
      "out-of-gamut",
      "map",
    ],
    [
      "an ink that is no colour",
      { palettes: [{ name: "p", inks: { ...quay.inks, lime: "limish" } }] },
      "bad-color",
      "CSS colour",
    ],
    ["two palettes of one name", { palettes: [quay, quay] }, "same-name", "own name"],
    ["an unknown option", { palettes: [quay], cuont: 3 }, "unknown-option", '"count"'],
    ["an unknown role in hold", { palettes: [quay], hold: { grond: "chalk" } }, "unknown-role", '"ground"'],
    ["an unknown ink in hold", { palettes: [quay], hold: { ground: "chalc" } }, "unknown-ink", '"chalk"'],
    [
      "one ink held twice",
      { palettes: [quay], hold: { ground: "chalk", leaf: "chalk" } },
      "same-ink",
      "another ink",
    ],
    ["an empty list of inks", { palettes: [quay], hold: { ground: [] } }, "wrong-type", "name of an ink"],
    ["hold as a list", { palettes: [quay], hold: ["chalk"] }, "wrong-type", "by role"],
    ["a count of none", { palettes: [quay], count: 0 }, "number-range", "1 to 200"],
    ["half a colorway", { palettes: [quay], count: 1.5 }, "wrong-type", "whole number"],
    ["an unknown way to keep", { palettes: [quay], keep: "value" }, "unknown-choice", "value-order"],
    ["a contrast beyond black and white", { palettes: [quay], minContrast: 22 }, "number-range", "1 to 21"],
    ["a contrast that is no number", { palettes: [quay], minContrast: Number.NaN }, "wrong-type", "contrast"],
  ])("%s", (_, options, code, words) => {
    const error = plan(options);
    expect(error.code).toBe(code);
    expect(error.fix).toContain(words);
    expect(error.where).toMatch(/^colorways > cluster/);
  });

  it("names the palette and its roles when it is too small", () => {
    const { where, what } = plan({ palettes: [quay, small] });
    expect(where).toBe("colorways > cluster > palettes[1] small");
    expect(what).toBe("it has 4 inks for 5 roles: ground, petal, heart, leaf, stem");
  });

  it("more inks than can be compared, and what is no tile", () => {
    const many = Array.from({ length: 4 }, (_, k) => ({
      name: `p${k}`,
      inks: Object.fromEntries(
        Array.from({ length: 190 }, (_, i) => [
          `i${i}`,
          `#${(k * 190 + i + 4096).toString(16).padStart(6, "0")}`,
        ]),
      ),
    }));
    expect(plan({ palettes: many }).code).toBe("too-many-inks");
    expect(refusal(() => colorways(undefined as never, { palettes: [quay] })).code).toBe("wrong-type");
  });
});
