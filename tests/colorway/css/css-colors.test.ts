import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readCssColors } from "../../../src/colorway/css/read-css-colors.ts";
import { toCssColors } from "../../../src/colorway/css/to-css-colors.ts";
import { palette } from "../../../src/colorway/palette.ts";
import { refusal } from "../../given.ts";

const quay = palette({ name: "quay-morning", inks: { shell: "#f6ead7", kelp: "#3f6b4f" } });

describe("CSS custom properties", () => {
  it("are written as one rule a palette", () => {
    expect(toCssColors([quay, palette({ name: "tide", inks: { blue: "navy" } })])).toBe(
      ".quay-morning {\n  --shell: #f6ead7;\n  --kelp: #3f6b4f;\n}\n\n.tide {\n  --blue: #000080;\n}\n",
    );
  });

  it("come back from what was written", () => {
    const hex = fc.integer({ min: 0, max: 0xffffff }).map((v) => `#${v.toString(16).padStart(6, "0")}`);
    fc.assert(
      fc.property(fc.uniqueArray(hex, { minLength: 1, maxLength: 30 }), (inks) => {
        const sea = palette({ name: "sea", inks: Object.fromEntries(inks.map((ink, i) => [`i${i}`, ink])) });
        expect(JSON.stringify(readCssColors(toCssColors(sea))[0])).toBe(JSON.stringify(sea));
      }),
      { seed: 71, numRuns: 40 },
    );
  });

  it("are found among all else of a style sheet", () => {
    const css = `
      @import "other.css";
      /* { --not: red } */
      :root { --Sea-Glass: rgb(153 204 179); --gap: 4px; --also: var(--kelp); font: 12px serif; --kelp: hsl(120 100% 25%) !important }
      p { color: red }
      @media (prefers-color-scheme: dark) { :root { --kelp: darkgreen } .tide > b { --a: #123; --b: "red" } }
    `;
    expect(readCssColors(css)).toEqual([
      { name: "root", inks: { "sea-glass": "#99ccb3", kelp: "#008000" } },
      { name: "root-2", inks: { kelp: "#006400" } },
      { name: "tide-b", inks: { a: "#112233" } },
    ]);
  });

  it("pass over shadows, and keep the first name of a colour", () => {
    const css =
      ":root { --bg: #fff; --white: white; --shadow: rgba(0, 0, 0, .3); --kelp: green; --weed: #008000 }";
    expect(readCssColors(css)).toEqual([{ name: "root", inks: { bg: "#ffffff", kelp: "#008000" } }]);
  });

  it.each([
    ["", "no-colors"],
    ["p { color: red }", "no-colors"],
    [":root { --a: #12 }", "bad-color"],
    [":root { --a: rgb(0 0 0 / 40%) }", "no-colors"],
    [":root { --a: oklch(0.7 0.4 150) }", "out-of-gamut"],
    [":root { --a-b: red; --a_b: blue }", "same-name"],
    [`${"@media x {".repeat(20)} .a { --b: red } ${"}".repeat(20)}`, "css-too-deep"],
    [" ".repeat(4_000_001), "css-too-large"],
    [7 as never, "wrong-type"],
    [".a { --b: red }".repeat(1001), "css-too-large"],
  ])("%.60s is refused", (css, code) => expect(refusal(() => readCssColors(css)).code).toBe(code));
});
