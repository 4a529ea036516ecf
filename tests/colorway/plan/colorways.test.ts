import Color from "colorjs.io";
import { describe, expect, it } from "vitest";
import { colorwayFor } from "../../../src/colorway/colorway-for.ts";
import { palette } from "../../../src/colorway/palette.ts";
import { assignments } from "../../../src/colorway/plan/assign.ts";
import { colorways } from "../../../src/colorway/plan/colorways.ts";
import { inkTable } from "../../../src/colorway/plan/ink-table.ts";
import { rateColorway } from "../../../src/colorway/plan/rating.ts";
import { sightOf } from "../../../src/colorway/plan/sight.ts";
import { measureRoles } from "../../../src/tile/figures/role-figures.ts";
import { refusal } from "../../given.ts";
import { cluster, manyInks, quay, rolesOf } from "./given.ts";

const tile = cluster(5);
const water = palette({
  name: "water",
  inks: {
    foam: "#eef3ee",
    sea: "#4f9aa6",
    petrol: "#1d5566",
    buoy: "#e8643c",
    rope: "#d8b983",
    wine: "#7a2c3f",
  },
});
const nameOf = (inks: Readonly<Record<string, string>>, color: string): string | undefined =>
  Object.keys(inks).find((name) => inks[name] === color);
const lightness = (color: string): number => new Color(color).to("lab-d65").coords[0]!;

describe("planned colorways", () => {
  const planned = colorways(tile, { palettes: [quay, water], count: 10 });

  it("give every role an ink of one palette, none twice, and go where colorways go", () => {
    expect(planned).toHaveLength(10);
    for (const { name, inks, palette: from } of planned) {
      const own = Object.values(from === "quay" ? quay.inks : water.inks);
      const used = tile.recipe.roles.map((role) => (inks as Record<string, string>)[role]!);
      expect(own).toEqual(expect.arrayContaining(used));
      expect(new Set(used).size).toBe(used.length);
      expect(colorwayFor(tile, name, inks).inks).toEqual(inks);
    }
    expect(new Set(planned.map(({ name }) => name)).size).toBe(10);
    expect(new Set(planned.map((colorway) => colorway.palette))).toEqual(new Set(["quay", "water"]));
    expect(Object.isFrozen(planned[0]!.why.terms)).toBe(true);
  });

  it("are the same every time, best first, with the scores that rateColorway gives", () => {
    expect(colorways(tile, { palettes: [quay, water], count: 10 })).toEqual(planned);
    const scores = planned.map(({ score }) => score);
    expect(scores).toEqual([...scores].sort((a, b) => b - a));
    for (const { name, inks, score, why } of planned)
      expect(rateColorway(tile, { name, inks })).toEqual({ score, why });
  });

  it("are each to be seen: palettes that share inks bring no colorway twice", () => {
    const again = palette({ name: "again", inks: { ...quay.inks } });
    const hold = { ground: "chalk", petal: "coral", heart: "kelp" } as const;
    const [once, twice] = [[quay], [quay, again]].map((palettes) =>
      colorways(tile, { palettes, count: 200, hold }),
    );
    // 8 - 3 inks for the two roles that are left.
    expect(once).toHaveLength(20);
    expect(twice!.map(({ inks }) => inks)).toEqual(once!.map(({ inks }) => inks));
  });

  it("hold the best of all, however few are asked for, and the fewer the better they are", () => {
    const few = [1, 2, 3, 5, 8].map((count) => colorways(tile, { palettes: [quay, water], count }));
    for (const list of few) expect(list[0]).toEqual(planned[0]);
    const worst = few.map((list) => list.at(-1)!.score / planned[0]!.score);
    worst.forEach((part, i) => void expect(part).toBeGreaterThan([0.99, 0.94, 0.93, 0.91, 0.88][i]!));
  });

  it("are sound: nothing below 75 where there is better, even if that leaves fewer than wanted", () => {
    const loud = palette({
      name: "loud",
      inks: {
        lime: "#b4ff00",
        pink: "#ff1493",
        blue: "#2020ff",
        orange: "#ff8a00",
        red: "#ff2a00",
        milk: "#fdfdfa",
      },
    });
    const offered = colorways(tile, { palettes: [loud], count: 200 });
    expect(offered.length).toBeLessThan(200);
    for (const { score } of offered) expect(score).toBeGreaterThanOrEqual(75);
    // Where nothing is sound, the best there is.
    const pale = palette({
      name: "pale",
      inks: { a: "#f4f0ea", b: "#efe9e2", c: "#eae6e4", d: "#f0ece0", e: "#e8e4dd", f: "#fbf7f2" },
    });
    const some = colorways(tile, { palettes: [pale], count: 4, minContrast: 1 });
    expect(some).toHaveLength(4);
    expect(some[0]!.score).toBeLessThan(75);
  });

  it("leave out near twins: the pair that meets is told apart in each", () => {
    const twins = palette({ name: "twins", inks: { ...quay.inks, cream: "#f6eee0", whey: "#f5ecdf" } });
    for (const { why } of colorways(tile, { palettes: [twins], count: 20 }))
      expect(why.weakest!.reads).toBeGreaterThan(0.3);
  });
});

describe("what a plan may not break", () => {
  it("hold: roles have the ink, or one of the inks, that they are held to", () => {
    const held = colorways(tile, {
      palettes: [quay, water],
      count: 20,
      hold: { ground: ["chalk", "foam"], petal: ["coral", "sea", "buoy"] },
    });
    expect(held.length).toBeGreaterThan(5);
    for (const { inks, palette: from } of held) {
      const names = from === "quay" ? quay.inks : water.inks;
      expect(["chalk", "foam"]).toContain(nameOf(names, inks["ground"]!));
      expect(["coral", "sea", "buoy"]).toContain(nameOf(names, inks["petal"]!));
    }
    const passed = colorways(tile, { palettes: [quay, water], hold: { ground: "foam" } });
    expect(new Set(passed.map((colorway) => colorway.palette))).toEqual(new Set(["water"]));
  });

  it("value-order: what is lighter in the first colorway is lighter in all (L* by colorjs.io)", () => {
    const first = { ground: "#f7efe2", petal: "#e0705a", heart: "#f2cdb8", leaf: "#3f5f4e", stem: "#1f3340" };
    const shaded = cluster(5, first);
    const kept = colorways(shaded, {
      palettes: [quay, water],
      count: 20,
      keep: "value-order",
      minContrast: 1,
    });
    expect(kept.length).toBeGreaterThan(3);
    const roles = Object.keys(first) as (keyof typeof first)[];
    for (const { inks } of kept)
      for (const a of roles)
        for (const b of roles)
          if (lightness(first[a]) - lightness(first[b]) >= 7)
            expect(lightness(inks[a]!)).toBeGreaterThan(lightness(inks[b]!));
    const free = colorways(shaded, { palettes: [quay, water], count: 20, minContrast: 1 });
    expect(free.some(({ inks }) => lightness(inks["ground"]!) < lightness(inks["leaf"]!))).toBe(true);
  });

  it("minContrast: what lies on the ground has that contrast with it (WCAG by colorjs.io)", () => {
    const onGround = measureRoles(tile).edges.flatMap(({ roles: [below, above] }) =>
      below === "ground" ? [above] : [],
    );
    for (const minContrast of [1.15, 2, 3])
      for (const { inks } of colorways(tile, { palettes: [quay, water], count: 20, minContrast }))
        for (const role of onGround)
          expect(
            new Color((inks as Record<string, string>)[role]!).contrast(inks["ground"]!, "WCAG21"),
          ).toBeGreaterThanOrEqual(minContrast - 1e-4);
  });

  it("gives fewer where there are no more, and says so when there are none", () => {
    const five = palette({ name: "five", inks: Object.fromEntries(Object.entries(quay.inks).slice(0, 5)) });
    const few = colorways(tile, {
      palettes: [five],
      count: 200,
      hold: { ground: "chalk", petal: "coral", heart: "butter" in five.inks ? "butter" : "shell" },
    });
    expect(few.length).toBe(2);
    const none = refusal(() =>
      colorways(tile, { palettes: [quay], hold: { ground: "chalk" }, minContrast: 15 }),
    );
    expect(none.code).toBe("no-colorway");
    expect(none.what).toContain("ground on chalk; a contrast of 15");
  });
});

describe("the search", () => {
  const searchOf = (roles: number, inks: readonly string[]) => {
    const sight = sightOf(measureRoles(cluster(roles)), cluster(roles).recipe.roles);
    const table = inkTable(inks);
    const rules = { held: sight.roles.map(() => undefined), order: [], minContrast: 1 };
    return { sight, table, rules, palette: 0, inks: inks.map((_, i) => i) };
  };
  const quayInks = Object.values(quay.inks);

  it("tries all 6720 ways of giving 8 inks to 5 roles (8! / 3!)", () => {
    const all = assignments(searchOf(5, quayInks), { steps: 400_000, kept: 1 });
    expect(all).toHaveLength(6720);
    expect(new Set(all.map(({ inks }) => inks.join())).size).toBe(6720);
  });

  it("where there are too many finds what is as good as the best of all, nearly", () => {
    for (const roles of [5, 6]) {
      const search = searchOf(roles, quayInks);
      const best = (steps: number): number =>
        Math.max(...assignments(search, { steps, kept: 300 }).map(({ worth }) => worth));
      expect(best(10)).toBeGreaterThanOrEqual(0.99 * best(400_000));
    }
  });

  it("finds the one way to keep the value order of 12 roles with 12 inks, and ways among 40", () => {
    const greys = (count: number): Record<string, string> =>
      Object.fromEntries(
        Array.from({ length: count }, (_, i) => [`g${i}`, `oklch(${0.2 + (0.75 * i) / count} 0 0)`]),
      );
    const first = Object.fromEntries(
      rolesOf(12).map((role, i) => [
        role,
        `#${(((i * 5) % 12) * 20 + 16).toString(16).padStart(2, "0").repeat(3)}`,
      ]),
    );
    const shaded = cluster(12, first);
    const planOf = (count: number) =>
      colorways(shaded, {
        palettes: [palette({ name: "greys", gamut: "map", inks: greys(count) })],
        count: 5,
        keep: "value-order",
        minContrast: 1,
      });
    const [one, some] = [planOf(12), planOf(40)];
    expect(one).toHaveLength(1);
    expect(some).toHaveLength(5);
    const ranks = (inks: object): string[] =>
      Object.keys(first).sort((a, b) => {
        const of = (role: string): string => (inks as Record<string, string>)[role]!;
        return lightness(of(a)) - lightness(of(b));
      });
    for (const { inks } of [...one, ...some]) expect(ranks(inks)).toEqual(ranks(first));
  });

  it("copes with 50 inks and 12 roles", () => {
    const large = cluster(12);
    const planned = colorways(large, { palettes: [manyInks(50)], count: 12 });
    expect(planned).toHaveLength(12);
    for (const { inks } of planned) expect(new Set(Object.values(inks)).size).toBe(12);
  });
});
