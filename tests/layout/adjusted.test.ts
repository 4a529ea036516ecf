import { beforeAll, describe, expect, it } from "vitest";
import { inspect } from "../../src/check/inspect.ts";
import type { ChangeInput } from "../../src/layout/adjusted/changes.ts";
import { adjusted } from "../../src/layout/adjusted.ts";
import { layered } from "../../src/layout/layered.ts";
import type { LayoutUse, Placement } from "../../src/layout/layout.ts";
import { placeAt } from "../../src/layout/place-at.ts";
import { set } from "../../src/layout/set.ts";
import { toss } from "../../src/layout/toss.ts";
import { definePattern } from "../../src/pattern/pattern.ts";
import { createKit } from "../../src/plugin/kit.ts";
import { definePlugin } from "../../src/plugin/plugin.ts";
import { halfDrop } from "../../src/repeat/half-drop.ts";
import { mirror } from "../../src/repeat/mirror.ts";
import type { RepeatUse } from "../../src/repeat/repeat.ts";
import { buildTile } from "../../src/tile/build.ts";
import { holdsOf } from "../../src/tile/holds.ts";
import { recipeOf } from "../../src/tile/recipe.ts";
import { scaleTile } from "../../src/tile/scale.ts";
import type { Tile } from "../../src/tile/tile.ts";
import { buoy, pebble, refusal, refusalOf } from "../given.ts";
import { inks } from "../given-patterns.ts";
import { smallestClearance } from "./toss/clearance.ts";

const kit = createKit({
  plugins: [definePlugin({ name: "harbour", version: "1.0.0", pieces: [buoy, pebble] })],
});

const motifs = [
  { motif: buoy({ size: 12, vary: 0.6 }), share: 1 },
  { motif: pebble({ size: 9 }), share: 2 },
];
const tossed = toss({ motifs, gap: 2, spread: 0 });

const patternOf = (layout: LayoutUse, seed = "s", repeat: RepeatUse = halfDrop({ width: 70, height: 60 })) =>
  definePattern({ name: "tidied", seed, repeat, layout: layout as typeof tossed, colorways: inks });
const built = (layout: LayoutUse, seed?: string, repeat?: RepeatUse): Promise<Tile> =>
  buildTile(patternOf(layout, seed, repeat));
const tidied = (changes: readonly unknown[], seed?: string): Promise<Tile> =>
  built(adjusted({ layout: tossed, changes: changes as ChangeInput[] }) as LayoutUse, seed);

const at = (tile: Tile, id: string): Placement => tile.placements.find((p) => p.id === id)!;
const others = (tile: Tile, ...ids: string[]) => tile.placements.filter(({ id }) => !ids.includes(id));
const closeOnes = (tile: Tile) => inspect(tile).findings.filter(({ rule }) => rule === "close-motifs");

let plain: Tile;
beforeAll(async () => {
  plain = await built(tossed);
});

describe("a layout adjusted by hand", () => {
  it("is the layout itself, to the byte, without changes", async () => {
    const same = await tidied([]);
    expect(same.digest).toBe(plain.digest);
    expect(same.placements).toEqual(plain.placements);
    expect(same.gap).toBe(2000);
  });

  it("moves, turns, scales and flips what is named and nothing else", async () => {
    const tile = await tidied([
      { do: "move", id: "1-1", dx: "0.3cm", dy: -1.5 },
      { do: "turn", id: "2-1", by: -0.25 },
      { do: "scale", id: "2-2", by: 1.2 },
      { do: "flip", id: "2-3" },
    ]);
    const [was, is] = ["1-1", "2-1", "2-2", "2-3"].reduce<Placement[][]>(
      ([a, b], id) => [
        [...a!, at(plain, id)],
        [...b!, at(tile, id)],
      ],
      [[], []],
    );
    expect(is).toEqual([
      { ...was![0], x: was![0]!.x + 3000, y: was![0]!.y - 1500 },
      { ...was![1], turn: expect.closeTo((was![1]!.turn + 0.75) % 1, 12) },
      { ...was![2], scale: 1.2 },
      { ...was![3], flip: true },
    ]);
    expect(others(tile, "1-1", "2-1", "2-2", "2-3")).toEqual(others(plain, "1-1", "2-1", "2-2", "2-3"));
  });

  it("adds several changes of one id up, in the order of the list", async () => {
    const tile = await tidied([
      { do: "move", id: "2-1", dx: 1 },
      { do: "scale", id: "2-1", by: 0.5 },
      { do: "move", id: "2-1", dx: 1, dy: 1 },
      { do: "scale", id: "2-1", by: 0.5 },
    ]);
    const { x, y, scale } = at(plain, "2-1");
    expect(at(tile, "2-1")).toMatchObject({ x: x + 2000, y: y + 1000, scale: scale / 4 });
  });

  it("removes without filling up, swaps in the same place, and adds", async () => {
    const tile = await tidied([
      { do: "remove", id: "2-1" },
      { do: "swap", id: "2-2", motif: buoy({ size: 6 }) },
      { do: "add", id: "moon", motif: pebble({ size: 5 }), x: 10, y: 20, turn: 0.25 },
    ]);
    expect(at(tile, "2-1")).toBeUndefined();
    const { motif: _, ...was } = at(plain, "2-2");
    expect(at(tile, "2-2")).toMatchObject(was);
    expect(tile.motifs[at(tile, "2-2").motif]!.name).toBe("buoy");
    expect(at(tile, "moon")).toMatchObject({ x: 10_000, y: 20_000, turn: 0.25, scale: 1, flip: false });
    expect(others(tile, "2-2", "moon")).toEqual(others(plain, "2-1", "2-2"));
  });

  it("takes an id that was removed for a new one, which takes changes like any other", async () => {
    const tile = await tidied([
      { do: "move", id: "2-1", dx: 9 },
      { do: "remove", id: "2-1" },
      { do: "add", id: "2-1", motif: pebble({ size: 3 }), x: 1, y: 1 },
      { do: "move", id: "2-1", dx: 2 },
    ]);
    expect(at(tile, "2-1")).toMatchObject({ x: 3000, y: 1000 });
  });

  it("never moves anything of its own accord: what a change breaks is found, at the right distance", async () => {
    expect(closeOnes(plain)).toEqual([]);
    const [one, two] = [at(plain, "1-1"), at(plain, "2-1")];
    // One motif is put beside another, ever farther: the nearest distance by jsts is what the check says.
    const outlines = plain.motifs.map(({ outline }) => outline);
    let nearest = 0;
    for (let away = 4; away < 24 && !(nearest > 0.1 && nearest < 1.9); away += 1) {
      const tile = await tidied([
        { do: "move", id: "2-1", dx: (one.x - two.x) / 1000 + away, dy: (one.y - two.y) / 1000 },
      ]);
      const apart = (id: string): number =>
        smallestClearance([at(tile, "2-1"), at(tile, id)], outlines, tile.arrangement, 4).distance;
      nearest = apart("1-1");
      if (!(nearest > 0.1 && nearest < 1.9)) continue;
      // What comes too near to several is told once, by the nearest.
      const found = closeOnes(tile).find(({ motifs: ids }) => ids!.includes("1-1") && ids!.includes("2-1"))!;
      const told = Math.min(...found.motifs!.filter((id) => id !== "2-1").map(apart));
      expect(Math.abs(Number(found.measured) - told)).toBeLessThan(0.002);
    }
    expect(nearest).toBeGreaterThan(0.1);
    expect(nearest).toBeLessThan(1.9);
  });
});

describe("what is held", () => {
  const hero = { x: 31, y: 27, turn: 0.125, scale: 1.5, flip: true } as const;
  const held = [{ do: "hold", id: "1-2", ...hero }];

  it.each(["s", "t", "u"])(
    "stands where it is told while the rest is packed around it (seed %s)",
    async (seed) => {
      const tile = await tidied(held, seed);
      expect(at(tile, "1-2")).toMatchObject({ ...hero, x: 31_000, y: 27_000 });
      expect(tile.placements.filter(({ id }) => id === "1-2")).toHaveLength(1);
      expect(closeOnes(tile)).toEqual([]);
      const outlines = tile.motifs.map(({ outline }) => outline);
      expect(
        smallestClearance(tile.placements, outlines, tile.arrangement, 3).distance,
      ).toBeGreaterThanOrEqual(2);
    },
  );

  it("counts for its entry's share, and the numbering passes it by", async () => {
    const count = 12;
    const layout = toss({ motifs, gap: 2, count, spread: 0 });
    const many = [1, 2, 5].map((n, i) => ({ do: "hold", id: `1-${n}`, x: 12 + 20 * i, y: 20 }) as const);
    const tile = await built(adjusted({ layout, changes: many }) as LayoutUse);
    const of = (entry: string) => tile.placements.filter(({ id }) => id.startsWith(entry));
    expect(tile.placements).toHaveLength(count);
    expect(of("1-")).toHaveLength(4);
    expect(of("2-")).toHaveLength(8);
    expect(new Set(tile.placements.map(({ id }) => id)).size).toBe(count);
    expect(of("1-").map(({ id }) => id)).toEqual(["1-1", "1-2", "1-5", "1-3"]);
  });

  it("keeps the shares of a free toss as well, as far as there is room", async () => {
    const two = ["1-1", "1-2"].map((id, i) => ({ do: "hold", id, x: 20 + 30 * i, y: 30 }));
    const tile = await tidied(two);
    const count = (entry: string) => tile.placements.filter(({ id }) => id.startsWith(entry)).length;
    expect(Math.abs(count("2-") - 2 * count("1-"))).toBeLessThanOrEqual(2);
  });

  it("may be all there is, or more than its share: the others fill what is left", async () => {
    const five = Array.from({ length: 5 }, (_, i) => ({
      do: "hold",
      id: `1-${i + 1}`,
      x: 7 + 14 * i,
      y: i % 2 === 0 ? 15 : 45,
    }));
    const mix = [motifs[0]!, { ...motifs[1]!, share: 9 }];
    const layout = toss({ motifs: mix, gap: 2, spread: 0 });
    const tile = await built(adjusted({ layout, changes: five as ChangeInput[] }) as LayoutUse);
    expect(tile.placements.filter(({ id }) => id.startsWith("1-"))).toHaveLength(5);
    expect(tile.placements.length).toBeGreaterThan(5);
    expect(closeOnes(tile)).toEqual([]);
  });

  it("shows the layout's own motif, in the drawing that is asked for, or another", async () => {
    const tile = await tidied([
      { do: "hold", id: "1-1", x: 12, y: 12, drawing: 3 },
      { do: "hold", id: "2-7", x: 50, y: 40, motif: buoy({ size: 7 }) },
    ]);
    expect(tile.motifs[at(tile, "1-1").motif]!.name).toBe("buoy-3");
    expect(tile.motifs[at(tile, "2-7").motif]!.name).toBe("buoy");
  });

  it("may be added: the rest keeps clear of it", async () => {
    const moon = { do: "add", id: "moon", motif: pebble({ size: 30 }), x: 35, y: 30 };
    expect(closeOnes(await tidied([moon])).length).toBeGreaterThan(0);
    const tile = await tidied([{ ...moon, held: true }]);
    expect(at(tile, "moon")).toMatchObject({ x: 35_000, y: 30_000 });
    expect(closeOnes(tile)).toEqual([]);
  });

  it("is not argued with: two that overlap stay, and are found", async () => {
    const tile = await tidied([
      { do: "hold", id: "1-1", x: 30, y: 30 },
      { do: "hold", id: "1-2", x: 34, y: 30 },
    ]);
    expect(closeOnes(tile).map(({ motifs: ids }) => ids)).toEqual([["1-1", "1-2"]]);
  });

  it("keeps its entry's own extra gap", async () => {
    const layout = toss({ motifs: [{ ...motifs[0]!, gap: 5 }, motifs[1]!], gap: 2 });
    const changes = [{ do: "hold", id: "1-1", x: 35, y: 30 }] as const;
    const tile = await built(adjusted({ layout, changes }) as LayoutUse);
    const outlines = tile.motifs.map(({ outline }) => outline);
    for (const other of others(tile, "1-1"))
      expect(
        smallestClearance([at(tile, "1-1"), other], outlines, tile.arrangement, 7).distance,
      ).toBeGreaterThanOrEqual(7 - 1e-6);
  });

  it("is refused when it stands in the way of a count", async () => {
    const changes = [1, 2, 3].map((n) => ({ do: "hold", id: `1-${n}`, x: 20 * n, y: 20 }) as const);
    const layout = toss({ motifs, count: 2 });
    expect((await refusalOf(() => built(adjusted({ layout, changes }) as LayoutUse))).message).toContain(
      "3 motifs are held, and there are to be 2 in all\n  fix: ask for at least 3, or hold fewer [count-too-small]",
    );
  });

  it("says how to hold what stands where it stands, when a hold says no place", () => {
    for (const hold of [
      { do: "hold", id: "1-1" },
      { do: "hold", id: "1-1", x: 3 },
    ]) {
      const error = refusal(() => adjusted({ layout: toss({ motifs }), changes: [hold] as never }));
      expect(error).toMatchObject({
        code: "missing-option",
        where: `adjusted > changes[0] > ${"x" in hold ? "y" : "x"}`,
      });
      expect(error.fix).toContain("let holdsOf(tile, ids) write the holds");
    }
    const add = { do: "add", id: "new", motif: pebble({ size: 5 }) };
    const { fix } = refusal(() => adjusted({ layout: toss({ motifs }), changes: [add] as never }));
    expect(fix).not.toContain("holdsOf");
  });

  it("works across mirrors, and within layers by the layer's number", async () => {
    const repeat = mirror({ width: 60, height: 60 });
    const layers = layered({
      layouts: [toss({ motifs: [motifs[0]!], count: 3 }), toss({ motifs: [motifs[1]!], gap: 1 })],
    });
    const changes = [
      { do: "hold", id: "1:1-2", x: 15, y: 30 },
      { do: "hold", id: "2:1-1", x: 40, y: 30 },
    ] as const;
    for (const seed of ["a", "b"]) {
      const tile = await built(adjusted({ layout: layers, changes }) as LayoutUse, seed, repeat);
      expect(at(tile, "1:1-2")).toMatchObject({ x: 15_000, y: 30_000 });
      expect(at(tile, "2:1-1")).toMatchObject({ x: 40_000, y: 30_000 });
      expect(closeOnes(tile)).toEqual([]);
    }
  });
});

describe("what is held in layers that list one layout twice", () => {
  it("is held in the layer of its number, and the other keeps the gap from it, by jsts", async () => {
    const one = toss({ motifs, gap: 2, count: 9, spread: 0 });
    const layout = layered({ layouts: [one, one] });
    for (const id of ["1:1-1", "2:1-1"]) {
      const tile = await built(
        adjusted({ layout, changes: [{ do: "hold", id, x: 35, y: 30 }] }) as LayoutUse,
      );
      expect(at(tile, id)).toMatchObject({ x: 35_000, y: 30_000 });
      expect(tile.placements).toHaveLength(18);
      const outlines = tile.motifs.map(({ outline }) => outline);
      expect(
        smallestClearance(tile.placements, outlines, tile.arrangement, 3).distance,
      ).toBeGreaterThanOrEqual(2);
    }
  });
});

describe("layouts that do not pack around anything", () => {
  const rows = set({ motifs: [pebble({ size: 9 }), buoy({ size: 9 })], columns: 4, rows: 3 });

  it("have what is held put in when they are done", async () => {
    const changes = [
      { do: "hold", id: "r1c1", x: 3, y: 4, scale: 0.5 },
      { do: "hold", id: "star", x: 30, y: 40, motif: buoy({ size: 5 }) },
    ] as const;
    const tile = await built(adjusted({ layout: rows, changes }) as LayoutUse);
    expect(tile.placements).toHaveLength(13);
    expect(at(tile, "r1c1")).toMatchObject({ x: 3000, y: 4000, scale: 0.5 });
    expect(at(tile, "star")).toMatchObject({ x: 30_000, y: 40_000 });
    expect(tile.gap).toBeUndefined();
  });

  it("know no other ids to hold", async () => {
    const changes = [{ do: "hold", id: "r9c1", x: 3, y: 4 }] as const;
    expect(
      (await refusalOf(() => built(adjusted({ layout: rows, changes }) as LayoutUse))).message,
    ).toContain('there is no placement "r9c1"\n  fix: did you mean "r1c1"?');
  });
});

describe("holdsOf", () => {
  it("holds placements as they are: with all of them held, any seed gives the same tile", async () => {
    const ids = plain.placements.map(({ id }) => id);
    const changes = holdsOf(plain, ids);
    const layout = toss({ motifs, gap: 2, count: ids.length });
    const again = await built(adjusted({ layout, changes }) as LayoutUse);
    expect(again.digest).toBe(plain.digest);
    // Drawings are numbered in the order in which they are first used.
    const named = (tile: typeof plain) =>
      tile.placements.map((p) => ({ ...p, motif: tile.motifs[p.motif]!.name }));
    expect(named(again)).toEqual(named(plain));
  });

  it("lets the rest change with the seed", async () => {
    const tile = await tidied(holdsOf(plain, ["1-1", "2-2"]), "another");
    // Another seed strays its drawings otherwise, but the same one stands there.
    expect(at(tile, "1-1")).toEqual({ ...at(plain, "1-1"), motif: at(tile, "1-1").motif });
    expect(tile.motifs[at(tile, "1-1").motif]!.name).toBe(plain.motifs[at(plain, "1-1").motif]!.name);
    expect(at(tile, "2-2")).toMatchObject({ x: at(plain, "2-2").x, y: at(plain, "2-2").y });
    expect(others(tile, "1-1", "2-2")).not.toEqual(others(plain, "1-1", "2-2"));
  });

  it("takes what was moved by hand over an edge back into the block", async () => {
    const moved = await tidied([{ do: "move", id: "2-1", dx: -400, dy: 333 }]);
    const [hold] = holdsOf(moved, ["2-1"]);
    expect(hold!.x).toBeGreaterThanOrEqual(0);
    expect(hold!.y).toBeLessThan(60);
    const { block } = moved.lattice;
    expect((hold!.x as number) * 1000 - at(moved, "2-1").x).toBe(
      block.width * Math.round(((hold!.x as number) * 1000 - at(moved, "2-1").x) / block.width),
    );
  });

  it("refuses ids that are not there, tiles that were scaled, and motifs that the layout does not know", async () => {
    expect(refusal(() => holdsOf(plain, ["1-999"])).message).toContain('there is no placement "1-999"');
    expect(refusal(() => holdsOf(plain, "1-1" as never)).code).toBe("wrong-type");
    expect(refusal(() => holdsOf(Promise.resolve(plain) as never, [])).code).toBe("wrong-type");
    expect(refusal(() => holdsOf(scaleTile(plain, 0.5), ["1-1"])).code).toBe("scaled-before");
    const tile = await tidied([
      { do: "swap", id: "2-2", motif: buoy({ size: 6 }) },
      { do: "add", id: "moon", motif: pebble({ size: 5 }), x: 10, y: 20 },
    ]);
    expect(refusal(() => holdsOf(tile, ["moon"])).message).toContain("fix: say held: true in that change");
    expect(refusal(() => holdsOf(tile, ["2-2"])).code).toBe("added-by-hand");
    const changes = [{ do: "swap", id: "1-1", motif: pebble({ size: 5 }) }] as const;
    const layers = await built(layered({ layouts: [adjusted({ layout: tossed, changes })] }) as LayoutUse);
    expect(refusal(() => holdsOf(layers, ["1:1-1"])).code).toBe("added-by-hand");
    expect(holdsOf(layers, ["1:1-2"])).toMatchObject([{ do: "hold", id: "1:1-2" }]);
  });
});

describe("a recipe with adjustments", () => {
  it("builds the same tile after a trip through text, and describes its changes", async () => {
    const pattern = patternOf(
      adjusted({
        layout: tossed,
        changes: [
          ...holdsOf(plain, ["1-1"]),
          { do: "remove", id: "2-3" },
          { do: "swap", id: "2-2", motif: buoy({ size: 6, roles: { flag: "pebble" } }) },
          { do: "hold", id: "2-9", x: 60, y: 50, motif: pebble({ size: 4 }) },
          { do: "add", id: "moon", motif: pebble({ size: 5 }), x: 10, y: 20, held: true },
        ],
      }) as LayoutUse,
    );
    const recipe = JSON.parse(JSON.stringify(recipeOf(pattern)));
    const tile = await buildTile(pattern);
    expect((await kit.build(recipe)).digest).toBe(tile.digest);
    expect(recipeOf(kit.read(recipe))).toEqual(recipeOf(pattern));
    const piece = kit.describe().pieces.find(({ name }) => name === "sprigwright/adjusted");
    expect(JSON.stringify(piece!.params)).toContain('{"const":"swap"}');
  });
});

describe("bad changes", () => {
  const where = "tidied > adjusted > changes";
  it.each<[string, readonly unknown[], string]>([
    ["an unknown id", [{ do: "move", id: "2-l" }], `${where}[0] > id: there is no placement "2-l"`],
    [
      "an id removed before",
      [
        { do: "remove", id: "2-1" },
        { do: "flip", id: "2-1" },
      ],
      `${where}[1] > id: changes[0] removed "2-1", so there is nothing left to flip\n  fix: leave one of the two out`,
    ],
    [
      "a hold of what was removed",
      [
        { do: "remove", id: "2-1" },
        { do: "hold", id: "2-1", x: 1, y: 1 },
      ],
      "leave one of the two out: what is held needs no removal",
    ],
    [
      "a move of what was added and held after a removal",
      [
        { do: "remove", id: "1-1" },
        { do: "add", id: "1-1", motif: pebble(), x: 9, y: 9, held: true },
        { do: "move", id: "1-1", dx: 3 },
      ],
      `${where}[2] > id: "1-1" is spoken of in changes[1] already (add), and what is held takes no other change`,
    ],
    [
      "a second add after a removal",
      [
        { do: "remove", id: "2-1" },
        { do: "add", id: "2-1", motif: pebble(), x: 1, y: 1 },
        { do: "add", id: "2-1", motif: pebble(), x: 9, y: 9 },
      ],
      `${where}[2] > id: "2-1" is spoken of in changes[1] already (add)`,
    ],
    [
      "two adds of one id",
      [
        { do: "add", id: "moon", motif: pebble(), x: 1, y: 1 },
        { do: "add", id: "moon", motif: pebble(), x: 9, y: 9 },
      ],
      '"moon" is spoken of in changes[0] already (add)',
    ],
    ["an add of an id that is taken", [{ do: "add", id: "2-1", motif: pebble(), x: 1, y: 1 }], "[id-taken]"],
    [
      "two holds of one id",
      [
        { do: "hold", id: "2-1", x: 1, y: 1 },
        { do: "hold", id: "2-1", x: 9, y: 1 },
      ],
      "[changed-twice]",
    ],
    [
      "a move of what is held",
      [
        { do: "hold", id: "2-1", x: 1, y: 1 },
        { do: "move", id: "2-1", dx: 1 },
      ],
      "what is held takes no other change",
    ],
    [
      "a hold after a move",
      [
        { do: "move", id: "2-1", dx: 1 },
        { do: "hold", id: "2-1", x: 1, y: 1 },
      ],
      'a change that says "hold" comes first for its id',
    ],
    [
      "a hold outside the repeat",
      [{ do: "hold", id: "2-1", x: 500, y: 1 }],
      `${where}[0] > x: 500 mm lies outside the block, which is 0 to 140 mm\n  fix: stand it within the block, where the same motif shows again: 80 mm is the same place [outside-repeat]`,
    ],
    ["an add outside the repeat", [{ do: "add", id: "m", motif: pebble(), x: 1, y: -1 }], "[outside-repeat]"],
    [
      "a drawing that is not there",
      [{ do: "hold", id: "2-1", x: 1, y: 1, drawing: 2 }],
      "drawing: 2 is outside 1 to 1",
    ],
    [
      "a hold of an entry that is not there",
      [{ do: "hold", id: "7-1", x: 1, y: 1 }],
      'there is no placement "7-1"',
    ],
  ])("%s is refused", async (_, changes, message) => {
    expect((await refusalOf(() => tidied(changes))).message).toContain(message);
  });

  it.each<[unknown, string]>([
    [{ do: "move", id: "2-1", dx: Number.NaN }, "adjusted > changes[0] > dx: NaN is not a length"],
    [
      { do: "move", id: "2-1", x: 3 },
      'adjusted > changes[0] > x: there is no option "x" in a move, which starts from where the motif is\n  fix: say dx and dy: how far to the right and how far down [unknown-option]',
    ],
    [{ do: "move", id: "2-1", y: 3 }, 'changes[0] > y: there is no option "y" in a move'],
    [
      { do: "turn", id: "2-1", by: 90 },
      "changes[0] > by: 90 is outside -1 to 1\n  fix: give an angle in turns from -1 to 1: 0.25 is a quarter turn [number-range]",
    ],
    [{ do: "turn", id: "2-1", angle: 0.2 }, 'there is no option "angle"\n  fix: did you mean "by"?'],
    [{ do: "shift", id: "2-1" }, 'adjusted > changes[0] > do: there is no choice "shift"'],
    [{ id: "2-1" }, "adjusted > changes[0] > do: nothing was given"],
    [{ do: "turn", id: "2-1" }, "adjusted > changes[0] > by: nothing was given"],
    [{ do: "scale", id: "2-1", by: 0 }, "by: 0 is outside 0.05 to 20"],
    [{ do: "scale", id: "2-1", by: Number.POSITIVE_INFINITY }, "by: Infinity is not a number"],
    [{ do: "remove", id: 21 }, "id: 21 is not text"],
    [{ do: "swap", id: "2-1", motif: tossed }, "is not a motif"],
    [{ do: "hold", id: "2-1", x: "9px", y: 1 }, 'x: "9px" is not a length'],
  ])("%j is refused at once", (change, message) => {
    expect(refusal(() => adjusted({ layout: tossed, changes: [change as never] })).message).toContain(
      message,
    );
  });

  it("what is no layout is refused, and a deep nest too", () => {
    expect(refusal(() => adjusted({ layout: pebble() as never, changes: [] })).message).toContain(
      "adjusted > layout: an object with use, params, roles, vary, variants is not a layout",
    );
    let nest: LayoutUse = placeAt({ places: [{ motif: pebble(), x: 1, y: 1 }] });
    expect(
      refusal(() => {
        for (let k = 0; k < 9; k++) nest = adjusted({ layout: nest, changes: [] });
      }).code,
    ).toBe("nested-too-deep");
  });
});
