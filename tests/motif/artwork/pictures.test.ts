// Drawings by Microsoft (Fluent Emoji, flat style), MIT licence, from the package @iconify-json/fluent-emoji-flat.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readDrawing } from "../../../src/motif/artwork/read.ts";
import { readArtwork } from "../../../src/motif/artwork/read-artwork.ts";
import { drawnBy, likeness, redrawn, svgOf } from "./picture.ts";

const file = new URL("../../../node_modules/@iconify-json/fluent-emoji-flat/icons.json", import.meta.url);
const { icons } = JSON.parse(readFileSync(file, "utf8")) as { icons: Record<string, { body: string }> };
const ground = '<rect width="32" height="32" fill="#d8e4ec"/>';

/** What one might draw on in a harbour town, and two drawings that geometry once stumbled over. */
const NAMES = [
  "pear",
  "lemon",
  "sailboat",
  "anchor",
  "spiral-shell",
  "fish",
  "crab",
  "octopus",
  "tulip",
  "herb",
];
const HARD = ["lotus", "lady-beetle", "running-shirt", "woman-dancing"];

describe("drawings by another hand", () => {
  it.each([...NAMES, ...HARD])("look the same drawn as motifs: %s", (name) => {
    const { body } = icons[name]!;
    expect(readDrawing(svgOf(body), 30).warnings).toEqual([]);
    expect(likeness(svgOf(ground + body), redrawn(svgOf(body), ground))).toBeGreaterThan(44);
  });

  it("are read the same every time", () => {
    const svg = svgOf(icons["octopus"]!.body);
    expect(readArtwork(svg)).toEqual(readArtwork(svg));
    expect(drawnBy(readArtwork(svg))).toEqual(drawnBy(readArtwork(svg)));
  });

  it("keep one outline a role and the roles back to front", () => {
    const use = readArtwork(svgOf(icons["sailboat"]!.body));
    expect(drawnBy(use).shapes.map((shape) => shape.role)).toEqual(Object.values(use.roles));
  });
});
