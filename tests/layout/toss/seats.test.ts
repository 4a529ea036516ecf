import { describe, expect, it } from "vitest";
import { closeMotifs } from "../../../src/check/close-motifs.ts";
import { ringsArea, uniteRings } from "../../../src/geometry/clip.ts";
import { flatten } from "../../../src/geometry/flatten.ts";
import { imagesOf } from "../../../src/geometry/images.ts";
import { type Matrix, placing, transformPath } from "../../../src/geometry/matrix.ts";
import { areaOf } from "../../../src/geometry/path.ts";
import { fixing } from "../../../src/geometry/symmetry/fixed.ts";
import { specialPlaces } from "../../../src/geometry/symmetry/special.ts";
import { adjusted } from "../../../src/layout/adjusted.ts";
import type { LayoutUse, Placement } from "../../../src/layout/layout.ts";
import { placeAt } from "../../../src/layout/place-at.ts";
import { findClash } from "../../../src/layout/toss/check.ts";
import { toss } from "../../../src/layout/toss.ts";
import { blossom, dot, leaf } from "../../../src/motif/primitives/index.ts";
import { definePattern } from "../../../src/pattern/pattern.ts";
import { createKit } from "../../../src/plugin/kit.ts";
import { definePlugin } from "../../../src/plugin/plugin.ts";
import { halfDrop } from "../../../src/repeat/half-drop.ts";
import { mirror } from "../../../src/repeat/mirror.ts";
import { planeGroup } from "../../../src/repeat/plane-group.ts";
import type { RepeatUse } from "../../../src/repeat/repeat.ts";
import { turnover } from "../../../src/repeat/turnover.ts";
import { buildTile } from "../../../src/tile/build.ts";
import { recipeOf } from "../../../src/tile/recipe.ts";
import type { Tile } from "../../../src/tile/tile.ts";
import { pebble, refusalOf } from "../../given.ts";
import { type Pixels, picture, psnr } from "../../output/png/pictures.ts";
import { smallestClearance } from "./clearance.ts";

const one = { pebble: "leaf" } as const;
const plain = { blade: "leaf", vein: "leaf" } as const;
const flower = { petal: "fruit", marking: "fruit", centre: "fruit", seed: "fruit" } as const;

const inks = { leaf: "green", fruit: "red" } as const;
type Role = keyof typeof inks;

const patternOf = (
  layout: LayoutUse,
  repeat: RepeatUse,
  seed = "s",
  roles: readonly Role[] = ["leaf", "fruit"],
) =>
  definePattern({
    name: "seated",
    seed,
    repeat,
    layout: layout as LayoutUse<Role>,
    roles,
    colorways: {
      plain: { ground: "white", ...Object.fromEntries(roles.map((role) => [role, inks[role]])) } as never,
    },
  });
const built = (layout: LayoutUse, repeat: RepeatUse, seed?: string, roles?: readonly Role[]): Promise<Tile> =>
  buildTile(patternOf(layout, repeat, seed, roles));

type Seat = "anywhere" | "mirrors" | "centres" | "both";
const mix = (seat: Seat, more: object = {}): LayoutUse =>
  toss({
    gap: 1.5,
    motifs: [
      { motif: blossom({ size: 18, vary: 0.5, roles: flower }), scale: [0.5, 1], seat },
      { motif: pebble({ size: 9, roles: one }), share: 2 },
    ],
    ...more,
  });
const seatsOf = (tile: Tile): Placement[] => tile.placements.filter(({ id }) => id.startsWith("1-"));

const repeats: readonly (readonly [string, RepeatUse, Seat, number])[] = [
  ["p4mm", planeGroup({ group: "p4mm", width: 80 }), "both", 0],
  ["p4", planeGroup({ group: "p4", width: 70 }), "centres", 0],
  ["p6", planeGroup({ group: "p6", width: 90 }), "both", 1],
  ["p6mm", planeGroup({ group: "p6mm", width: 110 }), "both", 1],
  ["pmm", planeGroup({ group: "pmm", width: 80, height: 70 }), "mirrors", 0],
  ["mirror", mirror({ width: 50, height: 60 }), "mirrors", 0],
  ["turnover", turnover({ width: 50, height: 60 }), "both", 0],
];
const built7 = new Map<string, Promise<Tile>>();
const tileFor = (name: string, repeat: RepeatUse, seat: Seat): Promise<Tile> => {
  const tile = built7.get(name) ?? built(mix(seat), repeat);
  built7.set(name, tile);
  return tile;
};

/** How far an operation moves a motif's origin, in µm on the axis where it is more. */
const moved = ([a, b, c, d, e, f]: Matrix, { x, y }: Placement): number =>
  Math.max(Math.abs(a * x + c * y + e - x), Math.abs(b * x + d * y + f - y));

describe.each(repeats)("seats in %s", (name, repeat, seat, off) => {
  it("lie exactly where an operation leaves them, and no other motif does", async () => {
    const tile = await tileFor(name, repeat, seat);
    const images = imagesOf(tile.arrangement);
    expect(seatsOf(tile).length).toBeGreaterThan(0);
    for (const p of tile.placements) {
      const fixed = fixing(images, p.x, p.y);
      if (!p.id.startsWith("1-")) expect(fixed, p.id).toEqual([]);
      else {
        expect(fixed.length).toBeGreaterThan(0);
        for (const g of fixed) expect(moved(g, p)).toBeLessThanOrEqual(off + 1e-6);
      }
    }
  });

  it("keep the gap from all images but their own there, by jsts", async () => {
    const tile = await tileFor(name, repeat, seat);
    const outlines = tile.motifs.map(({ outline }) => outline);
    const there = (p: Placement, [x, y]: readonly [number, number]) =>
      Math.abs(p.x - x) <= 2 && Math.abs(p.y - y) <= 2;
    const { distance } = smallestClearance(tile.placements, outlines, tile.arrangement, 3, there);
    // Images by thirds and sixths are rounded once more.
    expect(distance).toBeGreaterThanOrEqual(1.5 - 1e-6);
    expect(closeMotifs.look({ tile, colorways: [], dpi: 150 })).toEqual([]);
    const alone = smallestClearance(seatsOf(tile), outlines, tile.arrangement, 0.001).distance;
    expect(alone).toBe(0);
  });
});

/** The picture with pixels taken from elsewhere, as whole columns and rows. */
function mapped(
  { width, height, data }: Pixels,
  from: (x: number, y: number) => readonly [number, number],
): Pixels {
  const out = new Uint8Array(data.length);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const [u, v] = from(x, y);
      out.set(data.subarray((v * width + u) * 4, (v * width + u) * 4 + 4), (y * width + x) * 4);
    }
  return { width, height, data: out };
}

describe("the picture", () => {
  it.each(["p4mm", "p6", "p6mm", "pmm", "mirror"])("of %s is as symmetric as the repeat", async (name) => {
    const [, repeat, seat] = repeats.find(([other]) => other === name)!;
    const tile = await tileFor(name, repeat, seat);
    const shot = await picture(tile, 400);
    const [w, h] = [shot.width - 1, shot.height - 1];
    const square = name === "p4mm";
    const across = mapped(shot, (x, y) => [w - x, y]);
    const turned = mapped(shot, (x, y) => [w - x, h - y]);
    expect(psnr(shot, turned)).toBeGreaterThan(name === "mirror" ? 0 : 45);
    if (name !== "p6") expect(psnr(shot, across)).toBeGreaterThan(45);
    else expect(psnr(shot, across)).toBeLessThan(25);
    if (square)
      expect(
        psnr(
          shot,
          mapped(shot, (x, y) => [y, x]),
        ),
      ).toBeGreaterThan(45);
  });

  it("shows each figure once: its area is that of the union, and its edges are not smoothed twice", async () => {
    // A leaf 30 mm long on the mirror, askew: it and its image cross.
    const repeat = mirror({ width: 50, height: 60 });
    const askew = { motif: leaf({ length: 30, roles: plain }), x: 50, y: 30, turn: 0.1 };
    const tile = await built(placeAt({ places: [askew] }), repeat, "s", ["leaf"]);
    const [motif] = tile.motifs;
    const { x, y, turn } = tile.placements[0]!;
    const alone = transformPath(motif!.outline, placing(x, y, turn));
    const image = transformPath(alone, [-1, 0, 0, 1, 100_000, 0]);
    const union = ringsArea(uniteRings([...flatten(alone, 1), ...flatten(image, 1)]));
    expect(union).toBeLessThan(1.9 * areaOf(alone));
    const drawn = tile.layers.reduce((sum, { path }) => sum + areaOf(path), 0);
    expect(Math.abs(drawn / union - 1)).toBeLessThan(1e-4);
  });

  it("draws a motif that has the symmetry of its seat as it is", async () => {
    const repeat = planeGroup({ group: "p4mm", width: 60 });
    const round = { motif: dot({ size: 12, roles: { dot: "fruit" } } as never), x: 0, y: 0 };
    const tile = await built(placeAt({ places: [round] as never }), repeat, "s", ["fruit"]);
    expect(tile.layers.map(({ path }) => path.contours.length)).toEqual([1]);
  });
});

describe("seats", () => {
  it("are taken only when asked for", async () => {
    const repeat = planeGroup({ group: "p4mm", width: 100 });
    const tile = await built(mix("anywhere"), repeat);
    const images = imagesOf(tile.arrangement);
    expect(tile.placements.every(({ x, y }) => fixing(images, x, y).length === 0)).toBe(true);
  });

  it("are all taken, on centres, by motifs that fit", async () => {
    for (const name of ["p4", "turnover"]) {
      const [, repeat] = repeats.find(([other]) => other === name)!;
      const tile = await built(mix("centres"), repeat);
      expect(seatsOf(tile)).toHaveLength(specialPlaces(tile.arrangement).centres.length);
    }
  });

  it("let several entries sit by turns, and others on mirrors between them", async () => {
    const layout = toss({
      gap: 1,
      motifs: [
        { motif: dot({ size: 9, roles: { dot: "fruit" } } as never), seat: "centres" },
        { motif: pebble({ size: 9, roles: one }), seat: "centres", share: 2 },
        { motif: leaf({ length: 12, roles: plain }), seat: "mirrors" },
      ] as never,
    });
    const tile = await built(layout, planeGroup({ group: "pmm", width: 100, height: 80 }));
    const count = (entry: string) => tile.placements.filter(({ id }) => id.startsWith(entry)).length;
    expect([count("1-"), count("2-")]).toEqual([1, 3]);
    expect(count("3-")).toBeGreaterThan(3);
  });

  it("turn a motif the way that suits a mirror: a leaf lies along it", async () => {
    const layout = toss({
      motifs: [
        { motif: leaf({ length: 16, roles: plain }), seat: "mirrors" },
        { motif: pebble({ size: 9, roles: one }) },
      ],
    });
    const tile = await built(layout, mirror({ width: 50, height: 90 }), "s", ["leaf"]);
    const ways = seatsOf(tile).map(({ turn }) => Math.abs(((turn * 2) % 1) - 0.5) * 2);
    expect(ways.length).toBeGreaterThan(3);
    // Within three degrees of one line, up or down.
    for (const way of ways) expect(Math.abs(way - ways[0]!)).toBeLessThan(0.04);
    const areas = seatsOf(tile).map((p) => {
      const path = transformPath(tile.motifs[p.motif]!.outline, placing(p.x, p.y, p.turn, p.scale, p.flip));
      const image = transformPath(path, [-1, 0, 0, 1, 2 * p.x, 0]);
      return ringsArea(uniteRings([...flatten(path, 2), ...flatten(image, 2)])) / areaOf(path);
    });
    for (const ratio of areas) expect(ratio).toBeLessThan(1.3);
  });

  it("stand outside the shares, unless a count limits all", async () => {
    const repeat = mirror({ width: 50, height: 60 });
    const tile = await built(mix("mirrors", { count: 9 }), repeat);
    expect(tile.placements).toHaveLength(9);
    expect(seatsOf(tile)).toHaveLength(3);
  });

  it.each(["airy", "packed"])("go with a toss that is %s", async (density) => {
    const tile = await built(mix("mirrors", { density }), mirror({ width: 40, height: 50 }));
    expect(seatsOf(tile).length).toBeGreaterThan(1);
    expect(closeMotifs.look({ tile, colorways: [], dpi: 150 })).toEqual([]);
  });

  it("keep clear of what is held, and may be held themselves", async () => {
    const repeat = planeGroup({ group: "p4mm", width: 100 });
    const changes = [{ do: "hold", id: "1-2", x: 50, y: 50, turn: 0.3 }] as const;
    const tile = await built(adjusted({ layout: mix("centres"), changes }) as LayoutUse, repeat);
    expect(seatsOf(tile).map(({ id }) => id)).toEqual(["1-2", "1-1", "1-3"]);
    expect(closeMotifs.look({ tile, colorways: [], dpi: 150 })).toEqual([]);
  });

  it("would be found too near each other by the last look, and beside their place", async () => {
    const repeat = mirror({ width: 50, height: 60 });
    const tile = await tileFor("mirror", repeat, "mirrors");
    const seats = seatsOf(tile).map((placement) => ({ placement, motif: tile.motifs[placement.motif]! }));
    const look = (taken: typeof seats) =>
      findClash([], () => undefined as never, { arrangement: tile.arrangement, gap: 1500, seats: taken });
    expect(await look(seats)).toBeUndefined();
    const shifted = (dx: number, dy: number) =>
      seats.map((seat, i) => {
        const { x, y } = seat.placement;
        return i === 0 ? { ...seat, placement: { ...seat.placement, x: x + dx, y: y + dy } } : seat;
      });
    const { id } = seats[0]!.placement;
    expect(await look(shifted(300, 0))).toEqual({ first: id, second: id });
    const [near] = seats
      .slice(1)
      .filter(({ placement }) => placement.x === seats[0]!.placement.x)
      .map(({ placement }) => placement.y - seats[0]!.placement.y);
    expect(await look(shifted(0, near!))).toBeDefined();
  });

  it("fill a toss alone", async () => {
    const layout = toss({ motifs: [{ motif: pebble({ size: 9, roles: one }), seat: "centres" }] });
    const tile = await built(layout, turnover({ width: 50, height: 60 }), "s", ["leaf"]);
    expect(tile.placements).toHaveLength(4);
  });

  it("are the same from a recipe, and others for another seed", async () => {
    const repeat = planeGroup({ group: "p6mm", width: 110 });
    const kit = createKit({
      plugins: [definePlugin({ name: "harbour", version: "1.0.0", pieces: [pebble] })],
    });
    const { digest } = await tileFor("p6mm", repeat, "both");
    const recipe: unknown = JSON.parse(JSON.stringify(recipeOf(patternOf(mix("both"), repeat))));
    expect((await kit.build(recipe)).digest).toBe(digest);
    expect((await built(mix("both"), repeat, "t")).digest).not.toBe(digest);
  });
});

describe("coverage", () => {
  it.each([0.3, 0.45])("of %f counts seated figures, each once with its images", async (coverage) => {
    const tile = await built(mix("centres", { coverage }), planeGroup({ group: "p4mm", width: 120 }));
    expect(seatsOf(tile).length).toBeGreaterThan(0);
    expect(Math.abs(tile.figures.inkCoverage - coverage)).toBeLessThan(0.03);
  });
});

describe("refused", () => {
  it.each([
    [
      "a motif that is too large beside seated ones, by its own number",
      toss({
        motifs: [
          { motif: blossom({ size: 9, roles: flower }), seat: "centres" },
          { motif: pebble({ size: 9, roles: one }) },
          { motif: pebble({ size: 90, roles: one }) },
        ],
      }),
      turnover({ width: 50, height: 50 }),
      "toss > motifs[2]",
    ],
    [
      "seats where nothing turns or mirrors",
      mix("both"),
      halfDrop({ width: 60, height: 60 }),
      "the repeat has no symmetry",
    ],
    [
      "mirrors where there are none",
      mix("mirrors"),
      planeGroup({ group: "p4", width: 80 }),
      "the repeat has no mirror line",
    ],
    [
      "centres where there are none",
      mix("centres"),
      mirror({ width: 60, height: 60 }),
      "the repeat has no centre of rotation",
    ],
    [
      "a motif for which no seat is wide enough",
      toss({
        motifs: [
          { motif: blossom({ size: 90, roles: flower }), seat: "centres" },
          { motif: pebble({ size: 9, roles: one }) },
        ],
      }),
      turnover({ width: 40, height: 40 }),
      'toss > motifs[0] > seat: "blossom" finds no seat with a gap of 2 mm',
    ],
    [
      "a count beyond the seats",
      toss({
        count: 9,
        motifs: [
          { motif: pebble({ size: 9, roles: one }), seat: "centres" },
          { motif: blossom({ size: 9, roles: flower }), seat: "centres" },
        ],
      }),
      turnover({ width: 50, height: 50 }),
      "only 4 motifs find a seat, and there are to be 9",
    ],
  ])("%s", async (_, layout, repeat, message) => {
    expect((await refusalOf(() => built(layout as LayoutUse, repeat))).message).toContain(message);
  });
});
