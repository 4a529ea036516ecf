import { describe, expect, test } from "vitest";
import type { Arrangement } from "../../../src/geometry/lattice.ts";
import { halfBrick, halfDrop, mirror, type RepeatUse, straight } from "../../../src/index.ts";
import { packTossed, type TossOptions } from "../../../src/layout/toss/pack.ts";
import { definitionOf } from "../../../src/params/use.ts";
import type { RepeatPiece } from "../../../src/repeat/repeat.ts";
import { smallestClearance } from "./clearance.ts";
import { disc, entriesOf, mix, options, tools } from "./fixtures.ts";

const arranged = (repeat: RepeatUse): Arrangement =>
  definitionOf<RepeatPiece>(repeat, "test").arrange(repeat.params as never);

const size = { width: 120, height: 100 };
const arrangements: readonly (readonly [string, Arrangement])[] = [
  ["straight", arranged(straight(size))],
  ["half-drop", arranged(halfDrop(size))],
  ["half-brick", arranged(halfBrick(size))],
  ["mirror", arranged(mirror({ ...size, axis: "both" }))],
];
const plain = arrangements[0]![1];
const outlinesOf = (entries: ReturnType<typeof mix>) =>
  entries.flatMap((entry) => entry.drawings.map(({ motif }) => motif.outline));
describe("no two drawn outlines come closer than the gap, copies across every edge included", () => {
  test.each(Array.from({ length: 5 }, (_, i) => i))("seed %i, by jsts", async (seed) => {
    const [name, arrangement] = arrangements[seed % arrangements.length]!;
    const entries = mix([0.3, 0.9]);
    const placements = await packTossed(options({ entries }), tools(`seed-${seed}`, arrangement));
    const { distance, between } = smallestClearance(placements, outlinesOf(entries), arrangement, 3);
    expect(distance, `${name}: ${between}`).toBeGreaterThanOrEqual(2 - 1e-6);
    expect(distance).toBeLessThan(4); // and no wider than need be
  });

  test("the judge would see a motif that stands half a millimetre too close", async () => {
    const placements = await packTossed(options(), tools("planted", plain));
    const [first, ...rest] = placements;
    const others = rest.map((p) => {
      const [dx, dy] = [p.x - first!.x, p.y - first!.y];
      return { p, far: Math.sqrt(dx * dx + dy * dy), dx, dy };
    });
    const near = others.sort((a, b) => a.far - b.far)[0]!;
    const toward = (v: number): number => Math.round((v / near.far) * 4000);
    const moved = { ...first!, x: first!.x + toward(near.dx), y: first!.y + toward(near.dy) };
    expect(smallestClearance([moved, ...rest], outlinesOf(mix()), plain, 3).distance).toBeLessThan(2 - 1e-3);
  });
});

describe("a tossed layout", () => {
  test("keeps the shares by number, though thin shapes would fit more often", async () => {
    const entries = mix([1 / 3, 1 / 3]).map((entry, i) => ({ ...entry, share: i === 1 ? 2 : 1 }));
    const placements = await packTossed(options({ entries }), tools("shares", plain));
    const counts = entries.map((_, i) => placements.filter((p) => p.motif === i).length);
    const unit = placements.length / 6;
    counts.forEach((count, i) => {
      const wanted = unit * (i === 1 ? 2 : 1);
      expect(Math.abs(count - wanted), `${counts}`).toBeLessThanOrEqual(1.5);
    });
  });

  test("holds exactly as many motifs as were asked for, further apart than the gap", async () => {
    const entries = mix([0.5, 0.5]);
    const placements = await packTossed(options({ entries, count: 12 }), tools("count", plain));
    expect(placements).toHaveLength(12);
    expect(smallestClearance(placements, outlinesOf(entries), plain, 40).distance).toBeGreaterThan(4);
  });

  test.each([
    ["one-way", [0]],
    ["two-way", [0, 0.5]],
    ["four-way", [0, 0.25, 0.5, 0.75]],
  ] as const)("faces only as a %s layout may", async (direction, allowed) => {
    const placements = await packTossed(options({ direction }), tools("way", plain));
    for (const { turn } of placements) expect(allowed).toContain(turn);
    expect(new Set(placements.map((p) => p.turn)).size).toBe(allowed.length);
  });

  test("turns every way when tossed, and mirrors only when it may", async () => {
    const tossed = await packTossed(options(), tools("free", plain));
    expect(new Set(tossed.map((p) => p.turn)).size).toBeGreaterThan(6);
    expect(tossed.some((p) => p.flip)).toBe(false);
    const flipped = await packTossed(options({ flip: true }), tools("free", plain));
    expect(flipped.some((p) => p.flip)).toBe(true);
  });

  test("holds a lone motif that is larger than half the repeat, clear of its own copies", async () => {
    const entries = entriesOf(disc(40));
    const placements = await packTossed(options({ entries }), tools("lone", plain));
    expect(placements).toHaveLength(1);
    expect(smallestClearance(placements, [disc(40)], plain, 40).distance).toBeGreaterThanOrEqual(2 - 1e-6);
  });

  test.each<[string, Arrangement, number, Partial<TossOptions>]>([
    ["even", arranged(straight({ width: 150, height: 150 })), 50, {}],
    ["even with mirrors", arranged(mirror({ width: 150, height: 150, axis: "both" })), 8, {}],
    ["airy", arranged(straight({ width: 150, height: 150 })), 15, { density: "airy" }],
  ])(
    "holds as many with a gap of 10 mm, %s, as where entries add 8 mm to one of 2, or 10 to none",
    async (_, ground, least, given) => {
      const dots = entriesOf(disc(5));
      const placed = async (gap: number, extra: number): Promise<number> => {
        const entries = dots.map((entry) => ({ ...entry, gap: extra }));
        return (await packTossed(options({ ...given, gap, entries }), tools("room", ground))).length;
      };
      const [whole, most, all] = [await placed(10, 0), await placed(2, 8), await placed(0, 10)];
      expect(whole).toBeGreaterThan(least);
      expect(Math.abs(most - whole)).toBeLessThanOrEqual(Math.ceil(0.05 * whole));
      expect(Math.abs(all - whole)).toBeLessThanOrEqual(Math.ceil(0.05 * whole));
    },
  );

  test("keeps extra room around an entry that asks for it", async () => {
    const entries = mix([0.4, 0.4]).map((entry, i) => (i === 0 ? { ...entry, gap: 6 } : entry));
    const placements = await packTossed(options({ entries }), tools("room", plain));
    const leaves = placements.filter((p) => p.motif === 0);
    expect(leaves.length).toBeGreaterThan(1);
    expect(smallestClearance(leaves, outlinesOf(entries), plain, 12).distance).toBeGreaterThanOrEqual(
      8 - 1e-6,
    );
  });
});
