import fc from "fast-check";
import { describe, expect, it, test } from "vitest";
import { boxOf, eachContour } from "../../../src/geometry/path.ts";
import { colorwaySheet } from "../../../src/output/sheet/colorway-sheet.ts";
import { pageToPng } from "../../../src/output/sheet/draw/to-png.ts";
import { lineSheet } from "../../../src/output/sheet/line-sheet.ts";
import type { Cloth, Fill, Page } from "../../../src/output/sheet/page.ts";
import { ruler } from "../../../src/output/sheet/ruler.ts";
import { strikeOffSheet } from "../../../src/output/sheet/strike-off.ts";
import type { PrintSize } from "../../../src/units/print-sizes.ts";
import { refusal } from "../../given.ts";
import { clashes, colorwaysOf, dawn, decode, font, manyRoles, said, texts, tile } from "./given.ts";

const cloths = (page: Page): Cloth[] => page.items.filter((item): item is Cloth => item.kind === "cloth");

describe("every sheet", () => {
  const size = fc.constantFrom<PrintSize>("A5", "A4", "A3", "letter", "11x14in", { width: 300, height: 300 });
  const landscape = fc.boolean();
  const title = fc.constantFrom(
    "Shore",
    "Shore, the small coordinate of the harbour collection for lining and piping",
  );

  it("keeps its texts apart from each other and from the cloth, within the margins", () => {
    fc.assert(
      fc.property(
        size,
        landscape,
        title,
        fc.integer({ min: 1, max: 24 }),
        fc.integer({ min: 2, max: 12 }),
        fc.constantFrom("tide", "regatta-night-black-pale-lime-paper"),
        (size, landscape, title, count, roles, name) => {
          const { tile: many, colorway } = manyRoles(roles);
          const given = { tile: many, font, size, landscape, title, margin: 10 };
          const colorways = Array.from({ length: count }, (_, i) => ({
            ...colorway,
            name: `${name}-${i}`,
            score: 99 - i,
          }));
          for (const make of [
            () => strikeOffSheet({ ...given, colorway }),
            () => colorwaySheet({ ...given, colorways }),
            () => lineSheet({ ...given, colorways, studio: "Hollin Quay Print Studio" }),
          ])
            try {
              expect(clashes(make(), 10)).toEqual([]);
            } catch (error) {
              // What has no room is refused, never squeezed.
              if ((error as { code?: string }).code !== "page-too-small") throw error;
            }
        },
      ),
      { numRuns: 12 },
    );
  });

  it("says names of colorways whole, in two lines where they are long, and all in one size", () => {
    const long = "Regatta night black pale lime paper";
    const colorways = colorwaysOf(20).map((one, i) => ({
      ...one,
      name: `${long.toLowerCase().replaceAll(" ", "-")}-${i + 1}`,
      score: 90,
    }));
    for (const make of [colorwaySheet, lineSheet]) {
      const page = make({ tile, colorways, font });
      const words = said(page).join(" ");
      for (let i = 2; i <= 20; i++) expect(words).toContain(`${long} ${i}`);
      expect(words).not.toContain("…");
      const firsts = texts(page).filter(({ says }) => says === "Regatta night black");
      expect(firsts.length).toBeGreaterThanOrEqual(19);
      const heights = firsts.map(({ path }) => boxOf(path).maxY - boxOf(path).minY);
      expect(Math.max(...heights) - Math.min(...heights)).toBeLessThanOrEqual(2); // µm
    }
  });

  test.each([
    ["an A4 strike-off of 12 inks", () => strikeOffSheet({ ...manyRoles(12), font })],
    ["an A4 sheet of 24 colorways", () => colorwaySheet({ tile, colorways: colorwaysOf(24), font })],
    ["an A4 line sheet of 12 colorways", () => lineSheet({ tile, colorways: colorwaysOf(12), font })],
    ["a strike-off on A5", () => strikeOffSheet({ tile, colorway: dawn, font, size: "A5" })],
    ["a level A4 line sheet", () => lineSheet({ tile, colorways: colorwaysOf(5), font, landscape: true })],
  ])("has room for %s", (_, make) => expect(clashes(make(), 12)).toEqual([]));

  it("is refused where it has no room, no colorways, or inks for another tile", () => {
    const sheet = { tile, font };
    expect(refusal(() => strikeOffSheet({ ...sheet, colorway: dawn, size: "A7" })).code).toBe(
      "page-too-small",
    );
    expect(refusal(() => strikeOffSheet({ ...sheet, colorway: dawn, margin: 120 })).message).toContain(
      "leaves 0 x 57 mm",
    );
    expect(refusal(() => strikeOffSheet({ ...manyRoles(63), font, size: "A5", landscape: true })).code).toBe(
      "page-too-small",
    );
    expect(refusal(() => colorwaySheet({ ...sheet, colorways: [] })).code).toBe("no-colorways");
    expect(refusal(() => colorwaySheet({ ...sheet, colorways: {} })).code).toBe("no-colorways");
    expect(refusal(() => lineSheet({ ...sheet, colorways: colorwaysOf(26) })).code).toBe(
      "too-many-colorways",
    );
    expect(refusal(() => colorwaySheet({ ...sheet, colorways: colorwaysOf(60), size: "A5" })).code).toBe(
      "page-too-small",
    );
    const foreign = { name: "foreign", inks: { ground: "#ffffff", petal: "#ff0000" } };
    expect(refusal(() => lineSheet({ ...sheet, colorways: [dawn, foreign] })).code).toBe("missing-ink");
  });

  it("is refused with words that its font lacks, unknown options, and what is no font or tile", () => {
    const sheet = { tile, font, colorway: dawn };
    const missing = refusal(() => strikeOffSheet({ ...sheet, title: "Hafen 港 und Ж" }));
    expect(missing.code).toBe("missing-glyph");
    expect(missing.what).toContain('"港" (U+6E2F), "Ж" (U+0416)');
    expect(refusal(() => strikeOffSheet({ ...sheet, papersize: "A4" } as never)).code).toBe("unknown-option");
    expect(refusal(() => strikeOffSheet({ ...sheet, font: "Hanken" } as never)).code).toBe("wrong-type");
    expect(refusal(() => strikeOffSheet({ ...sheet, tile: Promise.resolve(tile) } as never)).code).toBe(
      "wrong-type",
    );
    expect(refusal(() => strikeOffSheet({ colorway: dawn, tile } as never)).code).toBe("missing-option");
  });
});

describe("a strike-off", () => {
  const page = strikeOffSheet({ tile, colorway: dawn, font });

  it("shows the cloth at true size, and ticks one repeat apart at its edges", () => {
    const [cloth, ...others] = cloths(page);
    expect([cloth!.scale, others.length]).toEqual([1, 0]);
    const { area, at } = cloth!;
    const marks = page.items.filter((item): item is Fill => item.kind === "fill" && item.says === undefined);
    const ticks = centres(marks[0]!);
    const above = ticks.filter(({ y }) => y < area.minY).map(({ x }) => x);
    const beside = ticks.filter(({ x }) => x < area.minX).map(({ y }) => y);
    // The shore is a half-drop of 60 x 40 mm.
    for (const [list, step, origin] of [
      [above, 60_000, at[0]],
      [beside, 40_000, at[1]],
    ] as const) {
      expect(list.length).toBeGreaterThan(1);
      for (const [i, place] of list.entries()) {
        expect((place - origin) % step).toBeCloseTo(0, 6);
        if (i > 0) expect(place - list[i - 1]!).toBe(step);
      }
    }
  });

  it("names every role with its values, and colours each chip with its ink", async () => {
    const { data, width } = decode(await pageToPng(page, { dpi: 25 }));
    for (const [role, ink] of Object.entries(dawn.inks)) {
      const value = Number.parseInt(ink.slice(1), 16);
      expect(said(page)).toEqual(
        expect.arrayContaining([role, ink, `${value >> 16} ${(value >> 8) & 255} ${value & 255}`]),
      );
      const label = texts(page).find(({ says }) => says === role)!;
      const { minX, minY } = boxOf(label.path);
      const [x, y] = [minX + 4000, minY - 6000].map((um) => Math.round((um * 25) / 25_400)) as [
        number,
        number,
      ];
      expect([...data.subarray((y * width + x) * 4, (y * width + x) * 4 + 3)]).toEqual([
        value >> 16,
        (value >> 8) & 255,
        value & 255,
      ]);
    }
  });

  it("says what repeats, in mm and inches", () => {
    expect(said(page)).toContain("Dawn · half-drop, 60 × 40 mm (2.36 × 1.57 in)");
  });
});

describe("a ruler", () => {
  // The inch is 25.4 mm exactly: the international yard and pound agreement of 1959.
  it("has a long tick every 10 mm above its line, and every 25.4 mm below it", () => {
    const [ticks] = ruler(font, 7, 3, 190) as [Fill];
    const boxes = contourBoxes(ticks);
    const [line] = boxes.filter(({ width }) => width > 1000);
    const long = boxes.filter(({ height }) => height === 2600);
    const starts = (below: boolean) =>
      long
        .filter(({ minY }) => minY > line!.minY === below)
        .map(({ minX, width }) => (minX + width / 2 - 7000) / 1000);
    expect(starts(false)).toEqual(Array.from({ length: 20 }, (_, i) => i * 10));
    for (const [i, mm] of starts(true).entries()) expect(mm).toBeCloseTo(i * 25.4, 3);
    expect(starts(true)).toHaveLength(8);
  });
});

describe("a sheet of colorways", () => {
  const colorways = colorwaysOf(5).map((one, i) => ({ ...one, score: 88.4 - i }));
  const page = colorwaySheet({ tile, colorways, font });

  it("shows the same cut in every colorway, and below it greys of the same lightness", () => {
    const all = cloths(page);
    expect(all).toHaveLength(10);
    const cut = ({ area, at, scale }: Cloth) => [at[0] - area.minX, at[1] - area.minY, scale].join();
    expect(new Set(all.filter((_, i) => i % 2 === 0).map(cut)).size).toBe(1);
    for (const { colorway } of all.filter((_, i) => i % 2 === 1))
      for (const ink of Object.values<string>(colorway.inks)) expect(ink).toMatch(/^#(..)\1\1$/);
  });

  it("names each, with its score where it has one", () => {
    expect(said(page)).toEqual(expect.arrayContaining(["Tide 1", "88", "Tide 5", "84"]));
    expect(said(page)[1]).toMatch(
      /^5 colorways at \d+ %, scores out of 100$|^5 colorways at true size, scores/,
    );
    expect(said(colorwaySheet({ tile, colorways: { dawn }, font }))).toEqual(
      expect.arrayContaining([expect.stringMatching(/^1 colorway at/), "Dawn"]),
    );
  });
});

describe("a line sheet", () => {
  it("says subject, repeat in both units, straight block and who sells it; scores stay in the studio", () => {
    const colorways = colorwaysOf(3).map((one) => ({ ...one, score: 71 }));
    const words = said(
      lineSheet({ tile, colorways, font, title: "Shore", studio: "Hollin Quay Print Studio" }),
    );
    expect(words).toEqual(
      expect.arrayContaining([
        ...["Shore", "buoy", "half-drop, 60 × 40 mm", "2.36 × 1.57 in", "120 × 40 mm"],
        ...["Tide 2", "Tide 3", "Hollin Quay Print Studio"],
      ]),
    );
    expect(words).not.toContain("71");
  });
});

const contourBoxes = (fill: Fill) => {
  const boxes: { minX: number; minY: number; width: number; height: number }[] = [];
  eachContour(fill.path, (from, to, i) => {
    const box = boxOf({ points: fill.path.points.subarray(from, to), contours: [fill.path.contours[i]!] });
    boxes.push({ minX: box.minX, minY: box.minY, width: box.maxX - box.minX, height: box.maxY - box.minY });
  });
  return boxes;
};
const centres = (fill: Fill) =>
  contourBoxes(fill).map(({ minX, minY, width, height }) => ({ x: minX + width / 2, y: minY + height / 2 }));
