import { describe, expect, expectTypeOf, it } from "vitest";
import { halfDrop, toss } from "../../../src/index.ts";
import { letterMotifs, type TossedMotif, wordMotifs } from "../../../src/motif/lettering/tossed.ts";
import { definePattern } from "../../../src/pattern/pattern.ts";
import { buildTile } from "../../../src/tile/build.ts";
import { refusal } from "../../given.ts";
import { both } from "./both.ts";

const { font } = both("roboto");
const said = (motifs: readonly TossedMotif<string>[]) =>
  motifs.map(({ motif, share }) => `${motif.params["text"]} ${share}`);

describe("letters and words to toss", () => {
  it("the same letter is the same motif, and counts as often as it comes", () => {
    expect(said(letterMotifs(font, "Hollin Quay\nHall"))).toEqual([
      "H 2",
      "o 1",
      "l 4",
      "i 1",
      "n 1",
      "Q 1",
      "u 1",
      "a 2",
      "y 1",
    ]);
    expect(said(letterMotifs(font, "cafe\u0301 \u00e9"))).toEqual(["c 1", "a 1", "f 1", "é 2"]);
  });

  it("the same word is the same motif", () => {
    expect(said(wordMotifs(font, " tide  salt\ntide Tide "))).toEqual(["tide 2", "salt 1", "Tide 1"]);
  });

  it("size, tracking and role reach all of them, and the types know the role", () => {
    const words = wordMotifs(font, "tide salt", { size: 9, tracking: 50, role: "ink" });
    expectTypeOf(words).toEqualTypeOf<TossedMotif<"ink">[]>();
    for (const { motif } of words)
      expect(motif).toMatchObject({ params: { size: 9 }, roles: { letter: "ink" } });
    expect(words[0]!.motif.params).not.toEqual(wordMotifs(font, "tide", { size: 9 })[0]!.motif.params);
  });

  it("go straight into a toss", async () => {
    const pattern = definePattern({
      name: "tide-words",
      seed: "quay",
      repeat: halfDrop({ width: 60, height: 60 }),
      layout: toss({
        gap: 2,
        motifs: [
          ...letterMotifs(font, "tide", { size: 12, role: "ink" }),
          ...wordMotifs(font, "at sea", { size: 8, role: "rust" }),
        ],
      }),
      colorways: { dawn: { ground: "#fff", ink: "#123", rust: "#a43" } },
    });
    const tile = await buildTile(pattern);
    expect(tile.layers.map(({ role }) => role).sort()).toEqual(["ink", "rust"]);
    expect(tile.placements.length).toBeGreaterThan(10);
  });

  it("what cannot be set is refused, all of it named", () => {
    expect(refusal(() => letterMotifs(font, "a梨b子"))).toMatchObject({
      code: "missing-glyph",
      where: "letterMotifs > text",
    });
    expect(refusal(() => wordMotifs(font, "a梨 b子")).what).toContain("子");
    expect(refusal(() => wordMotifs(font, " \n ")).code).toBe("bad-lettering");
    expect(refusal(() => letterMotifs(font, "x".repeat(10_000))).code).toBe("wrong-type");
    expect(refusal(() => wordMotifs(font, Array.from({ length: 65 }, (_, i) => i).join(" ")))).toMatchObject({
      code: "too-many-motifs",
    });
    expect(refusal(() => letterMotifs(font, "a", { align: "left" } as never)).code).toBe("unknown-option");
    expect(refusal(() => letterMotifs({} as never, "a")).where).toBe("letterMotifs > font");
  });
});
