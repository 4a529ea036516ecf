// What a user can import, by name. A name that goes or changes here is a change that breaks scripts.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as artwork from "../../src/artwork.ts";
import * as root from "../../src/index.ts";
import * as lettering from "../../src/lettering.ts";
import * as node from "../../src/node.ts";
import * as param from "../../src/param.ts";

const manifest = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8")) as {
  version: string;
  exports: Record<string, unknown>;
};
const names = (door: object): string => Object.keys(door).sort().join(" ");

describe("the doors", () => {
  it("sprigwright", () => {
    expect(names(root)).toMatchInlineSnapshot(
      `"SprigwrightError VERSION areaOf berry blossom border brick buildTile colorwayFor contrast createKit defineCheck defineLayout defineMotif definePattern definePlugin defineRepeat diamond dot drop fitTo halfBrick halfDrop hexagonal inspect joinPaths leaf mirror movePath ogee ogeeCurve param pen placeAt placing planeGroup rasterize recipeOf repeatDiagram ring sayFinding scaleTile scallop set skew sprig star straight straightEquivalent toSvg toss transformPath turnover unitOutline"`,
    );
  });

  it("param, within sprigwright", () => {
    expect(root.param).toEqual(param);
    expect(names(param)).toMatchInlineSnapshot(
      `"choice flag integer length list motif number object optional share span text turns"`,
    );
  });

  it("sprigwright/artwork", () => {
    expect(names(artwork)).toMatchInlineSnapshot(`"artwork artworkPlugin inspectArtwork readArtwork"`);
  });

  it("sprigwright/lettering", () => {
    expect(names(lettering)).toMatchInlineSnapshot(`"lettering letteringMotif letteringPlugin loadFont"`);
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
  for (const door of [root, artwork, lettering, node, param])
    for (const name of Object.keys(door)) {
      expect(name).not.toBe("default");
      expect(name).toMatch(/^([a-z][a-zA-Z]*|[A-Z]+|SprigwrightError)$/);
    }
});
