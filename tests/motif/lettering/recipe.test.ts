import { expect, it } from "vitest";
import { buildTile, createKit, definePattern, placeAt, recipeOf, straight } from "../../../src/index.ts";
import { lettering, letteringPlugin, monogram, wordMotifs } from "../../../src/lettering.ts";
import { refusal, refusalOf } from "../../given.ts";
import { both } from "./both.ts";

const { font } = both("eb-garamond");

const pattern = definePattern({
  name: "quay-badge",
  seed: "badge",
  repeat: straight({ width: 90, height: 90 }),
  layout: placeAt({
    places: [
      {
        motif: lettering(font, "HOLLIN QUAY", { size: 10, onArc: { radius: 30 }, origin: "anchor" }),
        x: 45,
        y: 45,
      },
      {
        motif: lettering(font, "tide\ntables", {
          size: 8,
          role: { each: "line", roles: ["letter", "rust"] },
        }),
        x: 10,
        y: 80,
      },
      {
        motif: monogram(font, "HQ", { size: 36, frame: "double-ring", frameRole: "rust", role: "letter" }),
        x: 45,
        y: 45,
      },
      { motif: wordMotifs(font, "salt", { size: 8 })[0]!.motif, x: 80, y: 85 },
    ],
  }),
  colorways: { dawn: { ground: "#f6ead7", letter: "#234", rust: "#b8432f" } },
});

it("letters in lines, on arcs and in monograms build from a recipe to the same digest, without the font", async () => {
  const tile = await buildTile(pattern);
  const recipe = JSON.parse(JSON.stringify(recipeOf(pattern)));
  const kit = createKit({ plugins: [letteringPlugin()] });
  expect((await kit.build(recipe)).digest).toBe(tile.digest);
  expect(JSON.stringify(recipe)).not.toContain("EB Garamond");
  expect((await refusalOf(() => createKit().build(recipe))).fix).toContain("letteringPlugin");
});

it("a kit describes both pieces with their options", () => {
  const text = JSON.stringify(createKit({ plugins: [letteringPlugin()] }).describe());
  expect(text).toContain('"lettering/lettering"');
  expect(text).toContain('"lettering/monogram"');
});

it("a recipe from outside is checked like any options", async () => {
  const recipe = JSON.parse(JSON.stringify(recipeOf(pattern)));
  const kit = createKit({ plugins: [letteringPlugin()] });
  const spoil = async (
    change: (places: { motif: { params: Record<string, unknown>; roles: object } }[]) => void,
  ) => {
    const copy = structuredClone(recipe);
    change(copy.layout.params.places);
    return refusalOf(() => Promise.resolve().then(() => kit.build(copy)));
  };
  expect((await spoil((places) => (places[0]!.motif.params["outlines"] = ["M0 0LNaN"]))).code).toBe(
    "bad-path-data",
  );
  expect((await spoil((places) => (places[0]!.motif.params["outlines"] = "M0 0"))).code).toBe("wrong-type");
  expect((await spoil((places) => (places[0]!.motif.params["font"] = "x"))).code).toBe("unknown-option");
  expect((await spoil((places) => (places[2]!.motif.params["letters"] = ["M0 0L1 1", ""]))).where).toContain(
    "letters[1]",
  );
  expect((await spoil((places) => (places[2]!.motif.params["letters"] = ["M0 0L1 1"]))).code).toBe(
    "list-length",
  );
  expect((await spoil((places) => (places[2]!.motif.params["frame"] = "star"))).code).toMatch(
    /unknown-choice/,
  );
  expect(refusal(() => monogram(font, "HQ", { roles: { first: "ink" } } as never)).code).toBe(
    "unknown-option",
  );
});
