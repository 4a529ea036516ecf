// Tosses that are sound, and the same tosses with a fault planted in them: the checks tell one from the other.
import { beforeAll, describe, expect, it } from "vitest";
import { inspect } from "../../src/check/inspect.ts";
import { sayFinding } from "../../src/check/wording.ts";
import { flatten } from "../../src/geometry/flatten.ts";
import { placing, transformPath } from "../../src/geometry/matrix.ts";
import type { Placement } from "../../src/layout/layout.ts";
import { packTossed } from "../../src/layout/toss/pack.ts";
import { createRandom, type Random } from "../../src/seed/random.ts";
import { finishTile } from "../../src/tile/finish.ts";
import type { Recipe } from "../../src/tile/recipe.ts";
import type { Tile } from "../../src/tile/tile.ts";
import { mix, options, tools } from "../layout/toss/fixtures.ts";
import { straight } from "../tile/figures/given.ts";

/** Block (mm): whole pixels at 150 dpi are of no interest here. */
const SIDE = 200;
const rules = [
  "open-hole",
  "gutter",
  "tracking",
  "lumpy",
  "facing-one-way",
  "kinds-in-clumps",
  "ink-to-one-side",
];
const motifs = mix().map(({ drawings }) => drawings[0]!.motif);
const kinds = motifs.map(({ name }) => name);

function tileOf(placements: readonly Placement[], direction = "tossed"): Tile {
  const layout = { use: "sprigwright/toss", params: { direction } };
  const recipe = { name: "planted", roles: ["ground", ...kinds], colorways: {}, layout } as unknown as Recipe;
  return finishTile({ motifs, placements, arrangement: straight(SIDE, SIDE), recipe });
}

const found = (tile: Tile): string[] =>
  inspect(tile)
    .findings.map(({ rule }) => rule)
    .filter((rule) => rules.includes(rule));

const seeds = ["quay-1", "quay-2", "quay-3"];
let tosses: (readonly Placement[])[];
beforeAll(async () => {
  tosses = [];
  for (const seed of seeds) tosses.push(await packTossed(options(), tools(seed, straight(SIDE, SIDE))));
}, 120_000);

/** Every point of a motif's outline (mm), brought into the block. */
function outline({ motif, x, y, turn, scale, flip }: Placement): (readonly [number, number])[] {
  const path = transformPath(motifs[motif]!.outline, placing(x, y, turn, scale, flip));
  return flatten(path, 50).flatMap((ring) =>
    Array.from(
      { length: ring.length / 2 },
      (_, i) => [wrap(ring[2 * i]! / 1000), wrap(ring[2 * i + 1]! / 1000)] as const,
    ),
  );
}
const wrap = (v: number): number => v - SIDE * Math.floor(v / SIDE);
const near = (v: number): number => Math.min(wrap(v), SIDE - wrap(v));
const without = (
  toss: readonly Placement[],
  touches: (x: number, y: number) => boolean,
): readonly Placement[] => toss.filter((place) => !outline(place).some(([x, y]) => touches(x, y)));

/** The same places, with the motifs of each kind dealt out in the given order of places. */
function sorted(toss: readonly Placement[], key: (p: Placement) => number): readonly Placement[] {
  const order = [...toss.keys()].sort((i, j) => key(toss[i]!) - key(toss[j]!) || i - j);
  const dealt = toss.map(({ motif }) => motif).sort((p, q) => p - q);
  const placements = [...toss];
  order.forEach((place, k) => {
    placements[place] = { ...toss[place]!, motif: dealt[k]! };
  });
  return placements;
}

/** Large stars change places with the large motifs nearest to the middle, each at the size of the place. */
function together(toss: readonly Placement[]): readonly Placement[] {
  const far = ({ x, y }: Placement): number => Math.hypot(x / 1000 - SIDE / 2, y / 1000 - SIDE / 2);
  const large = toss.filter(({ scale }) => scale > 0.5).sort((p, q) => far(p) - far(q));
  const star = kinds.indexOf("star");
  const count = large.filter(({ motif }) => motif === star).length;
  const coming = large.slice(count).filter(({ motif }) => motif === star);
  const going = large.slice(0, count).filter(({ motif }) => motif !== star);
  const swapped = new Map(going.map((place) => [place.id, star]));
  coming.forEach((place, k) => {
    swapped.set(place.id, going[k]!.motif);
  });
  return toss.map((place) => ({ ...place, motif: swapped.get(place.id) ?? place.motif }));
}

const planted: readonly [
  name: string,
  plant: (toss: readonly Placement[], random: Random) => readonly Placement[],
  rule: string,
][] = [
  ["a clear row of 6 mm", (toss) => without(toss, (_, y) => near(y - 90) < 3), "gutter"],
  ["a clear column of 6 mm", (toss) => without(toss, (x) => near(x - 20) < 3), "gutter"],
  ["a clear diagonal of 6 mm", (toss) => without(toss, (x, y) => near(x - y) < 3 * Math.SQRT2), "gutter"],
  [
    "a clear diagonal the other way",
    (toss) => without(toss, (x, y) => near(x + y) < 3 * Math.SQRT2),
    "gutter",
  ],
  [
    "a hole of 18 mm",
    (toss) => without(toss, (x, y) => Math.hypot(near(x - 60), near(y - 70)) < 18),
    "open-hole",
  ],
  [
    "a half thinned by 35 %",
    (toss, random) => toss.filter(({ x }) => wrap(x / 1000) > SIDE / 2 || random.next() > 0.35),
    "open-hole",
  ],
  [
    "all motifs turned one way, more or less",
    (toss, random) => toss.map((place) => ({ ...place, turn: 0.1 + 0.05 * random.next() })),
    "facing-one-way",
  ],
  ["colours sorted left to right", (toss) => sorted(toss, ({ x }) => wrap(x / 1000)), "ink-to-one-side"],
  [
    "the large ones of a kind drawn together, others put in their places",
    (toss) => together(toss),
    "kinds-in-clumps",
  ],
  [
    "kinds in clumps",
    (toss) => sorted(toss, ({ x, y }) => Math.floor(wrap(y / 1000) / 50) * 1000 + wrap(x / 1000)),
    "kinds-in-clumps",
  ],
];

describe("a toss", () => {
  it("that is sound gives no finding about its ground", () => {
    for (const toss of tosses) expect(found(tileOf(toss))).toEqual([]);
  });

  it.each(planted)("with %s is found out, every time", (_, plant, rule) => {
    tosses.forEach((toss, i) => {
      const placements = plant(toss, createRandom(`plant-${i}`));
      expect(placements).not.toEqual(toss);
      expect(found(tileOf(placements)), seeds[i]).toContain(rule);
    });
  });

  it("with half of it thinned is lumpy too", () => {
    const lumpy = tosses.filter((toss, i) => {
      const random = createRandom(`lumpy-${i}`);
      return found(
        tileOf(toss.filter(({ x }) => wrap(x / 1000) > SIDE / 2 || random.next() > 0.35)),
      ).includes("lumpy");
    });
    expect(lumpy.length).toBeGreaterThan(0);
  });

  it("may face one way when it is told to", () => {
    const upright = tosses[0]!.map((place) => ({ ...place, turn: 0 }));
    expect(found(tileOf(upright))).toEqual(["facing-one-way"]);
    expect(found(tileOf(upright, "one-way"))).toEqual([]);
    expect(found(tileOf(upright, "two-way"))).toEqual([]);
  });
});

describe("what is no toss, or not over the whole ground", () => {
  const bare = (layout: unknown): string[] => {
    const tile = tileOf(tosses[0]!.slice(0, 12));
    return found({ ...tile, recipe: { ...tile.recipe, layout } as Recipe });
  };
  const toss = { use: "sprigwright/toss", params: { direction: "tossed" } };

  it("is as uneven as its designer wants it", () => {
    expect(bare(toss)).toContain("lumpy");
    expect(bare({ use: "sprigwright/set", params: {} })).toEqual([]);
    expect(bare({ use: "orchard/windrow", params: { direction: "tossed" } })).toEqual([]);
    expect(
      bare({ use: "sprigwright/toss", params: { inside: { path: "M0 0" }, direction: "one-way" } }),
    ).toEqual([]);
    expect(bare({})).toEqual([]);
  });

  it("is judged like a toss when it is one in layers, or adjusted by hand", () => {
    expect(bare({ use: "sprigwright/adjusted", params: { layout: toss, changes: [] } })).toContain("lumpy");
    expect(bare({ use: "sprigwright/layered", params: { layouts: [toss, toss] } })).toContain("lumpy");
    expect(
      bare({ use: "sprigwright/layered", params: { layouts: [toss, { use: "sprigwright/set" }] } }),
    ).toEqual([]);
  });
});

it("the sentences say what, where and what to do", () => {
  const hole = without(tosses[0]!, (x, y) => Math.hypot(near(x - 60), near(y - 70)) < 18);
  const finding = inspect(tileOf(hole)).findings.find(({ rule }) => rule === "open-hole")!;
  expect(sayFinding(finding)).toMatch(
    /^warning: \d+(\.\d)? mm radius of the largest hole where at most \d+(\.\d)? is wanted; add a motif around \d+ mm across, \d+ mm down, or try another seed \[open-hole\]$/,
  );
  const [x, y] = finding.at!;
  expect(Math.hypot(near(x - 60), near(y - 70))).toBeLessThan(12);
  const row = without(tosses[0]!, (_, v) => near(v - 90) < 3);
  const lane = inspect(tileOf(row)).findings.find(({ rule }) => rule === "gutter")!;
  expect(sayFinding(lane)).toMatch(/of the mean ink .* the lane that runs level/);
});
