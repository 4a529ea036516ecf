import { describe, expect, it } from "vitest";
import { defineLayout } from "../../src/layout/define.ts";
import type { LayoutUse } from "../../src/layout/layout.ts";
import { placeAt } from "../../src/layout/place-at.ts";
import { set } from "../../src/layout/set.ts";
import { definePattern } from "../../src/pattern/pattern.ts";
import { halfDrop } from "../../src/repeat/half-drop.ts";
import { straight } from "../../src/repeat/straight.ts";
import { buildTile } from "../../src/tile/build.ts";
import type { Tile } from "../../src/tile/tile.ts";
import { buoy, pebble, refusal, refusalOf } from "../given.ts";

const laid = (
  layout: LayoutUse<"pebble" | "float" | "flag">,
  repeat = straight({ width: 60, height: 40 }),
): Promise<Tile> =>
  buildTile(
    definePattern({
      name: "laid",
      seed: "s",
      repeat,
      layout,
      roles: ["float", "flag", "pebble"],
      colorways: { plain: { ground: "white", pebble: "gray", float: "red", flag: "blue" } },
    }),
  );
const both = [pebble({ size: 6 }), buoy({ size: 6 })];

describe("placeAt", () => {
  it("places motifs where it is told, in whole micrometres, with lengths in any unit", async () => {
    const layout = placeAt({
      places: [
        { motif: both[0]!, x: "1in", y: "1.2cm", turn: -0.25, scale: 2, flip: true },
        { motif: both[1]!, x: -3, y: 41 },
      ],
    });
    expect((await laid(layout as never)).placements).toEqual([
      { id: "p1", motif: 0, x: 25_400, y: 12_000, turn: 0.75, scale: 2, flip: true },
      { id: "p2", motif: 1, x: -3000, y: 41_000, turn: 0, scale: 1, flip: false },
    ]);
  });

  it("takes a tiny negative turn for none", async () => {
    const layout = placeAt({ places: both.map((motif) => ({ motif, x: 9, y: 9, turn: -1e-18 })) });
    expect((await laid(layout as never)).placements[0]!.turn).toBe(0);
  });

  it("wraps what crosses an edge: moved by a whole block it is the same tile", async () => {
    const at = (x: number) =>
      placeAt({
        places: [
          { motif: both[0]!, x, y: 39 },
          { motif: both[1]!, x: x + 8, y: 2 },
        ],
      }) as never;
    expect((await laid(at(59))).digest).toBe((await laid(at(59 - 60))).digest);
  });

  it.each([
    [{}, "place-at > places: nothing was given"],
    [{ places: [] }, "place-at > places: 0 entries is outside 1 entries to 10000 entries"],
    [{ places: [{ x: 1, y: 1 }] }, "place-at > places[0] > motif: nothing was given"],
    [{ places: [{ motif: both[0], x: "50px", y: 1 }] }, 'place-at > places[0] > x: "50px" is not a length'],
    [
      { places: [{ motif: both[0], x: 1, y: 1, turn: 90 }] },
      "place-at > places[0] > turn: 90 is outside -1 to 1",
    ],
    [{ places: [{ motif: both[0], x: 1, y: 1, rotate: 0 }] }, 'there is no option "rotate"'],
    [
      { places: [{ motif: "leaf", x: 1, y: 1 }] },
      'place-at > places[0] > motif: "leaf" is not a motif, such as leaf({ length: 18 })',
    ],
    [{ places: [{ motif: straight({ width: 9, height: 9 }), x: 1, y: 1 }] }, "is not a motif"],
    [{ places: [{ motif: JSON.parse(JSON.stringify(both[0])), x: 1, y: 1 }] }, "was copied or parsed"],
  ])("refuses %j", (options, message) => {
    expect(refusal(() => placeAt(options as never)).message).toContain(message);
  });
});

describe("set", () => {
  it("sets motifs in the middles of even places, in turn along each row", async () => {
    const tile = await laid(set({ motifs: both as never, columns: 4, rows: 2, shift: 1 }));
    expect(tile.placements.map(({ id, motif, x, y }) => [id, motif, x, y])).toEqual([
      ["r1c1", 0, 7500, 10_000],
      ["r1c2", 1, 22_500, 10_000],
      ["r1c3", 0, 37_500, 10_000],
      ["r1c4", 1, 52_500, 10_000],
      ["r2c1", 1, 7500, 30_000],
      ["r2c2", 0, 22_500, 30_000],
      ["r2c3", 1, 37_500, 30_000],
      ["r2c4", 0, 52_500, 30_000],
    ]);
  });

  it("staggers, mirrors and turns by row", async () => {
    const layout = set({
      motifs: both as never,
      columns: 2,
      rows: 2,
      stagger: 0.5,
      flipRows: true,
      turns: [0, 0.5],
      turnShift: 1,
    });
    expect((await laid(layout as never)).placements.map(({ x, turn, flip }) => [x, turn, flip])).toEqual([
      [15_000, 0, false],
      [45_000, 0.5, false],
      [30_000, 0.5, true],
      [60_000, 0, true],
    ]);
  });

  it("works in a half-drop", async () => {
    const tile = await laid(
      set({ motifs: both as never, columns: 2, rows: 2 }),
      halfDrop({ width: 60, height: 40 }),
    );
    expect(tile.figures.motifs).toBe(8);
  });

  it("refuses a motif that is larger than its place, unless overlap is wanted", async () => {
    const motifs = [pebble({ size: 30 }), buoy({ size: 5 })] as never;
    const error = await refusalOf(() => laid(set({ motifs, columns: 4, rows: 4 })));
    expect(error.code).toBe("motif-too-large");
    expect(error.message).toMatch(
      /^laid > set > motifs > pebble: it is 3\d(\.\d+)? x \d+(\.\d+)? mm, its place only 15 x 10 mm\n {2}fix: draw it smaller, set fewer columns or rows, enlarge the repeat, or say overlap: true/,
    );
    expect((await laid(set({ motifs, columns: 4, rows: 4, overlap: true }))).placements).toHaveLength(16);
  });

  it("refuses a motif larger than the tile", async () => {
    const motifs = [pebble({ size: 200 }), buoy()] as never;
    expect((await refusalOf(() => laid(set({ motifs, columns: 1, rows: 1 })))).code).toBe("motif-too-large");
    expect(
      (
        await refusalOf(() =>
          laid(
            set({ motifs: [pebble({ size: 2000 }), buoy()] as never, columns: 1, rows: 1, overlap: true }),
          ),
        )
      ).code,
    ).toBe("motif-too-large");
  });

  it("refuses an odd number of rows to stagger, and offers the even ones beside it", async () => {
    const staggered = (rows: number) => () =>
      laid(set({ motifs: both as never, columns: 3, rows, stagger: 0.5 }));
    expect((await refusalOf(staggered(3))).message).toBe(
      "laid > set > stagger: with 3 rows the last staggered row would meet an unstaggered one at the seam\n" +
        "  fix: give an even number of rows: 2 or 4 [odd-rows]",
    );
    expect((await refusalOf(staggered(1))).fix).toBe("give an even number of rows: 2");
    await staggered(4)();
  });

  it.each([
    [{ motifs: both, rows: 2 }, "set > columns: nothing was given"],
    [{ motifs: both, columns: 0, rows: 2 }, "set > columns: 0 is outside 1 to 500"],
    [{ motifs: both, columns: 2, rows: 1.5 }, "set > rows: 1.5 is not a whole number from 1 to 500"],
    [{ motifs: [], columns: 2, rows: 2 }, "set > motifs: 0 entries is outside"],
    [{ motifs: both, columns: 2, rows: 2, collumns: 2 }, 'did you mean "columns"?'],
    [null, "set: null is not an object of options"],
  ])("refuses %j", (options, message) => {
    expect(refusal(() => set(options as never)).message).toContain(message);
  });
});

describe("a layout of one's own", () => {
  it("gets chance, exact mathematics, the lattice and the drawings, and nothing else", async () => {
    let given: string[] = [];
    const piece = defineLayout({
      name: "test/curious",
      about: "Looks at what it gets.",
      params: {},
      place: (_, tools) => {
        given = Object.keys(tools).sort();
        const [drawn] = tools.draw(both[0]!);
        expect(tools.draw(both[0]!)[0]).toBe(drawn);
        expect(tools.arrangement.unit).toEqual({ width: 60_000, height: 40_000 });
        tools.draw(both[1]!);
        return [{ id: "only", motif: drawn!.index, x: 0, y: 0, turn: 0, scale: 1, flip: false }];
      },
    });
    const pattern = definePattern({
      name: "curious",
      seed: "s",
      repeat: straight({ width: 60, height: 40 }),
      layout: piece({}),
      colorways: { plain: { ground: "white" } },
    });
    await expect(buildTile(pattern)).rejects.toThrow('there is no role "pebble"');
    expect(given).toEqual(["arrangement", "draw", "held", "math", "random", "standing", "step"]);
  });
});
