import { describe, expect, it } from "vitest";
import { LIMITS } from "../../../src/motif/artwork/limits.ts";
import { readArtwork } from "../../../src/motif/artwork/read-artwork.ts";
import { refusal } from "../../given.ts";
import { svgOf } from "./picture.ts";

const square = '<rect width="9" height="9"/>';

describe("a file that is no drawing", () => {
  it("is refused at the call, with what it is instead", () => {
    const wrong: [string, string, string][] = [
      ["", "not-svg", "the text is empty"],
      ["harbour", "not-svg", "it is not XML"],
      ["drawings/buoy.svg", "not-svg", "the name of a file"],
      ["\u0089PNG\r\n", "not-svg", "it is not XML"],
      ["<html><body/></html>", "not-svg", "its root element is <html>"],
      ['<svg xmlns="http://example.org/other"><rect width="9" height="9"/></svg>', "not-svg", "root element"],
      [svgOf(""), "empty-artwork", "draws nothing"],
      [svgOf('<path d="M0 0L10 10"/>'), "empty-artwork", "draws nothing"],
      [svgOf("<text>pear</text>"), "empty-artwork", "a <text> is not drawn"],
      [
        svgOf('<rect width="1e308" height="9" transform="scale(1e9)"/>'),
        "bad-artwork",
        "not a finite number",
      ],
      [svgOf('<path d="M0 0L1e999 5L3 3z"/>'), "bad-artwork", "not a finite number"],
      [svgOf('<rect width="9furlongs" height="9"/>'), "bad-svg-length", "9furlongs"],
      [svgOf('<polygon points="0 0 9 9 9"/>'), "bad-points", "0 0 9 9 9"],
      [svgOf(square).replace("0 0 32 32", "0 0 32"), "bad-view-box", "0 0 32"],
      [svgOf(square).replace("0 0 32 32", "0 0 0 32"), "bad-view-box", "0 0 0 32"],
      [svgOf(square).replace("0 0 32 32", "0 0 NaN 32"), "bad-view-box", "NaN"],
      [svgOf('<rect width="NaN" height="9"/>'), "bad-svg-length", "NaN"],
      [svgOf('<path d="M0 0L NaN 4z"/>'), "bad-path-data", "NaN"],
      [svgOf('<path d="M0 0C1 2 3"/>'), "bad-path-data", "M0 0C1 2 3"],
      [svgOf('<rect width="9" height="9" display="none"/>'), "empty-artwork", "draws nothing"],
    ];
    for (const [text, code, what] of wrong) {
      const error = refusal(() => readArtwork(text));
      expect(error.code).toBe(code);
      expect(error.what).toContain(what);
      expect(error.where).toMatch(/^artwork > /);
      expect(error.fix).not.toBe("");
    }
  });

  it("is refused with the line where its XML breaks", () => {
    expect(refusal(() => readArtwork('<svg xmlns="http://www.w3.org/2000/svg">\n<g>\n</svg>'))).toMatchObject(
      {
        code: "malformed-svg",
        where: "artwork > svg > line 2",
      },
    );
    for (const text of [
      "<svg",
      "<svg><g a=1/></svg>",
      "<svg a='1' a='2'/>",
      "<svg>&pear;</svg>",
      "<svg/><svg/>",
    ])
      expect(refusal(() => readArtwork(text)).code).toBe("malformed-svg");
  });

  it("names the element whose attribute is broken", () => {
    const error = refusal(() => readArtwork(svgOf(`${square}\n<path id="stem" d="M0 0L10"/>`)));
    expect(error.message).toBe(
      'artwork > <path id="stem"> on line 2 > d: "M0 0L10" is not path data: Unterminated command at the path end\n' +
        "  fix: mend the path, or save the drawing again from its editor [bad-path-data]",
    );
  });
});

it("a drawing cut out of a web page may lack its namespace", () => {
  const bare = '<svg viewBox="0 0 9 9"><rect width="9" height="9"/><use xlink:href="#a"/></svg>';
  expect(Object.keys(readArtwork(bare.replace(/<use.*?>/, "")).roles)).toEqual(["#000000"]);
});

describe("a hostile file", () => {
  const code = (text: string): string => refusal(() => readArtwork(text)).code;

  it("cannot declare entities, inside or outside", () => {
    const bomb = '<!DOCTYPE svg [<!ENTITY a "aaaaaaaa"><!ENTITY b "&a;&a;&a;&a;">]>';
    expect(code(bomb + svgOf("<text>&b;</text>"))).toBe("unsafe-svg");
    expect(code(`<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]>${svgOf("&x;")}`)).toBe(
      "unsafe-svg",
    );
    expect(code(`<!DOCTYPE svg [${" ".repeat(900_000)}`)).toBe("unsafe-svg");
  });

  it("may declare names for plain text, as some programs do, which are written out where they are used", () => {
    const type =
      '<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "svg11.dtd" [\n<!ENTITY ns_svg "http://www.w3.org/2000/svg">\n' +
      "<!ENTITY ns_x \"http://example.org/extend?a='b'\">\n]>";
    const drawing = `<svg xmlns="&ns_svg;" xmlns:x="&ns_x;" viewBox="0 0 9 9">${square}</svg>`;
    expect(Object.keys(readArtwork(type + drawing).roles)).toEqual(["#000000"]);
    const editing =
      '<switch><foreignObject requiredExtensions="&ns_x;"/><g id=\'&ns_x;\'><rect width="9" height="9"/></g></switch>';
    expect(Object.keys(readArtwork(type + drawing.replace(square, editing)).roles)).toEqual(["#000000"]);
    expect(
      refusal(() => readArtwork(type + drawing.replace(square, '<rect id="&nbsp;" width="9" height="9"/>'))),
    ).toMatchObject({ code: "malformed-svg", what: "the file uses &nbsp;, which it does not declare" });
    const long = `<!DOCTYPE svg [<!ENTITY a "${"a".repeat(200)}">]>`;
    expect(code(long + svgOf(`<rect id="${"&a;".repeat(30_000)}" width="9" height="9"/>`))).toBe(
      "artwork-too-large",
    );
    const many = Array.from({ length: 65 }, (_, i) => `<!ENTITY e${i} "x">`).join("");
    expect(code(`<!DOCTYPE svg [${many}]>${svgOf(square)}`)).toBe("unsafe-svg");
    expect(code(`<!DOCTYPE svg [<!ENTITY a "${"a".repeat(201)}">]>${svgOf(square)}`)).toBe("unsafe-svg");
    expect(code(`${svgOf(square)}<!ENTITY a "b">`)).toBe("unsafe-svg");
  });

  it("may name the public document type, which is not fetched", () => {
    const type =
      '<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">';
    expect(readArtwork(`\ufeff<?xml version="1.0"?>\n${type}\n${svgOf(square)}`).roles).toEqual({
      "#000000": "black",
    });
  });

  it("is stopped at the limits, in little time", () => {
    const started = process.hrtime.bigint();
    expect(code(" ".repeat(LIMITS.characters + 1))).toBe("artwork-too-large");
    expect(code(svgOf("<g/>".repeat(LIMITS.elements + 1)))).toBe("artwork-too-large");
    expect(code(svgOf("<g>".repeat(3000) + "</g>".repeat(3000)))).toBe("artwork-too-large");
    expect(code(svgOf(`<path d="M0 0${"h1".repeat(LIMITS.points + 1)}"/>`))).toBe("artwork-too-large");
    const doubling = Array.from(
      { length: 30 },
      (_, i) => `<g id="g${i + 1}">${`<use href="#g${i}"/>`.repeat(2)}</g>`,
    );
    expect(code(svgOf(`<g id="g0">${square}</g>${doubling.join("")}`))).toBe("artwork-too-large");
    const long = `<defs><path id="p" d="M0 0${" ".repeat(400_000)}h9v9z"/></defs>`;
    expect(code(svgOf(long + '<use href="#p"/>'.repeat(5000)))).toBe("artwork-too-large");
    // A file of a million nodes, groups a hundred deep, rules by the thousand.
    expect(code(svgOf("<g/>".repeat(900_000)))).toBe("artwork-too-large");
    expect(code(svgOf(`${"<g>".repeat(100)}${square}${"</g>".repeat(100)}`))).toBe("artwork-too-large");
    expect(code(svgOf(`<style>${"a b c d e f g{fill:red}".repeat(3000)}</style>${square}`))).toBe(
      "artwork-too-large",
    );
    const chains = `<style>${"g g g g g g .x{fill:red}".repeat(1500)}</style>`;
    const nested = `${"<g>".repeat(50)}${'<rect class="x"/>'.repeat(5000)}${"</g>".repeat(50)}`;
    expect(code(svgOf(chains + nested))).toBe("artwork-too-large");
    expect(code(svgOf('<path stroke="red" stroke-dasharray="1e-6" d="M0 0H30"/>'))).toBe("artwork-too-large");
    // Texts that a careless pattern would go over again and again.
    expect(code(svgOf(`<rect width="${"1".repeat(500_000)}x" height="1"/>`))).toBe("bad-svg-length");
    expect(code(svgOf(`<polygon points="${"1".repeat(500_000)}x"/>`))).toBe("bad-points");
    expect(code(svgOf(`<rect transform="${"a".repeat(900_000)}"/>`))).toBe("bad-transform");
    expect(code(svgOf(`<rect fill="${"url(".repeat(200_000)}" width="0" height="1"/>`))).toBe(
      "empty-artwork",
    );
    expect(Number(process.hrtime.bigint() - started) / 1e9).toBeLessThan(15);
  });

  it("may repeat itself without end: the repetition is left out", () => {
    const body = `<g id="a">${square}<use href="#b"/></g><g id="b"><use href="#a"/></g>`;
    expect(Object.keys(readArtwork(svgOf(body)).roles)).toEqual(["#000000"]);
  });

  it("reaches no prototype through a name", () => {
    expect(code(svgOf('<use href="#__proto__"/>'))).toBe("empty-artwork");
    expect(code(svgOf('<constructor width="3"/><rect transform="toString(1)"/>'))).toBe("bad-transform");
    expect(
      Object.keys(readArtwork(svgOf(`<g style="__proto__:1;toString:2">${square}</g>`)).roles),
    ).toHaveLength(1);
  });
});
