import { describe, expect, it } from "vitest";
import { ringsArea } from "../../../src/geometry/clip.ts";
import { closeHollows } from "../../../src/geometry/close-hollows.ts";
import { flatten } from "../../../src/geometry/flatten.ts";
import { growRings } from "../../../src/geometry/grow.ts";
import { arch, squiggle } from "../../../src/motif/primitives/index.ts";
import { type AnyFactory, all, drawn } from "./measure.ts";

/** What layouts and figures do with the outline of a motif, however coarsely: small loops become points. */
function used(outline: Parameters<typeof flatten>[0]): void {
  for (const tolerance of [20, 80, 300]) {
    const rings = flatten(outline, tolerance);
    expect(ringsArea(growRings(rings, 1000, 40))).toBeGreaterThan(ringsArea(rings));
    if (tolerance > 20) closeHollows(rings, 500);
  }
}

it.each(all)(
  "%s can be laid out where all its parameters are least and it strays as far as it may",
  (_, factory) => {
    const make = factory as unknown as AnyFactory;
    const options = Object.entries(factory.piece.params).flatMap(([name, { schema }]) => {
      const of = (Array.isArray(schema["anyOf"]) ? schema["anyOf"][0] : schema) as Record<string, unknown>;
      return of["minimum"] === undefined ? [] : [[name, of["minimum"]] as const];
    });
    used(drawn(make({ ...Object.fromEntries(options), vary: 1, variants: 1 })).outline);
  },
);

describe("outlines that hold a small loop", () => {
  it("can be laid out: nested arches without feet, waves that stray", () => {
    for (const width of [10, 28, 55]) used(drawn(arch({ width, feet: 0 })).outline);
    for (const seed of ["a", "b", "c", "d"])
      used(drawn(squiggle({ waves: 3, vary: 0.5, variants: 1 }), seed).outline);
  });
});
