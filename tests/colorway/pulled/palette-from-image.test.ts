import fc from "fast-check";
import { PNG } from "pngjs";
import { describe, expect, it } from "vitest";
import { deltaE } from "../../../src/colorway/delta-e.ts";
import { kMeans, spreadOf } from "../../../src/colorway/pulled/k-means.ts";
import { paletteFromImage } from "../../../src/colorway/pulled/palette-from-image.ts";
import { clusterOf, shareOut } from "../../../src/motif/artwork/trace/cluster.ts";
import { type Bin, placeOf } from "../../../src/motif/artwork/trace/histogram.ts";
import { createRandom } from "../../../src/seed/random.ts";
import { refusal } from "../../given.ts";

type Pixel = readonly [number, number, number, number?];

/** A PNG by pngjs, which is not the library's reader. */
function png(width: number, height: number, at: (x: number, y: number) => Pixel): Uint8Array {
  const picture = new PNG({ width, height });
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const [r, g, b, a = 255] = at(x, y);
      picture.data.set([r, g, b, a], 4 * (y * width + x));
    }
  return new Uint8Array(PNG.sync.write(picture));
}

const SEA: Pixel = [39, 86, 107];
const SAND: Pixel = [232, 208, 160];
const KELP: Pixel = [63, 107, 79];
const BUOY: Pixel = [217, 80, 60];

describe("a palette from an image", () => {
  it("finds four paints under grain, the largest first, and a buoy of two pixels in a thousand among them", () => {
    const random = createRandom("grain");
    const grain = (pixel: Pixel): Pixel =>
      pixel.map((v) =>
        Math.round(Math.min(255, Math.max(0, v! + random.between(-9, 9)))),
      ) as unknown as Pixel;
    const picture = png(160, 120, (x, y) =>
      (x - 80) ** 2 + (y - 40) ** 2 < 12
        ? grain(BUOY)
        : y < 70
          ? grain(SEA)
          : x < 100
            ? grain(SAND)
            : grain(KELP),
    );
    const { name, inks } = paletteFromImage(picture, { name: "bay", count: 4 });
    expect(name).toBe("bay");
    expect(Object.keys(inks)).toHaveLength(4);
    const found = Object.values(inks);
    [SEA, SAND, KELP, BUOY].forEach((pixel, i) => {
      const planted = `rgb(${pixel[0]} ${pixel[1]} ${pixel[2]})`;
      expect(deltaE(found[i]!, planted), planted).toBeLessThan(2);
    });
  });

  it("gives flat colours as they are, however many more are asked for", () => {
    const flat = png(20, 20, (x) => (x < 5 ? BUOY : SEA));
    expect(paletteFromImage(flat, { name: "flat", count: 9 }).inks).toEqual({
      "deep-blue": "#27566b",
      red: "#d9503c",
    });
    expect(
      paletteFromImage({ width: 1, height: 1, data: new Uint8Array([1, 2, 3, 255]) }, { name: "dot" }).inks,
    ).toEqual({
      black: "#010203",
    });
  });

  it("is the same for a seed, and passes over what is transparent", () => {
    const picture = png(32, 32, (x, y) => [x * 8, y * 8, (x * y) % 256, x < 4 ? 0 : 255]);
    const pulled = (seed: string): string =>
      JSON.stringify(paletteFromImage(picture, { name: "p", count: 5, seed }));
    expect(pulled("a")).toBe(pulled("a"));
    expect(new Set(["a", "b", "c", "d", "e"].map(pulled)).size).toBeGreaterThan(1);
    const none = png(8, 8, () => [200, 20, 20, 0]);
    expect(refusal(() => paletteFromImage(none, { name: "none" })).code).toBe("empty-palette");
  });

  it.each([
    [new Uint8Array(0), { name: "p" }, "not-png"],
    [new Uint8Array([0xff, 0xd8, 0xff, 0xe0]), { name: "p" }, "not-png"],
    [7, { name: "p" }, "wrong-type"],
    [new Uint8Array(9), {}, "missing-option"],
    [new Uint8Array(9), { name: "p", count: 0 }, "number-range"],
    [new Uint8Array(9), { name: "p", count: 33 }, "number-range"],
    [new Uint8Array(9), { name: "p", colors: 3 }, "unknown-option"],
  ])("refuses %s with %j", (picture, options, code) => {
    expect(refusal(() => paletteFromImage(picture as never, options as never)).code).toBe(code);
  });
});

describe("k-means", () => {
  const bin = (rgb: readonly [number, number, number], pixels: number, key: number): Bin => {
    const mix = [...rgb, 255] as const;
    return { key, pixels, amidst: 0, mix, place: placeOf(mix) };
  };
  const byte = fc.integer({ min: 0, max: 255 });
  const bins = fc
    .array(fc.tuple(fc.tuple(byte, byte, byte), fc.integer({ min: 1, max: 50 })), {
      minLength: 6,
      maxLength: 60,
    })
    .map((entries) => entries.map(([rgb, pixels], i) => bin(rgb, pixels, i)));

  it("ends where no bin is nearer to another mean, and beats any choice of bins as means", () => {
    fc.assert(
      fc.property(
        bins,
        fc.integer({ min: 1, max: 5 }),
        fc.integer({ min: 0, max: 999 }),
        (all, count, seed) => {
          const found = kMeans(all, count, createRandom(`s${seed}`));
          expect(
            found.flatMap((cluster) => cluster.bins.map(({ key }) => key)).sort((a, b) => a - b),
          ).toEqual(all.map(({ key }) => key));
          const spread = found.reduce((sum, cluster) => sum + spreadOf(cluster), 0);
          const random = createRandom(`other ${seed}`);
          const picked = Array.from({ length: count }, () => random.pick(all).place);
          const other = shareOut(all, picked)
            .filter((share) => share.length > 0)
            .map(clusterOf)
            .reduce((sum, cluster) => sum + spreadOf(cluster), 0);
          expect(spread).toBeLessThanOrEqual(other * 1.02 + 1e-9);
        },
      ),
      { seed: 81, numRuns: 60 },
    );
  });

  it("finds planted groups that are far apart, whatever the seed", () => {
    const random = createRandom("planted");
    const near = ([r, g, b]: readonly number[]): [number, number, number] =>
      [r!, g!, b!].map((v) => Math.round(v + random.between(-6, 6))) as [number, number, number];
    const groups = [SEA, SAND, KELP, BUOY, [20, 20, 24]] as const;
    const all = groups.flatMap((group, i) =>
      Array.from({ length: 30 }, (_, k) => bin(near(group as never), 1, 30 * i + k)),
    );
    for (let seed = 0; seed < 20; seed++) {
      const found = kMeans(all, 5, createRandom(`${seed}`));
      const sets = found.map((cluster) => new Set(cluster.bins.map(({ key }) => Math.floor(key / 30))));
      expect(sets.map((set) => set.size)).toEqual([1, 1, 1, 1, 1]);
    }
  });
});
