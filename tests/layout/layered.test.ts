import { describe, expect, test } from "vitest";
import {
  adjusted,
  blossom,
  buildTile,
  createKit,
  defineLayout,
  definePattern,
  dot,
  halfDrop,
  layered,
  leaf,
  mirror,
  param,
  placeAt,
  planeGroup,
  type RepeatUse,
  recipeOf,
  ring,
  set,
  star,
  straight,
  stripes,
  type Tile,
  toss,
} from "../../src/index.ts";
import { useLayout } from "../../src/layout/define.ts";
import type { LayoutTools, LayoutUse, Placement } from "../../src/layout/layout.ts";
import { definitionOf } from "../../src/params/use.ts";
import { pebble, refusal, refusalOf } from "../given.ts";
import { smallestClearance } from "./toss/clearance.ts";

const inks = { ground: "#fff", ink: "#333" };
const heroes = blossom({
  size: 26,
  vary: 0.4,
  roles: { petal: "ink", marking: "ground", centre: "ink", seed: "ink" },
});
const leaves = leaf({ length: 13, vary: 0.4, roles: { blade: "ink", vein: "ground" } });
const stars = star({ size: 6, roles: { star: "ink" } });
const dots = dot({ size: 4, roles: { dot: "ink" } });
/** A ring whose hole is wide enough for dots. */
const hoop = ring({ size: 30, roles: { ring: "ink", core: "ground" } });

const size = { width: 72, height: 64 };
const repeats: readonly (readonly [string, RepeatUse])[] = [
  ["straight", straight(size)],
  ["half-drop", halfDrop(size)],
  ["mirror", mirror({ ...size, axis: "both" })],
  ["p4mm", planeGroup({ group: "p4mm", width: 160 })],
  ["p6", planeGroup({ group: "p6", width: 110 })],
];

const patternOf = (repeat: RepeatUse, layout: LayoutUse, seed = "s") =>
  definePattern({
    name: "layers",
    seed,
    repeat,
    layout: layout as LayoutUse<never>,
    colorways: { one: inks } as never,
  });
const laid = (repeat: RepeatUse, layout: LayoutUse, seed = "s"): Promise<Tile> =>
  buildTile(patternOf(repeat, layout, seed));

const of = (tile: Tile, layers: string): Placement[] =>
  tile.placements.filter(({ id }) => layers.includes(id[0]!));
const clearance = (tile: Tile, layers: string, limit: number): number =>
  smallestClearance(
    of(tile, layers),
    tile.motifs.map((motif) => motif.outline),
    tile.arrangement,
    limit,
  ).distance;

const meadow = (gaps: readonly [number, number, number] = [6, 2.8, 1.2]) =>
  layered({
    layouts: [
      toss({ gap: gaps[0], motifs: [{ motif: heroes }] }),
      toss({ gap: gaps[1], flip: true, motifs: [{ motif: leaves }, { motif: stars }] }),
      toss({ gap: gaps[2], motifs: [{ motif: dots }] }),
    ],
  });

describe("a toss keeps its gap from the motifs of the layouts before it, copies included, by jsts", () => {
  test.each(repeats)("%s", async (_, repeat) => {
    const tile = await laid(repeat, meadow());
    expect(clearance(tile, "1", 9)).toBeGreaterThanOrEqual(6 - 1e-6);
    expect(clearance(tile, "12", 2.9)).toBeGreaterThanOrEqual(2.8 - 1e-6);
    const all = clearance(tile, "123", 1.5);
    expect(all).toBeGreaterThanOrEqual(1.2 - 1e-6);
    expect(all, "fillers go in as near as they may").toBeLessThan(1.5);
    expect(of(tile, "3").length).toBeGreaterThan(3);
  });

  test("the judge would see a filler that was pushed half a millimetre nearer to its hero", async () => {
    const tile = await laid(straight(size), meadow());
    const hero = of(tile, "1")[0]!;
    const pushed = of(tile, "3").map((p) => {
      const [dx, dy] = [hero.x - p.x, hero.y - p.y];
      const far = Math.sqrt(dx * dx + dy * dy);
      return { ...p, x: p.x + Math.round((dx / far) * 500), y: p.y + Math.round((dy / far) * 500) };
    });
    expect(clearance({ ...tile, placements: [...of(tile, "1"), ...pushed] }, "13", 2)).toBeLessThan(
      1.2 - 1e-3,
    );
  });

  test("an entry's extra room is kept from what stands, too", async () => {
    const layout = layered({
      layouts: [
        placeAt({ places: [{ motif: heroes, x: 36, y: 32 }] }),
        toss({ gap: 1, motifs: [{ motif: dots, gap: 4 }] }),
      ],
    });
    const tile = await laid(straight(size), layout);
    const [hero, ...fillers] = tile.placements;
    const outlines = tile.motifs.map((motif) => motif.outline);
    const least = fillers.map(
      (filler) => smallestClearance([hero!, filler], outlines, tile.arrangement, 8).distance,
    );
    expect(Math.min(...least)).toBeGreaterThanOrEqual(5 - 1e-6);
    expect(Math.min(...least)).toBeLessThan(6);
  });

  test("a hole in what stands counts as filled", async () => {
    const layout = layered({
      layouts: [
        placeAt({ places: [{ motif: hoop, x: 36, y: 32 }] }),
        toss({ gap: 1, motifs: [{ motif: dots }] }),
      ],
    });
    const tile = await laid(straight(size), layout);
    for (const { x, y } of of(tile, "2")) {
      const [dx, dy] = [x - 36_000, y - 32_000];
      expect(Math.sqrt(dx * dx + dy * dy)).toBeGreaterThan(15_000);
    }
  });

  test("what stands may lie across the edges, and overlap itself: it is kept clear of all the same", async () => {
    const layout = layered({
      layouts: [
        placeAt({
          places: [
            { motif: heroes, x: 1, y: 2, scale: 1.4, turn: 0.1, flip: true },
            { motif: heroes, x: 12, y: 60 },
          ],
        }),
        toss({ gap: 1.5, density: "packed", motifs: [{ motif: stars }, { motif: dots }] }),
      ],
    });
    const tile = await laid(halfDrop(size), layout);
    const outlines = tile.motifs.map((motif) => motif.outline);
    for (const hero of of(tile, "1")) {
      const alone = smallestClearance([hero, ...of(tile, "2")], outlines, tile.arrangement, 3).distance;
      expect(alone).toBeGreaterThanOrEqual(1.5 - 1e-6);
    }
    expect(tile.gap, "placeAt promises nothing, so nothing is promised").toBeUndefined();
  });
});

describe("the room that an entry asks for around its motifs is kept by the layers after it, by jsts", () => {
  /** Heroes that ask for 9 mm on top of a gap of 1 mm, and leaves that ask for nothing. */
  const first = (aloof = 9, seat: "anywhere" | "centres" = "anywhere") =>
    toss({
      gap: 1,
      motifs: [
        { motif: heroes, gap: aloof, scale: 0.6, seat, ...(seat === "anywhere" ? { count: 1 } : {}) },
        { motif: leaves, ...(seat === "anywhere" ? { count: 3 } : {}) },
      ],
    });
  const fillers = (room = 0) => toss({ gap: 1, motifs: [{ motif: dots, gap: room }] });
  /** Least distance (mm) of the last layer from the heroes and from the leaves. */
  const least = (tile: Tile, last = "2:", before = "1:"): readonly number[] => {
    const outlines = tile.motifs.map((motif) => motif.outline);
    const after = tile.placements.filter(({ id }) => id.startsWith(last));
    const from = (kind: string): number => {
      const stand = tile.placements.filter(({ id }) => id.startsWith(before + kind));
      expect(stand.length * after.length).toBeGreaterThan(2);
      const pairs = stand.flatMap((one) => after.map((other) => [one, other]));
      return Math.min(
        ...pairs.map((pair) => smallestClearance(pair, outlines, tile.arrangement, 14, () => true).distance),
      );
    };
    return [from("1-"), from("2-")];
  };
  const isKept = ([hero, leaf]: readonly number[], room = 10): void => {
    expect(hero).toBeGreaterThanOrEqual(room - 1e-6);
    expect(hero).toBeLessThan(room + 1);
    expect(leaf).toBeGreaterThanOrEqual(1 - 1e-6);
    expect(leaf, "what asks for nothing gets the gap").toBeLessThan(2);
  };

  test.each(repeats.slice(1, 3))("%s", async (_, repeat) => {
    isKept(least(await laid(repeat, layered({ layouts: [first(), fillers()] }))));
  });

  test("the judge would see it if it were not", async () => {
    const [hero] = least(await laid(straight(size), layered({ layouts: [first(0), fillers()] })));
    expect(hero).toBeLessThan(2);
  });

  test("of two that ask for room, the larger counts", async () => {
    const [less] = least(await laid(straight(size), layered({ layouts: [first(9), fillers(3)] })));
    expect(less).toBeGreaterThanOrEqual(10 - 1e-6);
    expect(less).toBeLessThan(11);
    const [more] = least(await laid(straight(size), layered({ layouts: [first(2), fillers(5)] })));
    expect(more).toBeGreaterThanOrEqual(6 - 1e-6);
    expect(more).toBeLessThan(7);
  });

  test("also when it is adjusted by hand, and when motifs of it are held", async () => {
    const layout = first();
    const changes = [
      { do: "hold", id: "1-1", x: 20, y: 22, turn: 0.1 },
      { do: "flip", id: "2-1" },
      { do: "move", id: "2-2", dx: 1 },
    ] as const;
    const by = layered({ layouts: [adjusted({ layout, changes }), fillers()] });
    isKept(least(await laid(straight(size), by)));
    const around = adjusted({
      layout: layered({ layouts: [layout, fillers()] }),
      changes: [{ do: "hold", id: "1:1-1", x: 20, y: 22 }],
    });
    isKept(least(await laid(straight(size), around)));
  });

  test("also when it lies in layers within layers", async () => {
    const within = layered({ layouts: [first(), toss({ gap: 4, count: 2, motifs: [{ motif: stars }] })] });
    const tile = await laid(straight(size), layered({ layouts: [within, fillers()] }));
    isKept(least(tile, "2:", "1:1:"));
    expect(Object.keys(tile.placements[0]!), "and is no part of the tile").not.toContain("extra");
  });

  test("also when its motifs are seated", async () => {
    const layout = layered({ layouts: [first(6, "centres"), fillers()] });
    isKept(least(await laid(planeGroup({ group: "p4", width: 110 }), layout)), 7);
  });
});

describe("layers", () => {
  test("alternating stripes of two tosses take ten lines", async () => {
    const bands = stripes({ count: 3, run: "down" });
    const layout = layered({
      layouts: [
        toss({ inside: bands, edge: 1, motifs: [{ motif: leaves }] }),
        toss({ outside: bands, edge: 1, motifs: [{ motif: stars }, { motif: dots }] }),
      ],
    });
    const tile = await laid(halfDrop(size), layout);
    const pitch = 72_000 / 3;
    for (const { id, x } of tile.placements) {
      const place = (x / pitch) % 1;
      expect(place > 0.25 && place < 0.75, `${id} at ${x}`).toBe(id.startsWith("1:"));
    }
    expect(of(tile, "1").length).toBeGreaterThan(4);
    expect(of(tile, "2").length).toBeGreaterThan(20);
  });

  test("have ids of their own, chance of their own, and drawings in common", async () => {
    const whole = await laid(straight(size), meadow());
    expect(new Set(whole.placements.map(({ id }) => id)).size).toBe(whole.placements.length);
    expect(whole.placements.map(({ id }) => id)).toContain("2:1-1");
    // A change to the last layer moves nothing in those before it.
    const other = await laid(straight(size), meadow([6, 2.8, 2.5]));
    expect(of(other, "12")).toEqual(of(whole, "12"));
    expect(of(other, "3").length).toBeLessThan(of(whole, "3").length);
    const twice = toss({ gap: 12, count: 2, motifs: [{ motif: heroes }] });
    const two = await laid(straight({ width: 120, height: 90 }), layered({ layouts: [twice, twice] }));
    expect(two.motifs.length).toBe(4);
    expect(of(two, "1").map(({ x }) => x)).not.toEqual(of(two, "2").map(({ x }) => x));
  });

  test("promise the smallest gap of all", async () => {
    expect((await laid(straight(size), meadow([6, 2.8, 1.2]))).gap).toBe(1200);
    expect((await laid(straight(size), toss({ gap: 1.7, motifs: [{ motif: leaves }] }))).gap).toBe(1700);
  });

  test("may hold layers, and a recipe of them builds the same", async () => {
    const layout = layered({
      layouts: [
        set({ motifs: [heroes], columns: 1, rows: 1 }),
        layered({
          layouts: [
            toss({ gap: 4, count: 4, motifs: [{ motif: leaves }] }),
            toss({ motifs: [{ motif: dots }] }),
          ],
        }),
      ],
    });
    const pattern = patternOf(halfDrop(size), layout);
    const tile = await buildTile(pattern);
    expect(tile.placements.map(({ id }) => id)).toEqual(
      expect.arrayContaining(["1:r1c1", "2:1:1-1", "2:2:1-1"]),
    );
    expect((await createKit().build(JSON.parse(JSON.stringify(recipeOf(pattern))))).digest).toBe(tile.digest);
    expect((await buildTile(pattern)).digest).toBe(tile.digest);
  });

  test("report progress that only grows, and can be called off", async () => {
    const seen: number[] = [];
    await buildTile(patternOf(straight(size), meadow()), { onProgress: (done) => seen.push(done) });
    expect([...seen].sort((a, b) => a - b)).toEqual(seen);
    expect(seen.filter((done) => done > 0.4 && done < 0.9).length).toBeGreaterThan(2);
    const controller = new AbortController();
    const off = buildTile(patternOf(straight(size), meadow()), {
      signal: controller.signal,
      onProgress: (done) => done > 0.5 && controller.abort(new Error("enough")),
    });
    await expect(off).rejects.toThrow("enough");
  });

  test("know which motif an id shows, if the layout does", () => {
    const layout = meadow();
    const { motifOf } = definitionOf<{ motifOf: (params: unknown, id: string) => unknown } & never>(
      layout,
      "test",
    );
    for (const id of ["7:1-1", "x", "", "1", "0:1-1", "1.5:1-1"])
      expect((motifOf as (params: unknown, id: string) => unknown)(layout.params, id)).toBeUndefined();
  });

  test("hand what is held to its layout, and let the layers before it keep clear of it", async () => {
    const given: Record<string, Pick<LayoutTools, "held" | "standing">> = {};
    const piece = (name: string) =>
      defineLayout({
        name: `test/${name}`,
        about: "Notes what it gets.",
        params: {},
        place: (_, { held, standing }) => {
          given[name] = { held, standing };
          return [];
        },
      })({});
    const one = { placement: { id: "2:7", motif: 0, x: 1, y: 2, turn: 0, scale: 1, flip: false }, motif: {} };
    const { place } = layered.piece;
    const use = layered({ layouts: [piece("first"), piece("second"), piece("third")] });
    await place(
      use.params as never,
      {
        held: [one],
        standing: [],
        draw: () => [],
        step: () => Promise.resolve(),
        random: { fork: () => undefined },
      } as never,
    );
    expect(given["first"]).toEqual({ held: [], standing: [one] });
    expect(given["second"]!.held).toEqual([{ ...one, placement: { ...one.placement, id: "7" } }]);
    expect(given["second"]!.standing).toEqual([]);
    expect(given["third"]!.held).toEqual([]);
  });
});

describe("layers are refused", () => {
  test.each([
    [{}, "layered > layouts: nothing was given"],
    [{ layouts: [] }, "layered > layouts: 0 entries is outside 1 entries to 8 entries"],
    [
      { layouts: [heroes] },
      "layered > layouts[0]: an object with use, params, roles, vary, variants is not a layout",
    ],
    [{ layouts: [straight(size)] }, "is not a layout, such as toss"],
    [
      [meadow()],
      "layered: a list of 1 is not an object of options: layered({ layouts: [ … ] })\n  fix: give an",
    ],
    [meadow, "layered: a function is not an object of options\n"],
    [{ layouts: [toss({ motifs: [{ motif: dots }] })], gap: 2 }, 'there is no option "gap"'],
    [{ layouts: [JSON.parse(JSON.stringify(meadow()))] }, "was copied or parsed"],
  ])("%j", (options, message) => {
    expect(refusal(() => layered(options as never)).message).toContain(message);
  });

  test("when they lie too deep within each other", () => {
    let layout: LayoutUse = toss({ motifs: [{ motif: dots }] });
    for (let depth = 2; depth <= 4; depth++) layout = layered({ layouts: [layout] as never });
    const error = refusal(() => layered({ layouts: [layout] as never }));
    expect(error.code).toBe("nested-too-deep");
  });

  test("when there is no room for a motif, by its place among the layouts", async () => {
    const layout = layered({
      layouts: [
        toss({ gap: 3, motifs: [{ motif: leaves }] }),
        toss({ motifs: [{ motif: dots }, { motif: heroes }] }),
      ],
    });
    const error = await refusalOf(() => laid(straight(size), layout));
    expect(error).toMatchObject({
      code: "no-room",
      where: "layers > layered > layouts[1] > toss > motifs[1]",
    });
    expect(error.what).toContain('"blossom-1" finds no place between the motifs of the layouts before it');
  });

  test("when a layout of somebody's own returns what is none", async () => {
    const faulty = (placed: unknown) =>
      defineLayout({
        name: "test/faulty",
        about: "Returns what it is told.",
        params: { motif: param.motif({ about: "A motif." }) },
        place: ({ motif }, tools) => {
          tools.draw(motif);
          if (placed instanceof Error) throw placed;
          return placed as Placement[];
        },
      })({ motif: pebble({ size: 5 }) }) as LayoutUse;
    const stone = { id: "a", motif: 0, x: 0, y: 0, turn: 0, scale: 1, flip: false };
    const where = "layers > layered > layouts[0] > faulty";
    for (const [placed, code, place] of [
      [7, "bad-placement", where],
      [[{ ...stone, motif: 3 }], "bad-placement", `${where}[0]`],
      [[stone, { ...stone, x: Number.NaN }], "bad-placement", `${where}[1]`],
      [[{ ...stone, extra: -1 }], "bad-placement", `${where}[0]`],
      [[{ ...stone, extra: "wide" }], "bad-placement", `${where}[0]`],
      [[{ ...stone, extra: Number.POSITIVE_INFINITY }], "bad-placement", `${where}[0]`],
      [new Error("lost"), "piece-failed", where],
    ] as const) {
      const pattern = definePattern({
        name: "layers",
        seed: "s",
        repeat: straight(size),
        layout: layered({
          layouts: [faulty(placed), toss({ motifs: [{ motif: dots }] })] as never,
        }) as LayoutUse<never>,
        colorways: { one: { ground: "#fff", pebble: "#777", ink: "#fc3" } } as never,
      });
      expect(await refusalOf(() => buildTile(pattern))).toMatchObject({ code, where: place });
    }
  });

  test("when their recipe was tampered with", () => {
    const recipe = JSON.parse(JSON.stringify(recipeOf(patternOf(straight(size), meadow()))));
    recipe.layout.params.layouts[1].params.gap = "wide";
    expect(refusal(() => createKit().read(recipe)).message).toContain("layouts[1] > toss > gap");
    recipe.layout.params.layouts[1] = { use: "sprigwright/leaf", params: {} };
    expect(refusal(() => createKit().read(recipe)).message).toContain("is not a layout");
    expect(useLayout(layered.piece, meadow().params)).toEqual(meadow());
  });
});
