import { expect, test } from "vitest";
import { areaOf } from "../../../src/geometry/path.ts";
import { packTossed } from "../../../src/layout/toss/pack.ts";
import { smallestClearance } from "./clearance.ts";
import { disc, entriesOf, mix, options, repeats, star, tools } from "./fixtures.ts";

const arrangement = repeats.straight(110, 100);
const smaller = repeats.straight(76, 66);
const entries = mix([1 / 4, 0.8]);

test.each([
  { sizes: "all alike", scale: () => [0.4, 0.4], shares: [1, 1, 1, 1, 1] },
  { sizes: "in wide ranges", scale: () => [0.25, 0.8], shares: [1, 2, 3, 1, 1] },
  {
    sizes: "from large and rare to small and frequent",
    scale: (k: number) => [0.8 - 0.15 * k, 0.8 - 0.15 * k],
    shares: [1, 1, 2, 4, 6],
  },
  {
    sizes: "from small and rare to large and frequent",
    scale: (k: number) => [0.2 + 0.1 * k, 0.2 + 0.1 * k],
    shares: [1, 1, 2, 3, 4],
  },
])("shares hold when the sizes are $sizes: nobody is a whole motif over", async ({ scale, shares }) => {
  const list = mix().map((entry, k) => ({
    ...entry,
    share: shares[k]!,
    scale: scale(k) as [number, number],
  }));
  const total = shares.reduce((a, b) => a + b, 0);
  for (const density of ["even", "packed"] as const) {
    const placements = await packTossed(options({ entries: list, density }), tools("shares", smaller));
    expect(placements.length).toBeGreaterThan(8);
    shares.forEach((share, k) => {
      const own = placements.filter((p) => p.motif === k).length;
      expect(own - (placements.length * share) / total, `entry ${k}, ${density}`).toBeLessThan(1);
    });
  }
});

test("packed is clearly fuller than even", async () => {
  const small = mix([0.4, 0.4]);
  const cover = async (density: "even" | "packed"): Promise<number> => {
    let area = 0;
    for (const seed of ["full", "fuller"]) {
      const placements = await packTossed(
        options({ entries: small, density }),
        tools(seed, repeats.straight(90, 80)),
      );
      for (const { motif, scale } of placements)
        area += areaOf(small[motif]!.drawings[0]!.motif.outline) * scale * scale;
    }
    return area;
  };
  expect(await cover("packed")).toBeGreaterThan(1.03 * (await cover("even")));
});

test("a count is met exactly, and the fewer they are the wider they stand", async () => {
  const list = mix([0.4, 0.4]);
  const outlines = list.map((entry) => entry.drawings[0]!.motif.outline);
  let before = Infinity;
  for (const count of [9, 23]) {
    const placements = await packTossed(options({ entries: list, count }), tools("count", arrangement));
    expect(placements).toHaveLength(count);
    const gap = smallestClearance(placements, outlines, arrangement, 35).distance;
    expect(gap).toBeLessThan(before);
    before = gap;
  }
  expect(before).toBeGreaterThan(3);
});

test("a number that needs more ground than there is is refused at once", async () => {
  const many = packTossed(options({ entries, count: 20_000 }), tools("hopeless", smaller));
  const [, fit] = /about (\d+) do/.exec(await many.then(String, (error: Error) => error.message)) ?? [];
  expect(Number(fit)).toBeGreaterThan(10);
});

test("the count that a refusal names does fit", async () => {
  const list = entriesOf(disc(10));
  const refused = packTossed(options({ entries: list, count: 200 }), tools("crowd", arrangement));
  const message = await refused.catch((error: Error) => error.message);
  const fit = Number(/at most (\d+)/.exec(String(message))![1]);
  expect(fit).toBeGreaterThan(10);
  expect(await packTossed(options({ entries: list, count: fit }), tools("fit", arrangement))).toHaveLength(
    fit,
  );
});

test("the size that a refusal names does fit, and hardly more would", async () => {
  const refused = packTossed(options({ entries: entriesOf(disc(70)) }), tools("large", arrangement));
  const message = await refused.catch((error: Error) => error.message);
  const fits = Number(/at most about ([\d.]+) x/.exec(String(message))![1]);
  expect(fits).toBeGreaterThan(96);
  expect(fits).toBeLessThan(98);
  const just = await packTossed(options({ entries: entriesOf(disc(fits / 2)) }), tools("just", arrangement));
  expect(just).toHaveLength(1);
});

test("a motif that fits at its smallest scale only is placed at that", async () => {
  const list = [{ ...entriesOf(disc(70))[0]!, scale: [0.5, 1] as const }];
  const [only, ...others] = await packTossed(options({ entries: list }), tools("least", arrangement));
  expect(others).toEqual([]);
  expect(only!.scale).toBeLessThan(0.7);
});

test("between mirror lines a motif may be as large as the unit, and no larger", async () => {
  const mirror = repeats.mirror(60, 60);
  expect(await packTossed(options({ entries: entriesOf(disc(27)) }), tools("m", mirror))).toHaveLength(1);
  const refused = packTossed(options({ entries: entriesOf(disc(30)) }), tools("m", mirror));
  await expect(refused).rejects.toMatchObject({ code: "motif-too-large" });
});

test("a kind that is alone is not kept from itself", async () => {
  const one = entriesOf(star()).map((entry) => ({ ...entry, scale: [0.4, 0.4] as const }));
  const kept = await packTossed(options({ entries: one, spread: 1 }), tools("alone", arrangement));
  const free = await packTossed(options({ entries: one, spread: 0 }), tools("alone", arrangement));
  expect(kept).toEqual(free);
});

test("nothing to scatter gives nothing", async () => {
  expect(await packTossed(options({ entries: [] }), tools("none", arrangement))).toEqual([]);
});

test("work that is called off half-way stops there", async () => {
  let steps = 0;
  const step = async (): Promise<void> => {
    if (++steps === 5) throw new Error("called off");
  };
  const watched = { ...tools("off", arrangement), step };
  await expect(packTossed(options({ entries, density: "packed" }), watched)).rejects.toThrow("called off");
  expect(steps).toBe(5);
});
