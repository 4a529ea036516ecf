import { describe, expect, it } from "vitest";
import type { palette } from "../../../src/colorway/palette.ts";
import { ink, palette as paletteParam } from "../../../src/colorway/param.ts";
import { defineScheme } from "../../../src/colorway/schemes/define.ts";
import * as schemes from "../../../src/colorway/schemes/index.ts";
import { makePalette, makePalettes } from "../../../src/colorway/schemes/make-palette.ts";
import type { SchemeColor } from "../../../src/colorway/schemes/scheme.ts";
import { createKit } from "../../../src/plugin/kit.ts";
import { definePlugin } from "../../../src/plugin/plugin.ts";
import { refusal } from "../../given.ts";

const options = { name: "p", seed: "1" };
const returns = (value: unknown): (() => unknown) => {
  const odd = defineScheme({
    name: "sly/odd",
    about: "Returns oddities.",
    params: {},
    make: () => value as SchemeColor[],
  });
  return () => makePalette(odd(), options);
};

const rope = defineScheme({
  name: "harbour/rope",
  about: "A rope's colour, and a lighter one.",
  params: {
    of: ink({ about: "The rope.", default: "tan" }),
    more: paletteParam({ about: "More.", default: { name: "a", inks: { x: "red" } } }),
  },
  make: ({ of, more }, { random }) => [
    { name: "rope", lightness: 0.5, chroma: 0.1, hue: of === "#d2b48c" ? 0.2 : 0.7 },
    { lightness: random.between(0.8, 0.9), chroma: Object.keys(more.inks).length / 50, hue: 0.2 },
  ],
});

describe("makePalettes", () => {
  it("makes palettes that do not hang on how many are asked for, named in order", () => {
    const three = makePalettes(schemes.dusk(), { name: "dusk", seed: "s", count: 3 });
    expect(three.map(({ name }) => name)).toEqual(["dusk-1", "dusk-2", "dusk-3"]);
    expect(makePalettes(schemes.dusk(), { name: "dusk", seed: "s", count: 9 }).slice(0, 3)).toEqual(three);
    expect(new Set(three.map(({ inks }) => JSON.stringify(inks))).size).toBe(3);
  });

  it("refuses what makes no sense", () => {
    expect(refusal(() => makePalettes(schemes.dusk(), { name: "d", seed: "s", count: 0 })).code).toBe(
      "number-range",
    );
    expect(refusal(() => makePalette({} as never, options)).code).toBe("wrong-type");
    expect(refusal(() => makePalette(schemes.dusk(), { name: "D", seed: "" })).code).toBe("wrong-type");
    expect(refusal(() => makePalette(schemes.dusk(), { name: "d" } as never)).code).toBe("missing-option");
    // @ts-expect-error there is no such option
    expect(refusal(() => schemes.dusk({ cuont: 3 })).message).toContain('did you mean "count"');
    // @ts-expect-error nor such a one
    expect(refusal(() => schemes.triad({ of: "red", cuont: 3 })).code).toBe("unknown-option");
    expect(refusal(() => schemes.dusk({ of: { name: "x", inks: { a: "#12" } } })).code).toBe("bad-color");
    const copied = JSON.parse(JSON.stringify(schemes.dusk())) as ReturnType<typeof schemes.dusk>;
    expect(refusal(() => makePalette(copied, options)).code).toBe("unbound-piece");
  });
});

describe("a scheme of one's own", () => {
  it("gets its parameters checked, chance by name, and names inks or leaves it to their colours", () => {
    const made = makePalette(rope(), options);
    expect(Object.keys(made.inks)[0]).toBe("rope");
    expect(Object.keys(made.inks)[1]).toMatch(/^[a-z-]+$/);
    expect(makePalette(rope({ of: "navy" }), options).inks["rope"]).not.toBe(made.inks["rope"]);
    expect(refusal(() => rope({ of: "nave" })).where).toBe("rope > of");
  });

  it("that returns one ink twice gets two, a hair apart", () => {
    const twice = { lightness: 0, chroma: 0, hue: 0 };
    const made = returns([twice, twice, twice])() as ReturnType<typeof palette>;
    expect(new Set(Object.values(made.inks)).size).toBe(3);
  });

  it.each([
    [undefined],
    [[]],
    [new Array(201).fill({ lightness: 0.5, chroma: 0, hue: 0 })],
    [[null]],
    [[{ lightness: 2, chroma: 0, hue: 0 }]],
    [[{ lightness: 0.5, chroma: Number.NaN, hue: 0 }]],
    [[{ lightness: 0.5, chroma: -1, hue: 0 }]],
    [[{ lightness: 0.5, chroma: 0 }]],
  ])("that returns %j is named", (value) => {
    const error = refusal(returns(value));
    expect(error.code).toBe("bad-scheme");
    expect(error.where).toMatch(/^sly\/odd > make/);
  });

  it.each([
    ["a hue in degrees", { lightness: 0.5, chroma: 0.1, hue: 210 }, "not degrees"],
    ["a chroma in percent", { lightness: 0.5, chroma: 40, hue: 0.1 }, "chroma from 0 to 1"],
    ["a name that is no text", { name: 5, lightness: 0.5, chroma: 0.1, hue: 0 }, "its name is 5"],
  ])("that returns %s is told what is wanted", (_, color, words) => {
    const odd = defineScheme({
      ...{ name: "sly/odd", about: "Odd.", params: {} },
      make: () => [color] as never,
    });
    const error = refusal(() => makePalette(odd(), options));
    expect([error.code, error.where]).toEqual(["bad-scheme", "sly/odd > make[0]"]);
    expect(error.message).toContain(words);
  });

  it("may call inks alike, however long their names: they are numbered", () => {
    const long = "a".repeat(40);
    const twins = defineScheme({
      ...{ name: "sly/twins", about: "Twins.", params: {} },
      make: () => [0.3, 0.6].map((lightness) => ({ name: long, lightness, chroma: 0, hue: 0 })),
    });
    expect(Object.keys(makePalette(twins(), options).inks)).toEqual([long, `${"a".repeat(38)}-2`]);
  });

  it("that throws is named, with the cause", () => {
    const cause = new Error("no tide");
    const odd = defineScheme({
      name: "sly/odd",
      about: "Throws.",
      params: {},
      make: () => {
        throw cause;
      },
    });
    const error = refusal(() => makePalette(odd(), options));
    expect([error.code, error.where, error.cause]).toEqual(["piece-failed", "sly/odd > make", cause]);
  });
});

describe("a kit", () => {
  const kit = createKit({ plugins: [definePlugin({ name: "harbour", version: "1.0.0", pieces: [rope] })] });

  it("lists the library's schemes and those of plugins", () => {
    const listed = kit.describe().pieces.filter(({ kind }) => kind === "scheme");
    expect(listed.map(({ name }) => name)).toEqual([
      ...Object.values(schemes).map(({ piece }) => piece.name),
      "harbour/rope",
    ]);
    expect(listed).toHaveLength(15);
  });

  it("makes a palette from a scheme's name and parameters, as a script does", () => {
    const use: unknown = JSON.parse(JSON.stringify(schemes.triad({ of: "#d9803c", count: 4 })));
    expect(kit.palette(use, options)).toEqual(
      makePalette(schemes.triad({ of: "#d9803c", count: 4 }), options),
    );
    expect(kit.palette({ use: "harbour/rope", params: {} }, options)).toEqual(makePalette(rope(), options));
  });

  it("refuses other pieces, unknown ones, and what is too deep", () => {
    expect(refusal(() => kit.palette({ use: "sprigwright/toss", params: {} }, options)).code).toBe(
      "wrong-kind",
    );
    expect(refusal(() => kit.palette({ use: "sprigwright/dsk", params: {} }, options)).message).toContain(
      "dusk",
    );
    expect(refusal(() => kit.palette({ use: "sprigwright/dusk", params: { n: 1 } }, options)).code).toBe(
      "unknown-option",
    );
    expect(refusal(() => kit.palette(7, options)).code).toBe("wrong-type");
    let deep: unknown = 1;
    for (let i = 0; i < 50_000; i++) deep = [deep];
    expect(refusal(() => kit.palette({ use: "x/y", params: { deep } }, options)).code).toBe(
      "scheme-too-deep",
    );
  });
});
