import { PageSizes } from "@cantoo/pdf-lib";
import { describe, expect, it, test } from "vitest";
import { printSizes, readPrintSize } from "../../src/units/print-sizes.ts";
import { refusal } from "../given.ts";

const sizes = printSizes();

describe("print sizes", () => {
  // The tables of ISO 216:2007 in mm, written down from memory and the same as those of pdf-lib below.
  test.each([
    ["A", "841x1189 594x841 420x594 297x420 210x297 148x210 105x148 74x105 52x74 37x52 26x37"],
    ["B", "1000x1414 707x1000 500x707 353x500 250x353 176x250 125x176 88x125 62x88 44x62 31x44"],
  ])("of the %s series are those of ISO 216", (series, table) => {
    table.split(" ").forEach((text, n) => {
      const [width, height] = sizes[`${series}${n}` as keyof typeof sizes];
      expect(`${width / 1000}x${height / 1000}`).toBe(text);
    });
  });

  // PageSizes of @cantoo/pdf-lib: an independent table, in points of 1/72 inch to a hundredth.
  it("agree with an independent table, in points", () => {
    for (const [name, [width, height]] of Object.entries(sizes)) {
      const points = PageSizes[(name === "letter" ? "Letter" : name) as keyof typeof PageSizes];
      if (!points) continue;
      expect((width / 25_400) * 72).toBeCloseTo(points[0], 1);
      expect((height / 25_400) * 72).toBeCloseTo(points[1], 1);
    }
    expect(Object.keys(sizes).filter((name) => name in PageSizes)).toHaveLength(22);
  });

  it("are upright, and each frame is as its name says", () => {
    for (const [name, [width, height]] of Object.entries(sizes)) {
      expect(width).toBeLessThan(height);
      const frame = /^(\d+)x(\d+)(in|cm)$/.exec(name);
      if (!frame) continue;
      const unit = frame[3] === "in" ? 25_400 : 10_000;
      expect([width, height]).toEqual([Number(frame[1]) * unit, Number(frame[2]) * unit]);
    }
  });

  it("may be any width and height", () => {
    expect(readPrintSize({ width: "12in", height: 250 }, "x")).toEqual({ width: 304_800, height: 250_000 });
    expect(readPrintSize("50x70cm", "x")).toEqual({ width: 500_000, height: 700_000 });
  });

  it("are refused when nobody knows them, or no sheet is so small or so large", () => {
    expect(refusal(() => readPrintSize("8x11in", "print > size")).message).toContain('did you mean "8x10in"');
    expect(refusal(() => readPrintSize("A11", "x")).code).toBe("unknown-print-size");
    expect(refusal(() => readPrintSize({ width: 10, height: 100 }, "x")).code).toBe("length-range");
    expect(refusal(() => readPrintSize({ width: 100, heigth: 100 }, "x")).code).toBe("unknown-option");
    expect(refusal(() => readPrintSize({ width: "100px", height: 100 } as never, "x")).code).toBe(
      "wrong-type",
    );
    for (const odd of [7, null, [210, 297], undefined])
      expect(refusal(() => readPrintSize(odd, "x")).code).toBe("wrong-type");
  });
});
