// papaparse as an independent reader of CSV.
import Papa from "papaparse";
import { describe, expect, it, test } from "vitest";
import { colourWord } from "../../../src/output/listing/colour-word.ts";
import { listingCsv, listingJson } from "../../../src/output/listing/files.ts";
import { kindsOf, plural } from "../../../src/output/listing/kinds.ts";
import { listing, sayListingWarning } from "../../../src/output/listing/listing.ts";
import type { Tile } from "../../../src/tile/tile.ts";
import { refusal } from "../../given.ts";
import { colorwaysOf, dawn, tile } from "../sheet/given.ts";

const plain = listing({ tile, colorways: [dawn], hero: true });

/** The shore with its motifs called otherwise. */
const called = (...names: string[]): Tile => ({
  ...tile,
  motifs: tile.motifs.map((motif, i) => ({ ...motif, name: names[i % names.length]! })),
});

const rowsOf = (csv: string): Record<string, string>[] => {
  const { data, errors } = Papa.parse<Record<string, string>>(csv.trimEnd(), { header: true });
  expect(errors).toEqual([]);
  return data;
};

describe("a listing", () => {
  it("says size in mm and inches, inks, digest and version", () => {
    expect(plain).toMatchObject({
      name: "shore",
      title: "Shore",
      subject: "buoy",
      dpi: 150,
      repeat: { kind: "half-drop", mm: { width: 60, height: 40 }, in: { width: 2.36, height: 1.57 } },
      block: { mm: { width: 120, height: 40 }, in: { width: 4.72, height: 1.57 } },
      digest: tile.digest,
    });
    expect(plain.colorways[0]!.inks).toEqual(dawn.inks);
  });

  it("describes what is in the tile: its motifs, the largest first, and its colours", () => {
    expect(kindsOf(tile)).toEqual(["buoy", "pebble"]);
    expect(plain.colorways[0]!.alt).toBe(
      "Seamless half-drop repeat of buoys and pebbles in red, blue and green on cream.",
    );
    const words = { buoy: "float", pebble: "pear" };
    expect(listing({ tile, colorways: [dawn], words, subject: "harbour" }).colorways[0]!.alt).toContain(
      "repeat of harbour: floats and pears in",
    );
  });

  it("warns when motifs of several subjects meet, unless that is a hero's", () => {
    const { warnings } = listing({ tile: called("pear", "lemon"), colorways: [dawn] });
    expect(warnings).toEqual([
      { rule: "several-subjects", subjects: expect.arrayContaining(["pear", "lemon"]) },
    ]);
    expect(sayListingWarning(warnings[0]!)).toMatch(/^(pears and lemons|lemons and pears) are 2 subjects/);
    expect(listing({ tile: called("pear", "lemon"), colorways: [dawn], hero: true }).warnings).toEqual([]);
    // Leaves and dots go with a subject and are none.
    expect(listing({ tile: called("pear", "leaf", "dot"), colorways: [dawn] }).warnings).toEqual([]);
  });

  it("takes the motif that covers most when the pattern names no subject, and says so", () => {
    const nameless = { ...tile, recipe: { ...tile.recipe, subject: "" } };
    const { subject, warnings } = listing({ tile: nameless, colorways: [dawn], hero: true });
    expect(subject).toBe("buoy");
    expect(warnings.map(sayListingWarning)).toEqual([
      'the pattern names no subject: "buoy" was taken, which covers most of it',
    ]);
  });

  it("lists files by their names, with the colorway that they show", () => {
    const files = [
      { file: "out/shore/shore-dawn.svg", colorway: "dawn" },
      { file: "C:\\prints\\recipe.json" },
    ];
    const { colorways, files: rest } = listing({ tile, colorways: [dawn], files });
    expect([colorways[0]!.files, rest]).toEqual([["shore-dawn.svg"], ["recipe.json"]]);
  });

  it("has each tag once, the designer's own first", () => {
    const { tags } = listing({ tile, colorways: [dawn], tags: ["Harbour", "buoys", " harbour "] });
    expect(tags.slice(0, 3)).toEqual(["harbour", "buoys", "buoy"]);
    expect(new Set(tags).size).toBe(tags.length);
  });

  it("is JSON that says the same when it is read again", () => {
    expect(JSON.parse(listingJson(plain))).toEqual(plain);
  });

  it("is refused for what it does not know", () => {
    const odd = (options: object) =>
      refusal(() => listing({ tile, colorways: [dawn], ...options } as never)).code;
    expect(odd({ colorways: [] })).toBe("no-colorways");
    expect(odd({ dpi: 0 })).toBe("number-range");
    expect(odd({ words: { pear: "pear" } })).toBe("unknown-kind-of-motif");
    expect(odd({ files: [{ file: "a.svg", colorway: "dusk" }] })).toBe("unknown-colorway");
    expect(odd({ titel: "Shore" })).toBe("unknown-option");
    expect(refusal(() => listingCsv([null] as never)).code).toBe("wrong-type");
    expect(odd({ tags: "harbour" })).toBe("wrong-type");
    expect(refusal(() => listing(undefined as never)).code).toBe("missing-option");
  });
});

describe("listings as CSV", () => {
  it("are a row for each colorway, which another reader reads as it was written", () => {
    const title = 'The "small" shore,\nwith a line of its own';
    const one = listing({ tile, colorways: colorwaysOf(3), title, tags: ["a, b", 'say "x"'] });
    const rows = rowsOf(listingCsv([one, plain]));
    expect(rows.map(({ colorway }) => colorway)).toEqual(["tide-1", "tide-2", "tide-3", "dawn"]);
    expect(rows[0]).toMatchObject({
      title,
      subject: "buoy",
      hero: "no",
      "width mm": "60",
      "height in": "1.57",
      tags: one.tags.join(", "),
      alt: one.colorways[0]!.alt,
      inks: Object.entries(one.colorways[0]!.inks)
        .map(([role, ink]) => `${role} ${ink}`)
        .join(", "),
    });
  });

  // The signs that OWASP's page on CSV Injection names.
  test.each(["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "  =1", "＝1", "＠x"])(
    "hold %j as text, not as a formula",
    (title) => {
      const [row] = rowsOf(listingCsv(listing({ tile, colorways: [dawn], title })));
      expect(row!["title"]).toBe(`'${title}`);
    },
  );
});

describe("words", () => {
  test.each([
    ...[
      ["leaf", "leaves"],
      ["berry", "berries"],
      ["buoy", "buoys"],
      ["fish", "fish"],
      ["starfish", "starfish"],
    ],
    ...[
      ["arch", "arches"],
      ["cross", "crosses"],
      ["pear blossom", "pear blossoms"],
      ["scallop", "scallops"],
    ],
  ])("more than one %s are %s", (word, words) => expect(plural(word)).toBe(words));

  // Named colours of CSS Color 4, by the plain word that their names hold.
  test.each([
    ...[
      ["#000000", "black"],
      ["#ffffff", "white"],
      ["#808080", "grey"],
      ["#000080", "navy"],
      ["#ffc0cb", "pink"],
    ],
    ...[
      ["#008080", "teal"],
      ["#808000", "olive"],
      ["#8b4513", "brown"],
      ["#ffa500", "yellow"],
      ["#ff8c00", "orange"],
    ],
    ...[
      ["#008000", "green"],
      ["#006400", "dark green"],
      ["#98fb98", "pale green"],
      ["#800080", "purple"],
      ["#fdf5e6", "cream"],
    ],
    ...[
      ["#ffdab9", "peach"],
      ["#dc143c", "red"],
      ["#4169e1", "blue"],
    ],
  ])("%s is %s", (ink, word) => expect(colourWord(ink)).toBe(word));
});
