import Color from "colorjs.io";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { rateColorway } from "../../../src/colorway/plan/rating.ts";
import { reading } from "../../../src/colorway/plan/reading.ts";
import { sayRating } from "../../../src/colorway/plan/say.ts";
import { measureRoles } from "../../../src/tile/figures/role-figures.ts";
import { refusal } from "../../given.ts";
import { cluster, quay, rolesOf } from "./given.ts";

const tile = cluster(4);
const { chalk, coral, sage, kelp, butter, ink, rust } = quay.inks as Record<string, string>;
const inks = (ground: string, petal: string, heart: string, leaf: string) => ({ ground, petal, heart, leaf });
const rate = (name: string, given: ReturnType<typeof inks>) => rateColorway(tile, { name, inks: given });

describe("a colorway's rating", () => {
  const sound = {
    dawn: inks(chalk!, coral!, butter!, kelp!),
    night: inks(ink!, coral!, butter!, sage!),
    quince: inks(butter!, ink!, chalk!, rust!),
    moss: inks(kelp!, chalk!, coral!, butter!),
  };

  it("puts the one whose petal is the ground's near twin last, and names the pair", () => {
    const twin = rate("twin", inks(chalk!, "#f9f2e6", butter!, kelp!));
    for (const [name, given] of Object.entries(sound))
      expect(rate(name, given).score, name).toBeGreaterThan(twin.score + 20);
    expect(twin.why.weakest!.roles).toEqual(["ground", "petal"]);
    expect(twin.why.weakest!.reads).toBeLessThan(0.2);
    expect(sayRating(twin)).toContain("hard to tell apart where petal (#f9f2e6) meets ground (#f7efe2)");
  });

  it("gives differences as colorjs.io does, and the length that was measured", () => {
    for (const [name, given] of Object.entries(sound)) {
      const { roles, inks: pair, deltaE, lightness, length } = rate(name, given).why.weakest!;
      expect(pair).toEqual(roles.map((role) => (given as Record<string, string>)[role]));
      // CIELAB of D65, the white of sRGB; colorjs.io applies CIEDE2000 to what is called "lab", whatever its white.
      const [a, b] = pair.map((color) => new Color("lab", new Color(color).to("lab-d65").coords));
      expect(deltaE).toBeCloseTo(a!.deltaE(b!, "2000"), 1);
      expect(lightness).toBeCloseTo(Math.abs(a!.coords[0]! - b!.coords[0]!), 1);
      const edges = measureRoles(tile).edges;
      expect(length).toBe(edges.find((edge) => edge.roles.join() === roles.join())!.length);
    }
  });

  it("is drawn down by every pair of twins that meet, the more the longer they meet", () => {
    const edges = measureRoles(tile).edges;
    const scores = edges.map(({ roles: [below, above] }) => {
      const given = { ...sound.dawn } as Record<string, string>;
      given[above] = given[below]!.replace(/.$/, (digit) => (digit === "0" ? "1" : "0"));
      const { score, why } = rate("twins", given as ReturnType<typeof inks>);
      expect(why.weakest!.roles).toEqual([below, above]);
      return score;
    });
    for (const score of scores) expect(score).toBeLessThan(rate("dawn", sound.dawn).score);
    expect(scores[0]).toBeLessThan(scores.at(-1)!);
  });

  it("sees the one large role that sinks into the ground, however well the others stand off it", () => {
    const lying = rate("sunk", inks(chalk!, "#e9dcc6", ink!, kelp!)).why.terms.ground;
    expect(lying).toBeLessThan(0.5);
    expect(rate("off", inks(chalk!, coral!, ink!, kelp!)).why.terms.ground).toBeGreaterThan(0.8);
  });

  it("calls large strong areas loud, and a cloth without any strong ink dull", () => {
    const loud = rate("loud", inks("#ff2a00", "#ffe600", "#003bff", "#00c030")).why.terms;
    const grey = rate("grey", inks("#f4f4f4", "#222222", "#999999", "#555555")).why.terms;
    expect(loud.quiet).toBe(0);
    expect(loud.accent).toBe(1);
    expect(grey.quiet).toBe(1);
    expect(grey.accent).toBe(0);
    expect(sayRating(rate("loud", inks("#ff2a00", "#ffe600", "#003bff", "#00c030")))).toContain(
      "areas loud (0)",
    );
  });

  it("stays within its ranges whatever the inks", () => {
    const color = fc.integer({ min: 0, max: 0xffffff }).map((n) => `#${n.toString(16).padStart(6, "0")}`);
    fc.assert(
      fc.property(fc.tuple(color, color, color, color), (given) => {
        const { score, why } = rate("any", inks(...given));
        for (const value of [score / 100, ...Object.values(why.terms), why.weakest!.reads]) {
          expect(value).toBeGreaterThanOrEqual(0);
          expect(value).toBeLessThanOrEqual(1);
        }
        expect(sayRating({ score, why })).toMatch(/^[\d.]+ of 100: .*along \d+ mm$/);
      }),
      { numRuns: 100, seed: 7 },
    );
  });

  it("is said for one colorway, not for a list of them, or one that was not rated", () => {
    for (const given of [undefined, [], { name: "dawn", inks: sound.dawn }])
      expect(refusal(() => sayRating(given as never)).code).toBe("wrong-type");
  });

  it("refuses colorways that are not for the tile", () => {
    const { petal: _, ...lacking } = sound.dawn;
    expect(refusal(() => rateColorway(tile, { name: "x", inks: lacking as never })).code).toBe("missing-ink");
    expect(
      refusal(() => rateColorway(tile, { name: "x", inks: { ...sound.dawn, leef: "red" } as never })).fix,
    ).toContain('"leaf"');
    expect(refusal(() => rateColorway(tile, undefined as never)).code).toBe("wrong-type");
    expect(refusal(() => rateColorway({} as never, { name: "x", inks: sound.dawn })).code).toBe("wrong-type");
  });
});

it("two inks read the better, the farther apart they are", () => {
  const distance = fc.double({ min: 0, max: 60, noNaN: true });
  fc.assert(
    fc.property(distance, distance, distance, (a, b, other) => {
      const [less, more] = [Math.min(a, b), Math.max(a, b)];
      expect(reading(less, other)).toBeLessThanOrEqual(reading(more, other));
      expect(reading(other, less)).toBeLessThanOrEqual(reading(other, more));
    }),
    { seed: 11 },
  );
  expect(reading(0, 0)).toBe(0);
  expect(reading(100, 100)).toBe(1);
});

it("the tile of these tests has roles in a row, each on the one before", () => {
  expect(tile.recipe.roles).toEqual(rolesOf(4));
});
