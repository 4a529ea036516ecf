import { describe, expect, test } from "vitest";
import { closeHollows } from "../../../src/geometry/close-hollows.ts";
import { flatten, type Ring } from "../../../src/geometry/flatten.ts";
import { placing, transformPath } from "../../../src/geometry/matrix.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { pen } from "../../../src/geometry/pen.ts";
import { enclosingCircle } from "../../../src/geometry/reach.ts";
import {
  adjusted,
  border,
  buildTile,
  definePattern,
  type LayoutUse,
  layered,
  leaf,
  type RepeatUse,
  star as starMotif,
  straight,
  type Tile,
  toss,
} from "../../../src/index.ts";
import { packTossed } from "../../../src/layout/toss/pack.ts";
import { definitionOf } from "../../../src/params/use.ts";
import type { RepeatPiece } from "../../../src/repeat/repeat.ts";
import { rectangle } from "../../given.ts";
import { every } from "../../repeat/every.ts";
import { copiesOf, lieOf } from "./areas.ts";
import { smallestClearance } from "./clearance.ts";
import { crescent, entriesOf, mix, options, repeats, star, tools } from "./fixtures.ts";

const scaled = (path: Path, by: number): Path => transformPath(path, placing(0, 0, 0, by));
const polygon = (ring: Ring): Path => {
  const p = pen().moveTo(ring[0]! / 1000, ring[1]! / 1000);
  for (let k = 2; k < ring.length; k += 2) p.lineTo(ring[k]! / 1000, ring[k + 1]! / 1000);
  return p.path();
};

describe("hollows", () => {
  const [moon, little] = [crescent(), scaled(star(), 0.14)];
  const [rings] = [flatten(moon, 5)];
  const closed = polygon(closeHollows(rings, enclosingCircle(rings[0]!).r)[0]!);
  const entries = entriesOf(moon, little).map((entry, k) => ({ ...entry, share: k === 0 ? 1 : 6 }));
  const arrangement = repeats.straight(50, 48);
  const toClosed = async (seed: string, hollows: number, given: object): Promise<number> => {
    const placements = await packTossed(
      options({ entries, gap: 1, spread: 0, hollows, ...given }),
      tools(seed, arrangement),
    );
    expect(placements.some(({ motif }) => motif === 0)).toBe(true);
    return smallestClearance(placements, [closed, little], arrangement, 2).distance;
  };

  test.each([{ density: "even" }, { density: "packed" }, { count: 14 }])(
    "closed, keep stars out of a moon's bay: %j",
    async (given) => {
      // Arcs that fill a hollow may stray from round by 20 µm, twice.
      for (const seed of ["a"]) expect(await toClosed(seed, 1, given)).toBeGreaterThan(1 - 0.05);
    },
  );

  test("open, let them in", async () => {
    const found = await Promise.all(["a", "b"].map((seed) => toClosed(seed, 0, { density: "even" })));
    expect(Math.min(...found)).toBe(0);
  });
});

const motifs = [
  { motif: leaf({ length: 12, roles: { vein: "ground" } }) },
  { motif: starMotif({ size: 7 }) },
] as const;
const built = (layout: LayoutUse, repeat: RepeatUse = straight({ width: 40, height: 34 })): Promise<Tile> =>
  buildTile(
    definePattern({
      name: "full",
      seed: "full-1",
      repeat,
      layout: layout as never,
      colorways: { one: { ground: "#fff", blade: "#363", star: "#c33" } } as never,
    }),
  );
/** Packed, unless it is told otherwise how full it gets. */
const packed = (given: object = {}) => {
  const told = "count" in given || "coverage" in given;
  return toss({ gap: 2, ...(told ? {} : { density: "packed" }), motifs, ...given } as never);
};
const outlinesOf = (tile: Tile): Path[] => tile.motifs.map(({ outline }) => outline);
const clearanceOf = (tile: Tile): number =>
  smallestClearance(tile.placements, outlinesOf(tile), tile.arrangement, 3).distance;

describe("a packed toss", () => {
  test.each(["inside", "outside"] as const)("stays %s an area", async (side) => {
    const area = rectangle(6, 5, 34, 28);
    const tile = await built(packed({ [side]: area, edge: 0.5 }), straight({ width: 50, height: 40 }));
    expect(tile.placements.length).toBeGreaterThan(4);
    const copies = copiesOf(area, tile.arrangement, 20);
    for (const placement of tile.placements) {
      const lie = lieOf(placement, tile.motifs[placement.motif]!.outline, copies);
      expect(lie.side).toBe(side);
      expect(lie.distance).toBeGreaterThanOrEqual(0.5 - 1e-6);
    }
    expect(clearanceOf(tile)).toBeGreaterThanOrEqual(2 - 1e-6);
  });

  test("keeps within the margins of a border", async () => {
    const tile = await built(packed(), border({ width: 44, height: 30, margin: 3 }));
    expect(tile.placements.length).toBeGreaterThan(4);
    for (const { motif, x, y, turn, scale, flip } of tile.placements)
      for (const ring of flatten(
        transformPath(tile.motifs[motif]!.outline, placing(x, y, turn, scale, flip)),
        1,
      ))
        for (let k = 1; k < ring.length; k += 2) {
          expect(ring[k]).toBeGreaterThanOrEqual(3000);
          expect(ring[k]).toBeLessThanOrEqual(27_000);
        }
    expect(clearanceOf(tile)).toBeGreaterThanOrEqual(2 - 1e-6);
  });

  test("keeps the gap from the layer before it, which does not move", async () => {
    const hero = toss({ gap: 2, count: 2, motifs: [{ motif: starMotif({ size: 18 }) }] });
    const leaves = toss({ gap: 2, count: 3, motifs: [motifs[0]] });
    const fillers = packed({ motifs: [{ motif: starMotif({ size: 5 }) }] });
    const alone = await built(layered({ layouts: [hero, leaves] } as never));
    const both = await built(layered({ layouts: [hero, leaves, fillers] } as never));
    const heroes = both.placements.slice(0, 5);
    expect(heroes.map(({ x, y, turn }) => [x, y, turn])).toEqual(
      alone.placements.map(({ x, y, turn }) => [x, y, turn]),
    );
    expect(both.placements.length).toBeGreaterThan(10);
    expect(clearanceOf(both)).toBeGreaterThanOrEqual(2 - 1e-6);
  });

  test.each([{ density: "packed", gap: 3 }, { count: 9 }, { coverage: 0.2 }])(
    "leaves what is held where it is: %j",
    async (given) => {
      const first = await built(packed(given));
      const { id } = first.placements[0]!;
      const held = { do: "hold", id, x: 20, y: 16, turn: 0.125 };
      const tile = await built(adjusted({ layout: packed(given), changes: [held] } as never) as never);
      expect(tile.placements.find((p) => p.id === id)).toMatchObject({ x: 20_000, y: 16_000, turn: 0.125 });
      expect(tile.placements.length).toBeGreaterThan(4);
      if ("count" in given) expect(tile.placements).toHaveLength(9);
      expect(clearanceOf(tile)).toBeGreaterThanOrEqual(2 - 1e-6);
    },
  );

  test("of which all are held has nothing left to do", async () => {
    const first = await built(packed({ count: 3 }));
    const changes = first.placements.map(({ id, x, y, turn }) => ({
      do: "hold",
      id,
      x: x / 1000,
      y: y / 1000,
      turn,
    }));
    const tile = await built(adjusted({ layout: packed({ count: 3 }), changes } as never) as never);
    expect(new Set(tile.placements.map(({ id, x, y }) => `${id} ${x} ${y}`))).toEqual(
      new Set(first.placements.map(({ id, x, y }) => `${id} ${x} ${y}`)),
    );
  });
});

describe("a long toss", () => {
  const pattern = (given: object) =>
    definePattern({
      name: "long",
      seed: "long-1",
      repeat: straight({ width: 330, height: 330 }),
      layout: packed({ motifs: motifs.map((entry) => ({ ...entry, scale: 0.7 })), ...given }) as never,
      roles: ["blade", "star"],
      colorways: { one: { ground: "#fff", blade: "#363", star: "#c33" } },
    });

  // More than a thousand motifs; called off while they are filled in, and while they are pushed.
  test.each([
    [{}, 300],
    [{}, 900],
    [{ count: 1200 }, 700],
  ])("%j called off after %i ms ends within a second or so", async (given, after) => {
    const controller = new AbortController();
    let called = 0;
    const timer = setTimeout(() => {
      called = performance.now();
      controller.abort(new Error("enough"));
    }, after);
    await expect(buildTile(pattern(given), { signal: controller.signal })).rejects.toThrow("enough");
    clearTimeout(timer);
    expect(called).toBeGreaterThan(0);
    expect(performance.now() - called).toBeLessThan(1500);
  });

  test.each([{ density: "packed" }, { density: "airy" }, { count: 9 }, { coverage: 0.25 }, { coverage: 1 }])(
    "reports progress that never goes back: %j",
    async (given) => {
      const entries = mix([0.4, 0.4]);
      const seen: number[] = [];
      const step = async (done: number): Promise<void> => void seen.push(done);
      await packTossed(options({ ...(given as object), entries }), {
        ...tools("progress", repeats.straight(44, 40)),
        step,
      });
      expect(seen.length).toBeGreaterThan(3);
      expect(seen.at(-1)).toBe(1);
      for (const [k, done] of seen.entries()) if (k > 0) expect(done).toBeGreaterThanOrEqual(seen[k - 1]!);
    },
  );
});

describe.each(["airy", "even", "packed"] as const)(
  "an %s toss fills something of every repeat type",
  (density) => {
    test.each(Object.entries(every))("%s", async (_, repeat) => {
      const arrangement = definitionOf<RepeatPiece>(repeat, "test").arrange(repeat.params as never);
      const { a, b } = arrangement.lattice;
      const side = Math.sqrt(Math.abs(a[0] * b[1] - a[1] * b[0]) / arrangement.operations.length);
      const entries = entriesOf(scaled(star(), side / 100_000)); // as wide as a third of a square of that ground
      const placements = await packTossed(
        options({ entries, density, gap: side / 9000 }),
        tools("every", arrangement),
      );
      expect(placements.length).toBeGreaterThanOrEqual(density === "airy" ? 1 : 2);
    });
  },
);
