import { describe, expect, it } from "vitest";
import { extentOf } from "../../src/geometry/extent.ts";
import { placing, transformPath } from "../../src/geometry/matrix.ts";
import { areaOf } from "../../src/geometry/path.ts";
import {
  border,
  buildTile,
  definePattern,
  type LayoutUse,
  leaf,
  placeAt,
  rasterize,
  ring,
  type Tile,
  toss,
} from "../../src/index.ts";
import { type Picture, readPng } from "../flow/picture.ts";
import { refusalOf } from "../given.ts";

type Piece = "band" | "left-corner" | "right-corner";
// 360 x 200 pixels at 100 dpi.
const [W, H] = [91.44, 50.8];
const roles = { blade: "leaf", vein: "ground" } as const;
const motifs = [
  { motif: leaf({ length: 22, roles, vary: 0.5 }), share: 2 },
  { motif: ring({ size: 9, roles: { core: "ring" } }), share: 1 },
];
const inks = { dawn: { ground: "#f6ead7", leaf: "#3f6b4f", ring: "#c9573f" } };
const hem = (layout: LayoutUse<"leaf" | "ring" | "ground">, piece: Piece = "band", margin = 3, width = W) =>
  definePattern({
    name: "hem",
    seed: "hem-1",
    repeat: border({ width, height: H, margin, piece }),
    layout,
    colorways: inks as never,
  });
const tossed = toss({ gap: 2, motifs });
const picture = async (tile: Tile): Promise<Picture> =>
  readPng((await rasterize(tile, { dpi: 100 })).png({ name: "dawn", inks: inks.dawn }));

/** The greatest difference of any channel over pixels (x, y) of one picture and their images in another. */
function farthest(
  one: Picture,
  two: Picture,
  at: (x: number, y: number) => readonly [number, number] | undefined,
) {
  let most = 0;
  let seen = 0;
  for (let y = 0; y < one.height; y++)
    for (let x = 0; x < one.width; x++) {
      const image = at(x, y);
      if (!image) continue;
      seen++;
      for (let c = 0; c < 3; c++)
        most = Math.max(
          most,
          Math.abs(
            one.data[(y * one.width + x) * 4 + c]! - two.data[(image[1] * two.width + image[0]) * 4 + c]!,
          ),
        );
    }
  return { most, seen };
}

describe("a border", () => {
  it.each(["airy", "even", "packed"] as const)("keeps an %s toss inside its margins", async (density) => {
    const tile = await buildTile(hem(toss({ gap: 2, density, motifs }), "band", 4));
    expect(tile.placements.length).toBeGreaterThan(4);
    for (const { motif, x, y, turn, scale, flip } of tile.placements) {
      const path = transformPath(tile.motifs[motif]!.outline, placing(x, y, turn, scale, flip));
      const [top, bottom] = extentOf(path, 1);
      expect(top).toBeGreaterThanOrEqual(4000);
      expect(bottom).toBeLessThanOrEqual(H * 1000 - 4000);
    }
  });

  it("lets motifs cross its ends, where it repeats", async () => {
    const tile = await buildTile(hem(tossed));
    const across = tile.placements.some(({ motif, x, y, turn, scale, flip }) => {
      const path = transformPath(tile.motifs[motif]!.outline, placing(x, y, turn, scale, flip));
      const [left, right] = extentOf(path, 0);
      return left < 0 || right > W * 1000;
    });
    expect(across).toBe(true);
  });

  it("refuses a motif by hand that crosses an edge, and says by how much", async () => {
    const error = await refusalOf(() =>
      buildTile(
        hem(
          placeAt({
            places: [
              { motif: ring({ size: 10, roles: { core: "ring" } }), x: 20, y: 6 },
              { motif: leaf({ length: 18, roles }), x: 40, y: 25 },
            ],
          }),
        ),
      ),
    );
    expect(error.code).toBe("crosses-border");
    expect(error.where).toContain("hem > p1");
    expect(error.what).toMatch(/^it reaches 2(\.\d+)? mm beyond where the top edge .*3 mm included/);
  });

  it("refuses motifs of a toss that are higher than the band lets them be", async () => {
    const tall = leaf({ length: 60, bend: 0, roles });
    const error = await refusalOf(() =>
      buildTile(hem(toss({ direction: "one-way", motifs: [{ motif: tall }, ...motifs] }))),
    );
    expect(error.code).toBe("motif-too-large");
  });

  it.each([25.4, 30])("refuses two margins of %f mm, which leave nothing", async (margin) => {
    expect((await refusalOf(() => buildTile(hem(tossed, "band", margin)))).code).toBe("length-range");
  });
});

describe.each([
  ["right-corner", W],
  ["left-corner", W],
  ["right-corner", 20.32],
] as const)("the %s of a border %f mm long", (piece, width) => {
  const layout =
    width === W
      ? tossed
      : placeAt({
          places: [
            { motif: leaf({ length: 18, roles }), x: 3, y: 30, turn: 0.1 },
            { motif: ring({ size: 9, roles: { core: "ring" } }), x: 12, y: 12 },
          ],
        });
  const built = Promise.all([
    buildTile(hem(layout, "band", 3, width)),
    buildTile(hem(layout, piece, 3, width)),
  ]);

  it("is a square of the band's height with the same placements", async () => {
    const [band, corner] = await built;
    expect(corner.block).toEqual({ width: 50_800, height: 50_800 });
    expect(corner.placements).toEqual(band.placements);
    expect(corner.digest).not.toBe(band.digest);
    for (const { path } of corner.layers) {
      expect(areaOf(path)).toBeGreaterThan(0);
      for (const axis of [0, 1] as const) {
        const [least, most] = extentOf(path, axis);
        // Cut to its edges, to the µm that rounding may cost.
        expect(least).toBeGreaterThanOrEqual(-1);
        expect(most).toBeLessThanOrEqual(50_801);
      }
    }
  });

  it("is its own mirror image about the mitre, and goes on from the band above it", async () => {
    const [band, corner] = await built;
    const [strip, square] = [await picture(band), await picture(corner)];
    const n = square.width;
    expect([n, square.height, strip.height]).toEqual([200, 200, 200]);
    const right = piece === "right-corner";
    const mirrored = farthest(square, square, (x, y) => (right ? [n - 1 - y, n - 1 - x] : [y, x]));
    expect(mirrored.most).toBeLessThanOrEqual(4);
    // The pixels that lie wholly above the mitre are the band's, which starts or ends at the square's edge.
    const above = (x: number, y: number): boolean => (right ? x + y < n - 3 : x > y + 2);
    const same = farthest(square, strip, (x, y) => {
      if (!above(x, y)) return undefined;
      const along = right ? x : x - n;
      return [((along % strip.width) + strip.width) % strip.width, y];
    });
    expect(same.seen).toBeGreaterThan(15_000);
    // Two pictures, two palettes: each rounds a blend to its own levels, of which a pair of roles has at least 25.
    // Half a level of the widest contrast (255) each makes 10; a corner that was off by a pixel differs by 100 and more.
    expect(same.most).toBeLessThanOrEqual(10);
    const off = farthest(square, strip, (x, y) => {
      if (!above(x, y)) return undefined;
      const along = (right ? x : x - n) + 1;
      return [((along % strip.width) + strip.width) % strip.width, y];
    });
    expect(off.most).toBeGreaterThan(100);
  });
});
