import Color from "colorjs.io";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { contrast } from "../../../src/colorway/contrast.ts";
import { inkBytes } from "../../../src/colorway/ink.ts";
import { palette } from "../../../src/colorway/palette.ts";
import { type Deficiency, deficiencyView } from "../../../src/colorway/views/deficiency-view.ts";
import { greyView } from "../../../src/colorway/views/grey-view.ts";
import { refusal } from "../../given.ts";

const hex = fc.integer({ min: 0, max: 0xffffff }).map((v) => `#${v.toString(16).padStart(6, "0")}`);
const inks = (ink: string): { readonly name: string; readonly inks: Readonly<Record<string, string>> } => ({
  name: "dawn",
  inks: { ground: ink },
});

describe("the grey view", () => {
  it("is grey, and as light as the ink by colorjs.io's L* of D65", () => {
    fc.assert(
      fc.property(hex, (ink) => {
        const grey = greyView(inks(ink)).inks["ground"]!;
        const [r, g, b] = inkBytes(grey);
        expect([g, b]).toEqual([r, r]);
        const light = (one: string): number => Number(new Color(one).to("lab-d65").coords[0]);
        expect(Math.abs(light(grey) - light(ink))).toBeLessThan(0.3);
      }),
      { seed: 41, numRuns: 300 },
    );
  });

  it("keeps contrast, but for the steps of 8 bits", () => {
    fc.assert(
      fc.property(hex, hex, (a, b) => {
        const grey = (ink: string): string => greyView(inks(ink)).inks["ground"]!;
        const [before, after] = [contrast(a, b), contrast(grey(a), grey(b))];
        expect(Math.abs(after / before - 1)).toBeLessThan(0.04);
      }),
      { seed: 42, numRuns: 300 },
    );
  });

  it("keeps names, and lets two inks become one grey", () => {
    const view = greyView(palette({ name: "pair", inks: { rust: "#c25a3a", moss: "#5d8050" } }));
    expect(view.name).toBe("pair");
    expect(Object.keys(view.inks)).toEqual(["rust", "moss"]);
    expect(contrast(view.inks.rust, view.inks.moss)).toBeLessThan(1.2);
    expect(Object.isFrozen(view) && Object.isFrozen(view.inks)).toBe(true);
  });
});

// Machado, Oliveira, Fernandes, IEEE TVCG 15 (6), 2009: their precomputed matrices, rows R, G, B,
// www.inf.ufrgs.br/~oliveira/pubs_files/CVD_Simulation/CVD_Simulation.html
const MACHADO: readonly (readonly [Deficiency, number, readonly number[]])[] = [
  [
    "protan",
    1,
    [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998],
  ],
  ["deutan", 1, [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.01182, 0.04294, 0.968881]],
  ["tritan", 1, [1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.3039]],
  [
    "protan",
    0.5,
    [0.458064, 0.679578, -0.137642, 0.092785, 0.846313, 0.060902, -0.007494, -0.016807, 1.024301],
  ],
  [
    "deutan",
    0.5,
    [0.547494, 0.607765, -0.155259, 0.181692, 0.781742, 0.036566, -0.01041, 0.027275, 0.983136],
  ],
  [
    "tritan",
    0.5,
    [1.017277, 0.027029, -0.044306, -0.006113, 0.958479, 0.047634, 0.006379, 0.248708, 0.744913],
  ],
];

// IEC 61966-2-1, the transfer function of sRGB, and back.
const light = (byte: number): number => {
  const v = byte / 255;
  return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
};
const byteOf = (value: number): number => {
  const v = Math.min(1, Math.max(0, value));
  return Math.round(255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055));
};

describe("the view of a colour vision deficiency", () => {
  it.each(MACHADO)("%s, severity %s, is Machado's matrix on linear sRGB", (kind, severity, m) => {
    fc.assert(
      fc.property(hex, (ink) => {
        const rgb = inkBytes(ink).map(light);
        const want = [0, 3, 6].map((row) =>
          byteOf(m[row]! * rgb[0]! + m[row + 1]! * rgb[1]! + m[row + 2]! * rgb[2]!),
        );
        const seen = inkBytes(deficiencyView(inks(ink), { kind, severity }).inks["ground"]!);
        seen.forEach((byte, i) => void expect(Math.abs(byte - want[i]!), ink).toBeLessThanOrEqual(1));
      }),
      { seed: 43, numRuns: 100 },
    );
  });

  it("lies straight between tenths: half-way in light at 0.45 between 0.4 and 0.5", () => {
    const at = (severity: number): readonly number[] =>
      inkBytes(deficiencyView(inks("#d8604c"), { kind: "deutan", severity }).inks["ground"]!).map(light);
    const [low, mid, high] = [at(0.4), at(0.45), at(0.5)];
    mid.forEach((value, i) => void expect(Math.abs(value - (low[i]! + high[i]!) / 2)).toBeLessThan(0.006));
    expect(high).not.toEqual(low);
  });

  it("changes nothing at 0, and no grey ever", () => {
    for (const kind of ["protan", "deutan", "tritan"] as const) {
      expect(deficiencyView(inks("#d8604c"), { kind, severity: 0 }).inks["ground"]).toBe("#d8604c");
      for (const grey of ["#000000", "#7f7f7f", "#ffffff"])
        expect(deficiencyView(inks(grey), { kind }).inks["ground"]).toBe(grey);
    }
  });

  it("makes a red and a green that differ in hue alone one for a deutan", () => {
    const view = deficiencyView(
      { name: "x", inks: { rust: "#b45a4c", moss: "#6c8050" } },
      { kind: "deutan" },
    );
    const apart = (a: string, b: string): number => new Color(a).deltaE2000(new Color(b));
    expect(apart("#b45a4c", "#6c8050")).toBeGreaterThan(35);
    expect(apart(view.inks.rust, view.inks.moss)).toBeLessThan(15);
  });

  it("refuses what it does not know", () => {
    const call =
      (options: object): (() => unknown) =>
      () =>
        deficiencyView(inks("#123456"), options as never);
    expect(refusal(call({})).code).toBe("missing-option");
    expect(refusal(call({ kind: "deuteran" })).message).toContain('did you mean "deutan"');
    expect(refusal(call({ kind: "deutan", severity: 2 })).code).toBe("number-range");
    expect(refusal(call({ kind: "deutan", sevrity: 1 })).code).toBe("unknown-option");
  });
});

it("views of what has no inks are refused", () => {
  for (const given of [undefined, null, {}, [], "dawn", { name: "dawn" }]) {
    expect(refusal(() => greyView(given as never)).code).toBe("wrong-type");
    expect(refusal(() => deficiencyView(given as never, { kind: "deutan" })).code).toBe("wrong-type");
  }
});
