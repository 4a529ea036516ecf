import Color from "colorjs.io";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { palette } from "../../../src/colorway/palette.ts";
import { readTokens } from "../../../src/colorway/tokens/read-tokens.ts";
import { toTokens } from "../../../src/colorway/tokens/to-tokens.ts";
import { refusal } from "../../given.ts";

// Shapes and rules of files: Design Tokens Community Group, Format Module and Color Module, 2025.10.
const color = (colorSpace: string, ...components: (number | "none")[]): object => ({
  $value: { colorSpace, components },
});
const refused = (file: unknown): string => refusal(() => readTokens(file as object)).message;

describe("design tokens", () => {
  it("make a palette of each group that holds colours", () => {
    const file = {
      $description: "Hollin Quay, spring",
      sea: {
        $type: "color",
        "Sea Glass": color("srgb", 0.6, 0.8, 0.7),
        deepWater: { ...color("srgb", 0, 0.2, 0.4), $extensions: { "org.example": {} } },
        500: color("srgb", 0.2, 0.4, 0.6),
        weeds: { kelp: color("hsl", 120, 50, 40) },
      },
      gap: { $type: "dimension", small: { $value: { value: 4, unit: "px" } } },
    };
    expect(readTokens(file)).toEqual([
      { name: "sea", inks: { "sea-500": "#336699", "sea-glass": "#99ccb3", "deep-water": "#003366" } },
      { name: "sea-weeds", inks: { kelp: "#339933" } },
    ]);
    expect(readTokens(`\ufeff${JSON.stringify(file)}`)).toEqual(readTokens(file));
  });

  it("are read in thirteen of the fourteen colour spaces as colorjs.io reads them", () => {
    // Names of the same spaces in colorjs.io, which writes the shares of hsl and hwb as the format does.
    const spaces: Readonly<Record<string, string>> = {
      srgb: "srgb",
      "srgb-linear": "srgb-linear",
      hsl: "hsl",
      hwb: "hwb",
      lab: "lab",
      lch: "lch",
      oklab: "oklab",
      oklch: "oklch",
      "display-p3": "p3",
      "a98-rgb": "a98rgb",
      "prophoto-rgb": "prophoto",
      "xyz-d65": "xyz-d65",
      "xyz-d50": "xyz-d50",
    };
    const byte = fc.integer({ min: 3, max: 252 });
    fc.assert(
      fc.property(byte, byte, byte, (r, g, b) => {
        const hex = `#${[r, g, b].map((v) => v.toString(16).padStart(2, "0")).join("")}`;
        for (const [space, theirs] of Object.entries(spaces)) {
          const coords = new Color(hex).to(theirs).coords.map((c) => c ?? 0);
          if (space === "hsl" || space === "hwb") coords[0] = ((coords[0]! % 360) + 360) % 360;
          const [read] = readTokens({ sea: { $type: "color", ink: color(space, ...coords) } });
          const ours = new Color(read!.inks["ink"]!)
            .to("srgb")
            .coords.map((c) => Math.round(Number(c) * 255));
          ours.forEach(
            (v, i) => void expect(Math.abs(v - [r, g, b][i]!), `${space} ${hex}`).toBeLessThanOrEqual(1),
          );
        }
      }),
      { seed: 61, numRuns: 30 },
    );
  });

  // Of the fourteenth, colorjs.io takes the display's curve and culori the camera's (ITU-R BT.2020): they agree at full channels.
  it("are read in rec2020 too", () => {
    const bright = {
      sea: { $type: "color", white: color("rec2020", 1, 1, 1), red: color("rec2020", 1, 0, 0) },
    };
    expect(readTokens(bright, { gamut: "map" })[0]!.inks).toEqual({
      white: "#ffffff",
      red: new Color("color(rec2020 1 0 0)")
        .toGamut({ space: "srgb", method: "css" })
        .to("srgb")
        .toString({ format: "hex", collapse: false }),
    });
  });

  it('take "none" as CSS does: as 0', () => {
    const [sea] = readTokens({ sea: { $type: "color", a: color("oklch", 0.7, "none", 50) } });
    expect(sea!.inks["a"]).toBe("#9e9e9e"); // CSS Color 4: oklch(0.7 none 50), as in the tests of inks
  });

  it("follow references, in curly braces and as pointers, whole and in part", () => {
    const file = {
      base: { $type: "color", blue: color("srgb", 0, 0.2, 0.4), "odd/na~me": color("srgb", 1, 0, 0) },
      cloth: {
        ground: { $value: "{base.blue}" },
        petal: { $type: "color", $value: { $ref: "#/base/odd~1na~0me/$value" } },
        leaf: { $ref: "#/base/blue" },
        mix: {
          $type: "color",
          $value: {
            colorSpace: "srgb",
            components: [{ $ref: "#/base/odd~1na~0me/$value/components/0" }, 0.2, 0.2],
          },
        },
      },
    };
    // leaf is the same colour as ground, and only another name for it.
    expect(readTokens(file)[1]).toEqual({
      name: "cloth",
      inks: { ground: "#003366", petal: "#ff0000", mix: "#ff3333" },
    });
  });

  it("inherit their type: own, then of the reference, then of the nearest group", () => {
    const file = {
      $type: "dimension",
      ink: { $type: "color", tide: color("srgb", 0, 0.2, 0.4), width: { $type: "dimension", $value: 3 } },
      other: { tide: { $value: "{ink.tide}" }, size: { $value: "{ink.width}" } },
    };
    expect(readTokens(file)).toEqual([
      { name: "ink", inks: { tide: "#003366" } },
      { name: "other", inks: { tide: "#003366" } },
    ]);
  });

  it("extend groups: inherited, then overridden, deep within, $root under its group's name", () => {
    const file = {
      day: {
        $type: "color",
        $root: color("srgb", 1, 1, 0.8),
        kelp: color("srgb", 0.2, 0.4, 0.2),
        sky: { high: color("srgb", 0.4, 0.6, 1), low: color("srgb", 0.8, 0.8, 1) },
      },
      night: {
        $extends: "{day}",
        $root: color("srgb", 0, 0, 0.2),
        sky: { high: color("srgb", 0, 0.2, 0.4) },
      },
      late: { $extends: "#/night/sky" },
    };
    expect(readTokens(file).slice(2)).toEqual([
      { name: "night", inks: { night: "#000033", kelp: "#336633" } },
      { name: "night-sky", inks: { high: "#003366", low: "#ccccff" } },
      { name: "late", inks: { high: "#003366", low: "#ccccff" } },
    ]);
  });

  it("come back from what was written", () => {
    const hex = fc.integer({ min: 0, max: 0xffffff }).map((v) => `#${v.toString(16).padStart(6, "0")}`);
    fc.assert(
      fc.property(fc.uniqueArray(hex, { minLength: 1, maxLength: 40 }), (inks) => {
        const sea = palette({
          name: "sea",
          inks: Object.fromEntries(inks.map((ink, i) => [`ink-${i}x`, ink])),
        });
        expect(JSON.stringify(readTokens(toTokens(sea))[0])).toBe(JSON.stringify(sea));
      }),
      { seed: 62, numRuns: 40 },
    );
    const two = ["a", "b"].map((name) => palette({ name, inks: { one: "#123456" } }));
    expect(readTokens(toTokens(two))).toEqual(two);
    expect(refusal(() => toTokens([two[0]!, two[0]!])).code).toBe("same-name");
  });

  it("are written as the format asks: type on the group, space, components, alpha, hex", () => {
    expect(JSON.parse(toTokens(palette({ name: "sea", inks: { tide: "#336699" } })))).toEqual({
      sea: {
        $type: "color",
        tide: { $value: { colorSpace: "srgb", components: [0.2, 0.4, 0.6], alpha: 1, hex: "#336699" } },
      },
    });
  });
});

describe("a token file that cannot be read", () => {
  const sea = (value: unknown): object => ({ sea: { $type: "color", tide: { $value: value } } });
  const srgb = (...components: unknown[]): object => ({ colorSpace: "srgb", components });

  it.each([
    [sea("#003366"), "bad-token-color", "sea.tide", "drafts"],
    [sea(srgb(0, 0)), "bad-token-color", "sea.tide", "components"],
    [sea(srgb(0, 2, 0)), "bad-token-color", "sea.tide", "component 2 is 2"],
    [sea(srgb(0, Number.NaN, 0)), "bad-token-color", "sea.tide", "NaN"],
    [sea({ ...srgb(1, 0, 0), hex: "#00ff00" }), "bad-token-color", "sea.tide", "another colour"],
    [sea({ ...srgb(0, 0, 0), alpha: 0.5 }), "no-colors", "tokens", "no token has an opaque colour"],
    [sea({ ...srgb(0, 0, 0), hex: "#abc" }), "bad-token-color", "sea.tide", "hex"],
    [sea({ ...srgb(0, 0, 0), hx: "#aabbcc" }), "unknown-key", "hx", 'did you mean "hex"'],
    [
      sea({ colorSpace: "okclh", components: [0, 0, 0] }),
      "unknown-color-space",
      "sea.tide",
      'did you mean "oklch"',
    ],
    [sea({ colorSpace: "display-p3", components: [0, 1, 0] }), "out-of-gamut", "tide", "outside sRGB"],
    [sea("{sea.tyde}"), "unknown-token", "sea.tide", 'did you mean "sea.tide"'],
    [sea("{sea}"), "bad-reference", "sea.tide", "is a group"],
    [sea("{sea.tide}"), "token-cycle", "sea.tide", "refers to itself"],
    [sea({ $ref: "other.json#/a" }), "bad-reference", "sea.tide", "outside this file"],
    [sea({ $ref: "#/%" }), "bad-reference", "sea.tide", "escape"],
    [{ a: { $extends: "{b}" }, b: { $extends: "{a}" } }, "token-cycle", "a", "extends itself"],
    [{ a: { b: { $extends: "{a}" } } }, "token-cycle", "a", "extends itself"],
    [{ a: { $extends: "{bb}" }, b: {} }, "unknown-group", "$extends", '"bb"'],
    [{ a: { $type: "color", $value: srgb(0, 0, 0), b: {} } }, "bad-token", "a", "holds"],
    [{ sea: { tide: { $value: srgb(0, 0, 0) } } }, "bad-token", "sea.tide", "$type"],
    [{ "sea.tide": { $value: 1 } }, "bad-token", "sea.tide", "a name may not hold"],
    [{ sea: { tide: { type: "color", value: "#036" } } }, "bad-token", "sea.tide.type", "$value"],
    [{ sea: 7 }, "wrong-type", "sea", "a token or a group"],
    [{ gap: { $type: "dimension", $value: 1 } }, "no-colors", "tokens", ""],
    [
      { sea: { $type: "color", a: { $value: srgb(0, 0, 0) }, A: { $value: srgb(1, 0, 0) } } },
      "same-name",
      "sea.A",
      '"a"',
    ],
    ["{", "bad-json", "tokens", ""],
    ["[]", "wrong-type", "tokens", ""],
    [[], "wrong-type", "tokens", ""],
  ])("is refused: %j", (file, code, where, says) => {
    const error = refusal(() => readTokens(file as object));
    expect(error.code).toBe(code);
    expect(error.where).toContain(where);
    expect(error.message).toContain(says);
  });

  it("may bring colours outside sRGB when they may be mapped", () => {
    const file = sea({ colorSpace: "display-p3", components: [0, 1, 0] });
    const [read] = readTokens(file, { gamut: "map" });
    expect(new Color(read!.inks["tide"]!).deltaE2000(new Color("color(display-p3 0 1 0)"))).toBeLessThan(8);
  });

  it("is not read with options that nobody knows", () => {
    const file = sea(srgb(0, 0, 0));
    expect(refusal(() => readTokens(file, { gammut: "map" } as never)).message).toContain(
      'did you mean "gamut"',
    );
    expect(refusal(() => readTokens(file, { gamut: "clip" } as never)).code).toBe("unknown-choice");
  });

  it("however deep or large, is refused in time", () => {
    let deep: object = {};
    for (let i = 0; i < 100_000; i++) deep = { a: deep };
    expect(refused(deep)).toContain("[tokens-too-deep]");
    expect(refused(`${'{"a":'.repeat(50_000)}1${"}".repeat(50_000)}`)).toMatch(
      /\[(tokens-too-deep|bad-json)\]/,
    );
    expect(refused(" ".repeat(4_000_001))).toContain("[tokens-too-large]");
    // Each group holds the one before it twice over: 2^40 tokens.
    const wide: Record<string, object> = { g0: { $type: "color", a: { $value: 1 } } };
    for (let i = 1; i < 40; i++)
      wide[`g${i}`] = { x: { $extends: `{g${i - 1}}` }, y: { $extends: `{g${i - 1}}` } };
    expect(refused(wide)).toContain("[tokens-too-large]");
    const chain: Record<string, object> = { $type: "color" as never };
    for (let i = 0; i < 5000; i++) chain[`t${i}`] = { $value: `{t${i + 1}}` };
    expect(refused(chain)).toContain("[token-cycle]");
    // Nothing of these names is left in kebab-case, so that each has to be given a number.
    const kelps = Array.from({ length: 10_000 }, (_, i) => String.fromCharCode(0x4e00 + i));
    const ink = (i: number) => color("srgb", (i % 256) / 255, Math.floor(i / 256) / 255, 0);
    const of = (entry: (i: number) => object) => Object.fromEntries(kelps.map((k, i) => [k, entry(i)]));
    expect(refused(of((i) => ({ $type: "color", a: ink(i) })))).toContain("[tokens-too-large]");
    expect(refused({ sea: { $type: "color", ...of(ink) } })).toContain("[too-many-inks]");
  });

  it("names the token whose reference is wrong", () => {
    expect(refused({ sea: { kelp: { $ref: "other.json#/kelp" } } })).toContain("tokens > sea.kelp");
  });

  it("keeps the first name of a colour, a value before what refers to it, and passes over what is translucent", () => {
    const sea = {
      $type: "color",
      accent: { $value: "{sea.kelp}" },
      kelp: { $value: srgb(0, 0.4, 0.2) },
      weed: { $value: srgb(0, 0.4, 0.2) },
      haze: { $value: { ...srgb(0, 0, 0), alpha: 0.3 } },
      foam: { $value: srgb(1, 1, 1) },
    };
    expect(readTokens({ sea })).toEqual([{ name: "sea", inks: { kelp: "#006633", foam: "#ffffff" } }]);
  });

  it("gives groups whose names begin alike names of their own", () => {
    const path = "x".repeat(45);
    const file = Object.fromEntries(
      ["a", "b"].map((end) => [`${path}${end}`, { $type: "color", tide: color("srgb", 0, 0.2, 0.4) }]),
    );
    expect(readTokens(file).map(({ name }) => name)).toEqual(["x".repeat(40), `${"x".repeat(38)}-2`]);
  });

  it("reaches no prototype", () => {
    expect(refused(JSON.parse('{"a":{"$type":"color","$value":"{__proto__}"}}'))).toContain(
      "[unknown-token]",
    );
    expect(refused(JSON.parse('{"a":{"$extends":"{constructor}"}}'))).toContain("[unknown-group]");
    expect(refused(JSON.parse('{"a":{"$type":"color","$value":{"$ref":"#/toString"}}}'))).toContain(
      "[unknown-token]",
    );
    expect("polluted" in {}).toBe(false);
  });

  it("passes over what is none of its business, sound or not", () => {
    const file = {
      ink: { $type: "color", tide: color("srgb", 0, 0.2, 0.4) },
      gap: { $type: "dimension", a: { $value: "{nowhere}" }, b: { $value: { value: 1 } } },
    };
    expect(readTokens(file)).toHaveLength(1);
  });
});
