// Each repeat type with one seed; `npm run sweep` does the same with twenty.
import { describe, expect, it, test } from "vitest";
import { movePath, transformPath } from "../../src/geometry/matrix.ts";
import { areaOf, type Path } from "../../src/geometry/path.ts";
import {
  buildTile,
  defineMotif,
  definePattern,
  drop,
  halfBrick,
  halfDrop,
  type Matrix,
  mirror,
  placeAt,
  planeGroup,
  set,
  star,
  straight,
  type Tile,
  toss,
  unitOutline,
} from "../../src/index.ts";
import { comparePaths, intoBlock } from "../../src/tile/wrap.ts";
import { differing, psnr, rolled } from "../flow/picture.ts";
import { refusalOf } from "../given.ts";
import { every } from "./every.ts";
import { examine } from "./examine.ts";
import { byHand, clearance, GAP, harbour, picture, under } from "./field.ts";

/** What another type shows as well; the sweep has them all. */
const alike = ["half-brick", "quarter brick", "mirror down", "turnover down", "ogee", "p1", "p2mm"];
const shown = Object.entries(every).filter(([name]) => !alike.includes(name));

describe.each(shown)("a field in %s", (name, repeat) => {
  test("recurs, tiles and mirrors as it must, and keeps its gap", async () => {
    const found = await examine(repeat, `${name}-1`);
    expect(found).toMatchObject({ unlikeAtA: 0, unlikeAtB: 0, unlikeByLattice: 0 });
    expect(found.symmetry).toBeGreaterThan(45);
    expect(found.clearance).toBeGreaterThanOrEqual(GAP);
  });
});

describe("what the examination would catch", () => {
  const repeat = every["p4gm"]!;
  const built = buildTile(harbour(repeat, "p4gm-1"));

  it("a layer that is half a pixel off under a mirror", async () => {
    const tile = await built;
    const [first, ...rest] = tile.layers;
    const off = { ...tile, layers: [{ ...first!, path: movePath(first!.path, 250, 0) }, ...rest] };
    const { image } = under(off, [-1, 0, 0, 1, tile.block.width, 0]);
    expect(psnr(await picture(off), await picture(image))).toBeLessThan(30);
  });

  it("a field rolled by anything but a lattice vector", async () => {
    const whole = await picture(await built);
    expect(differing(whole, rolled(whole, whole.width / 2, 0))).toBeGreaterThan(100);
  });

  it("a motif across a mirror line", async () => {
    const mirrored = every["pm"]!;
    const tile = await buildTile(harbour(mirrored, "pm-1"));
    const [first, ...rest] = tile.placements;
    const across = { ...tile, placements: [{ ...first!, x: 0 }, ...rest] };
    expect(clearance(across, mirrored)).toBe(0);
  });
});

/** Every contour set of a tile under a matrix, brought into its block, in order. */
const shapes = (tile: Tile, matrix: Matrix, block = tile.block): (readonly [string, Path[]])[] =>
  tile.layers.map(({ role, path }) => {
    const contours: Path[] = [];
    let from = 0;
    for (const curves of path.contours) {
      const points = path.points.slice(from, from + curves * 6);
      contours.push(intoBlock(transformPath({ points, contours: [curves] }, matrix), block));
      from += curves * 6;
    }
    return [role, contours.sort(comparePaths)] as const;
  });
const still: Matrix = [1, 0, 0, 1, 0, 0];

describe("one repeat said in two ways has the same layers", () => {
  const places = [
    [10, 12, 0],
    [40, 30, 0.25],
    [70, 55, 0.5],
    [25, 60, 0.75],
    [85, 8, 0, true],
  ] as const;
  const size = { width: 90, height: 70 };

  it("a half-drop, and its unit set twice in a block twice as wide", async () => {
    const dropped = await byHand(halfDrop(size), places);
    // Blossoms and leaves alternate, so the second half starts with a leaf's turn: an odd number needs one more.
    const even = places.slice(0, 4);
    const four = await byHand(halfDrop(size), even);
    const wide = await byHand(straight({ width: 180, height: 70 }), [
      ...even,
      ...even.map(([x, y, turn]) => [x + 90, y + 35, turn] as const),
    ]);
    expect(wide.digest).toBe(four.digest);
    expect(wide.digest).not.toBe(dropped.digest);
    expect((await byHand(drop({ ...size, fraction: "1/2" }), even)).digest).toBe(four.digest);
  });

  it("a half-brick, and its unit set twice in a block twice as high", async () => {
    const even = places.slice(0, 4);
    const high = await byHand(straight({ width: 90, height: 140 }), [
      ...even,
      ...even.map(([x, y, turn]) => [x + 45, y + 70, turn] as const),
    ]);
    expect(high.digest).toBe((await byHand(halfBrick(size), even)).digest);
  });

  it("a half-brick, and a half-drop turned by a quarter", async () => {
    const dropped = await byHand(halfDrop(size), places);
    const laid = await byHand(
      halfBrick({ width: 70, height: 90 }),
      places.map(([x, y, turn, flip = false]) => [70 - y, x, (turn + 0.25) % 1, flip] as const),
    );
    expect(laid.block).toEqual({ width: 70_000, height: 180_000 });
    expect(shapes(laid, still)).toEqual(shapes(dropped, [0, 1, -1, 0, 0, 0], laid.block));
  });

  it("a mirror both ways, and p2mm", async () => {
    const group = await byHand(planeGroup({ group: "pmm", width: 180, height: 140 }), places);
    expect(group.digest).toBe((await byHand(mirror({ ...size, axis: "both" }), places)).digest);
  });
});

describe("the unit of a plane group", () => {
  it.each(Object.entries(every).filter(([name]) => /^[pc]\d?[mg\d]*$/.test(name)))(
    "%s, drawn as one motif, covers the cloth once",
    async (_, repeat) => {
      const piece = defineMotif({
        name: "x/unit",
        about: "The unit.",
        params: {},
        parts: ["unit"],
        draw: () => ({ unit: unitOutline(repeat) }),
      });
      const tile = await buildTile(
        definePattern({
          name: "units",
          seed: "1",
          repeat,
          layout: placeAt({ places: [{ motif: piece({}), x: 0, y: 0 }] }),
          colorways: { day: { ground: "#fff", unit: "#000" } },
        }),
      );
      const { width, height } = tile.block;
      // Corners are rounded to whole µm, so a side of 100 mm may gain or lose a strip of a µm.
      expect(areaOf(tile.layers[0]!.path) / (width * height)).toBeCloseTo(1, 4);
    },
  );
});

it("a set leaves out what stands outside the unit", async () => {
  const build = (columns: number, rows: number): Promise<Tile> =>
    buildTile(
      definePattern({
        name: "stars",
        seed: "1",
        repeat: every["diamond"]!,
        layout: set({ motifs: [star({ size: 6 })], columns, rows }),
        colorways: { day: { ground: "#fff", star: "#000" } },
      }),
    );
  expect((await build(1, 1)).placements).toHaveLength(1);
  // Of an even grid over the box, half lies in the diamond.
  expect((await build(8, 8)).placements).toHaveLength(32);
});

it("a motif too large for the unit is refused, with a size that would do", async () => {
  const error = await refusalOf(() =>
    buildTile(
      definePattern({
        name: "stars",
        seed: "1",
        repeat: planeGroup({ group: "p6mm", width: 60 }),
        layout: toss({ motifs: [{ motif: star({ size: 40 }) }] }),
        colorways: { day: { ground: "#fff", star: "#000" } },
      }),
    ),
  );
  expect(error.code).toBe("motif-too-large");
  expect(error.fix).toMatch(/make it at most about \d/);
});
