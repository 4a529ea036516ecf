// What a user can import, by name. A name that goes or changes here is a change that breaks scripts.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as artwork from "../../src/artwork.ts";
import * as root from "../../src/index.ts";
import * as lettering from "../../src/lettering.ts";
import * as node from "../../src/node.ts";
import * as param from "../../src/param.ts";
import * as shapes from "../../src/shapes.ts";

const manifest = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8")) as {
  version: string;
  exports: Record<string, unknown>;
};
const names = (door: object): string => Object.keys(door).sort().join(" ");

describe("the doors", () => {
  it("sprigwright", () => {
    expect(names(root)).toMatchInlineSnapshot(
      `"SprigwrightError VERSION adjusted anchor arch areaOf asterisk berry blossom border brick bud buildTile buoy chevron citrus colorwayFor contrast createKit cross crumb daisy dash defineCheck defineLayout defineMotif definePattern definePlugin defineRepeat diamond dot drop fern fig fish fitTo ginkgo gull halfBrick halfDrop hexagonal holdsOf inspect ivy joinPaths knot layered leaf lemon lighthouse lozenge mirror movePath ogee ogeeCurve param pear pen pinwheel pip placeAt placing planeGroup pomegranate poppy quatrefoil rasterize recipeOf repeatDiagram ring sailboat sayFinding scaleTile scallop seaweed set shapes skew sprig squiggle star starfish straight straightEquivalent strawberry stripes tick toSvg toss transformPath triangle tulip turnover umbel unitOutline wave whelk"`,
    );
  });

  it("param, within sprigwright", () => {
    expect(root.param).toEqual(param);
    expect(names(param)).toMatchInlineSnapshot(
      `"choice flag integer layout length list motif number object optional share span text turns"`,
    );
  });

  it("shapes, within sprigwright", () => {
    expect(root.shapes).toEqual(shapes);
    expect(names(shapes)).toMatchInlineSnapshot(
      `"behind blob bouquet branch brush contour curve drawingOf ellipse halves inset outline place polygon rosette stack within"`,
    );
  });

  it("sprigwright/artwork", () => {
    expect(names(artwork)).toMatchInlineSnapshot(
      `"artwork artworkPlugin artworkSheet inspectArtwork inspectTrace readArtwork sayArtwork sayTrace traceImage traced"`,
    );
  });

  it("sprigwright/lettering", () => {
    expect(names(lettering)).toMatchInlineSnapshot(
      `"letterMotifs lettering letteringMotif letteringPlugin loadFont monogram monogramMotif wordMotifs"`,
    );
  });

  it("sprigwright/node", () => {
    expect(names(node)).toMatchInlineSnapshot(`"loadPatterns loadPlugin writePattern"`);
  });

  it("are those of the package, and no other", () => {
    expect(Object.keys(manifest.exports)).toEqual([
      ".",
      "./artwork",
      "./lettering",
      "./node",
      "./package.json",
    ]);
  });
});

it("VERSION is the package's", () => {
  expect(root.VERSION).toBe(manifest.version);
});

it("every function is called as the thing it makes or does, in camel case, and nothing is a default", () => {
  for (const door of [root, artwork, lettering, node, param, shapes])
    for (const name of Object.keys(door)) {
      expect(name).not.toBe("default");
      expect(name).toMatch(/^([a-z][a-zA-Z]*|[A-Z]+|SprigwrightError)$/);
    }
});
