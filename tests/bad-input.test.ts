// The mistakes that users make most, each with the sentence that they get: what is wrong, and what would be right.
import { describe, expect, it } from "vitest";
import { readArtwork } from "../src/artwork.ts";
import {
  buildTile,
  createKit,
  defineMotif,
  definePattern,
  halfDrop,
  leaf,
  param,
  pen,
  rasterize,
  recipeOf,
  toss,
} from "../src/index.ts";
import { refusal, refusalOf } from "./given.ts";

const parts = {
  name: "pears",
  seed: "harbour-1",
  repeat: halfDrop({ width: 160, height: 120 }),
  layout: toss({ gap: 30, motifs: [{ motif: leaf({ length: 30 }) }] }),
};
const pattern = definePattern({
  ...parts,
  colorways: { dawn: { ground: "linen", blade: "green", vein: "tan" } },
});

describe("the sentence for", () => {
  it("an unknown role", () => {
    const error = refusal(() =>
      definePattern({
        ...parts,
        colorways: { dawn: { ground: "linen", blade: "green", vein: "tan", blad: "red" } },
      } as never),
    );
    expect(error.message).toBe(
      'pears > colorways > dawn > blad: there is no role "blad"\n' +
        '  fix: did you mean "blade"? Known: ground, blade, vein [unknown-role]',
    );
  });

  it("a missing ink", () => {
    const error = refusal(() =>
      definePattern({ ...parts, colorways: { dawn: { ground: "linen", vein: "tan" } } } as never),
    );
    expect(error.message).toBe(
      'pears > colorways > dawn: no ink for "blade"\n' +
        "  fix: give every role that the pattern draws a colour, the ground included [missing-ink]",
    );
  });

  it("a colour that cannot be read", () => {
    const colorways = { dawn: { ground: "linen", blade: "grene", vein: "tan" } };
    expect(refusal(() => definePattern({ ...parts, colorways })).message).toBe(
      'pears > colorways > dawn > blade: "grene" is not a CSS colour\n' +
        '  fix: give an opaque CSS colour such as "#d9803c", "tomato" or "oklch(0.7 0.12 50)" [bad-color]',
    );
  });

  it("a negative gap", () => {
    expect(refusal(() => toss({ gap: -3, motifs: [{ motif: leaf() }] })).message).toBe(
      "toss > gap: -3 mm is outside 0 mm to 500 mm\n  fix: give a value from 0 mm to 500 mm [length-range]",
    );
  });

  it("a tile that is not whole pixels at the dpi, with the nearest sizes that are", async () => {
    const tile = await buildTile(pattern);
    const error = await refusalOf(() => rasterize(tile, { dpi: 150 }));
    expect(error.code).toBe("not-whole-pixels");
    expect(error.message).toContain("a block of 320 x 120 mm is not a whole number of pixels at 150 dpi");
    expect(error.fix).toContain("320.04");
    expect(error.fix).toContain("119.888");
  });

  it("a motif larger than the tile", async () => {
    const layout = toss({ motifs: [{ motif: leaf({ length: 200 }), scale: 4 }] });
    const error = await refusalOf(() => buildTile({ ...pattern, layout }));
    expect(error.code).toBe("motif-too-large");
    expect(error.where).toMatch(/^pears > /);
    expect(error.fix.length).toBeGreaterThan(10);
  });

  it("an SVG without anything in it, and one that is broken", () => {
    expect(refusal(() => readArtwork('<svg xmlns="http://www.w3.org/2000/svg"/>')).code).toBe(
      "empty-artwork",
    );
    expect(refusal(() => readArtwork("<svg><path d='M0 0")).code).toBe("malformed-svg");
    expect(refusal(() => readArtwork("a letter to a friend")).code).toMatch(/^(not-svg|malformed-svg)$/);
  });

  it("NaN in a motif of one's own", async () => {
    const kite = defineMotif({
      name: "harbour/kite",
      about: "A kite.",
      params: { span: param.length({ about: "Across.", min: 0, max: 99, default: 0 }) },
      parts: ["blade", "vein"],
      draw: ({ span }) => ({
        blade: pen()
          .moveTo(0, 0)
          .lineTo(span / span, 3)
          .lineTo(1, 1)
          .path(),
        vein: [],
      }),
    });
    const error = await refusalOf(() =>
      buildTile({ ...pattern, layout: toss({ motifs: [{ motif: kite() }] }) }),
    );
    expect(error.message).toBe(
      "pears > kite > pen: a coordinate is NaN, not a number of mm from -100000 to 100000\n" +
        "  fix: return closed paths with finite coordinates in mm, one entry for each part [bad-shape]",
    );
  });

  it("a recipe with an unknown key", () => {
    expect(refusal(() => createKit().read({ ...recipeOf(pattern), colours: {} })).message).toMatch(
      /^recipe > colours: there is no key "colours"\n {2}fix: .*colorways.* \[unknown-key\]$/,
    );
  });

  it("a recipe 10 MB deep", () => {
    let deep: unknown = 0;
    for (let i = 0; i < 3_500_000; i++) deep = { a: deep };
    expect(refusal(() => createKit().read({ ...recipeOf(pattern), layout: deep })).message).toBe(
      "recipe: it nests more than 32 levels deep\n  fix: give a recipe that recipeOf wrote [recipe-too-deep]",
    );
  });
});
