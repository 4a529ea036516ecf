import { describe, expect, it } from "vitest";
import { inspectArtwork } from "../../../src/motif/artwork/inspect.ts";
import { svgOf } from "./picture.ts";

/** The fill that rules give to the square inside `<g id="crew" class="a"><g class="b">`. */
function fillBy(rules: string, square = 'class="sail main" id="jib"'): string {
  const body = `<style>${rules}</style><g id="crew" class="a"><g class="b"><rect width="9" height="9" ${square}/></g></g>`;
  return inspectArtwork(svgOf(body)).fills[0]!.fill;
}

describe("a style sheet", () => {
  it("reaches elements by type, class, id, and where they stand", () => {
    const reach = [
      "rect",
      ".sail",
      "#jib",
      "*",
      "rect.sail",
      ".sail.main",
      "rect#jib",
      "#crew rect",
      "g rect",
    ];
    for (const selector of [...reach, ".a .b .sail", ".b > rect", "#crew > g > rect", "svg #crew .main"])
      expect(fillBy(`${selector} { fill: red }`), selector).toBe("#ff0000");
    const miss = [
      "path",
      ".sails",
      "#jib2",
      "rect.foo",
      "#crew > rect",
      ".b .a rect",
      ".a > .sail",
      "rect g",
    ];
    for (const selector of miss) expect(fillBy(`${selector} { fill: red }`), selector).toBe("#000000");
  });

  it("lets the heavier selector win, then the later rule (CSS Selectors 4)", () => {
    expect(fillBy("#jib{fill:red} .sail{fill:lime} rect{fill:blue}")).toBe("#ff0000");
    expect(fillBy(".b .sail{fill:red} .sail{fill:lime}")).toBe("#ff0000");
    expect(fillBy("g g rect{fill:red} .sail{fill:lime}")).toBe("#00ff00");
    expect(fillBy(".main{fill:red} .sail{fill:lime}")).toBe("#00ff00");
    expect(fillBy(".main{fill:red!important} #jib{fill:lime}")).toBe("#ff0000");
  });

  it("is inherited from groups, and the style of an element goes before it", () => {
    expect(fillBy(".a{fill:red}")).toBe("#ff0000");
    expect(fillBy("rect{fill:red}", 'style="fill:lime"')).toBe("#00ff00");
    expect(fillBy("rect{fill:red!important}", 'style="fill:lime"')).toBe("#ff0000");
    expect(fillBy("g{fill:red!important}", 'fill="lime"')).toBe("#00ff00");
  });

  it("may hold comments, lists, blocks of data, and CDATA", () => {
    expect(fillBy("/* } */ path, .sail, g { fill: /* x */ red; }")).toBe("#ff0000");
    expect(fillBy("<![CDATA[ g > rect { fill: red } ]]>")).toBe("#ff0000");
    expect(fillBy(".sail{background:url('data:image/png;base64,AA==');fill:red}")).toBe("#ff0000");
  });

  it("names what it passes over", () => {
    const body = `<style>@import "x.css"; @media print { rect { fill: red } } rect:hover, rect[x], a ~ b { fill: lime }</style>`;
    const { warnings, fills } = inspectArtwork(svgOf(`${body}<rect width="9" height="9"/>`));
    expect(fills[0]!.fill).toBe("#000000");
    expect(warnings.map((text) => /"(.*)"/.exec(text)![1])).toEqual([
      '@import "x.css"',
      "@media print",
      "rect:hover",
      "rect[x]",
      "a ~ b",
    ]);
  });
});
