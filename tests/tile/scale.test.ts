import { describe, expect, it } from "vitest";
import { cellsInBlock } from "../../src/geometry/lattice.ts";
import { movePath, transformPath } from "../../src/geometry/matrix.ts";
import { CURVE, type Path } from "../../src/geometry/path.ts";
import { placeAt } from "../../src/layout/place-at.ts";
import { definePattern } from "../../src/pattern/pattern.ts";
import { createKit } from "../../src/plugin/kit.ts";
import { definePlugin } from "../../src/plugin/plugin.ts";
import { halfDrop } from "../../src/repeat/half-drop.ts";
import { mirror } from "../../src/repeat/mirror.ts";
import { planeGroup } from "../../src/repeat/plane-group.ts";
import type { RepeatUse } from "../../src/repeat/repeat.ts";
import { buildTile } from "../../src/tile/build.ts";
import { scaleTile } from "../../src/tile/scale.ts";
import type { Tile } from "../../src/tile/tile.ts";
import { comparePaths, intoBlock } from "../../src/tile/wrap.ts";
import { buoy, pebble, refusal, refusalOf } from "../given.ts";
import { inks, shore } from "../given-patterns.ts";

/** Odd places and odd turns, so that rounding has something to do. */
const odd = (repeat: RepeatUse, scale?: number) =>
  definePattern({
    name: "odd",
    seed: "s",
    repeat,
    ...(scale === undefined ? {} : { scale }),
    layout: placeAt({
      places: [
        { motif: buoy({ size: 13.337 }), x: 9.001, y: 8.333, turn: 0.123 },
        { motif: buoy({ size: 7.011, vary: 0.5 }), x: 21.777, y: 19.999, turn: 0.6, flip: true },
        { motif: pebble({ size: 9.123 }), x: 5.555, y: 23.337, scale: 1.237 },
      ],
    }),
    colorways: inks,
  });

/** A layer's contours one by one, in one order. */
function contours({ points, contours: counts }: Path): Path[] {
  let from = 0;
  return counts.map((curves) => {
    const contour = { points: points.slice(from, from + curves * CURVE), contours: [curves] };
    from += curves * CURVE;
    return contour;
  });
}
const sorted = (paths: readonly Path[], { block }: Tile): Path[] =>
  paths.map((path) => intoBlock(path, block)).sort(comparePaths);

describe("a scaled tile", () => {
  it.each([0.5, 2, 3.5])(
    "has block, lattice and placements %f times as large, and the same look",
    async (factor) => {
      const tile = await buildTile(shore);
      const scaled = scaleTile(tile, factor);
      expect(scaled.block).toEqual({ width: tile.block.width * factor, height: tile.block.height * factor });
      expect(scaled.lattice.a).toEqual(tile.lattice.a.map((um) => um * factor));
      expect(scaled.arrangement.unit.width).toBe(tile.arrangement.unit.width * factor);
      expect(scaled.placements.map((p) => [p.x, p.y, p.scale])).toEqual(
        tile.placements.map((p) => [Math.round(p.x * factor), Math.round(p.y * factor), p.scale * factor]),
      );
      expect(scaled.figures.motifs).toBe(tile.figures.motifs);
      for (const [role, share] of Object.entries(tile.figures.coverage))
        expect(scaled.figures.coverage[role]).toBeCloseTo(share, 3);
      expect(scaled.digest).not.toBe(tile.digest);
    },
  );

  it("has every point within a few µm of the original's, scaled", async () => {
    const tile = await buildTile(odd(halfDrop({ width: 40, height: 30 })));
    for (const factor of [0.5, 3]) {
      const scaled = scaleTile(tile, factor);
      scaled.layers.forEach(({ path }, i) => {
        const [was, now] = [contours(tile.layers[i]!.path), contours(path)];
        expect(now.length).toBe(was.length);
        // Contours may be stored one block apart, and in another order.
        const gap = (p: Path, q: Path): number => {
          if (p.points.length !== q.points.length) return Infinity;
          const wrap = (d: number, size: number): number => Math.abs(d - size * Math.round(d / size));
          let most = 0;
          for (let k = 0; k < p.points.length; k++) {
            const size = k % 2 === 0 ? scaled.block.width : scaled.block.height;
            most = Math.max(most, wrap(p.points[k]! * factor - q.points[k]!, size));
          }
          return most;
        };
        for (const contour of was)
          expect(Math.min(...now.map((other) => gap(contour, other)))).toBeLessThanOrEqual(factor + 1);
      });
    }
  });

  it.each([
    ["half-drop", halfDrop({ width: 40, height: 30 })],
    ["mirror", mirror({ width: 40, height: 30, axis: "both" })],
    ["p4mm", planeGroup({ group: "p4mm", width: 60 })],
  ])("keeps its seams and images exact in a %s repeat, to the µm", async (_, repeat) => {
    const scaled = scaleTile(await buildTile(odd(repeat)), 0.55);
    for (const { path } of scaled.layers) {
      const here = sorted(contours(path), scaled);
      for (const [dx, dy] of cellsInBlock(scaled.lattice))
        expect(sorted(contours(movePath(path, dx, dy)), scaled)).toEqual(here);
      for (const operation of scaled.arrangement.operations.slice(1, 2)) {
        const boxes = (list: readonly Path[]): string[] =>
          list.map((p) => [...p.points].sort((a, b) => a - b).join()).sort();
        const image = sorted(contours(transformPath(path, operation)), scaled);
        expect(boxes(image)).toEqual(boxes(here));
      }
    }
  });

  it("is what the pattern says with `scale`, and what a kit builds from its recipe", async () => {
    const repeat = halfDrop({ width: 40, height: 30 });
    const scaled = scaleTile(await buildTile(odd(repeat)), 0.55);
    expect(scaled.recipe.scale).toBe(0.55);
    const kit = createKit({
      plugins: [definePlugin({ name: "harbour", version: "1.0.0", pieces: [buoy, pebble] })],
    });
    const rebuilt = await kit.build(JSON.parse(JSON.stringify(scaled.recipe)));
    expect(rebuilt.digest).toBe(scaled.digest);
    expect(rebuilt).toEqual(scaled);
    const said = await buildTile(odd(repeat, 0.55));
    expect(said.digest).toBe(scaled.digest);
    expect(said.recipe).toEqual(scaled.recipe);
  });

  it("is the tile itself at a factor of 1, and the recipe does not mention it", async () => {
    const tile = await buildTile(shore);
    expect(scaleTile(tile, 1)).toBe(tile);
    expect("scale" in (await buildTile(odd(halfDrop({ width: 40, height: 30 }), 1))).recipe).toBe(false);
  });

  it("refuses factors that leave a part of a µm, and the factors it offers are exact", async () => {
    const tile = await buildTile(shore);
    const error = refusal(() => scaleTile(tile, 1 / 3));
    expect(error.code).toBe("inexact-scale");
    const offered = error.fix.replace(/^.*: /, "").split(" and ").map(Number);
    expect(offered).toHaveLength(2);
    for (const factor of offered) expect(Number.isInteger(scaleTile(tile, factor).block.width)).toBe(true);
    expect(offered[0]!).toBeLessThan(1 / 3);
    expect(offered[1]!).toBeGreaterThan(1 / 3);
    const late = await refusalOf(() => buildTile(odd(halfDrop({ width: 40, height: 30 }), 1 / 3)));
    expect(late.code).toBe("inexact-scale");
  });

  it("refuses to scale what was scaled, and names the factor for the original", async () => {
    const half = scaleTile(await buildTile(shore), 0.5);
    const error = refusal(() => scaleTile(half, 3));
    expect([error.code, error.fix]).toEqual(["scaled-before", "scale the tile that it came from, by 1.5"]);
  });

  it.each([
    [0, "number-range"],
    [-2, "number-range"],
    [21, "number-range"],
    [Number.NaN, "wrong-type"],
    ["2", "wrong-type"],
    [undefined, "wrong-type"],
  ])("refuses %j as a factor", async (factor, code) => {
    const tile = await buildTile(shore);
    expect(refusal(() => scaleTile(tile, factor as number)).code).toBe(code);
    if (factor !== undefined)
      expect(refusal(() => odd(halfDrop({ width: 40, height: 30 }), factor as number)).code).toBe(code);
  });
});
