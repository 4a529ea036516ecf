import { describe, expect, test } from "vitest";
import { movePath } from "../../../src/geometry/matrix.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { pathData } from "../../../src/geometry/path-text.ts";
import {
  border,
  buildTile,
  createKit,
  definePattern,
  dot,
  halfDrop,
  leaf,
  mirror,
  ogee,
  ogeeCurve,
  pen,
  planeGroup,
  type RepeatUse,
  ring,
  star,
  straight,
  stripes,
  type Tile,
  toss,
  unitOutline,
} from "../../../src/index.ts";
import { areaPath } from "../../../src/layout/area.ts";
import { polygon, rectangle, refusal, refusalOf } from "../../given.ts";
import { copiesOf, lieOf } from "./areas.ts";
import { smallestClearance } from "./clearance.ts";

type Options = Omit<Parameters<typeof toss>[0], "motifs">;

const tossed = (repeat: RepeatUse, seed: string, options: Options): Promise<Tile> =>
  buildTile(
    definePattern({
      name: "areas",
      seed,
      repeat,
      layout: toss({
        gap: 1.5,
        flip: true,
        spread: 0,
        motifs: [
          { motif: leaf({ length: 13, roles: { vein: "ground" } }) },
          { motif: star({ size: 7 }), share: 2 },
          { motif: ring({ size: 5, roles: { core: "ring" } }), share: 2 },
        ],
        ...(options as object),
      }),
      colorways: { one: { ground: "#fff", blade: "#363", star: "#c33", ring: "#339" } },
    }),
  );

/** Every placement by the judge: on the right side, no nearer to the boundary than the edge; and the nearest of all. */
function judge(tile: Tile, area: Path, side: "inside" | "outside", edge: number): number {
  const copies = copiesOf(area, tile.arrangement, 20);
  let nearest = Infinity;
  for (const placement of tile.placements) {
    const lie = lieOf(placement, tile.motifs[placement.motif]!.outline, copies);
    expect(lie.side, placement.id).toBe(side);
    expect(lie.distance, placement.id).toBeGreaterThanOrEqual(edge - 1e-6);
    nearest = Math.min(nearest, lie.distance);
  }
  return nearest;
}

const size = { width: 90, height: 80 };
const heart = (): Path =>
  pen()
    .moveTo(40, 76)
    .curveTo(-4, 44, 0, 4, 22, 6)
    .curveTo(32, 7, 36, 14, 40, 24)
    .curveTo(44, 14, 48, 7, 58, 6)
    .curveTo(80, 4, 84, 44, 40, 76)
    .path();
/** From edge to edge of the unit: copies meet and are one, without walls between them. */
const wave = (): Path =>
  pen().moveTo(0, 20).curveTo(30, 0, 60, 40, 90, 20).lineTo(90, 55).curveTo(60, 75, 30, 35, 0, 55).path();

const cases: readonly (readonly [string, RepeatUse, Path])[] = [
  ["a heart in a straight repeat", straight(size), heart()],
  ["a band across a straight repeat", straight(size), wave()],
  ["a heart over the corner of a half-drop", halfDrop(size), movePath(heart(), 50_000, 40_000)],
  ["a heart in a mirrored repeat", mirror({ ...size, axis: "both" }), movePath(heart(), 20_000, 0)],
  ["a disc's part in p4mm", planeGroup({ group: "p4mm", width: 120 }), rectangle(-10, -10, 55, 34)],
  ["a triangle in p6", planeGroup({ group: "p6", width: 120 }), polygon(5, 5, 60, 5, 30, 50)],
];

describe("every motif of a toss lies wholly within its area, by jsts", () => {
  test.each(cases)("%s", async (_, repeat, inside) => {
    for (const [seed, edge] of [
      ["a", 0],
      ["b", 2.5],
    ] as const) {
      const tile = await tossed(repeat, seed, { inside, edge });
      expect(tile.placements.length).toBeGreaterThan(2);
      const nearest = judge(tile, inside, "inside", edge);
      expect(nearest, "the area is filled to its edge").toBeLessThan(edge + 2);
      const outlines = tile.motifs.map((motif) => motif.outline);
      const { distance } = smallestClearance(tile.placements, outlines, tile.arrangement, 2);
      expect(distance).toBeGreaterThanOrEqual(1.5 - 1e-6);
    }
  });

  test("copies that meet are one area: some motif lies across the edge where they do", async () => {
    const tile = await tossed(straight(size), "across", { inside: wave() });
    const bare = copiesOf(
      wave(),
      { ...tile.arrangement, lattice: { ...tile.arrangement.lattice, a: [1e6, 0] } },
      60,
    );
    const sides = tile.placements.map((p) => lieOf(p, tile.motifs[p.motif]!.outline, bare).side);
    expect(sides).toContain("across");
  });

  test("the unit of a plane group, turned by sixths, leaves no crack between its copies", async () => {
    const repeat = planeGroup({ group: "p6mm", width: 140 });
    const within = await tossed(repeat, "whole", { inside: unitOutline(repeat) });
    const free = await tossed(repeat, "whole", {});
    expect(within.placements.length).toBe(free.placements.length);
  });
});

describe("no motif of a toss lies in the area that it is to keep outside of, by jsts", () => {
  test.each(cases)("%s", async (_, repeat, outside) => {
    const tile = await tossed(repeat, "out", { outside, edge: 2 });
    expect(judge(tile, outside, "outside", 2)).toBeLessThan(5);
  });

  test("inside one and outside another", async () => {
    const [inside, outside] = [wave(), movePath(ogeeCurve({ width: 24, height: 20 }), 45_000, 38_000)];
    const tile = await tossed(straight(size), "both", { inside, outside, edge: 1 });
    judge(tile, inside, "inside", 1);
    judge(tile, outside, "outside", 1);
  });
});

test("the judge would see a motif that was pushed over the edge", async () => {
  const tile = await tossed(straight(size), "planted", { inside: heart(), edge: 1 });
  const pushed = tile.placements.map((p, i) => (i === 0 ? { ...p, x: 2000, y: 70_000 } : p));
  expect(() => judge({ ...tile, placements: pushed }, heart(), "inside", 1)).toThrow();
  expect(() => judge(tile, heart(), "outside", 1)).toThrow();
  expect(() => judge(tile, heart(), "inside", 2.2)).toThrow();
});

test("packed, airy and counted tosses stay inside too, and in a border", async () => {
  const inside = movePath(heart(), 4000, 2000);
  for (const given of [{ density: "packed" }, { density: "airy" }, { count: 9 }] as const)
    judge(
      await tossed(border({ ...size, margin: 2 }), "kinds", { ...given, inside, edge: 1 }),
      inside,
      "inside",
      1,
    );
});

test("an area is text, a path of a pen, or a curve of the library, and the recipe is JSON that builds the same", async () => {
  const inside = movePath(ogeeCurve({ width: 80, height: 76 }), 45_000, 40_000);
  const drawn = await tossed(straight(size), "same", { inside });
  const written = await tossed(straight(size), "same", { inside: pathData(inside) });
  expect(written.digest).toBe(drawn.digest);
  expect((await createKit().build(drawn.recipe)).digest).toBe(drawn.digest);
  expect(areaPath(pathData(inside), "x")).toEqual(inside);
});

describe("stripes", () => {
  const bands = (
    count: number,
    run: "across" | "down",
    share: number,
    [w, h]: readonly [number, number],
  ): Path => {
    const pitch = (run === "down" ? w : h) / count;
    const parts = Array.from({ length: count }, (_, k) => (k + 0.5) * pitch - (pitch * share) / 2);
    const text = parts.map((at) =>
      run === "down"
        ? `M${at} 0h${pitch * share}v${h}h${-pitch * share}z`
        : `M0 ${at}h${w}v${pitch * share}h${-w}z`,
    );
    return areaPath(text.join(""), "bands");
  };

  test.each([
    ["down a straight repeat", straight(size), 3, "down", 0.6],
    ["down a half-drop", halfDrop(size), 2, "down", 0.5],
    ["across a half-drop, an even number", halfDrop(size), 2, "across", 0.6],
    ["across a mirrored repeat", mirror({ ...size, axis: "both" }), 2, "across", 0.6],
  ] as const)("hold all motifs %s", async (_, repeat, count, run, share) => {
    const tile = await tossed(repeat, "stripes", { inside: stripes({ count, run, share }), edge: 0.5 });
    expect(judge(tile, bands(count, run, share, [90, 80]), "inside", 0.5)).toBeLessThan(1.5);
  });

  test("are refused where the repeat would break them, with what would close", async () => {
    const across = (count: number, repeat: RepeatUse) =>
      refusalOf(() => tossed(repeat, "no", { inside: stripes({ count, run: "across" }) }));
    const odd = await across(3, halfDrop(size));
    expect(odd).toMatchObject({ code: "stripes-do-not-close", where: "areas > toss > inside" });
    expect(odd.fix).toContain("give a count of 2 or 4; or let them run down");
    expect((await across(4, planeGroup({ group: "p4mm", width: 120 }))).code).toBe("stripes-do-not-close");
    const moved = stripes({ count: 2, run: "across", offset: 0.2 });
    const mirrored = await refusalOf(() =>
      tossed(mirror({ ...size, axis: "both" }), "no", { outside: moved }),
    );
    expect(mirrored.where).toBe("areas > toss > outside");
    expect(mirrored.fix).toContain("leave the offset out");
    await tossed(straight(size), "yes", { inside: stripes({ count: 3, run: "across", offset: 0.2 }) });
  });

  test.each([
    [{ count: 0 }, "stripes > count: 0 is outside 1 to 200"],
    [{ count: 2, share: 1 }, "stripes > share: 1 is outside"],
    [{ count: 2, run: "up" }, 'stripes > run: there is no choice "up"'],
    [{ count: 2, width: 3 }, 'there is no option "width"'],
  ])("refuse %j", (options, message) => {
    expect(refusal(() => stripes(options as never)).message).toContain(message);
  });
});

describe("an area that is none is refused, by name", () => {
  const given = (inside: unknown) => () => toss({ inside, motifs: [{ motif: dot({ size: 3 }) }] } as never);
  test.each([
    ["an open line", "M0 0H40V30", "open-path", "does not come back to where it began"],
    ["a second line that is open", "M0 0H40V30ZM5 5h9v9", "open-path", "starts at 5, 5"],
    ["NaN", "MNaN 0H40V30Z", "bad-path-data", "is not path data"],
    ["an endless number", "M0 0H1e999V30Z", "bad-shape", "Infinity"],
    [
      "words",
      "the upper half",
      "bad-path-data",
      '"the upper half" is not path data: it does not start with M\n  fix: give an area: SVG path data such as "M0 0H80V40H0Z" in mm, a path of a pen, or stripes({ count: 3 })',
    ],
    ["nothing", "", "empty-area", "encloses no area"],
    ["a line without area", "M0 0H40Z", "empty-area", "encloses no area"],
    ["a megabyte", `M0 0${"h1v1".repeat(250_000)}Z`, "area-too-detailed", "1000005 characters"],
    ["too many sides", `M0 0${"h1v1".repeat(2600)}Z`, "area-too-detailed", "5201 sides"],
    ["a number", 3, "wrong-type", "3 is not an area"],
    ["a list", [], "wrong-type", "is not an area"],
    ["a path that went through JSON", { points: { 0: 1 }, contours: [1] }, "wrong-type", "is not an area"],
    ["an unknown kind", { area: "discs" }, "unknown-choice", 'there is no choice "discs"'],
    ["stripes without a count", { area: "stripes" }, "missing-option", "nothing was given"],
  ])("%s", (_, inside, code, message) => {
    const started = performance.now();
    const error = refusal(given(inside));
    expect(performance.now() - started).toBeLessThan(2000);
    expect(error.code).toBe(code);
    expect(error.where).toMatch(/^toss > inside/);
    expect(error.message).toContain(message);
  });

  test("one beside the unit, as of pixels taken for mm", async () => {
    const error = await refusalOf(() => tossed(straight(size), "s", { inside: "M200 0h400v300h-400z" }));
    expect(error).toMatchObject({ code: "area-outside-unit", where: "areas > toss > inside" });
    expect(error.what).toContain("from 200, 0 to 600, 300 mm, beside the unit of 90 x 80 mm");
  });

  test("one that leaves no room", async () => {
    const narrow = await refusalOf(() => tossed(straight(size), "s", { inside: "M10 10h8v8h-8z" }));
    expect(narrow).toMatchObject({ code: "no-room", where: "areas > toss > inside" });
    expect(narrow.what).toContain('"leaf"');
    const edge = await refusalOf(() => tossed(straight(size), "s", { inside: wave(), edge: 20 }));
    expect(edge.what).toContain("with an edge of 20 mm");
    const all = await refusalOf(() => tossed(straight(size), "s", { outside: "M-1-1h92v82h-92z" }));
    expect(all).toMatchObject({ code: "no-room", where: "areas > toss > outside" });
    const counted = await refusalOf(() =>
      tossed(straight(size), "s", { inside: "M10 10h9v9h-9z", count: 5 }),
    );
    expect(counted.code).toBe("no-room");
  });

  test("one whose copies have too many sides together", async () => {
    const comb = `M0 0${"h.01v.01".repeat(2400)}V30H0Z`;
    const error = await refusalOf(() =>
      tossed(planeGroup({ group: "p4mm", width: 50 }), "s", { inside: comb, gap: 1 }),
    );
    expect(error).toMatchObject({ code: "area-too-detailed", where: "areas > toss > inside" });
  });
});

test("an ogee smaller than its cell keeps the cells apart; one as large as the cell is the whole ground", async () => {
  const repeat = ogee({ width: 60, height: 80 });
  const small = movePath(ogeeCurve({ width: 53, height: 72 }), 30_000, 40_000);
  judge(await tossed(repeat, "cells", { inside: small, edge: 0.5 }), small, "inside", 0.5);
  const whole = movePath(ogeeCurve({ width: 60, height: 80 }), 30_000, 40_000);
  const free = await tossed(repeat, "cells", {});
  const tile = await tossed(repeat, "cells", { inside: whole, edge: 5 });
  expect(tile.placements.length).toBe(free.placements.length);
});
