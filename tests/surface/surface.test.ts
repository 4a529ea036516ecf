// What a user can import, by name. A name that goes or changes here is a change that breaks scripts.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as artwork from "../../src/artwork.ts";
import * as root from "../../src/index.ts";
import * as lettering from "../../src/lettering.ts";
import * as node from "../../src/node.ts";
import * as param from "../../src/param.ts";
import * as print from "../../src/print.ts";
import * as proof from "../../src/proof.ts";
import * as shapes from "../../src/shapes.ts";
import * as sheets from "../../src/sheets.ts";

const manifest = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8")) as {
  version: string;
  exports: Record<string, unknown>;
};
const names = (door: object): string => Object.keys(door).sort().join(" ");

describe("the doors", () => {
  it("sprigwright", () => {
    expect(names(root)).toMatchInlineSnapshot(
      `"SprigwrightError VERSION adjusted anchor arch areaOf asterisk berry blossom border brick bud buildTile buoy carryPalette chevron citrus colorwayFor colorways contrast createKit cross crumb daisy dash deficiencyView defineCheck defineLayout defineMotif definePattern definePlugin defineRepeat defineScheme deltaE diamond dot drop fern fig fish fitTo gamutOf ginkgo greyView gull halfBrick halfDrop hexagonal holdsOf inspect ivy joinPaths knot layered leaf lemon lighthouse lozenge makePalette makePalettes measureRoles mirror movePath ogee ogeeCurve palette param pear pen pinwheel pip placeAt placing planeGroup pomegranate poppy quatrefoil rasterize rateColorway readCssColors readPaletteJson readTokens recipeInPng recipeInSvg recipeOf repeatDiagram ring sailboat sayFinding sayRating scaleTile scallop schemes seaweed set shapes skew sprig squiggle star starfish straight straightEquivalent strawberry stripes tick toCssColors toPaletteJson toSvg toTokens toss transformPath triangle tulip turnover umbel unitOutline wave whelk withColorways"`,
    );
  });

  it("param, within sprigwright", () => {
    expect(root.param).toEqual(param);
    expect(names(param)).toMatchInlineSnapshot(
      `"choice flag ink integer layout length list motif number object optional palette share span text turns"`,
    );
  });

  it("shapes, within sprigwright", () => {
    expect(root.shapes).toEqual(shapes);
    expect(names(shapes)).toMatchInlineSnapshot(
      `"behind blob bouquet branch brush contour curve drawingOf ellipse halves inset outline place polygon rosette stack within"`,
    );
  });

  it("schemes, within sprigwright", () => {
    expect(names(root.schemes)).toMatchInlineSnapshot(
      `"analogous bright complementary deep dusk muted nightGround pastel split sunBleached tetrad tonal triad twoInk"`,
    );
  });

  it("sprigwright/artwork", () => {
    expect(names(artwork)).toMatchInlineSnapshot(
      `"artwork artworkPlugin artworkSheet inspectArtwork inspectTrace paletteFromArtwork paletteFromImage readArtwork sayArtwork sayTrace traceImage traced"`,
    );
  });

  it("sprigwright/lettering", () => {
    expect(names(lettering)).toMatchInlineSnapshot(
      `"letterMotifs lettering letteringMotif letteringPlugin loadFont monogram monogramMotif wordMotifs"`,
    );
  });

  it("sprigwright/print", () => {
    expect(names(print)).toMatchInlineSnapshot(`"plateToPng plateToSvg recipeInPdf separations toPdf"`);
  });

  it("sprigwright/proof", () => {
    expect(names(proof)).toMatchInlineSnapshot(`"openProfile pressCheck"`);
  });

  it("sprigwright/sheets", () => {
    expect(names(sheets)).toMatchInlineSnapshot(
      `"artPrint calendar colorwaySheet lineSheet listing listingCsv listingJson pageToPng pageToSvg pagesToPdf printSizes sayListingWarning strikeOffSheet"`,
    );
  });

  it("sprigwright/node", () => {
    expect(names(node)).toMatchInlineSnapshot(
      `"defaultFont loadPatterns loadPicks loadPlugin toTiff writePattern"`,
    );
  });

  it("are those of the package, and no other", () => {
    expect(Object.keys(manifest.exports)).toEqual([
      ".",
      "./artwork",
      "./lettering",
      "./print",
      "./proof",
      "./sheets",
      "./node",
      "./package.json",
    ]);
  });
});

it("VERSION is the package's", () => {
  expect(root.VERSION).toBe(manifest.version);
});

it("every function is called as the thing it makes or does, in camel case, and nothing is a default", () => {
  for (const door of [root, artwork, lettering, node, print, proof, sheets, param, shapes])
    for (const name of Object.keys(door)) {
      expect(name).not.toBe("default");
      expect(name).toMatch(/^([a-z][a-zA-Z]*|[A-Z]+|SprigwrightError)$/);
    }
});
