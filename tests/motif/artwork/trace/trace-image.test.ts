import { Resvg } from "@resvg/resvg-js";
import fc from "fast-check";
import { describe, expect, expectTypeOf, it } from "vitest";
import { pathData } from "../../../../src/geometry/path-text.ts";
import { buildTile, createKit, definePattern, recipeOf, straight, toss } from "../../../../src/index.ts";
import { inspectTrace, sayTrace } from "../../../../src/motif/artwork/trace/inspect-trace.ts";
import { traceImage } from "../../../../src/motif/artwork/trace/trace-image.ts";
import type { MotifUse } from "../../../../src/motif/motif.ts";
import { artworkPlugin } from "../../../../src/plugin/artwork.ts";
import { createRandom } from "../../../../src/seed/random.ts";
import { likeness } from "../picture.ts";
import { pixelsOf, rendered, sheetOf } from "./painted.ts";
import { motifOf } from "./traced-shape.ts";

const PAPER = "#f6ead7";
const buoy =
  '<path fill="#2f5d73" d="M4 74C20 66 30 82 50 74S82 66 96 74V92H4Z"/><path fill="#d9583f" d="M34 30H66L74 80H26Z"/>' +
  '<path fill="#fbf7ee" d="M30 46H70L72.5 62H27.5Z"/><path fill="#2b2a33" d="M48 8H52V30H48Z"/><circle cx="50" cy="54" r="5" fill="#2b2a33"/>';
const picture = rendered(sheetOf(buoy), 300);

/** The traced motif in its own inks, as it lies on its page of 100 units. */
function redrawn(use: MotifUse, fills: Readonly<Record<string, string>>, x: number, y: number): string {
  const layers = motifOf(use).shapes.map(
    ({ role, path }) => `<path fill="${fills[role]}" d="${pathData(path)}"/>`,
  );
  return sheetOf(`<g transform="translate(${x} ${y})">${layers.join("")}</g>`);
}

const patternOf = (motif: MotifUse): ReturnType<typeof definePattern> =>
  definePattern({
    name: "buoys",
    subject: "buoy",
    seed: "buoy-1",
    repeat: straight({ width: 120, height: 120 }),
    layout: toss({ motifs: [{ motif }] }),
    colorways: {
      plain: {
        ground: "#eee",
        ...Object.fromEntries(Object.values(motif.roles).map((role) => [role, "#888"])),
      },
    },
  });

describe("traceImage", () => {
  it("keeps the picture", () => {
    const use = traceImage(picture, { width: 100 });
    const fills = Object.fromEntries(inspectTrace(picture).roles.map(({ role, fill }) => [role, fill]));
    // All that is drawn reaches from 4 to 96 and from 8 to 92.
    expect(likeness(sheetOf(buoy), redrawn(use, fills, 50, 50), 300)).toBeGreaterThan(36);
    expect(() => new Resvg(redrawn(use, fills, 50, 50))).not.toThrow();
  });

  it("lets nothing shine through where inks meet", () => {
    const halves =
      '<rect x="10" y="10" width="40.3" height="80" fill="#2f5d73"/><path fill="#d9583f" d="M50.3 10H90V90H50.3Z"/>';
    const use = traceImage(rendered(sheetOf(halves), 200), { width: 100 });
    const lit = redrawn(use, { blue: "#000000", "deep-blue": "#000000", red: "#000000" }, 50, 50).replace(
      PAPER,
      "#ffffff",
    );
    const { data, width } = pixelsOf(
      new Uint8Array(new Resvg(lit, { fitTo: { mode: "width", value: 730 } }).render().asPng()),
    );
    let lightest = 0;
    for (let y = 90; y < 640; y++)
      for (let x = 300; x < 430; x++) lightest = Math.max(lightest, data[4 * (y * width + x)]!);
    expect(lightest).toBe(0);
  });

  it("is called by its roles, and the types know them", () => {
    const use = traceImage(picture, {
      roles: { "#2f5d73": "water", "#d9583f": "float", "#fff": "band", "#222": "iron" },
    });
    expectTypeOf(use).toEqualTypeOf<MotifUse<"water" | "float" | "band" | "iron">>();
    expect(Object.values(use.roles).sort()).toEqual(["band", "float", "iron", "water"]);
    const shared = traceImage(picture, {
      roles: { "#2f5d73": "water", "#d9583f": "float", "#fff": "float", "#222": "float" },
    });
    expect(
      motifOf(shared)
        .shapes.map(({ role }) => role)
        .sort(),
    ).toEqual(["float", "water"]);
  });

  it("refuses roles that do not fit the picture, and says what would", () => {
    expect(() => traceImage(picture, { roles: { "#d9583f": "float" } })).toThrow(
      /no role is given for 3 of 4 inks[\s\S]*"#2f5d73": "deep-blue"[\s\S]*missing-role/,
    );
    const all = { "#2f5d73": "water", "#d9583f": "float", "#fff": "band", "#222": "iron" };
    expect(() => traceImage(picture, { roles: { ...all, "#00ff00": "weed" } })).toThrow(/unknown-fill/);
    expect(() => traceImage(picture, { roles: { ...all, "#d85840": "rust" } })).toThrow(
      /both "float" and "rust"[\s\S]*ink-named-twice/,
    );
    expect(() => traceImage(picture, { roles: { ...all, nonsense: "weed" } })).toThrow(/wrong-type/);
  });

  it("takes its size from what is given, then from the file, and says when it guessed", () => {
    const longer = (options: object, from: unknown = picture): number => {
      const report = inspectTrace(from as Uint8Array, options);
      return Math.max(report.width, report.height);
    };
    expect(longer({ size: "5cm" })).toBeCloseTo(50, 2);
    expect(longer({ width: 200 })).toBeCloseTo(184, 0);
    expect(longer({ dpi: 300 })).toBeCloseTo((276 / 300) * 25.4, 1);
    expect(longer({})).toBeCloseTo(30, 2);
    expect(inspectTrace(picture).warnings.join()).toMatch(/nothing says how large/);
    // pHYs: 5906 pixels a metre are 150 dpi.
    const scan = new Uint8Array(
      Buffer.concat([
        picture.subarray(0, 33),
        Buffer.from([0, 0, 0, 9, 112, 72, 89, 115, 0, 0, 23, 18, 0, 0, 23, 18, 1, 0, 0, 0, 0]),
        picture.subarray(33),
      ]),
    );
    expect(longer({}, scan)).toBeCloseTo((276 / 150) * 25.4, 1);
    expect(inspectTrace(scan)).toMatchObject({ sized: "file", dpi: 150, warnings: [] });
    expect(longer({ dpi: 300 }, scan)).toBeCloseTo((276 / 300) * 25.4, 1);
    expect(() => longer({ size: 30, dpi: 300 })).toThrow(/size and dpi are both given[\s\S]*two-sizes/);
    expect(() => longer({ width: 20_000 })).toThrow(/length-range/);
  });

  it("needs fewer nodes where it may stray farther, and stays within what it may", () => {
    const nodes = ["0.3px", "1px", "4px"].map((tolerance) => {
      const report = inspectTrace(picture, { width: 300, tolerance: tolerance as `${number}px` });
      expect(report.deviation).toBeLessThanOrEqual(Number.parseFloat(tolerance));
      return report.nodes.after;
    });
    expect(nodes[0]).toBeGreaterThanOrEqual(nodes[1]!);
    expect(nodes[1]).toBeGreaterThanOrEqual(nodes[2]!);
    expect(inspectTrace(picture, { width: 300, tolerance: "1mm" }).nodes.after).toBe(nodes[1]);
  });

  it("refuses options that make no sense", () => {
    const odd =
      (options: object): (() => void) =>
      () =>
        traceImage(picture, options);
    expect(odd({ ink: 3 })).toThrow(/did you mean "inks"|unknown-option/);
    expect(odd({ inks: 0 })).toThrow(/number-range/);
    expect(odd({ inks: [] })).toThrow(/number-range/);
    expect(odd({ inks: ["#123456", "#123456"] })).toThrow(/another colour/);
    expect(odd({ inks: ["rgba(0,0,0,.5)"] })).toThrow(/opaque/);
    expect(odd({ paper: "off" })).toThrow(/wrong-type/);
    expect(odd({ tolerance: "90px" })).toThrow(/number-range/);
    expect(odd({ tolerance: 9, dpi: 300 })).toThrow(/number-range/);
    expect(odd({ specks: "-2px" })).toThrow(/wrong-type/);
    expect(odd({ specks: "390px" })).toThrow(/nothing is left|empty-artwork/);
    expect(() => traceImage(picture, [] as object)).toThrow(/wrong-type/);
  });

  it("gives the same from the same, from bytes or pixels, and does not change them", () => {
    const before = picture.slice();
    const [one, two] = [traceImage(picture), traceImage(pixelsOf(picture))];
    expect(one).toEqual(two);
    expect(picture).toEqual(before);
  });

  it("travels in a recipe as outlines, without the picture", async () => {
    const motif = traceImage(picture, { size: 30 });
    const pattern = patternOf(motif);
    const text = JSON.stringify(recipeOf(pattern));
    expect(text.length).toBeLessThan(12_000);
    const tile = await buildTile(pattern);
    const again = await createKit({ plugins: [artworkPlugin()] }).build(JSON.parse(text));
    expect(again.digest).toBe(tile.digest);
  });

  it("is refused from a recipe where it does not hold together", async () => {
    const kit = createKit({ plugins: [artworkPlugin()] });
    expect(JSON.stringify(kit.describe())).toContain("artwork/traced");
    const recipe = recipeOf(patternOf(traceImage(picture)));
    const broken = (params: object, roles: object = {}): Promise<unknown> => {
      const copy = JSON.parse(JSON.stringify(recipe));
      const { motif } = copy.layout.params.motifs[0];
      Object.assign(motif.params, params);
      Object.assign(motif.roles, roles);
      return kit.build(copy);
    };
    const cases: [Promise<unknown>, RegExp][] = [
      [broken({ inks: ["#d9583f"] }), /1 inks have 4 outlines[\s\S]*bad-trace/],
      [broken({ inks: ["red", "#000000", "#111111", "#222222"] }), /"red" is no ink/],
      [broken({}, { "#010101": "weed" }), /unknown-part/],
      [broken({ outlines: ["M", "M1", "x", ""] }), /bad-path-data/],
    ];
    for (const [built, said] of cases) await expect(built).rejects.toThrow(said);
  });
});

describe("the report of a trace", () => {
  it("says what was found in a line", () => {
    const report = inspectTrace(picture, { width: 100 });
    expect(sayTrace(report)).toMatch(/^6 shapes in, 4 inks, 4 roles out; \d+ nodes from \d+$/);
    expect(sayTrace({ ...report, dropped: { specks: 1, pinholes: 2 } })).toMatch(
      /; left out: 1 speck, 2 pinholes; /,
    );
    expect(report.nodes.after).toBeLessThan(70);
    const area = Object.fromEntries(report.inks.map(({ fill, area: mm2 }) => [fill, mm2]));
    // Stripe and dot in closed form: 4 x 22 and a circle of 5 mm.
    expect(area["#2b2a33"]).toBeCloseTo(88 + Math.PI * 25, -0.5);
    // The band goes through below the dot: its layer is the whole trapezium of 40 and 45 by 16, its ink less.
    const band = report.roles.find(({ fill }) => fill === "#fbf7ee")!;
    expect(Math.abs(band.area / 680 - 1)).toBeLessThan(0.005);
    expect(Math.abs(area["#fbf7ee"]! / (680 - Math.PI * 25) - 1)).toBeLessThan(0.01);
  });
});

describe("noise of any kind", () => {
  it("is traced or refused in words, and soon", () => {
    const random = createRandom("noise");
    const noise = new Uint8Array(4 * 300 * 300).map(() => Math.floor(random.between(0, 256)));
    const before = performance.now();
    for (const specks of ["0px", "4px"] as const)
      try {
        expect(traceImage({ width: 300, height: 300, data: noise }, { specks }).use).toBe("artwork/traced");
      } catch (error) {
        expect(String(error)).toMatch(/picture-too-rich|empty-artwork/);
      }
    expect(performance.now() - before).toBeLessThan(6000);
  });

  it("of the smallest pictures too", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 7 }),
        fc.integer({ min: 1, max: 7 }),
        fc.infiniteStream(fc.constantFrom(0, 128, 255)),
        fc.constantFrom("drop", "around", "keep"),
        (width, height, values, paper) => {
          const data = Uint8Array.from({ length: 4 * width * height }, () => values.next().value as number);
          try {
            const use = traceImage({ width, height, data }, { specks: "0px", paper: paper as "drop" });
            expect(motifOf(use).shapes.length).toBeGreaterThan(0);
          } catch (error) {
            expect(String(error)).toMatch(/empty-artwork|nothing was drawn/);
          }
        },
      ),
      { seed: 6, numRuns: 150 },
    );
  });
});
