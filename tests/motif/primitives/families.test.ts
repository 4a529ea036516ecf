// The primitives as a set: families that share their roles, and no two alike.
import { describe, expect, it } from "vitest";
import { ellipse } from "../../../src/geometry/shapes.ts";
import type { MotifPiece } from "../../../src/motif/motif.ts";
import families from "../../../tools/motif-families.json" with { type: "json" };
import { likeness, silhouetteOf } from "./likeness.ts";
import { type AnyFactory, all, drawn, extent } from "./measure.ts";

const factories = Object.fromEntries(all) as unknown as Record<string, AnyFactory & { piece: MotifPiece }>;
const partsOf = (names: readonly string[]): string[] => [
  ...new Set(names.flatMap((name) => factories[name]!.piece.parts as readonly string[])),
];

describe("the families", () => {
  it("hold every primitive once", () => {
    expect(Object.values(families).flat().sort()).toEqual(all.map(([name]) => name).sort());
    expect(all.length).toBeGreaterThanOrEqual(26 + 8);
  });

  // The first eight primitives name some of their parts after themselves; what came after shares these.
  it.each([
    ["Botanical", ["stem", "leaf", "petal", "centre", "marking", "seed"], ["blade", "vein", "berry"]],
    ["Fruit", ["stem", "leaf", "fruit", "flesh", "core", "seed", "highlight"], []],
    ["Shore and harbour", ["body", "trim", "marking"], ["scallop", "rib", "rim"]],
    ["Geometric", ["shape", "inlay"], ["ring", "core", "star"]],
    ["Small fillers", ["fleck"], ["dot"]],
  ] as readonly [keyof typeof families, readonly string[], readonly string[]][])(
    "%s: few roles serve all of it",
    (family, shared, older) => {
      const parts = partsOf(families[family]);
      expect(parts.filter((part) => ![...shared, ...older].includes(part))).toEqual([]);
      expect(shared.filter((part) => !parts.includes(part))).toEqual([]);
    },
  );
});

/** Two silhouettes laid over each other as well as can be share less than this of their union. */
const ALIKE = 0.9;

describe("silhouettes", () => {
  const silhouettes = all.map(([name]) => [name, silhouetteOf(drawn(factories[name]!()).outline)] as const);

  it(`of no two primitives share ${ALIKE} of their union`, () => {
    const pairs = silhouettes.flatMap(([name, one], i) =>
      silhouettes
        .slice(0, i)
        .map(([other, two]) => ({ pair: `${other}, ${name}`, alike: likeness(one, two) })),
    );
    expect(pairs.filter(({ alike }) => alike > ALIKE)).toEqual([]);
  });

  it("are judged alike where they are: a turned, mirrored and scaled one, and a disc and an oval nearly round", () => {
    const pear = silhouettes.find(([name]) => name === "pear")![1];
    const again = silhouetteOf(drawn(factories["pear"]!({ height: 90 })).outline);
    expect(likeness(pear, again)).toBeGreaterThan(0.97);
    expect(likeness(silhouetteOf(ellipse(0, 0, 10)), silhouetteOf(ellipse(5, 5, 10, 9.4)))).toBeGreaterThan(
      ALIKE,
    );
    expect(likeness(silhouetteOf(ellipse(0, 0, 10)), silhouetteOf(ellipse(0, 0, 20, 5)))).toBeLessThan(0.6);
  });
});

describe("drawings that vary", () => {
  it.each(all.map(([name]) => name))("%s differ from the plain one, and little in size", (name) => {
    const plain = extent(drawn(factories[name]!()).outline);
    const varied = ["a", "b"].map((seed) => drawn(factories[name]!({ vary: 0.8, variants: 1 }), seed));
    const [one, two] = varied.map((motif) => extent(motif.outline));
    expect(one).not.toEqual(two);
    for (const box of [one!, two!]) {
      expect(Math.abs(box.width / plain.width - 1)).toBeLessThan(0.35);
      expect(Math.abs(box.height / plain.height - 1)).toBeLessThan(0.35);
    }
  });
});
