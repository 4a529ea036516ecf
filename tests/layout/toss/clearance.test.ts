import { expect, test } from "vitest";
import type { Arrangement } from "../../../src/geometry/lattice.ts";
import type { Placement } from "../../../src/layout/layout.ts";
import { bodiesOf } from "../../../src/layout/toss/body.ts";
import { findClash } from "../../../src/layout/toss/check.ts";
import { packTossed, type TossEntry } from "../../../src/layout/toss/pack.ts";
import { smallestClearance } from "./clearance.ts";
import { disc, drawn, entriesOf, leaf, mix, options, repeats, ring, tools } from "./fixtures.ts";

const small = mix([1 / 4, 0.7]);

const clearance = (
  placements: readonly Placement[],
  entries: readonly TossEntry[],
  arrangement: Arrangement,
  limit: number,
): number => {
  const outlines = entries.flatMap((entry) => entry.drawings.map(({ motif }) => motif.outline));
  return smallestClearance(placements, outlines, arrangement, limit).distance;
};

test.each([0, 0.3, 4])("a gap of %f mm is kept by mirrored motifs in a slanted repeat", async (gap) => {
  const slanted: Arrangement = {
    unit: { width: 60_000, height: 50_000 },
    lattice: { a: [60_000, 10_000], b: [0, 50_000], block: { width: 300_000, height: 50_000 } },
    operations: [[1, 0, 0, 1, 0, 0]],
  };
  const placements = await packTossed(options({ entries: small, gap, flip: true }), tools("slant", slanted));
  expect(placements.length).toBeGreaterThan(4);
  expect(clearance(placements, small, slanted, gap + 1)).toBeGreaterThanOrEqual(gap - 1e-6);
});

test("motifs wider than half the repeat keep clear of several copies of each other", async () => {
  const entries: TossEntry[] = [
    { drawings: [drawn(0, "leaf", leaf())], share: 1, scale: [1, 1] },
    { drawings: [drawn(1, "disc", disc(3))], share: 3, scale: [1, 1] },
  ];
  for (const arrangement of [repeats.straight(40, 44), repeats["half-brick"](48, 40)]) {
    const placements = await packTossed(options({ entries }), tools("wide", arrangement));
    expect(placements.some((p) => p.motif === 0)).toBe(true);
    expect(clearance(placements, entries, arrangement, 3)).toBeGreaterThanOrEqual(2 - 1e-6);
  }
});

test("packed, airy and counted tosses keep the gap too", async () => {
  for (const arrangement of [repeats["half-drop"](56, 48), repeats.mirror(56, 48)])
    for (const given of [{ density: "packed" }, { density: "airy" }, { count: 12 }] as const) {
      const placements = await packTossed(options({ ...given, entries: small }), tools("kinds", arrangement));
      expect(clearance(placements, small, arrangement, 3)).toBeGreaterThanOrEqual(2 - 1e-6);
    }
});

test.each([
  { large: 0.4, little: 0.6, wants: "the smaller" },
  { large: 0.8, little: 0.3, wants: "the larger" },
])("an extra gap is kept from others as well when $wants motif asks for it", async ({ large, little }) => {
  const arrangement = repeats.straight(84, 72);
  const entries: TossEntry[] = [
    { drawings: [drawn(0, "disc", disc(8))], share: 1, scale: [large, large], gap: 5 },
    { drawings: [drawn(1, "leaf", leaf())], share: 2, scale: [little, little] },
  ];
  for (const seed of ["a", "b"]) {
    const placements = await packTossed(options({ entries, gap: 1 }), tools(seed, arrangement));
    const [discs, leaves] = [0, 1].map((motif) => placements.filter((p) => p.motif === motif));
    for (const one of discs!)
      for (const two of leaves!)
        expect(clearance([one, two], entries, arrangement, 6)).toBeGreaterThanOrEqual(6 - 1e-6);
  }
});

test("every placement stands in the unit on whole micrometres, at a size its entry allows", async () => {
  for (const make of Object.values(repeats)) {
    const arrangement = make(84, 72);
    for (const p of await packTossed(options({ entries: small }), tools("unit", arrangement))) {
      expect(Number.isInteger(p.x) && Number.isInteger(p.y)).toBe(true);
      expect(p.x >= 0 && p.x < arrangement.unit.width && p.y >= 0 && p.y < arrangement.unit.height).toBe(
        true,
      );
      expect(p.scale >= 0.25 && p.scale <= 0.7).toBe(true);
    }
  }
});

test("a hole counts as filled", async () => {
  const arrangement = repeats.straight(84, 72);
  const entries = entriesOf(ring(15, 13), disc(2)).map((e, k) => ({ ...e, share: k === 0 ? 1 : 8 }));
  const placements = await packTossed(options({ entries }), tools("hole", arrangement));
  expect(placements.some((p) => p.motif === 0)).toBe(true);
  const solid = entriesOf(disc(15), disc(2));
  expect(clearance(placements, solid, arrangement, 3)).toBeGreaterThanOrEqual(2 - 1e-6);
});

test("the final check finds a placement pushed half a millimetre into its neighbour, or its own copy", async () => {
  const arrangement = repeats.mirror(46, 40);
  const placements = await packTossed(options({ entries: small }), tools("push", arrangement));
  const bodies = new Map(bodiesOf(small).map(([body]) => [body!.drawn.index, body!]));
  const check = (moved: readonly Placement[]) =>
    findClash(moved, (p) => bodies.get(p.motif)!, { arrangement, gap: 2000 });
  expect(await check(placements)).toBeUndefined();

  const pushed = (k: number, dx: number, dy: number): Placement[] =>
    placements.map((p, j) => (j === k ? { ...p, x: p.x + dx, y: p.y + dy } : p));
  const pushes = [-500, 500].flatMap((d) => placements.flatMap((_, k) => [pushed(k, d, 0), pushed(k, 0, d)]));
  let caught = 0;
  for (const moved of pushes.filter((_, k) => k % 3 === 0)) {
    const real = clearance(moved, small, arrangement, 2.1);
    const clash = await check(moved);
    if (real < 2) {
      caught++;
      expect(clash, `${real} mm`).toBeDefined();
    } else if (real > 2.1) expect(clash).toBeUndefined();
  }
  expect(caught).toBeGreaterThan(3);

  const alone = { ...placements[0]!, x: 300, y: 20_000 };
  expect(await check([alone])).toEqual({ first: alone.id, second: alone.id });
  const one = placements[1]!;
  expect(await check([one, { ...one, id: "twin" }])).toEqual({ first: one.id, second: "twin" });
});
