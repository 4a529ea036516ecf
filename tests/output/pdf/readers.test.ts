// PDF files held up against readers from outside: qpdf, mutool (MuPDF), poppler and Ghostscript.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { blossom, buildTile, definePattern, pear, set, straight } from "../../../src/index.ts";
import { type PdfOptions, recipeInPdf, toPdf } from "../../../src/print.ts";
import { dawn, harbour } from "../harbour.ts";
import { areInstalled, askAbout, madeOf } from "../outside.ts";
import { decode, inksOf, picture } from "../png/pictures.ts";
import { visibleAreas } from "../visible-areas.ts";

/** A pattern of the library's own motifs, with what lies over what, and holes. */
const orchardPattern = definePattern({
  name: "orchard",
  seed: "orchard-1",
  repeat: straight({ width: "2in", height: "1in" }),
  layout: set({ motifs: [pear({ height: 20 }), blossom({ size: 18 })], columns: 2, rows: 1 }),
  colorways: {
    dawn: {
      ...{ ground: "#f6ead7", stem: "#5b4632", leaf: "#3f6b4f", fruit: "#d9b23c", highlight: "#f3dd8a" },
      ...{ petal: "#e9a8a0", marking: "#c4665f", centre: "#8a3a3a", seed: "#f3dd8a" },
    },
  },
});
const orchard = await buildTile(orchardPattern);

const MM = 25.4 / 72;
const testInks = inksOf(harbour);
const spots = {
  ground: { cmyk: [0, 0.1, 0.2, 0] },
  rope: { spot: "Deep water" },
  float: { spot: "Buoy red" },
  flag: { spot: "Signal", cmyk: [1, 0, 0, 0] },
} as const;
const ORDERS: readonly PdfOptions[] = [
  {},
  { cut: { across: 3, down: 2 }, bleed: 3, inks: "spot", rights: "Hollin Quay Prints" },
  { cut: { width: "123.45mm", height: 87.6 }, bleed: 3.175, inks: spots },
];

const hasQpdf = areInstalled("qpdf");
describe.skipIf(!hasQpdf)("qpdf", () => {
  it("finds no error in any kind of file, and one where a byte was lost", async () => {
    for (const order of ORDERS)
      expect(askAbout(await toPdf(harbour, dawn, order), "qpdf", "--check", "file")).toContain(
        "No syntax or stream encoding errors",
      );
    const whole = await toPdf(harbour, dawn);
    const torn = Uint8Array.from([...whole.subarray(0, 600), ...whole.subarray(601)]);
    expect(() => askAbout(torn, "qpdf", "--check", "file")).toThrow();
  });

  it("writes the file anew with packed objects, and the recipe is still there", async () => {
    const pdf = await toPdf(harbour, dawn);
    const anew = await madeOf(
      pdf,
      "qpdf",
      ["--object-streams=generate", "--linearize", "file", "new"],
      async (folder) => Uint8Array.from(readFileSync(join(folder, "new"))),
    );
    expect(anew).not.toEqual(pdf);
    expect((await recipeInPdf(anew))?.digest).toBe(harbour.digest);
  });
});

const hasPoppler = areInstalled("pdfinfo", "pdftoppm");
describe.skipIf(!hasPoppler)("poppler", () => {
  it("measures boxes that are the order to 0.01 mm", async () => {
    const cases = [
      { cut: "block", bleed: 0, width: 50.8, height: 25.4 },
      { cut: { width: "123.45mm", height: 87.6 }, bleed: 3, width: 123.45, height: 87.6 },
      { cut: { across: 3, down: 2 }, bleed: 3.175, width: 152.4, height: 50.8 },
      { cut: { width: 1500, height: 2000 }, bleed: 10, width: 1500, height: 2000 },
    ] as const;
    for (const { cut, bleed, width, height } of cases) {
      const said = askAbout(
        await toPdf(harbour, dawn, { cut, bleed } as PdfOptions),
        "pdfinfo",
        "-box",
        "file",
      );
      const box = (name: string): number[] => {
        const found = new RegExp(`${name}: +([-\\d.]+) +([-\\d.]+) +([-\\d.]+) +([-\\d.]+)`).exec(said)!;
        return found.slice(1).map((points) => Number(points) * MM);
      };
      const near = (have: number[], want: number[]): void => {
        have.forEach((mm, i) => {
          expect(Math.abs(mm - want[i]!)).toBeLessThan(0.01);
        });
      };
      near(box("TrimBox"), [bleed, bleed, width + bleed, height + bleed]);
      near(box("BleedBox"), [0, 0, width + 2 * bleed, height + 2 * bleed]);
      near(box("MediaBox"), [0, 0, width + 2 * bleed, height + 2 * bleed]);
    }
  });

  it("paints what our own rasteriser paints, the bleed going on with the repeat", async () => {
    const ours = await picture(harbour, 300);
    // 1/6 of an inch of bleed is 25 pixels at 150 dpi.
    const pdf = await toPdf(harbour, { name: "test", inks: testInks }, { bleed: 25.4 / 6 });
    const theirs = await madeOf(
      pdf,
      "pdftoppm",
      ["-r", "600", "-png", "-singlefile", "file", "page"],
      async (folder) => decode(readFileSync(join(folder, "page.png"))),
    );
    expect([theirs.width, theirs.height]).toEqual([1400, 800]);
    /** Peak signal to noise, in dB, of their page against our block, repeated and moved right by `off` pixels. */
    const likeness = (off: number): number => {
      let squares = 0;
      for (let y = 0; y < 200; y++)
        for (let x = 0; x < 350; x++) {
          const from = (((y + 125) % 150) * 300 + ((x + 275 - off) % 300)) * 4;
          for (let c = 0; c < 3; c++) {
            let sum = 0;
            for (let k = 0; k < 16; k++)
              sum += theirs.data[((y * 4 + (k >> 2)) * 1400 + x * 4 + (k & 3)) * 4 + c]!;
            const step = sum / 16 - ours.data[from + c]!;
            squares += step * step;
          }
        }
      return 10 * Math.log10((255 * 255 * 350 * 200 * 3) / squares);
    };
    // Poppler smooths edges in coarse steps: pixels are the mean of 4 x 4 of its own.
    expect(likeness(0)).toBeGreaterThan(40);
    expect(likeness(1)).toBeLessThan(35);
  });
});

const hasMupdf = areInstalled("mutool");
describe.skipIf(!hasMupdf)("mutool", () => {
  it("draws every kind of file without a warning, and lists the layers", async () => {
    for (const order of ORDERS) {
      const pdf = await toPdf(harbour, dawn, order);
      const said = askAbout(pdf, "mutool", "draw", "-r", "30", "-o", "out.png", "file").replace(
        "warning: ICC support is not available",
        "",
      );
      expect(said).not.toMatch(/warning|error/);
      expect(
        askAbout(pdf, "mutool", "show", "file", "trailer/Root/OCProperties/OCGs/1").replace(/\s+/g, " "),
      ).toContain("/Type /OCG");
    }
  });
});

const hasGhostscript = areInstalled("gs");
describe.skipIf(!hasGhostscript)("Ghostscript", () => {
  /** Share of the page that each plate prints, by name, as tiffsep finds it. */
  const platesOf = async (pdf: Uint8Array, dpi: number): Promise<Record<string, number>> =>
    madeOf(
      pdf,
      "gs",
      [
        ...["-q", "-dNOPAUSE", "-dBATCH", "-dSAFER", "-sDEVICE=tiffsep"],
        ...[`-r${dpi}`, "-dDownScaleFactor=4", "-sOutputFile=p.tif", "file"],
      ],
      async (folder) => {
        const shares: Record<string, number> = {};
        for (const file of readdirSync(folder).filter((name) => name.startsWith("p("))) {
          const grey = await sharp(join(folder, file)).toColourspace("b-w").raw().toBuffer();
          shares[file.slice(2, -5)] = grey.reduce((sum, value) => sum + 255 - value, 0) / 255 / grey.length;
        }
        return shares;
      },
    );

  it.each([
    { what: "a harbour of circles and rectangles", tile: harbour, colorway: dawn },
    { what: "pears and blossoms", tile: orchard, colorway: orchardPattern.colorways.dawn },
  ])(
    "separates a plate for each spot ink, with the areas that are seen, within 0.5 percent: $what",
    async ({ tile, colorway }) => {
      const pdf = await toPdf(tile, colorway, { inks: "spot" });
      const [coarse, fine] = [await platesOf(pdf, 1200), await platesOf(pdf, 2400)];
      const areas = visibleAreas(tile);
      const process = ["Black", "Cyan", "Magenta", "Yellow"];
      expect(Object.keys(fine).sort()).toEqual([...process, ...Object.keys(areas)].sort());
      for (const ink of process) expect(fine[ink]).toBe(0);
      // Ghostscript paints every pixel that a shape touches (ISO 32000-1, 10.6.5), which adds a band of half a pixel all
      // around it: half as much at twice the resolution. So without pixels it comes to twice the fine less the coarse.
      const off = (plates: Record<string, number>): number => areas["ground"]! - plates["ground"]!;
      expect(Math.abs(off(coarse) / off(fine) - 2)).toBeLessThan(0.2);
      for (const [role, area] of Object.entries(areas))
        expect(Math.abs((2 * fine[role]! - coarse[role]!) / area - 1)).toBeLessThan(0.005);
    },
  );

  it("puts process inks on their plates at their strength", async () => {
    const plates = await platesOf(await toPdf(harbour, dawn, { inks: spots }), 400);
    const { ground } = visibleAreas(harbour);
    expect(plates["Magenta"]! / ground!).toBeCloseTo(0.1, 2);
    expect(plates["Yellow"]! / ground!).toBeCloseTo(0.2, 2);
    expect([plates["Cyan"], plates["Black"]]).toEqual([0, 0]);
    expect(Object.keys(plates)).toEqual(expect.arrayContaining(["Deep water", "Buoy red", "Signal"]));
  });
});
