import { describe, expect, test } from "vitest";
import { areaOf } from "../../../src/geometry/path.ts";
import {
  buildTile,
  defineMotif,
  definePattern,
  dot,
  leaf,
  mirror,
  pen,
  placeAt,
  planeGroup,
  type RepeatUse,
  star,
  straight,
  type Tile,
  toss,
} from "../../../src/index.ts";
import { refusal, refusalOf } from "../../given.ts";

type Options = Omit<Parameters<typeof toss>[0], "motifs">;

const motifs = [
  { motif: leaf({ length: 14, roles: { vein: "ground" } }) },
  { motif: star({ size: 8 }) },
  { motif: dot({ size: 5 }) },
] as const;
const built = (options: object, repeat: RepeatUse = straight({ width: 80, height: 70 })): Promise<Tile> =>
  buildTile(
    definePattern({
      name: "asked",
      seed: "asked-1",
      repeat,
      layout: toss({ gap: 1.5, motifs, ...options } as never),
      roles: ["blade", "star", "dot"],
      colorways: { one: { ground: "#fff", blade: "#363", star: "#c33", dot: "#339" } },
    }),
  );
const small = straight({ width: 34, height: 30 });
/** Area of the ink of a unit (µm²). */
const ink = ({ placements, motifs: drawn }: Tile): number =>
  placements.reduce((sum, { motif, scale }) => sum + areaOf(drawn[motif]!.outline) * scale * scale, 0);
const counted = (...counts: (number | undefined)[]) =>
  motifs.map((entry, k) => (counts[k] === undefined ? entry : { ...entry, count: counts[k] }));
const countsOf = (tile: Tile): number[] =>
  motifs.map((_, k) => tile.placements.filter(({ id }) => id.startsWith(`${k + 1}-`)).length);

describe("counts of each motif", () => {
  test.each([
    [2, 4, 7],
    [1, 1, 1],
  ])("%i, %i and %i come out so", async (...counts) => {
    const tile = await built({ motifs: counted(...counts) }, straight({ width: 44, height: 40 }));
    expect(countsOf(tile)).toEqual(counts);
    expect(tile.figures.clearance).toBeGreaterThan(1.5);
  });

  test.each([
    ["mirror", mirror({ width: 70, height: 70, axis: "both" })],
    ["p4", planeGroup({ group: "p4", width: 120 })],
  ] as const)("hold under %s, for the unit", async (_, repeat) => {
    expect(countsOf(await built({ motifs: counted(2, 3, 5) }, repeat))).toEqual([2, 3, 5]);
  });

  test("that do not fit are refused, with a number that does", async () => {
    const error = await refusalOf(() => built({ motifs: counted(60, 60, 60) }, small));
    expect(error.code).toBe("count-too-large");
    const most = Number(/at most (\d+)/.exec(error.fix)![1]);
    expect(most).toBeGreaterThan(5);
    expect((await built({ count: most }, small)).placements).toHaveLength(most);
  });
});

const paperBoat = defineMotif({
  name: "harbour/paper-boat",
  about: "A boat folded from paper.",
  params: {},
  parts: ["boat"],
  draw: () => ({ boat: pen().moveTo(-6, 0).lineTo(6, 0).lineTo(0, 5).path() }),
});

describe("what contradicts itself is refused", () => {
  test.each([
    [{ count: 9, coverage: 0.2 }, "asked-twice", "count and coverage both say how many motifs"],
    [{ count: 9, motifs: counted(1, 2, 3) }, "asked-twice", "count and motifs[] > count both say"],
    [{ coverage: 0.2, motifs: counted(1, 2, 3) }, "asked-twice", "coverage and motifs[] > count both say"],
    [{ density: "packed", count: 9 }, "asked-twice", "density and count both say how many motifs"],
    [{ density: "airy", coverage: 0.2 }, "asked-twice", "leave out density, or coverage"],
    [
      { density: "packed", motifs: counted(1, 2, 3) },
      "asked-twice",
      "density and motifs[] > count both say how many motifs",
    ],
    [{ motifs: counted(1, undefined, 3) }, "missing-option", "motifs[1] > count"],
    [{ count: 3, motifs: counted(1, undefined, 3) }, "asked-twice", "leave out count, or motifs[] > count"],
    [
      { motifs: counted(1, 2, 3).map((entry, k) => (k === 1 ? { ...entry, share: 2 } : entry)) },
      "asked-twice",
      "toss > motifs[1]: share and count both say how many motifs there are to be\n  fix: leave out share, or count",
    ],
    [
      { motifs: counted(20_000, 1, 1) },
      "number-range",
      "toss > motifs[] > count: the counts come to 20002 motifs, more than 20000\n  fix: ask for at most 20000 in all",
    ],
    [{ edge: 2 }, "edge-of-nothing", "no area whose edge motifs could keep away from"],
  ])("%j", async (options, code, message) => {
    const error = await refusalOf(() => built(options));
    expect(error.code).toBe(code);
    expect(error.message).toContain(message);
    expect(error.message).toContain("toss");
  });

  test("but a density that is the default goes with a count, since a recipe holds it too", async () => {
    expect((await built({ density: "even", count: 3 }, small)).placements).toHaveLength(3);
    const shared = counted(1, 1, 1).map((entry) => ({ ...entry, share: 1 }));
    expect((await built({ motifs: shared }, small)).placements).toHaveLength(3);
  });

  test("a motif where an entry is wanted, with how to write it", () => {
    for (const [given, fix] of [
      [dot(), "write { motif: dot(…) }"],
      [paperBoat(), "write { motif: paperBoat(…) }"],
      [JSON.parse(JSON.stringify(dot())), "write { motif: dot(…) }"],
    ] as const) {
      const error = refusal(() => toss({ motifs: [motifs[0], given] } as never));
      expect(error).toMatchObject({ code: "wrong-type", where: "toss > motifs[1]" });
      expect(error.what).toContain("is a motif, where an object that has one is wanted");
      expect(error.fix).toBe(fix);
    }
    expect(refusal(() => placeAt({ places: [dot()] } as never)).fix).toBe(
      "write { motif: dot(…), x: …, y: … }",
    );
  });

  test.each([
    [
      { density: 0.5 },
      'density: 0.5 is not one of "airy", "even", "packed"\n  fix: give one of these; how much of the ground is to be covered is said by coverage, such as coverage: 0.35',
    ],
    [{ density: "full" }, 'there is no choice "full"'],
    [{ coverage: "35%" }, "35 % is 0.35"],
    [{ spacing: 3 }, 'did you mean "gap"'],
    [{ gap: "2" }, 'give 2 or "2mm"'],
    [{ direction: [] }, "it lists 0 angles"],
    [{ direction: Array.from({ length: 361 }, (_, k) => k / 361) }, "it lists 361 angles"],
    [{ direction: [0, "0.5"] }, 'direction[1]: "0.5" is not an angle in turns'],
    [{ direction: [0, Number.NaN] }, "direction[1]: NaN is not an angle in turns"],
    [{ direction: [90] }, "direction[0]: 90 is not an angle in turns, -1 to 1"],
    [{ direction: "two-ways" }, 'did you mean "two-way"?'],
    [{ direction: 0.25 }, "one-way, two-way, four-way, tossed, or a list of angles in turns"],
    [{ count: 0 }, "count: 0 is outside 1 to 20000"],
    [{ coverage: 1.2 }, "coverage: 1.2 is outside 0 to 1"],
    [{ hollows: -0.1 }, "hollows: -0.1 is outside 0 to 1"],
    [{ motifs: [{ ...motifs[0], count: 2.5 }] }, "count: 2.5 is not a whole number"],
  ])("%j", (options, message) => {
    expect(refusal(() => toss({ motifs, ...options } as never)).message).toContain(message);
  });
});

describe("angles of one's own", () => {
  test.each<[string, Options]>([
    ["even", {}],
    ["packed", { density: "packed", gap: 2.5 }],
    ["airy", { density: "airy" }],
    ["counted", { count: 8 }],
    ["by coverage", { coverage: 0.2 }],
  ])("are the only ones, and all of them, in a toss that is %s", async (_, options) => {
    const tile = await built({ ...options, direction: [0.1, -0.1, 0.1, -0.7] }, small);
    const seen = [...new Set(tile.placements.map(({ turn }) => turn))].sort((a, b) => a - b);
    expect(seen.map((turn) => Math.round(turn * 1e9) / 1e9)).toEqual([0.1, 0.3, 0.9]);
  });
});

describe("coverage", () => {
  test.each([0.05, 0.15, 0.3])("of %f is met to within a motif", async (coverage) => {
    const tile = await built({ coverage }, straight({ width: 44, height: 40 }));
    const largest = Math.max(...tile.motifs.map((motif) => areaOf(motif.outline)));
    expect(Math.abs(ink(tile) - coverage * 44 * 40 * 1e6)).toBeLessThan(largest);
  });

  test("that the gap forbids is as much as a packed toss has", async () => {
    const all = await built({ coverage: 1 }, small);
    expect(ink(all)).toBeGreaterThan(0.97 * ink(await built({ density: "packed" }, small)));
    expect(all.figures.clearance).toBeGreaterThanOrEqual(1.5 - 1e-6);
  });

  test("of nothing is one motif", async () => {
    expect((await built({ coverage: 0 })).placements).toHaveLength(1);
  });
});
