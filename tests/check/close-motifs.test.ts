import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { closeMotifs } from "../../src/check/close-motifs.ts";
import type { Finding } from "../../src/check/finding.ts";
import { inspect } from "../../src/check/inspect.ts";
import { sayFinding } from "../../src/check/wording.ts";
import type { Placement } from "../../src/layout/layout.ts";
import { toss } from "../../src/layout/toss.ts";
import { leaf, ring, sprig } from "../../src/motif/primitives/index.ts";
import { definePattern } from "../../src/pattern/pattern.ts";
import { halfDrop } from "../../src/repeat/half-drop.ts";
import { mirror } from "../../src/repeat/mirror.ts";
import { planeGroup } from "../../src/repeat/plane-group.ts";
import type { RepeatUse } from "../../src/repeat/repeat.ts";
import { straight } from "../../src/repeat/straight.ts";
import { turnover } from "../../src/repeat/turnover.ts";
import { buildTile } from "../../src/tile/build.ts";
import { scaleTile } from "../../src/tile/scale.ts";
import type { Tile } from "../../src/tile/tile.ts";
import { refusalOf } from "../given.ts";
import { stone, stones } from "../given-patterns.ts";
import { smallestClearance } from "../layout/toss/clearance.ts";

const close = (tile: Tile): readonly Finding[] => closeMotifs.look({ tile, colorways: [], dpi: 150 });

/** Pebbles (12 mm) where a test says, with a promised gap in µm. */
const promised = (placements: readonly Placement[], gap: unknown, repeat?: RepeatUse): Promise<Tile> =>
  buildTile(stones(() => ({ placements, gap }), repeat));

/** The distance of two placements by jsts (mm), copies included. */
const apart = (tile: Tile, one: Placement, two: Placement, limit = 8): number =>
  smallestClearance(
    one === two ? [one] : [one, two],
    tile.motifs.map(({ outline }) => outline),
    tile.arrangement,
    limit,
  ).distance;

const tossed = (seed: string, repeat: RepeatUse, gap = 2): Promise<Tile> =>
  buildTile(
    definePattern({
      name: "tossed",
      seed,
      repeat,
      layout: toss({
        spread: 0,
        gap,
        flip: true,
        motifs: [
          { motif: sprig({ length: 22, vary: 0.5 }), share: 1 },
          { motif: leaf({ length: 14, vary: 0.5 }), share: 2, scale: [0.6, 1] },
          { motif: ring({ size: 9 }), share: 1, gap: 1 },
        ],
      }),
      colorways: {
        plain: {
          ground: "white",
          stem: "green",
          leaf: "green",
          berry: "red",
          blade: "olive",
          vein: "gray",
          ring: "navy",
          core: "navy",
        },
      },
    }),
  );

describe("a layout's promise", () => {
  it("is carried by the tile, in µm, and scaled with it", async () => {
    const tile = await tossed("a", straight({ width: 60, height: 50 }));
    expect(tile.gap).toBe(2000);
    expect(scaleTile(tile, 0.5).gap).toBe(1000);
    expect("gap" in (await buildTile(stones([stone("a", 0, 0)])))).toBe(false);
  });

  it.each([-1, Number.NaN, "2", Number.POSITIVE_INFINITY])("may not be %j", async (gap) => {
    expect((await refusalOf(() => promised([stone("a", 0, 0)], gap))).code).toBe("bad-gap");
  });

  it.each([
    ["straight", straight({ width: 60, height: 50 })],
    ["half-drop", halfDrop({ width: 60, height: 50 })],
    ["mirror", mirror({ width: 50, height: 50, axis: "both" })],
    ["turnover", turnover({ width: 60, height: 50 })],
    ["p6mm", planeGroup({ group: "p6mm", width: 98 })],
    ["p4gm", planeGroup({ group: "p4gm", width: 80 })],
  ])("is kept by a toss in a %s repeat, to the last µm and when scaled", async (_, repeat) => {
    for (const [seed, gap] of [
      ["a", 0],
      ["b", 1.837],
    ] as const) {
      const tile = await tossed(seed, repeat, gap);
      expect(close(tile)).toEqual([]);
      expect(close(scaleTile(tile, 0.5))).toEqual([]);
    }
  });
});

describe("close motifs", () => {
  it("finds a motif that was pushed into its neighbour, how near it came, and where", async () => {
    const tile = await tossed("push", halfDrop({ width: 60, height: 50 }));
    let found = 0;
    const pushes = [...tile.placements.entries()].flatMap(([k, p]) => [
      { k, p, moved: { ...p, x: p.x + 3500 } },
      { k, p, moved: { ...p, y: p.y - 3500 } },
    ]);
    for (const { k, p, moved } of pushes) {
      const pushed = { ...tile, placements: tile.placements.map((q, i) => (i === k ? moved : q)) };
      const findings = close(pushed);
      const neighbours = tile.placements
        .filter((q) => q !== p)
        .map((q) => ({ id: q.id, distance: apart(tile, moved, q) }))
        .filter(({ distance }) => distance < 1.99);
      for (const { id, distance } of neighbours) {
        const own = findings.filter(({ motifs }) => motifs?.includes(p.id) && motifs.includes(id));
        expect(own.length, `${p.id} and ${id}`).toBeGreaterThan(0);
        // What is too near to many is told once, by the nearest of them.
        const told =
          own[0]!.motifs!.length > 2 ? Math.min(...neighbours.map((one) => one.distance)) : distance;
        // The same curves, flattened within half a µm by both.
        expect(Math.abs(Number(own[0]!.measured) - told)).toBeLessThan(0.002);
        expect(own[0]).toMatchObject({ rule: "close-motifs", severity: "warning", limit: 2, unit: "mm" });
        found++;
      }
      if (neighbours.length === 0) expect(findings).toEqual([]);
    }
    expect(found).toBeGreaterThan(5);
  });

  it("finds all pairs that are too near, and no others, wherever motifs lie", async () => {
    const repeat = mirror({ width: 70, height: 60 });
    const place = fc.record({
      x: fc.integer({ min: -9000, max: 79_000 }),
      y: fc.nat(60_000),
      flip: fc.boolean(),
    });
    const tile = await promised([stone("a", 0, 0)], 3000, repeat);
    fc.assert(
      fc.property(fc.array(place, { minLength: 2, maxLength: 7 }), (places) => {
        const placements = places.map(({ x, y, flip }, i) => stone(`s${i}`, x, y, { flip, turn: i / 9 }));
        const named = new Set(
          close({ ...tile, placements }).flatMap(({ motifs: [first, ...others] = [] }) =>
            others.flatMap((other) => [`${first} ${other}`, `${other} ${first}`]),
          ),
        );
        for (const [i, one] of placements.entries())
          for (const two of placements.slice(i + 1)) {
            const both = apart(tile, one, two);
            const alone = Math.min(apart(tile, one, one), apart(tile, two, two));
            if (both < 2.99 && both < alone) expect(named).toContain(`${one.id} ${two.id}`);
            if (both > 3.01) expect(named).not.toContain(`${one.id} ${two.id}`);
          }
      }),
      { seed: 11, numRuns: 25 },
    );
  });

  it("says so in one line, in the block's own measures", async () => {
    const tile = await promised(
      [stone("left", 59_000, 20_000), stone("right", 8000, 20_000)],
      3000,
      straight({ width: 60, height: 40 }),
    );
    const [finding, ...others] = close(tile);
    expect(others).toEqual([]);
    expect(finding).toMatchObject({ motifs: ["left", "right"], measured: 0 });
    expect(finding!.at![0]).toBeGreaterThan(2);
    expect(finding!.at![0]).toBeLessThan(6);
    expect(sayFinding(finding!)).toMatch(
      /^warning: motifs left and right: 0 mm where 3 is wanted; move "left" and "right" apart near \(\d\.\d+, \d+\.\d+\) mm, or make one of them smaller \[close-motifs\]$/,
    );
    expect(inspect(tile).findings).toContainEqual(finding);
    expect(inspect(tile, { dpi: 127 }).ok).toBe(true);
  });

  it("finds a motif that is too near its own copy, across an edge or a mirror, once", async () => {
    const across = await promised([stone("a", 9000, 9000)], 3000, straight({ width: 14, height: 40 }));
    expect(close(across).map(({ motifs }) => motifs)).toEqual([["a", "a"]]);
    expect(Number(close(across)[0]!.measured)).toBeCloseTo(
      apart(across, across.placements[0]!, across.placements[0]!),
      2,
    );
    const mirrored = await promised([stone("a", 53_000, 20_000)], 3000, mirror({ width: 60, height: 40 }));
    expect(close(mirrored).map(({ motifs }) => motifs)).toEqual([["a", "a"]]);
  });

  it("takes a motif on a mirror line for one figure with its image, but not one beside it", async () => {
    const repeat = mirror({ width: 60, height: 40 });
    expect(close(await promised([stone("a", 60_000, 20_000)], 3000, repeat))).toEqual([]);
    const beside = close(await promised([stone("a", 59_900, 20_000)], 3000, repeat));
    expect(beside.map(({ motifs, measured }) => [motifs, measured])).toEqual([[["a", "a"], 0]]);
    // What is near such a figure is near all its parts, and is said once.
    const near = await promised([stone("a", 60_000, 20_000), stone("b", 47_000, 20_000)], 3000, repeat);
    expect(close(near).map(({ motifs }) => motifs)).toEqual([["a", "b"]]);
  });

  it("takes a hole for filled, as a toss does", async () => {
    const tile = await promised(
      [stone("a", 20_000, 20_000), stone("b", 20_000, 20_000, { scale: 0.1 })],
      1000,
    );
    expect(close(tile)).toHaveLength(1);
  });

  it("tells of one that is too near to many once, with their number and the nearest, and of others beside it", async () => {
    const spots = [
      [-19.3, 0],
      [19.5, 0],
      [-9, 8],
      [8, 10],
      [-9, -10],
      [8, -10.5],
    ] as const;
    const around = spots.map(([x, y], i) => stone(`n${i}`, 60_000 + 1000 * x, 60_000 + 1000 * y));
    const far = [stone("far", 10_000, 10_000), stone("away", 23_000, 10_000), stone("off", 36_000, 10_000)];
    const repeat = straight({ width: 120, height: 120 });
    const one = stone("swapped", 60_000, 60_000, { scale: 2 });
    const tile = await promised([...far, ...around, one], 2000, repeat);
    const [finding, ...others] = close(tile);
    const distances = around.map((other) => ({ id: other.id, apart: apart(tile, one, other) }));
    distances.sort((p, q) => p.apart - q.apart);
    expect(distances.filter((other) => other.apart < 1.99)).toHaveLength(6);
    expect(Number(finding!.measured)).toBeCloseTo(distances[0]!.apart, 2);
    expect(finding!.motifs).toHaveLength(7);
    expect(finding!.motifs!.slice(0, 2)).toEqual(["swapped", distances[0]!.id]);
    const ids = distances.map(({ id }) => id);
    const [x, y] = finding!.at!;
    expect(sayFinding(finding!)).toBe(
      `warning: motifs swapped, ${ids.slice(0, 5).join(", ")} and ${ids[5]}: ${finding!.measured} mm where 2 is wanted; "swapped" is too near in 6 places, most to "${ids[0]}" near (${x}, ${y}) mm: make it smaller, or move it away [close-motifs]`,
    );
    // A row of three is two pairs, and stays so.
    expect(others.map(({ motifs }) => [...motifs!].sort())).toEqual([
      ["away", "off"],
      ["away", "far"],
    ]);
  });

  it("lists the nearest twenty, and says how many there are", async () => {
    const row = Array.from({ length: 30 }, (_, i) => stone(`s${i}`, i * 12_500 + 10 * i, 20_000));
    const findings = close(await promised(row, 3000, straight({ width: 480, height: 40 })));
    expect(findings).toHaveLength(21);
    const listed = findings.slice(0, 20).map(({ measured }) => Number(measured));
    expect(listed).toEqual([...listed].sort((a, b) => a - b));
    expect(sayFinding(findings[20]!)).toBe(
      "warning: 29 pairs of motifs nearer than 3 mm where 0 is wanted; mend the 20 nearest, which are listed, and look again [close-motifs]",
    );
  });

  it("says nothing where nothing was promised", async () => {
    expect(close(await buildTile(stones([stone("a", 0, 0), stone("b", 10, 10)])))).toEqual([]);
  });

  it("looks at ten thousand motifs within two seconds", async () => {
    const tile = await promised([stone("a", 0, 0)], 3000, straight({ width: 1600, height: 1600 }));
    const placements = Array.from({ length: 10_000 }, (_, i) =>
      stone(`s${i}`, (i % 100) * 16_000, Math.floor(i / 100) * 16_000, { turn: (i % 7) / 700 }),
    );
    const from = performance.now();
    expect(close({ ...tile, placements })).toEqual([]);
    expect(performance.now() - from).toBeLessThan(2000);
  });
});
