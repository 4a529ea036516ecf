import { expect, it } from "vitest";
import { pressCheck } from "../../src/check/press-check.ts";
import type { InkProof, PrintProfile } from "../../src/proof.ts";

it("the nearest print of an ink, which takes a search, is looked for once, however many colorways have it", () => {
  const asked: string[] = [];
  const proof = (ink: string, deltaE: number): InkProof => ({
    ...{ ink, printed: "#3040a0", deltaE, total: 200 },
    cmyk: { cyan: 100, magenta: 100, yellow: 0, black: 0 },
  });
  const press: PrintProfile = {
    ...{ name: "harbour press", mostInk: 300, view: (of) => of },
    proof: (ink) => proof(ink, ink === "#0000ff" ? 20 : 1),
    nearest: (ink) => {
      asked.push(ink);
      return proof(ink, 9);
    },
  };
  const tile = { recipe: { roles: ["ground", "petal"] } };
  const colorways = ["dawn", "noon", "dusk"].map((name) => ({
    name,
    inks: { ground: "#ffffff", petal: "#0000ff" },
  }));
  const found = pressCheck(press).look({ tile, colorways, dpi: 150 } as never);
  expect(found.map(({ colorway, role }) => `${colorway} ${role}`)).toEqual([
    "dawn petal",
    "noon petal",
    "dusk petal",
  ]);
  expect(asked).toEqual(["#0000ff"]);
});
