import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { distanceBetween } from "../../../src/geometry/distance.ts";
import { outlineOf } from "../../../src/geometry/outline.ts";
import { boxOf, type Path } from "../../../src/geometry/path.ts";
import { type Plate, plateToPng, type SeparationOptions, separations } from "../../../src/print.ts";
import type { Tile } from "../../../src/tile/tile.ts";
import { refusalOf } from "../../given.ts";
import { BLOCK, dawn, harbour } from "../harbour.ts";
import { decode, moved, rolled } from "../png/pictures.ts";
import { blob, chance, circle, meadow, rectangle, tileOf } from "../png/tiles.ts";
import { visibleAreas } from "../visible-areas.ts";

const bare = { marks: false } as const;
const shares = (plates: readonly Plate[]): Record<string, number> =>
  Object.fromEntries(plates.map(({ role, coverage }) => [role, coverage]));
const refused = async (options: unknown): Promise<string> =>
  (await refusalOf(() => separations(harbour, options as SeparationOptions))).code;
/** Ink of each pixel, 0 to 255. */
const inkOf = async (plate: Plate, dpi: number, depth: 1 | 8 = 8): Promise<Uint8Array> => {
  const { data } = decode(await plateToPng(plate, { dpi, depth }));
  return Uint8Array.from({ length: data.length / 4 }, (_, i) => 255 - data[4 * i]!);
};
/** Curves are cut to the sheet to within 4 µm: of a pixel of 169 µm, that is 6 steps of 255. */
const SLIP = 6;
/** Sheets of 2 x 2 blocks of 300 x 150 pixels against sheets of one. */
async function expectFourTimes(one: readonly Plate[], four: readonly Plate[]): Promise<void> {
  for (const [i, plate] of one.entries()) {
    const [ink, more] = [await inkOf(plate, 150), await inkOf(four[i]!, 150)];
    expect([ink.length, more.length]).toEqual([45_000, 180_000]);
    const off = more.findIndex((value, k) => {
      const [x, y] = [k % 600, Math.floor(k / 600)];
      return Math.abs(value - ink[(y % 150) * 300 + (x % 300)]!) > SLIP;
    });
    expect(off, plate.role).toBe(-1);
  }
}
const lightToDark = ["ground", "float", "flag", "rope"];
const BLOCK_AREA = BLOCK.width * BLOCK.height;

describe("plates without a trap", () => {
  it("print what is seen of their role: areas as polygon-clipping finds them", async () => {
    for (const tile of [harbour, meadow(30_000, 1, 3)]) {
      const areas = visibleAreas(tile);
      const plates = await separations(tile, bare);
      expect(plates.map(({ role }) => role)).toEqual(["ground", ...tile.layers.map(({ role }) => role)]);
      for (const { role, coverage } of plates) expect(Math.abs(coverage - areas[role]!)).toBeLessThan(1e-4);
    }
  });

  it("add up to the whole: in area, in every pixel, and nearly so in bits", async () => {
    const plates = await separations(meadow(25_400, 1, 5), bare);
    expect(plates.reduce((sum, { coverage }) => sum + coverage, 0)).toBeCloseTo(1, 4);
    const inks = await Promise.all(plates.map((plate) => inkOf(plate, 150)));
    const most = inks[0]!.reduce(
      (worst, _, i) => Math.max(worst, Math.abs(inks.reduce((sum, ink) => sum + ink[i]!, 0) - 255)),
      0,
    );
    // Every plate rounds its share of a pixel, up to half a step of 255, on a grid of 1/256 pixel.
    expect(most).toBeLessThanOrEqual(8);
    const bits = await Promise.all(plates.map((plate) => inkOf(plate, 300, 1)));
    let odd = 0;
    for (let i = 0; i < bits[0]!.length; i++)
      odd += Number(bits.reduce((sum, ink) => sum + ink[i]!, 0) !== 255);
    expect(odd / bits[0]!.length).toBeLessThan(0.01);
  });

  it("repeat without a seam: 2 x 2 blocks are four times one, and a rolled tile gives rolled plates", async () => {
    const one = await separations(harbour, bare);
    await expectFourTimes(one, await separations(harbour, { ...bare, cut: { across: 2, down: 2 } }));
    const away = await separations(moved(harbour, 25_400, 12_700), bare);
    for (const [i, plate] of one.entries()) {
      const picture = decode(await plateToPng(plate, { dpi: 150 }));
      const other = decode(await plateToPng(away[i]!, { dpi: 150 }));
      const there = rolled(picture, 150, 75).data;
      expect(other.data.every((value, k) => Math.abs(value - there[k]!) <= SLIP)).toBe(true);
    }
  });

  it("let what overprints lie over what goes on beneath", async () => {
    const areas = shares(await separations(harbour, { ...bare, overprint: ["flag"] }));
    const without = visibleAreas({ ...harbour, layers: harbour.layers.slice(0, 2) });
    expect(areas["float"]).toBeCloseTo(without["float"]!, 4);
    expect(areas["ground"]).toBeCloseTo(without["ground"]!, 4);
    expect(areas["flag"]).toBeCloseTo(45e6 / BLOCK_AREA, 6);
  });

  it("leave out the ground when it is not printed", async () => {
    expect(shares(await separations(harbour, { ...bare, ground: false }))).not.toHaveProperty("ground");
  });
});

describe("a trap", () => {
  const trapped = (options: SeparationOptions = {}) =>
    separations(harbour, { ...bare, trap: 0.3, lightToDark, ...options });

  it("lets the ground reach under a darker circle: pi (r - trap) squared is what it leaves, at the block's corner too", async () => {
    for (const [x, y] of [
      [25_000, 12_000],
      [50_800, 25_400],
      [100, 25_300],
    ] as const) {
      const buoy = tileOf(BLOCK, [{ role: "float", path: circle(x, y, 5000) }]);
      const darker = shares(
        await separations(buoy, { ...bare, trap: 0.3, lightToDark: ["ground", "float"] }),
      );
      expect(((1 - darker["ground"]!) * BLOCK_AREA) / (Math.PI * 4700 * 4700)).toBeCloseTo(1, 2);
      expect((darker["float"]! * BLOCK_AREA) / (Math.PI * 5000 * 5000)).toBeCloseTo(1, 3);
      const lighter = shares(
        await separations(buoy, { ...bare, trap: 0.3, lightToDark: ["float", "ground"] }),
      );
      expect((lighter["float"]! * BLOCK_AREA) / (Math.PI * 5300 * 5300)).toBeCloseTo(1, 2);
      expect(((1 - lighter["ground"]!) * BLOCK_AREA) / (Math.PI * 5000 * 5000)).toBeCloseTo(1, 3);
    }
  });

  it("spreads nothing onto cloth that is not printed", async () => {
    const buoy = tileOf(BLOCK, [{ role: "float", path: circle(25_000, 12_000, 5000) }]);
    const options = { ...bare, trap: 0.3, lightToDark: ["float", "ground"] };
    const [bareCloth, printed] = [
      await separations(buoy, { ...options, ground: false }),
      await separations(buoy, options),
    ];
    expect(shares(bareCloth)["float"]).toBe(shares(await separations(buoy, bare))["float"]);
    expect(shares(printed)["float"]).toBeGreaterThan(shares(bareCloth)["float"]! * 1.1);
  });

  it("leaves the darkest ink as it is, and takes nothing from the others", async () => {
    const [plain, spread] = [await separations(harbour, bare), await trapped()];
    for (const [i, plate] of plain.entries()) {
      const [before, after] = [await inkOf(plate, 150), await inkOf(spread[i]!, 150)];
      const least = before.reduce((low, ink, k) => Math.min(low, after[k]! - ink), 0);
      expect(least).toBeGreaterThanOrEqual(-1);
    }
    expect(shares(spread)["rope"]).toBe(shares(plain)["rope"]);
  });

  it("crosses the seam: 2 x 2 blocks are four times one, endless ropes included", async () => {
    await expectFourTimes(await trapped(), await trapped({ cut: { across: 2, down: 2 } }));
  });

  it("does not spread an ink into a neighbour that it does not touch", async () => {
    // A light float 0.1 mm from a dark rope, with a flag across both so that they belong together.
    const layers = [
      { role: "rope", path: rectangle(5000, 10_000, 30_000, 5000) },
      { role: "float", path: rectangle(5000, 4900, 10_000, 5000) },
      { role: "flag", path: rectangle(30_000, 4000, 2000, 8000) },
    ];
    const apart = await separations(tileOf(BLOCK, layers), {
      ...bare,
      trap: 0.5,
      lightToDark: ["ground", "float", "flag", "rope"],
    });
    const float = apart.find(({ role }) => role === "float")!;
    expect(boxOf(float.path)).toEqual({ minX: 5000, minY: 4900, maxX: 15_000, maxY: 9900 });
  });

  it("takes its order from a colorway: lighter inks first", async () => {
    // Relative luminances (WCAG 2.2) of dawn: ground .84, float .26, flag .06, rope .03.
    expect(await trapped({ lightToDark: dawn })).toEqual(await trapped());
  });

  it("keeps within 10 µm of the true parallel, whatever the shape", async () => {
    await fc.assert(
      fc.asyncProperty(fc.nat(1000), async (seed) => {
        const path = blob(chance(seed), 25_000, 12_500, 6000);
        const buoy = tileOf(BLOCK, [{ role: "float", path }]);
        const [, float] = await separations(buoy, { ...bare, trap: 0.5, lightToDark: ["float", "ground"] });
        const [home, p] = [outlineOf(path, 1), float!.path.points];
        for (let i = 0; i < p.length; i += 6) {
          const at: Path = {
            points: Int32Array.of(
              p[i]!,
              p[i + 1]!,
              p[i]!,
              p[i + 1]!,
              p[i]!,
              p[i + 1]!,
              p[i]!,
              p[i + 1]!,
              p[i]!,
              p[i + 1]!,
              p[i]!,
              p[i + 1]!,
              p[i]!,
              p[i + 1]!,
              p[i]!,
              p[i + 1]!,
              p[i]!,
              p[i + 1]!,
            ),
            contours: [3],
          };
          expect(Math.abs(distanceBetween(outlineOf(at, 1), home) - 500)).toBeLessThan(10);
        }
      }),
      { seed: 6, numRuns: 5 },
    );
  });
});

describe("marks", () => {
  it("lie outside the bleed, alike on every plate but for the name, and within the sheet", async () => {
    const plates = await separations(harbour, { bleed: 3 });
    for (const { marks, size, bleed, slug } of plates) {
      const whole = boxOf(marks);
      expect(whole.minX).toBeGreaterThanOrEqual(-bleed - slug);
      expect(whole.maxX).toBeLessThanOrEqual(size.width + bleed + slug);
      expect(whole.maxY).toBeLessThanOrEqual(size.height + bleed + slug);
      const sheet = outlineOf(rectangle(-bleed, -bleed, size.width + 2 * bleed, size.height + 2 * bleed), 1);
      expect(distanceBetween(outlineOf(marks, 1), sheet)).toBeGreaterThan(1000);
    }
    expect(new Set(plates.map(({ marks }) => marks.contours.length)).size).toBeGreaterThan(1);
  });

  it("do not touch what is printed, and do not come into the coverage", async () => {
    const [marked, unmarked] = [await separations(harbour), await separations(harbour, bare)];
    expect(shares(marked)).toEqual(shares(unmarked));
    expect(unmarked.every(({ marks, slug }) => marks.contours.length === 0 && slug === 0)).toBe(true);
  });
});

describe("separations are refused", () => {
  it("for what makes no sense, before any work", async () => {
    expect(await refused({ bleed: -1 })).toBe("length-range");
    expect(await refused({ trap: 6, lightToDark })).toBe("length-range");
    expect(await refused({ trap: 0.2 })).toBe("missing-option");
    expect(await refused({ trap: 0.2, lightToDark: ["ground", "float"] })).toBe("missing-role");
    expect(await refused({ trap: 0.2, lightToDark: [...lightToDark, "sail"] })).toBe("unknown-role");
    expect(await refused({ trap: 0.2, lightToDark: { name: "x", inks: { ground: "#fff" } } })).toBe(
      "missing-ink",
    );
    expect(await refused({ overprint: ["flagg"] })).toBe("unknown-role");
    expect(await refused({ overprint: "flag" })).toBe("wrong-type");
    expect(await refused({ marks: 1 })).toBe("wrong-type");
    expect(await refused({ traps: 1 })).toBe("unknown-option");
    expect(await refused({ cut: { across: 1001, down: 1 } })).toBe("number-range");
    expect(await refused({ cut: { across: 1000, down: 1000 } })).toBe("drawing-too-large");
    expect((await refusalOf(() => separations({} as Tile))).code).toBe("wrong-type");
  });

  it("when the work is called off", async () => {
    const signal = AbortSignal.abort(new Error("closing time"));
    await expect(separations(harbour, bare, { signal })).rejects.toThrow("closing time");
  });
});
