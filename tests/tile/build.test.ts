import { createHash } from "node:crypto";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { areaOf } from "../../src/geometry/path.ts";
import { defineLayout } from "../../src/layout/define.ts";
import { placeAt } from "../../src/layout/place-at.ts";
import { definePattern } from "../../src/pattern/pattern.ts";
import { defineRepeat } from "../../src/repeat/define.ts";
import { halfBrick } from "../../src/repeat/half-brick.ts";
import { halfDrop } from "../../src/repeat/half-drop.ts";
import { mirror } from "../../src/repeat/mirror.ts";
import { straight } from "../../src/repeat/straight.ts";
import { buildTile } from "../../src/tile/build.ts";
import { recipeOf } from "../../src/tile/recipe.ts";
import type { Tile } from "../../src/tile/tile.ts";
import { buoy, pebble, refusalOf } from "../given.ts";
import { shore, stone, stones } from "../given-patterns.ts";

const tileOf = (placed: unknown, repeat = halfDrop({ width: 60, height: 40 })): Promise<Tile> =>
  buildTile(stones(placed, repeat));

describe("a tile", () => {
  it("has one layer for each role, in the pattern's order, and counts its motifs", async () => {
    const tile = await buildTile(shore);
    expect(tile.layers.map(({ role }) => role)).toEqual(["float", "flag", "pebble"]);
    expect(tile.block).toEqual({ width: 120_000, height: 40_000 });
    expect(tile.figures.motifs).toBe(6);
    expect(tile.placements.map(({ id }) => id)).toEqual(["p1", "p2", "p3"]);
    for (const { role, path } of tile.layers)
      expect(tile.figures.coverage[role]).toBeCloseTo(areaOf(path) / (120_000 * 40_000), 6);
  });

  it("is frozen through and through, save for the typed arrays, which cannot be", async () => {
    const tile = await buildTile(shore);
    const visit = (value: unknown, at: string): void => {
      if (typeof value !== "object" || value === null || ArrayBuffer.isView(value)) return;
      if (at !== "" && !/path|outline/.test(at) && !Object.isFrozen(value))
        throw new Error(`${at} is not frozen`);
      for (const [key, entry] of Object.entries(value)) visit(entry, `${at}.${key}`);
    };
    expect(Object.isFrozen(tile)).toBe(true);
    visit(tile, "tile");
  });

  it("is the same from the same pattern, and another from another seed where chance is at work", async () => {
    const [one, two] = await Promise.all([buildTile(shore), buildTile(shore)]);
    expect(two.digest).toBe(one.digest);
    expect(two.layers).toEqual(one.layers);
    expect((await buildTile({ ...shore, seed: "harbour-2" })).digest).not.toBe(one.digest);
  });

  it("has for its digest the SHA-256 of the form that is documented, taken here by node:crypto", async () => {
    const tile = await buildTile(shore);
    const words = [1, tile.block.width, tile.block.height, tile.layers.length];
    for (const { role, path } of tile.layers)
      words.push(
        ...[role.length, path.contours.length, path.points.length],
        ...[...role].map((letter) => letter.codePointAt(0)!),
        ...path.contours,
        ...path.points,
      );
    const bytes = Buffer.alloc(words.length * 4);
    for (const [i, word] of words.entries()) bytes.writeInt32LE(word, i * 4);
    expect(tile.digest).toBe(createHash("sha256").update(bytes).digest("hex"));
  });

  it("does not depend on the order in which motifs were placed", async () => {
    const places = [
      stone("a", 1000, 2000),
      stone("b", 30_000, 9000, { turn: 0.3 }),
      stone("c", 5000, 39_000),
    ];
    const [one, two] = [await tileOf(places), await tileOf([...places].reverse())];
    expect(two.digest).toBe(one.digest);
  });

  it("moves by whole lattice vectors into itself", async () => {
    const place = fc.record({
      x: fc.integer({ min: -90_000, max: 90_000 }),
      y: fc.integer({ min: -90_000, max: 90_000 }),
      turn: fc.double({ min: 0, max: 0.999, noNaN: true }),
      scale: fc.double({ min: 0.3, max: 3, noNaN: true }),
      flip: fc.boolean(),
    });
    await fc.assert(
      fc.asyncProperty(
        fc.array(place, { minLength: 1, maxLength: 5 }),
        fc.integer({ min: -500, max: 500 }),
        fc.integer({ min: -500, max: 500 }),
        async (places, i, j) => {
          for (const repeat of [halfDrop({ width: 60, height: 40 }), halfBrick({ width: 60, height: 40 })]) {
            const at = places.map((place, k) => stone(`${k}`, place.x, place.y, place));
            const { a, b } = (await tileOf(at, repeat)).lattice;
            const moved = at.map((p) => ({
              ...p,
              x: p.x + i * a[0] + j * b[0],
              y: p.y + i * a[1] + j * b[1],
            }));
            expect((await tileOf(moved, repeat)).digest).toBe((await tileOf(at, repeat)).digest);
          }
        },
      ),
      { seed: 18, numRuns: 15 },
    );
  });

  it("a half-drop is the same as its motifs set twice by hand in a straight block twice as wide", async () => {
    const at = [
      stone("a", 3000, 1000, { turn: 0.2 }),
      stone("b", 58_000, 37_000),
      stone("c", 31_000, 20_000, { flip: true }),
    ];
    const twice = [...at, ...at.map((p) => ({ ...p, id: `${p.id}2`, x: p.x + 60_000, y: p.y + 20_000 }))];
    const [drop, block] = [await tileOf(at), await tileOf(twice, straight({ width: 120, height: 40 }))];
    expect(drop.layers).toEqual(block.layers);
    expect(drop.digest).toBe(block.digest);
  });

  it("a half-brick is the same as its motifs set twice by hand in a straight block twice as high", async () => {
    const at = [stone("a", 3000, 1000, { turn: 0.2 }), stone("b", 58_000, 37_000)];
    const twice = [...at, ...at.map((p) => ({ ...p, id: `${p.id}2`, x: p.x + 30_000, y: p.y + 40_000 }))];
    const brick = await tileOf(at, halfBrick({ width: 60, height: 40 }));
    expect(brick.layers).toEqual((await tileOf(twice, straight({ width: 60, height: 80 }))).layers);
  });

  it("a half-brick is a half-drop on its side", async () => {
    const at = [stone("a", 3000, 1000, { turn: 0.25 }), stone("b", 39_000, 57_000, { turn: 0.5 })];
    const drop = await tileOf(at.map((p) => ({ ...p, x: -p.y, y: p.x, turn: (p.turn + 0.25) % 1 })));
    const brick = await tileOf(at, halfBrick({ width: 40, height: 60 }));
    // A quarter turn by hand: (x, y) goes to (-y, x).
    const turned = await buildTile({
      ...stones(
        [0, 1].flatMap((k) =>
          at.map((p) =>
            stone(`${p.id}${k}`, -p.y - k * 60_000, p.x + k * 20_000, { turn: (p.turn + 0.25) % 1 }),
          ),
        ),
        straight({ width: 120, height: 40 }),
      ),
    });
    expect(drop.digest).toBe(turned.digest);
    expect(areaOf(brick.layers[0]!.path)).toBe(areaOf(drop.layers[0]!.path));
  });

  it("a mirror repeat is the same as the mirror images set by hand", async () => {
    const at = [stone("a", 13_000, 11_000), stone("b", 58_000, 37_000)];
    const images = at.map((p) => ({ ...p, id: `${p.id}2`, x: 120_000 - p.x, flip: true }));
    const mirrored = await tileOf(at, mirror({ width: 60, height: 40 }));
    const byHand = await tileOf([...at, ...images], straight({ width: 120, height: 40 }));
    // Halves of µm round up, so a mirrored drawing may differ by one from the drawing of a mirrored motif.
    const [one, two] = [mirrored, byHand].map((tile) => tile.layers[0]!.path.points);
    expect(one!.length).toBe(two!.length);
    const sorted = (points: Int32Array): Int32Array => points.slice().sort();
    sorted(one!).forEach((v, i) => {
      if (Math.abs(v - sorted(two!)[i]!) > 2) throw new Error(`${v} against ${sorted(two!)[i]}`);
    });
  });

  it("keeps two motifs apart that share a name but not a definition", async () => {
    const other = { ...pebble.piece, draw: () => ({ pebble: buoyBox() }) };
    const { useMotif } = await import("../../src/motif/define.ts");
    const pattern = definePattern({
      name: "twins",
      seed: "s",
      repeat: straight({ width: 60, height: 40 }),
      layout: placeAt({
        places: [
          { motif: pebble(), x: 10, y: 10 },
          { motif: useMotif(other, {}) as ReturnType<typeof pebble>, x: 40, y: 20 },
        ],
      }),
      colorways: { plain: { ground: "white", pebble: "black" } },
    });
    const tile = await buildTile(pattern);
    expect(tile.motifs).toHaveLength(2);
    expect(tile.motifs[0]!.outline).not.toEqual(tile.motifs[1]!.outline);
  });

  it("writes its recipe as plain JSON", async () => {
    const tile = await buildTile(shore);
    expect(tile.recipe).toEqual(recipeOf(shore));
    expect(JSON.parse(JSON.stringify(tile.recipe))).toEqual(tile.recipe);
    expect(tile.recipe.colorways["dawn"]).toEqual(shore.colorways.dawn.inks);
  });
});

const buoyBox = () => ({
  points: Int32Array.of(0, 0, 0, 0, 9000, 0, 9000, 0, 9000, 0, 5000, 5000, 5000, 5000, 5000, 5000, 0, 0),
  contours: [3],
});

describe("a layout that returns nonsense is refused, and the entry named", () => {
  it.each<[string, unknown, string]>([
    ["nothing", undefined, "stones > told: it returned undefined where a list was wanted"],
    ["no motif", [], "stones > told: it placed nothing"],
    ["a hole", [null], "stones > told[0]: it is null"],
    ["no id", [stone("", 0, 0)], 'stones > told[0]: its id is ""'],
    ["twins", [stone("a", 0, 0), stone("a", 9, 9)], 'stones > told[1]: its id "a" was used before'],
    ["an unknown motif", [stone("a", 0, 0, { motif: 1 })], "stones > told[0]: its motif is 1"],
    ["NaN", [stone("a", Number.NaN, 0)], "stones > told[0]: its x is NaN"],
    ["half a µm", [stone("a", 0, 0.5)], "stones > told[0]: its y is 0.5"],
    ["a place beyond 100 m", [stone("a", 2e8, 0)], "stones > told[0]: its x is 200000000"],
    ["a turn of 1", [stone("a", 0, 0, { turn: 1 })], "stones > told[0]: its turn is 1, not from 0 up to 1"],
    ["a turn as text", [stone("a", 0, 0, { turn: "0.5" as never })], 'its turn is "0.5"'],
    ["a scale of 0", [stone("a", 0, 0, { scale: 0 })], "its scale is 0, not from 0.001 to 1000"],
    ["a scale as text", [stone("a", 0, 0, { scale: "1" as never })], 'its scale is "1"'],
    ["flip as number", [stone("a", 0, 0, { flip: 1 as never })], "its flip is 1"],
  ])("%s", async (_, placed, message) => {
    const error = await refusalOf(() => tileOf(placed));
    expect(error.message).toContain(message);
    expect(error.code).toBe("bad-placement");
    expect(error.fix).toBe("return a list of { id, motif, x, y, turn, scale, flip }, x and y in whole µm");
  });

  it("too many", async () => {
    const error = await refusalOf(() =>
      tileOf(Array.from({ length: 100_001 }, (_, i) => stone(`${i}`, 0, 0))),
    );
    expect(error.what).toBe("it placed 100001, more than 100000");
  });

  it("a motif far larger than the block", async () => {
    const error = await refusalOf(() => tileOf([stone("a", 0, 0, { scale: 100 })]));
    expect(error.code).toBe("motif-too-large");
    expect(error.message).toMatch(
      /^stones > a > pebble: it is 1\d\d\d(\.\d+)? x \d+(\.\d+)? mm there, far larger than the block of 120 x 40 mm\n {2}fix: draw it smaller, scale it less, or enlarge the repeat/,
    );
  });

  it("one that throws is named, with the cause", async () => {
    const cause = new RangeError("no room");
    const error = await refusalOf(() =>
      tileOf(() => {
        throw cause;
      }),
    );
    expect(error).toMatchObject({ code: "piece-failed", where: "stones > told", cause });
    expect(error.what).toBe("the piece threw: no room");
  });

  it("one that never ends runs out of steps", async () => {
    const layout = defineLayout({
      name: "test/endless",
      about: "Never ends.",
      params: {},
      place: async (_, tools) => {
        for (;;) await tools.step(0);
      },
    });
    const timers = globalThis.setTimeout;
    try {
      // Without timers, as in an engine that has none, each step goes straight on.
      (globalThis as { setTimeout?: unknown }).setTimeout = undefined;
      const endless = { ...stones([stone("a", 0, 0)]), layout: layout({}) };
      expect((await refusalOf(() => buildTile(endless))).message).toContain(
        "layout: it went past 1000000 steps without an end",
      );
    } finally {
      globalThis.setTimeout = timers;
    }
  });
});

describe("a repeat or a motif that is not sound", () => {
  it("is named when it throws or returns nonsense", async () => {
    const broken = (arrange: () => never) =>
      defineRepeat({ name: "test/broken", about: "Broken.", params: {}, arrange })({});
    const thrown = await refusalOf(() =>
      tileOf(
        [stone("a", 0, 0)],
        broken(() => {
          throw new TypeError("no side");
        }),
      ),
    );
    expect(thrown).toMatchObject({ code: "piece-failed", where: "stones > broken" });
    const none = await refusalOf(() =>
      tileOf(
        [stone("a", 0, 0)],
        broken(() => ({}) as never),
      ),
    );
    expect(none).toMatchObject({ code: "bad-arrangement", where: "stones > broken" });
  });

  it("an odd half-drop is named with its pattern", async () => {
    const error = await refusalOf(() => tileOf([stone("a", 0, 0)], halfDrop({ width: 60, height: 40.001 })));
    expect(error.where).toBe("stones > half-drop > height");
  });

  it("a motif that draws a role that it did not announce", async () => {
    const { defineMotif } = await import("../../src/motif/define.ts");
    const shy = defineMotif({
      name: "test/shy",
      about: "Names its parts itself.",
      params: {},
      parts: "drawn" as unknown as readonly string[],
      draw: () => ({ surprise: buoyBox() }),
    });
    const layout = placeAt({ places: [{ motif: shy(), x: 1, y: 1 }] as never });
    const pattern = definePattern({
      name: "shy",
      seed: "s",
      repeat: straight({ width: 60, height: 40 }),
      layout,
      colorways: { plain: { ground: "white" } as never },
    });
    const error = await refusalOf(() => buildTile(pattern));
    expect(error.message).toContain('shy > shy: there is no role "surprise"');
  });

  it("NaN in a motif of one's own is named with pattern and motif", async () => {
    const { defineMotif } = await import("../../src/motif/define.ts");
    const { pen } = await import("../../src/geometry/pen.ts");
    const nan = defineMotif({
      name: "test/nan",
      about: "Divides by nothing.",
      params: {},
      parts: ["a"],
      draw: () => ({
        a: pen()
          .moveTo(0, 0)
          .lineTo(0 / 0, 1)
          .path(),
      }),
    });
    const pattern = definePattern({
      name: "nan",
      seed: "s",
      repeat: straight({ width: 60, height: 40 }),
      layout: placeAt({ places: [{ motif: nan(), x: 1, y: 1 }] }),
      colorways: { plain: { ground: "white", a: "black" } },
    });
    const error = await refusalOf(() => buildTile(pattern));
    expect(error.message).toBe(
      "nan > nan > pen: a coordinate is NaN, not a number of mm from -100000 to 100000\n" +
        "  fix: return closed paths with finite coordinates in mm, one entry for each part [bad-shape]",
    );
  });

  it("a copied pattern is sent to a kit", async () => {
    const copy = JSON.parse(JSON.stringify(shore)) as typeof shore;
    expect((await refusalOf(() => buildTile(copy))).code).toBe("unbound-piece");
  });
});

describe("watching", () => {
  const slow = defineLayout({
    name: "test/slow",
    about: "Takes its time.",
    params: {},
    place: async (_, tools) => {
      tools.draw(buoy());
      for (const done of [0.2, 0.1, Number.NaN, 0.7, 7, -1, ...Array.from({ length: 30 }, () => 0.9)])
        await tools.step(done);
      return [stone("a", 0, 0)];
    },
  });
  const pattern = { ...shore, layout: slow({}) };

  it("is told of progress from 0 to 1, never backwards, whatever the layout says", async () => {
    const told: number[] = [];
    await buildTile(pattern, { onProgress: (done) => told.push(done) });
    expect(told[0]).toBe(0);
    expect(told.at(-1)).toBe(1);
    expect(told.length).toBeGreaterThan(10);
    expect(told.every((done, i) => done >= (told[i - 1] ?? 0) && done <= 1)).toBe(true);
  });

  it("calls off before the start", async () => {
    await expect(buildTile(pattern, { signal: AbortSignal.abort() })).rejects.toMatchObject({
      name: "AbortError",
    });
  });

  it.each([new Error("changed my mind"), "enough", undefined])(
    "calls off on the way, with the reason %s",
    async (reason) => {
      const control = new AbortController();
      let caught: unknown;
      try {
        await buildTile(pattern, {
          signal: control.signal,
          onProgress: (done) => done > 0.1 && control.abort(reason),
        });
      } catch (error) {
        caught = error;
      }
      expect(caught).toBe(control.signal.reason);
    },
  );
});
