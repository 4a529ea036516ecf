import { inflateSync } from "node:zlib";
import { DOMParser } from "@xmldom/xmldom";
import { beforeAll, describe, expect, it } from "vitest";
import { packBits } from "../../../src/output/plates/pack-bits.ts";
import { type Plate, plateToPng, plateToSvg, separations } from "../../../src/print.ts";
import { refusal, refusalOf } from "../../given.ts";
import { harbour } from "../harbour.ts";
import { areInstalled, askAbout } from "../outside.ts";
import { decode } from "../png/pictures.ts";

let plates: readonly Plate[];
let bare: readonly Plate[];
beforeAll(async () => {
  plates = await separations(harbour, { bleed: 3 });
  bare = await separations(harbour, { marks: false });
});
const flag = (): Plate => plates[3]!;
const refused = async (options: unknown, plate = flag()): Promise<string> =>
  (await refusalOf(() => plateToPng(plate, options as { dpi: number }))).code;

describe("a plate as SVG", () => {
  it("is at true size, in one path for what is printed and one for the marks", () => {
    const svg = new DOMParser().parseFromString(plateToSvg(flag()), "image/svg+xml");
    const root = svg.documentElement!;
    // 50.8 x 25.4 mm, 3 mm of bleed and 15 mm for marks on every side.
    expect([root.getAttribute("width"), root.getAttribute("height")]).toEqual(["86.8mm", "61.4mm"]);
    expect(root.getAttribute("viewBox")).toBe("-18 -18 86.8 61.4");
    const paths = Array.from(root.getElementsByTagName("path"), (path) => path.getAttribute("id"));
    expect(paths).toEqual(["flag", "marks_of_flag"]);
    expect(plateToSvg(bare[3]!)).not.toContain("marks");
  });

  const hasLint = areInstalled("xmllint");
  it.skipIf(!hasLint)("is accepted by xmllint", () => {
    for (const plate of plates) expect(askAbout(plateToSvg(plate), "xmllint", "--noout", "file")).toBe("");
  });
});

describe("a plate as PNG", () => {
  it("is black where it prints: the flag is 9 x 5 mm", async () => {
    const { data, width, height } = decode(await plateToPng(bare[3]!, { dpi: 150 }));
    expect([width, height]).toEqual([300, 150]);
    let ink = 0;
    for (let i = 0; i < data.length; i += 4) ink += (255 - data[i]!) / 255;
    expect(ink / (300 * 150)).toBeCloseTo(45 / (50.8 * 25.4), 5);
  });

  it("with marks is rounded up to whole pixels to the right and below, at true scale", async () => {
    const png = Buffer.from(await plateToPng(flag(), { dpi: 300 }));
    const { width, height } = decode(png);
    expect([width, height]).toEqual([1026, 726]); // 86.8 and 61.4 mm are 1025.2 and 725.2 pixels, rounded up to 3
    const phys = png.indexOf("pHYs") + 4;
    expect([png.readUInt32BE(phys), png.readUInt32BE(phys + 4), png[phys + 8]]).toEqual([11811, 11811, 1]);
  });

  it("of one bit has ink where half a pixel is printed on", async () => {
    const png = Buffer.from(await plateToPng(plates[2]!, { dpi: 150, depth: 1 }));
    expect([png[24], png[25]]).toEqual([1, 0]); // bit depth 1, greyscale (PNG, third edition, 11.2.1)
    const [bits, grey] = [decode(png), decode(await plateToPng(plates[2]!, { dpi: 150 }))];
    const wrong = bits.data.filter((value, i) => i % 4 === 0 && value !== (grey.data[i]! > 127 ? 255 : 0));
    expect(wrong).toHaveLength(0);
    // Node's zlib reads what our own deflate wrote: rows of a filter byte and 66 bytes.
    const from = png.indexOf("IDAT");
    expect(inflateSync(png.subarray(from + 4, from + 4 + png.readUInt32BE(from - 4)))).toHaveLength(363 * 66);
  });

  it("is the same to the byte when made again", async () => {
    expect(await plateToPng(flag(), { dpi: 200 })).toEqual(await plateToPng(flag(), { dpi: 200 }));
  });

  const hasPngcheck = areInstalled("pngcheck");
  it.skipIf(!hasPngcheck)("is accepted by pngcheck", async () => {
    for (const depth of [1, 8] as const)
      expect(askAbout(await plateToPng(flag(), { dpi: 97, depth }), "pngcheck", "file")).toContain("OK:");
  });

  it("is refused when the order makes no sense", async () => {
    expect(await refused({ dpi: 0 })).toBe("number-range");
    expect(await refused({ dpi: 72.5 })).toBe("wrong-type");
    expect(await refused({})).toBe("missing-option");
    expect(await refused({ dpi: 150, depth: 2 })).toBe("wrong-type");
    expect(await refused({ dpi: 150, deep: 1 })).toBe("unknown-option");
    expect(await refused({ dpi: 150 }, { ...bare[0]!, size: { width: 50_801, height: 25_400 } })).toBe(
      "not-whole-pixels",
    );
    expect(await refused({ dpi: 4800 }, { ...bare[0]!, size: { width: 5_080_000, height: 2_540_000 } })).toBe(
      "raster-size",
    );
    expect(await refused({ dpi: 150 }, {} as Plate)).toBe("wrong-type");
    expect(refusal(() => plateToSvg(harbour as unknown as Plate)).code).toBe("wrong-type");
  });
});

describe("pixels packed eight to a byte", () => {
  it("are those of the runs, the first in the highest bit, paper beyond the row", () => {
    const pack = (...runs: (readonly [ink: boolean, length: number])[]): string => {
      const bytes: number[] = [];
      packBits(
        (visit) => {
          for (const [ink, length] of runs) visit(ink ? (1 << 14) | (1 << 8) : 0, length);
        },
        (byte, length) => bytes.push(...Array<number>(length).fill(byte)),
      );
      return bytes.map((byte) => byte.toString(2).padStart(8, "0")).join(" ");
    };
    expect(pack([false, 3], [true, 2], [false, 14], [true, 20], [false, 1])).toBe(
      "11100111 11111111 11100000 00000000 00000001",
    );
    expect(pack([true, 1])).toBe("01111111");
    expect(pack([true, 16])).toBe("00000000 00000000");
  });
});
