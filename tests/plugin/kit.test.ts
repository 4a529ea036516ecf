import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { placeAt } from "../../src/layout/place-at.ts";
import { readArtwork } from "../../src/motif/artwork/read-artwork.ts";
import { loadFont } from "../../src/motif/lettering/font.ts";
import { lettering } from "../../src/motif/lettering/lettering.ts";
import { leaf } from "../../src/motif/primitives/index.ts";
import { toSvg } from "../../src/output/svg/to-svg.ts";
import { readParams } from "../../src/params/compound.ts";
import type { ParamSpec } from "../../src/params/param.ts";
import { definePattern } from "../../src/pattern/pattern.ts";
import { artworkPlugin } from "../../src/plugin/artwork.ts";
import { builtIn } from "../../src/plugin/built-in.ts";
import { createKit } from "../../src/plugin/kit.ts";
import { letteringPlugin } from "../../src/plugin/lettering.ts";
import { definePlugin } from "../../src/plugin/plugin.ts";
import { straight } from "../../src/repeat/straight.ts";
import { buildTile } from "../../src/tile/build.ts";
import { type Recipe, recipeOf } from "../../src/tile/recipe.ts";
import { buoy, pebble, refusal, refusalOf } from "../given.ts";
import { shore } from "../given-patterns.ts";

const harbour = definePlugin({ name: "harbour", version: "1.0.0", pieces: [buoy, pebble] });
const kit = createKit({ plugins: [harbour] });
/** A fresh copy of a sound recipe, free to be spoilt. */
// biome-ignore lint/suspicious/noExplicitAny: a test spoils it in ways that no type allows
const recipe = (): any => JSON.parse(JSON.stringify(recipeOf(shore)));

describe("a recipe", () => {
  it("builds the tile of its script, to the byte, even after a trip through text", async () => {
    const script = await buildTile(shore);
    const built = await kit.build(JSON.parse(JSON.stringify(recipeOf(shore))));
    expect(built.digest).toBe(script.digest);
    expect(built.placements).toEqual(script.placements);
    expect(toSvg(built, kit.read(recipe()).colorways["dawn"]!)).toBe(toSvg(script, shore.colorways.dawn));
  });

  it("is written the same from the pattern that was read from it", () => {
    expect(recipeOf(kit.read(recipe()))).toEqual(recipeOf(shore));
  });

  it("may leave out what has a default", async () => {
    const short = recipe();
    for (const place of short.layout.params.places) {
      delete place.motif.roles;
      delete place.flip;
      if (place.motif.vary === 0) for (const key of ["vary", "variants"]) delete place.motif[key];
    }
    delete short.subject;
    delete short.roles;
    short.layout.params.places[1].flip = true;
    expect((await kit.build(short)).digest).toBe((await buildTile(shore)).digest);
  });

  it.each<[string, (r: ReturnType<typeof recipe>) => void, string, string]>([
    [
      "an unknown key",
      (r) => (r.sed = "x"),
      "unknown-key",
      'recipe > sed: there is no key "sed"\n  fix: did you mean "seed"?',
    ],
    [
      "an unknown key of a use",
      (r) => (r.repeat.param = {}),
      "unknown-key",
      "recipe > repeat > param: there is no key",
    ],
    [
      "roles on a repeat",
      (r) => (r.repeat.roles = {}),
      "unknown-key",
      "recipe > repeat > roles: there is no key",
    ],
    [
      "an unknown option",
      (r) => (r.repeat.params.hieght = 3),
      "unknown-option",
      "recipe > repeat > half-drop > hieght",
    ],
    [
      "an unknown option deep inside",
      (r) => (r.layout.params.places[2].motif.params.sise = 3),
      "unknown-option",
      'recipe > layout > params > places[2] > motif > pebble > sise: there is no option "sise"\n  fix: did you mean "size"?',
    ],
    [
      "roles hidden among a motif's options",
      (r) => (r.layout.params.places[0].motif.params.roles = {}),
      "unknown-option",
      "params > roles",
    ],
    [
      "an unknown piece",
      (r) => (r.repeat.use = "sprigwright/half-drp"),
      "unknown-piece",
      'did you mean "sprigwright/half-drop"?',
    ],
    [
      "a piece of another plugin",
      (r) => (r.layout.params.places[0].motif.use = "orchard/pear"),
      "unknown-piece",
      'there is no piece "orchard/pear"',
    ],
    [
      "a layout for a repeat",
      (r) => (r.repeat = r.layout),
      "wrong-kind",
      'recipe > repeat: "sprigwright/place-at" is a layout\n  fix: name a repeat',
    ],
    [
      "a check for a motif",
      (r) => (r.layout.params.places[0].motif = { use: "sprigwright/ink-contrast", params: {} }),
      "wrong-kind",
      "is a check",
    ],
    [
      "a repeat for a motif",
      (r) => (r.layout.params.places[0].motif = r.repeat),
      "wrong-type",
      "is not a motif",
    ],
    [
      "no layout",
      (r) => delete r.layout,
      "wrong-type",
      "recipe > layout: undefined is not a layout: { use, params }",
    ],
    [
      "text for a layout",
      (r) => (r.layout = "toss"),
      "wrong-type",
      'recipe > layout: "toss" is not a layout',
    ],
    ["params as list", (r) => (r.layout.params = []), "wrong-type", "recipe > layout"],
    [
      "another version",
      (r) => (r.sprigwright = "0.2.0"),
      "recipe-version",
      "recipe > sprigwright: it was written by version 0.2.0, this is",
    ],
    ["no version", (r) => delete r.sprigwright, "recipe-version", "it was written by version undefined"],
    [
      "a version that is none",
      (r) => (r.sprigwright = { major: 0 }),
      "recipe-version",
      "recipe > sprigwright",
    ],
    [
      "a negative size",
      (r) => (r.repeat.params.width = -5),
      "length-range",
      "recipe > repeat > half-drop > width: -5 mm",
    ],
    ["no seed", (r) => delete r.seed, "missing-option", "shore > seed"],
    [
      "a missing ink",
      (r) => delete r.colorways.dawn.flag,
      "missing-ink",
      'shore > colorways > dawn: no ink for "flag"',
    ],
    [
      "a foreign role",
      (r) => (r.colorways.dawn.moon = "#ffffff"),
      "unknown-role",
      "shore > colorways > dawn > moon",
    ],
    [
      "a bad role name",
      (r) => (r.layout.params.places[0].motif.roles.flag = "A B"),
      "wrong-type",
      "is not a role name",
    ],
  ])("with %s is refused with its path", (_, spoil, code, message) => {
    const spoilt = recipe();
    spoil(spoilt);
    const error = refusal(() => kit.read(spoilt));
    expect(error.message).toContain(message);
    expect(error.code).toBe(code);
  });

  it.each([null, undefined, 7, "recipe", [], new Map(), () => 1])("is an object: %s is not", (value) => {
    expect(refusal(() => kit.read(value)).message).toContain(
      "is not a recipe: the object that recipeOf returned",
    );
  });
});

describe("a hostile recipe", () => {
  it("nested 3 million deep is refused before anything walks into it", () => {
    let deep: unknown = "x";
    for (let i = 0; i < 3_000_000; i++) deep = [deep];
    const spoilt = { ...recipe(), subject: deep };
    expect(refusal(() => kit.read(spoilt)).message).toBe(
      "recipe: it nests more than 32 levels deep\n  fix: give a recipe that recipeOf wrote [recipe-too-deep]",
    );
  });

  it("as 10 MB of nested text is refused, whether or not JSON.parse survives it", () => {
    const levels = 100_000;
    const text = `{"subject":${`{"${"x".repeat(96)}":`.repeat(levels)}0${"}".repeat(levels)}}`;
    expect(text.length).toBeGreaterThan(9_900_000);
    let parsed: unknown;
    try {
      parsed = JSON.parse(text);
    } catch (error) {
      expect(error).toBeInstanceOf(Error); // an engine may give up by itself
      return;
    }
    expect(refusal(() => kit.read(parsed)).code).toBe("recipe-too-deep");
  });

  it("that holds itself is refused", () => {
    const loop = recipe();
    loop.subject = { loop };
    expect(refusal(() => kit.read(loop)).code).toBe("recipe-too-deep");
  });

  it("of a million values, or of 20 million characters, is refused", () => {
    for (const subject of [
      new Array(1_000_000).fill(0),
      ["x".repeat(20_000_000)],
      { ["k".repeat(20_000_000)]: 0 },
    ])
      expect(refusal(() => kit.read({ ...recipe(), subject })).message).toContain(
        "recipe: it holds more than 500000 values or 16 million characters",
      );
  });

  it("that shares its parts a billion times over is refused in time", () => {
    let wide: unknown = [0];
    for (let i = 0; i < 30; i++) wide = [wide, wide];
    expect(refusal(() => kit.read({ ...recipe(), subject: wide })).code).toBe("recipe-too-large");
  });

  it("reaches no prototype", () => {
    const spoils = ['{"__proto__":{"polluted":1}}', '{"constructor":{"prototype":{"polluted":1}}}'];
    for (const spoil of spoils) {
      const extra = JSON.parse(spoil) as object;
      for (const put of [
        (r: ReturnType<typeof recipe>) =>
          Object.defineProperty(r, Object.keys(extra)[0]!, { value: 1, enumerable: true }),
        (r: ReturnType<typeof recipe>) => (r.repeat.params = mixed(r.repeat.params, extra)),
        (r: ReturnType<typeof recipe>) =>
          (r.layout.params.places[0] = mixed(r.layout.params.places[0], extra)),
        (r: ReturnType<typeof recipe>) =>
          (r.layout.params.places[0].motif = mixed(r.layout.params.places[0].motif, extra)),
        (r: ReturnType<typeof recipe>) =>
          (r.layout.params.places[0].motif.roles = mixed(r.layout.params.places[0].motif.roles, extra)),
        (r: ReturnType<typeof recipe>) => (r.colorways.dawn = mixed(r.colorways.dawn, extra)),
        (r: ReturnType<typeof recipe>) => (r.colorways = mixed(r.colorways, extra)),
      ]) {
        const spoilt = recipe();
        put(spoilt);
        expect(refusal(() => kit.read(spoilt)).code).toMatch(/^(unknown-|missing-ink|wrong-type)/);
        expect("polluted" in {}).toBe(false);
      }
    }
    expect("polluted" in {}).toBe(false);
  });

  it("never names a key longer than a line", () => {
    const error = refusal(() => kit.read({ ...recipe(), ["x".repeat(100_000)]: 1 }));
    expect(error.message.length).toBeLessThan(1000);
  });

  it("is refused as a rejection by build, not as a throw", async () => {
    expect((await refusalOf(() => kit.build({}))).code).toBe("recipe-version");
  });
});

/** The entries of two objects as own entries of a new one, `__proto__` too. */
const mixed = (a: object, b: object): object =>
  Object.fromEntries([...Object.entries(a), ...Object.entries(b)]);

describe("a kit", () => {
  it("refuses two plugins of one name, the library's own included", () => {
    expect(refusal(() => createKit({ plugins: [harbour, harbour] })).message).toContain(
      'kit: two plugins are called "harbour"',
    );
    const posing = definePlugin({ name: "sprigwright", version: "1.0.0", pieces: [] });
    expect(refusal(() => createKit({ plugins: [posing] })).code).toBe("duplicate-plugin");
  });

  it("refuses a plugin that was not made by definePlugin and is not sound", () => {
    const posing = { name: "sly", version: "1.0.0", pieces: [{ ...placeAt.piece }] };
    expect(refusal(() => createKit({ plugins: [posing] })).code).toBe("bad-plugin");
  });

  it("holds no state: two kits know only their own pieces", () => {
    expect(refusal(() => createKit().read(recipe())).message).toContain('there is no piece "harbour/buoy"');
    expect(kit.read(recipe()).name).toBe("shore");
  });

  it("says what went wrong inside a piece with the pattern's name", async () => {
    const odd = recipe();
    odd.repeat.params.height = 40.001;
    expect((await refusalOf(() => kit.build(odd))).where).toBe("shore > half-drop > height");
  });
});

describe("describe()", () => {
  const { pieces, plugins } = kit.describe();

  it("lists the pieces of every plugin as plain JSON", () => {
    expect(plugins.map(({ name }) => name)).toEqual(["sprigwright", "harbour"]);
    expect(pieces.map(({ name }) => name)).toEqual(
      expect.arrayContaining([
        "sprigwright/toss",
        "sprigwright/half-drop",
        "sprigwright/ink-contrast",
        "harbour/buoy",
      ]),
    );
    expect(JSON.parse(JSON.stringify(kit.describe()))).toEqual(kit.describe());
    for (const { about, name } of pieces) {
      expect(about.length, name).toBeGreaterThan(10);
      expect(name).toMatch(/^[a-z][a-z0-9-]*\/[a-z][a-z0-9-]*$/);
    }
  });

  // JSON Schema 2020-12 (json-schema.org/draft/2020-12): the keywords of its validation vocabulary that we use.
  const KEYWORDS =
    /^(\$schema|title|type|properties|required|additionalProperties|description|default|minimum|maximum|minLength|maxLength|pattern|enum|anyOf|items|minItems|maxItems|oneOf|const|x-.*)$/;
  const visit = (schema: unknown, at: string): void => {
    if (typeof schema === "boolean") return;
    if (typeof schema !== "object" || schema === null) throw new Error(`${at} is no schema`);
    for (const [key, value] of Object.entries(schema)) {
      if (!KEYWORDS.test(key)) throw new Error(`${at} has ${key}`);
      if (key === "type" && !["object", "array", "string", "number", "integer", "boolean"].includes(value))
        throw new Error(`${at} has the type ${value}`);
      if (key === "properties") for (const [name, of] of Object.entries(value)) visit(of, `${at} > ${name}`);
      if (key === "items" || key === "additionalProperties") visit(value, `${at} > ${key}`);
      if (key === "anyOf" || key === "oneOf")
        (value as unknown[]).forEach((of, i) => void visit(of, `${at} > ${i}`));
      if (key === "pattern") new RegExp(value, "u");
      if (key === "required")
        for (const name of value)
          if (!(name in (schema as { properties: object }).properties)) throw new Error(`${at}: ${name}`);
    }
  };

  it("gives a JSON Schema for every piece", () => {
    for (const { name, params } of pieces) {
      expect(params["$schema"]).toBe("https://json-schema.org/draft/2020-12/schema");
      expect(params["additionalProperties"]).toBe(false);
      visit(params, name);
    }
  });

  it("says of every parameter what it does", () => {
    for (const { name, params } of pieces)
      for (const [key, schema] of Object.entries(
        params["properties"] as Record<string, { description?: string }>,
      ))
        expect(schema.description?.length ?? 0, `${name} > ${key}`).toBeGreaterThan(8);
  });

  it("gives only defaults that the piece itself takes", () => {
    for (const piece of [...harbour.pieces, ...builtIn().pieces]) {
      const spec = piece.params as ParamSpec;
      for (const [key, param] of Object.entries(spec))
        if (param.optional) param.read(undefined, `${piece.name} > ${key}`);
      if (Object.values(spec).every((param) => param.optional)) readParams(spec, {}, piece.name);
    }
  });
});

it("imported drawings and letters build by recipe too, through plugins of their own", async () => {
  const boat =
    '<svg xmlns="http://www.w3.org/2000/svg"><path fill="#c00" d="M0 0h9v5z"/><path fill="#036" d="M0 5h9v3z"/></svg>';
  const font = await loadFont(
    readFileSync("node_modules/@fontsource/lobster/files/lobster-latin-400-normal.woff"),
  );
  const pattern = definePattern({
    name: "fleet",
    seed: "gale",
    repeat: straight({ width: 60, height: 60 }),
    layout: placeAt({
      places: [
        {
          motif: readArtwork(boat, { size: 20, roles: { "#cc0000": "sail", "#003366": "hull" } }),
          x: 15,
          y: 20,
        },
        { motif: lettering(font, "Ahoy", { size: 14, role: "hull" }), x: 40, y: 45 },
        { motif: leaf({ length: 9 }), x: 50, y: 10 },
      ],
    }),
    colorways: { dawn: { ground: "linen", sail: "tomato", hull: "navy", blade: "teal", vein: "black" } },
  });
  const copy: unknown = JSON.parse(JSON.stringify(recipeOf(pattern)));
  const full = createKit({ plugins: [artworkPlugin(), letteringPlugin()] });
  expect((await full.build(copy)).digest).toBe((await buildTile(pattern)).digest);
  expect(refusal(() => createKit().read(copy)).message).toContain(
    "createKit({ plugins: [artworkPlugin()] })",
  );
});

it("a pattern of two motifs with chance builds alike by script and by recipe", async () => {
  const pattern = definePattern({
    name: "varied",
    seed: "gale",
    repeat: straight({ width: "3in", height: 50 }),
    layout: placeAt({
      places: [0, 1, 2, 3].map((i) => ({
        motif: buoy({ vary: 0.8, variants: 3, size: "1cm" }),
        x: 10 + 15 * i,
        y: 20,
      })),
    }),
    colorways: { dawn: { ground: "linen", float: "hsl(9 60% 50%)", flag: "navy" } },
  });
  const copy = JSON.parse(JSON.stringify(recipeOf(pattern))) as Recipe;
  expect((await kit.build(copy)).digest).toBe((await buildTile(pattern)).digest);
});
