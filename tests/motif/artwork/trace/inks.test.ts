import { describe, expect, it } from "vitest";
import { colorDistance } from "../../../../src/motif/artwork/merge.ts";
import { inspectTrace, type TraceReport } from "../../../../src/motif/artwork/trace/inspect-trace.ts";
import { pixelsOf, rendered, scanned, sheetOf } from "./painted.ts";

/** A boat: hull, sail and pennant, which meet each other along soft edges; the sail's blue is between hull and paper. */
const boat =
  '<path fill="#22394a" d="M12 64H88L74 86H24Z"/><path fill="#7d97a6" d="M48 8V64H16Z"/><path fill="#d9583f" d="M52 14L84 64H52Z"/>';
const fills = ({ inks }: TraceReport): string[] => inks.map(({ fill }) => fill).sort();
const differ = (a: string, b: string): number => colorDistance()(a, b);

describe("the inks of a picture", () => {
  it.each([80, 160, 400])("are three where three were drawn, soft edges or not (%i px)", (width) => {
    const report = inspectTrace(rendered(sheetOf(boat), width));
    expect(fills(report)).toEqual(["#22394a", "#7d97a6", "#d9583f"]);
    expect(report.paper).toBe("#f6ead7");
    expect(report.roles.map(({ role }) => role)).toEqual(["deep-blue", "blue", "red"]);
    for (const { role, area } of report.roles) expect(area, role).toBeGreaterThan(10);
  });

  it.each([
    { grain: 5, mottle: 0, blur: 0, seed: "a" },
    { grain: 8, mottle: 8, blur: 1, seed: "b" },
    { grain: 12, mottle: 5, blur: 2, seed: "c" },
    { grain: 1, mottle: 14, blur: 0, seed: "d" },
  ])("are as many in a scan with grain $grain, mottle $mottle and blur $blur", (paint) => {
    const report = inspectTrace(scanned(sheetOf(boat), 360, paint), { width: 100, specks: "6px" });
    expect(report.inks).toHaveLength(3);
    for (const wanted of ["#22394a", "#7d97a6", "#d9583f"])
      expect(Math.min(...report.inks.map(({ fill }) => differ(fill, wanted)))).toBeLessThan(3);
    expect(differ(report.paper!, "#f6ead7")).toBeLessThan(2);
    const clean = inspectTrace(rendered(sheetOf(boat), 360), { width: 100 });
    report.inks.forEach(({ area }, i) => {
      expect(Math.abs(area / clean.inks[i]!.area - 1)).toBeLessThan(0.015);
    });
  });

  it("stay apart on a clean picture when they are near each other", () => {
    const near =
      '<rect x="10" y="10" width="40" height="80" fill="#3f7f93"/><rect x="50" y="10" width="40" height="80" fill="#46899e"/>';
    expect(fills(inspectTrace(rendered(sheetOf(near), 120)))).toEqual(["#3f7f93", "#46899e"]);
    expect(inspectTrace(rendered(sheetOf(near), 120), { inks: 1 }).inks).toHaveLength(1);
  });

  it("are found on thin lines, and not on the edges of wide ones", () => {
    const lines =
      '<path stroke="#2b2a33" stroke-width="2.2" fill="none" d="M10 20H90M10 40L90 52M20 60C40 90 60 50 85 85"/>';
    const report = inspectTrace(rendered(sheetOf(lines), 150), { specks: "2px" });
    expect(report.inks).toHaveLength(1);
    expect(differ(report.inks[0]!.fill, "#2b2a33")).toBeLessThan(4);
  });

  it("may be listed, and keep the colours of the list", () => {
    const report = inspectTrace(rendered(sheetOf(boat), 160), { inks: ["#203040", "#80a0b0", "#e05030"] });
    expect(fills(report)).toEqual(["#203040", "#80a0b0", "#e05030"]);
    expect(report.paper).toBe("#f6ead7");
  });

  it("are joined down to the number that is asked for, the paper apart", () => {
    for (const inks of [1, 2, 3]) {
      const report = inspectTrace(rendered(sheetOf(boat), 160), { inks });
      expect(report.inks).toHaveLength(inks);
      expect(report.paper).toBe("#f6ead7");
    }
    expect(inspectTrace(rendered(sheetOf(boat), 160), { mostInks: 2 }).inks).toHaveLength(2);
  });
});

describe("the paper of a picture", () => {
  const buoy =
    '<circle cx="50" cy="50" r="40" fill="#d9583f"/><circle cx="50" cy="50" r="20" fill="#f6ead7"/>';
  const drawn = rendered(sheetOf(buoy), 200);
  const ring = Math.PI * (40 * 40 - 20 * 20);

  it("is left out, what the drawing encloses of it too", () => {
    const report = inspectTrace(drawn, { width: 100 });
    expect(fills(report)).toEqual(["#d9583f"]);
    expect(report.roles[0]!.area / ring).toBeCloseTo(1, 2);
  });

  it("may be kept where it is enclosed, or everywhere", () => {
    const around = inspectTrace(drawn, { width: 100, paper: "around" });
    expect(around.inks.map(({ fill }) => fill)).toEqual(["#d9583f", "#f6ead7"]);
    expect(around.inks[1]!.area / (Math.PI * 400)).toBeCloseTo(1, 1);
    const kept = inspectTrace(drawn, { width: 100, paper: "keep" });
    expect(kept.paper).toBeUndefined();
    expect(kept.width).toBe(100);
    expect(kept.inks.map(({ fill }) => fill)).toEqual(["#f6ead7", "#d9583f"]);
  });

  it("may be named where the rim does not show it", () => {
    const bleed = rendered(
      sheetOf(
        '<path fill="#d9583f" d="M0 0H100V60H0Z"/><path fill="#22394a" d="M0 60H100V100H0Z"/><circle cx="50" cy="50" r="20" fill="#f6ead7"/>',
      ),
      100,
    );
    const whole = inspectTrace(bleed);
    expect(whole.paper).toBe("#d9583f");
    const named = inspectTrace(bleed, { paper: "#f5e8d0" });
    expect(named.paper).toBe("#f6ead7");
    expect(fills(named)).toEqual(["#22394a", "#d9583f"]);
  });

  it("is what is transparent, and soft edges against nothing are read by their alpha", () => {
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100">${boat}</svg>`;
    const report = inspectTrace(rendered(svg, 160), { width: 100 });
    expect(report.paper).toBe("transparent");
    expect(fills(report)).toEqual(["#22394a", "#7d97a6", "#d9583f"]);
    const onPaper = inspectTrace(rendered(sheetOf(boat), 160), { width: 100 });
    report.roles.forEach(({ area }, i) => {
      expect(area / onPaper.roles[i]!.area).toBeCloseTo(1, 2);
    });
  });

  it("is nowhere in a picture of one colour, or of none", () => {
    const plain = rendered(sheetOf(""), 60);
    expect(() => inspectTrace(plain)).toThrow(/one colour only[\s\S]*empty-artwork/);
    const clear = { width: 8, height: 8, data: new Uint8Array(256) };
    expect(() => inspectTrace(clear)).toThrow(/all transparent[\s\S]*empty-artwork/);
    const kept = inspectTrace(plain, { paper: "keep", width: 50 });
    expect(kept.inks).toEqual([{ fill: "#f6ead7", role: "cream", area: 2500 }]);
    expect([kept.width, kept.height]).toEqual([50, 50]);
  });
});

describe("specks and pinholes", () => {
  const spotted = (size: number): ReturnType<typeof pixelsOf> => {
    const pixels = pixelsOf(
      rendered(sheetOf('<rect x="20" y="20" width="60" height="60" fill="#d9583f"/>'), 100),
    );
    const put = (x: number, y: number, color: readonly number[]): void => {
      for (let dy = 0; dy < size; dy++)
        for (let dx = 0; dx < size; dx++) pixels.data.set([...color, 255], 4 * ((y + dy) * 100 + x + dx));
    };
    put(8, 8, [0xd9, 0x58, 0x3f]);
    put(40, 40, [0xf6, 0xea, 0xd7]);
    put(60, 50, [0xf6, 0xea, 0xd7]);
    return pixels;
  };

  it("go to what is around them below the limit, and stay above it", () => {
    const gone = inspectTrace(spotted(3), { width: 100 });
    expect(gone.dropped).toEqual({ specks: 1, pinholes: 2 });
    expect(gone.nodes.after).toBe(4);
    expect(gone.roles[0]!.area).toBeCloseTo(3600, 0);
    const kept = inspectTrace(spotted(3), { width: 100, specks: "2px" });
    expect(kept.dropped).toEqual({ specks: 0, pinholes: 0 });
    expect(kept.roles[0]!.area).toBeLessThan(3595);
    expect(inspectTrace(spotted(6), { width: 100 }).dropped).toEqual({ specks: 0, pinholes: 0 });
    expect(inspectTrace(spotted(6), { width: 100, specks: "6.1mm" }).dropped).toEqual({
      specks: 1,
      pinholes: 2,
    });
  });
});
