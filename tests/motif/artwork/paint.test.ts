import { describe, expect, it } from "vitest";
import { inspectArtwork } from "../../../src/motif/artwork/inspect.ts";
import { readDrawing } from "../../../src/motif/artwork/read.ts";
import { svgOf } from "./picture.ts";

const fills = (body: string): string[] => readDrawing(svgOf(body), 20).areas.map((area) => area.fill);
const warnings = (body: string): readonly string[] => inspectArtwork(svgOf(body)).warnings;
const rect = (attributes: string): string => `<rect width="9" height="9" ${attributes}/>`;

describe("a fill", () => {
  it("comes from the style, then the style sheet, then the attribute, then the parent", () => {
    expect(fills(rect(""))).toEqual(["#000000"]);
    expect(fills(`<g fill="red">${rect("")}</g>`)).toEqual(["#ff0000"]);
    expect(fills(`<g fill="red">${rect('fill="blue"')}</g>`)).toEqual(["#0000ff"]);
    expect(fills(rect('fill="blue" style="fill: lime"'))).toEqual(["#00ff00"]);
    const sheet = "<style>/* a */ .a, .b { fill: #123456 } #c { fill: #abcdef } rect { fill: #111 }</style>";
    expect(fills(`${sheet}${rect('class="a" fill="blue"')}`)).toEqual(["#123456"]);
    expect(fills(`${sheet}${rect('class="b" id="c"')}`)).toEqual(["#abcdef"]);
    expect(fills(`${sheet}${rect("")}`)).toEqual(["#111111"]);
    expect(fills(`<style>.a{fill:red}.b{fill:blue}</style>${rect('class="b a"')}`)).toEqual(["#0000ff"]);
    expect(fills(`<g fill="red">${rect('fill="inherit"')}</g>`)).toEqual(["#ff0000"]);
  });

  it("may be the current colour, black unless it is set", () => {
    expect(fills(rect('fill="currentColor"'))).toEqual(["#000000"]);
    expect(fills(`<g color="teal">${rect('fill="currentColor"')}</g>`)).toEqual(["#008080"]);
  });

  it("is left out when nothing of it shows", () => {
    const seen = rect('fill="red"');
    const hidden = [
      'display="none"',
      'visibility="hidden"',
      'opacity="0"',
      'fill-opacity="0"',
      'fill="none"',
    ];
    for (const attribute of [...hidden, 'fill="transparent"', 'style="display:none"'])
      expect(fills(seen + rect(attribute))).toEqual(["#ff0000"]);
    expect(fills(`<g visibility="hidden">${rect('visibility="visible" fill="red"')}</g>`)).toEqual([
      "#ff0000",
    ]);
  });

  it("that means nothing is passed over, as CSS has it", () => {
    expect(fills(rect('fill="red" style="fill:#D9583F;fill:nonsense(1 2 3)"'))).toEqual(["#d9583f"]);
    expect(fills(rect('fill="red" style="fill:nonsense"'))).toEqual(["#ff0000"]);
    expect(fills(`<g fill="teal">${rect('fill="nonsense"')}</g>`)).toEqual(["#008080"]);
    expect(fills(`<style>.a{fill:teal;fill:nonsense}</style>${rect('class="a"')}`)).toEqual(["#008080"]);
    expect(warnings(`<g fill="teal">${rect('fill="nonsense"')}</g>`)).toEqual([
      '<rect> on line 1: its fill "nonsense" is no colour that is read; what was said before or around it holds',
    ]);
    expect(fills(rect('style="fill:var(--reef, #D9583F)"'))).toEqual(["#d9583f"]);
    expect(fills(`<g fill="red">${rect('fill="blue" style="fill:unset"')}</g>`)).toEqual(["#ff0000"]);
  });

  it("may be important, which goes before the style of the element", () => {
    const sheet = "<style>.a{fill:#123456!important}.b{fill:#abcdef}</style>";
    expect(fills(`${sheet}${rect('class="b a" style="fill:red"')}`)).toEqual(["#123456"]);
    expect(fills(`${sheet}${rect('class="a" style="fill:red ! important"')}`)).toEqual(["#ff0000"]);
  });
});

describe("what a drawing cannot keep", () => {
  it("is named with its element", () => {
    const body = [
      rect('fill="red" id="hull" mask="url(#m)"'),
      "<text>pear</text>",
      '<image href="http://example.org/a.png"/>',
      '<use href="other.svg#a"/>',
      '<use href="#gone"/>',
      "<style>path:hover { fill: red }</style>",
      '<rect width="9" height="9" fill="url(#gone)"/>',
      '<pattern id="check"/><rect width="9" height="9" fill="url(#check)"/>',
      '<rect width="9" height="9" filter="url(#f)" style="mix-blend-mode:multiply"/>',
      '<path d="M1 1h4v4z" marker-end="url(#m)"/>',
    ].join("\n");
    expect(warnings(body)).toEqual([
      '<style>: the rule "path:hover" is not read; set what it says on the elements themselves',
      '<rect id="hull"> on line 1: its mask "url(#m)" is not in the file; it is drawn without',
      "<text> on line 2: a <text> is not drawn; turn it into outlines in its editor",
      "<image> on line 3: a <image> is not drawn; trace it, or redraw it as shapes",
      "<use> on line 4: it points outside the file, which is never fetched",
      '<use> on line 5: what it repeats, "#gone", is not in the file',
      '<rect> on line 7: its paint "#gone" is not in the file, so it is not drawn',
      '<rect> on line 8: its paint "#check" is a <pattern>, which is not drawn; give it a flat colour',
      "<rect> on line 9: its filter is not applied; it is drawn without. Draw blurs and shadows as shapes",
      '<rect> on line 9: its blending "multiply" is drawn as plain paint',
      "<path> on line 10: its markers are not drawn; expand the line's appearance in its editor",
    ]);
  });

  it("tells when the drawing reaches beyond its page", () => {
    expect(warnings('<rect width="40" height="9"/>')).toEqual([
      "the drawing reaches beyond its page (the viewBox); it is taken whole",
    ]);
  });
});
