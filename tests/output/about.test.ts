import { describe, expect, it } from "vitest";
import { type FileNotes, recipeInPng, recipeInSvg, toSvg } from "../../src/index.ts";
import { rasterize } from "../../src/output/png/rasterize.ts";
import { recipeInPdf, toPdf } from "../../src/print.ts";
import { refusal } from "../given.ts";
import { dawn, harbour } from "./harbour.ts";

const { png } = await rasterize(harbour, { dpi: 50 });
const text = (bytes: Uint8Array): string => Buffer.from(bytes).toString("latin1");

describe("recipe: false", () => {
  const notes: FileNotes = { recipe: false, rights: "Hollin Quay Prints" };

  it("leaves the recipe out of a PNG, an SVG and a PDF, where it is otherwise", async () => {
    expect(recipeInPng(png(dawn))?.digest).toBe(harbour.digest);
    expect(recipeInSvg(toSvg(harbour, dawn))?.digest).toBe(harbour.digest);
    expect((await recipeInPdf(await toPdf(harbour, dawn)))?.digest).toBe(harbour.digest);
    expect(recipeInPng(png(dawn, notes))).toBeUndefined();
    expect(recipeInSvg(toSvg(harbour, dawn, notes))).toBeUndefined();
    expect(await recipeInPdf(await toPdf(harbour, dawn, notes))).toBeUndefined();
  });

  it("leaves no trace of the seed, and everything else that the file says of itself", async () => {
    const seeded = { ...harbour, recipe: { ...harbour.recipe, seed: "only-we-know" } };
    const raster = await rasterize(seeded, { dpi: 50 });
    for (const file of [
      text(raster.png(dawn, notes)),
      toSvg(seeded, dawn, notes),
      text(await toPdf(seeded, dawn, notes)),
    ]) {
      expect(file).not.toContain("only-we-know");
      expect(file).not.toMatch(/sprigwright:recipe|PieceInfo/);
      expect(file).toContain("Hollin Quay Prints");
      expect(file).toContain(`${harbour.name}, ${dawn.name}`);
    }
    expect(toSvg(seeded, dawn)).toContain("only-we-know");
  });
});

describe("what a file says of itself", () => {
  it("is the pattern's, where an option was left undefined", () => {
    const given = { title: undefined, subject: undefined, rights: undefined };
    expect(png(dawn, given)).toEqual(png(dawn));
    expect(toSvg(harbour, dawn, given)).toBe(toSvg(harbour, dawn));
  });

  it.each([
    [{ recipe: "no" }, "wrong-type", "true or false"],
    [{ recepi: false }, "unknown-option", 'did you mean "recipe"'],
    [{ rights: 3 }, "wrong-type", "text of at most"],
    [3, "wrong-type", "an object"],
  ])("refuses %o", (given, code, words) => {
    const error = refusal(() => png(dawn, given as never));
    expect(error.code).toBe(code);
    expect(error.message).toContain(words);
  });
});
