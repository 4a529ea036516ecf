import { beforeAll, describe, expect, it } from "vitest";
import type { Arrangement } from "../../../src/geometry/lattice.ts";
import type { Placement } from "../../../src/layout/layout.ts";
import { packTossed } from "../../../src/layout/toss/pack.ts";
import { measure } from "../../../src/tile/figures/measure.ts";
import { mix, options, repeats, tools } from "../../layout/toss/fixtures.ts";
import { straight, tileOf } from "./given.ts";

const motifs = mix().map(({ drawings }) => drawings[0]!.motif);

const tossed = (arrangement: Arrangement, seed: string): Promise<readonly Placement[]> =>
  packTossed(options(), tools(seed, arrangement));

let placements: readonly Placement[];
beforeAll(async () => {
  placements = await tossed(straight(120, 120), "measure-1");
});

describe("the figures of a toss", () => {
  it("are plain frozen data of numbers, the same every time", () => {
    const { figures } = tileOf(motifs, placements, straight(120, 120));
    expect(JSON.parse(JSON.stringify(figures))).toEqual(figures);
    expect(
      Object.isFrozen(figures) && Object.isFrozen(figures.largestHole) && Object.isFrozen(figures.balance),
    ).toBe(true);
    expect(tileOf(motifs, placements, straight(120, 120)).figures).toEqual(figures);
  });

  it("stay as they are when the whole pattern is moved, or drawn as four repeats of itself", () => {
    const { figures } = tileOf(motifs, placements, straight(120, 120));
    const moved = placements.map((p) => ({ ...p, x: p.x + 37_013, y: p.y - 54_321 }));
    const four = [0, 1, 2, 3].flatMap((k) =>
      placements.map((p) => ({
        ...p,
        id: `${p.id}/${k}`,
        x: p.x + (k % 2) * 120_000,
        y: p.y + (k >> 1) * 120_000,
      })),
    );
    for (const other of [
      tileOf(motifs, moved, straight(120, 120)),
      tileOf(motifs, four, straight(240, 240)),
    ]) {
      const found = other.figures;
      expect(found.inkCoverage).toBeCloseTo(figures.inkCoverage, 4);
      expect(found.offsetCoverage).toBeCloseTo(figures.offsetCoverage, 3);
      expect(found.clearance).toBeCloseTo(figures.clearance, 2);
      expect(found.spacing).toBe(figures.spacing);
      expect(found.largestHole.radius).toBeCloseTo(figures.largestHole.radius, 2);
      expect(Math.abs(found.largeHoles / figures.largeHoles - 1)).toBeLessThan(0.08);
      expect(found.facing.alike).toBeCloseTo(figures.facing.alike, 4);
      expect(found.neighbours.alike).toBe(figures.neighbours.alike);
      expect(Math.abs(found.gutter.value - figures.gutter.value)).toBeLessThan(0.1);
    }
  });

  it("are those of a toss: the gap is kept, and the ground lies between random addition and close packing", () => {
    const { figures } = tileOf(motifs, placements, straight(120, 120));
    expect(figures.clearance).toBeGreaterThanOrEqual(2);
    expect(figures.clearance).toBeLessThan(3);
    // Random sequential addition of discs jams at 0.547, random close packing at 0.82 to 0.86 (from the literature).
    expect(figures.offsetCoverage).toBeGreaterThan(0.547);
    expect(figures.offsetCoverage).toBeLessThan(0.82);
  });

  it("count the images of every repeat", async () => {
    for (const repeat of Object.values(repeats)) {
      const arrangement = repeat(90, 80);
      const placed = await tossed(arrangement, "count");
      const { figures } = tileOf(motifs, placed, arrangement);
      const { a, b, block } = arrangement.lattice;
      const cells = (block.width * block.height) / Math.abs(a[0] * b[1] - a[1] * b[0]);
      expect(figures.motifs).toBe(placed.length * arrangement.operations.length * cells);
      expect(figures.clearance).toBeGreaterThanOrEqual(2);
    }
  });

  it("of ten thousand motifs take about two seconds of processor time", () => {
    const times = Math.ceil(Math.sqrt(10_000 / placements.length));
    const many = Array.from({ length: times * times }, (_, k) =>
      placements.map((p) => ({
        ...p,
        id: `${p.id}/${k}`,
        x: p.x + (k % times) * 120_000,
        y: p.y + Math.floor(k / times) * 120_000,
      })),
    ).flat();
    const arrangement = straight(120 * times, 120 * times);
    const before = process.cpuUsage();
    const figures = measure({
      motifs,
      placements: many,
      arrangement,
      lattice: arrangement.lattice,
      layers: [],
    });
    const { user } = process.cpuUsage(before);
    expect(figures.motifs).toBeGreaterThanOrEqual(10_000);
    // Twice what it takes, for machines that are busy.
    expect(user / 1e6).toBeLessThan(4);
  });
});
