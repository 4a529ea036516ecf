import Color from "colorjs.io";
import { describe, expect, it } from "vitest";
import { deltaE } from "../../../src/colorway/delta-e.ts";
import { palette } from "../../../src/colorway/palette.ts";
import * as own from "../../../src/colorway/schemes/index.ts";
import { makePalette, makePalettes } from "../../../src/colorway/schemes/make-palette.ts";

const schemes = { ...own };

const FAMILIES = [
  "bright",
  "deep",
  "dusk",
  "muted",
  "nightGround",
  "pastel",
  "sunBleached",
  "tonal",
] as const;
const SEEDS = Array.from({ length: 12 }, (_, i) => `tide-${i}`);

/** Lightness, chroma and hue in degrees by colorjs.io. */
const measured = (ink: string): readonly [number, number, number] => {
  const [l, c, h] = new Color(ink).to("oklch").coords;
  return [Number(l), Number(c), Number(h ?? 0)];
};
const made = (name: (typeof FAMILIES)[number], seed: string, count = 6): string[] =>
  Object.values(makePalette(schemes[name]({ count }), { name: "p", seed }).inks);
const apart = (h: number, g: number): number => Math.abs(((h - g + 540) % 360) - 180);

describe.each(FAMILIES)("%s", (name) => {
  it("gives the same palette for a seed, and one more ink changes none of those before", () => {
    expect(made(name, "ebb")).toEqual(made(name, "ebb"));
    expect(made(name, "ebb", 8).slice(0, 6)).toEqual(made(name, "ebb"));
    expect(made(name, "ebb", 2)).toEqual(made(name, "ebb").slice(0, 2));
    expect(made(name, "ebb")).not.toEqual(made(name, "flow"));
  });

  // 6: seen at once, side by side (common practice).
  it("gives palettes that are unlike, in one call and from seed to seed", () => {
    const unlike = (a: readonly string[], b: readonly string[]): number =>
      a.reduce((sum, ink, i) => sum + deltaE(ink, b[i]!), 0) / a.length;
    for (const seed of SEEDS.slice(0, 3)) {
      const three = makePalettes(schemes[name](), { name: "p", seed, count: 3 });
      const [a, b, c] = three.map(({ inks }) => Object.values(inks));
      for (const away of [unlike(a!, b!), unlike(a!, c!), unlike(b!, c!)])
        expect(away, seed).toBeGreaterThan(6);
    }
    const each = SEEDS.map((seed) => made(name, seed));
    const apart = each.flatMap((one, i) => each.slice(0, i).map((other) => unlike(one, other)));
    expect(apart.sort((a, b) => a - b)[Math.floor(apart.length / 2)]).toBeGreaterThan(6);
  });

  // 5: about the least that two areas of a print need so as not to be taken for one ink (common practice).
  it("gives inks that nobody takes for one another", () => {
    for (const seed of SEEDS) {
      const inks = made(name, seed);
      for (const [i, a] of inks.entries())
        for (const b of inks.slice(0, i)) expect(deltaE(a, b), `${seed}: ${a} ${b}`).toBeGreaterThan(5);
    }
  });
});

describe("each family is what it is called, by colorjs.io's OKLCH", () => {
  const every = (
    name: (typeof FAMILIES)[number],
    look: (inks: (readonly [number, number, number])[]) => void,
  ): void => {
    for (const seed of SEEDS) look(made(name, seed, 8).map(measured));
  };
  it("muted: light ground, no ink of more than 0.11 chroma", () =>
    every("muted", (inks) => {
      expect(inks[0]![0]).toBeGreaterThan(0.9);
      for (const [, chroma] of inks) expect(chroma).toBeLessThan(0.11);
    }));
  it("bright: white ground; the hues as strong as sRGB has them", () =>
    every("bright", (inks) => {
      expect(inks[0]![0]).toBeGreaterThan(0.98);
      for (const [, chroma] of inks.slice(1, 4)) expect(chroma).toBeGreaterThan(0.12);
    }));
  it("pastel: nothing darker than 0.6, all but the ground tinted", () =>
    every("pastel", (inks) => {
      for (const [light] of inks) expect(light).toBeGreaterThan(0.6);
      for (const [, chroma] of inks.slice(1)) expect(chroma).toBeGreaterThan(0.03);
    }));
  it("deep: dark ground, one light ink", () =>
    every("deep", (inks) => {
      expect(inks[0]![0]).toBeLessThan(0.32);
      expect(inks.filter(([light]) => light > 0.8)).toHaveLength(1);
    }));
  it("dusk: from violet over rose to amber, no green", () =>
    every("dusk", (inks) => {
      for (const [, , hue] of inks) expect(hue > 225 || hue < 85, `${hue}`).toBe(true);
      expect(inks[0]![0]).toBeLessThan(0.42);
    }));
  it("sun-bleached: light, low in chroma, nothing dark", () =>
    every("sunBleached", (inks) => {
      for (const [light, chroma] of inks) {
        expect(light).toBeGreaterThan(0.55);
        expect(chroma).toBeLessThan(0.1);
      }
    }));
  it("tonal: one hue, light to dark", () =>
    every("tonal", (inks) => {
      for (const [, , hue] of inks.slice(1)) expect(apart(hue, inks[1]![2])).toBeLessThan(24);
      const lights = inks.map(([light]) => light);
      expect(Math.max(...lights) - Math.min(...lights)).toBeGreaterThan(0.65);
    }));
  it("night ground: a dark ground, and motifs that read on it by WCAG's 3:1 for graphics", () => {
    for (const seed of SEEDS) {
      const inks = made("nightGround", seed);
      expect(measured(inks[0]!)[0]).toBeLessThan(0.3);
      for (const ink of inks.slice(1, 5))
        expect(new Color(ink).contrastWCAG21(new Color(inks[0]!)), `${seed} ${ink}`).toBeGreaterThan(3);
    }
  });
});

describe("a palette changed into a family", () => {
  const quay = palette({
    name: "quay",
    inks: { chalk: "#f6ead7", kelp: "#3f6b4f", buoy: "#d9803c", rope: "#b99b6b", sea: "#27566b" },
  });
  const light = (ink: string): number => measured(ink)[0];

  it.each(FAMILIES)("%s: keeps the names and their order", (name) => {
    const changed = makePalette(schemes[name]({ of: quay }), { name: "quay-2", seed: "1" });
    expect(Object.keys(changed.inks)).toEqual(Object.keys(quay.inks));
    expect(Object.values(changed.inks)).not.toEqual(Object.values(quay.inks));
  });

  it("muted keeps hues; night ground turns light and dark about; tonal takes one hue", () => {
    const muted = makePalette(schemes.muted({ of: quay }), { name: "m", seed: "1" }).inks;
    expect(apart(measured(muted["kelp"]!)[2], measured(quay.inks.kelp)[2])).toBeLessThan(8);
    const night = makePalette(schemes.nightGround({ of: quay }), { name: "n", seed: "1" }).inks;
    expect(light(night["chalk"]!)).toBeLessThan(0.3);
    expect(light(night["sea"]!)).toBeGreaterThan(0.8);
    const tonal = Object.values(makePalette(schemes.tonal({ of: quay }), { name: "t", seed: "1" }).inks).map(
      measured,
    );
    for (const [, chroma, hue] of tonal) if (chroma > 0.02) expect(apart(hue, tonal[1]![2])).toBeLessThan(20);
  });
});

describe("two-ink", () => {
  const inks = makePalette(schemes.twoInk({ first: "#3f4e9a", second: "#f08a5d", paper: "#ffffff" }), {
    name: "riso",
    seed: "1",
  }).inks;
  const [paper, first, second, over, tint] = Object.values(inks) as [string, string, string, string, string];

  it("takes the inks and the paper that are given", () =>
    expect([paper, first, second]).toEqual(["#ffffff", "#3f4e9a", "#f08a5d"]));

  it("prints one over the other by multiplying light, as transparent inks do, and tints by area", () => {
    const light = (ink: string): number[] => new Color(ink).to("srgb-linear").coords.map(Number);
    light(over).forEach(
      (v, i) => void expect(Math.abs(v - light(first)[i]! * light(second)[i]!)).toBeLessThan(0.01),
    );
    // Murray and Davies 1936: the paper shows between the dots.
    light(tint).forEach(
      (v, i) => void expect(Math.abs(v - (0.45 + 0.55 * light(first)[i]!))).toBeLessThan(0.01),
    );
  });

  it("makes paper and inks of its own, the overprint the darkest", () => {
    for (const { inks: own } of makePalettes(schemes.twoInk(), { name: "r", seed: "s", count: 12 })) {
      const lights = Object.values(own).map((ink) => measured(ink)[0]);
      expect(Math.min(...lights)).toBe(lights[3]);
      expect(Math.max(...lights)).toBe(lights[0]);
    }
  });
});
