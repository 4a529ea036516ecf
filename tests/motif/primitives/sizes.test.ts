import { describe, expect, it } from "vitest";
import {
  berry,
  blossom,
  dot,
  leaf,
  ring,
  scallop,
  sprig,
  star,
} from "../../../src/motif/primitives/index.ts";
import { drawn, extent, shape } from "./measure.ts";

const TRUE = 0.1;
const near = (measured: number, wanted: number): void =>
  expect(Math.abs(measured - wanted), `${measured} for ${wanted}`).toBeLessThan(TRUE);

describe("sizes of primitives", () => {
  it.each([3, 5, 12])("a blossom of %i petals is as far across as asked", (petals) => {
    for (const [roundness, notch] of [
      [0.8, 0.35],
      [0, 0],
      [1, 1],
    ] as const)
      near(
        2 *
          extent(
            shape(drawn(blossom({ size: 30, petals, roundness, notch, markings: 0, seeds: 0 })), "petal"),
          ).reach,
        30,
      );
  });

  it("a blossom's centre has the share asked for", () => {
    near(extent(shape(drawn(blossom({ size: 30, centre: 0.4 })), "centre")).width, 12);
  });

  it.each([0, 0.4, -1, 1])("a leaf bent by %f is as long as asked from foot to tip", (bend) => {
    near(extent(drawn(leaf({ length: 24, bend })).outline).height, 24);
    near(extent(drawn(leaf({ length: "8cm", bend })).outline).height, 80);
  });

  it("a straight leaf is as wide as its share of the blade's length", () => {
    const motif = drawn(leaf({ length: 50, width: 0.4, stalk: 0.2, bend: 0 }));
    near(extent(motif.outline).width, 0.4 * 50 * 0.8);
  });

  it.each([0, 0.5, -1])("a sprig bent by %f is as high as asked", (bend) => {
    for (const roundness of [0, 1])
      near(extent(drawn(sprig({ length: 60, bend, roundness })).outline).height, 60);
  });

  it.each([0, 0.6, 1])("a fruit with a dimple of %f has the diameter asked for", (dimple) => {
    const { width, height } = extent(shape(drawn(berry({ size: 14, count: 1, dimple })), "fruit"));
    near(width, 14);
    near(height, 14);
  });

  it("a dot and an oval are as high and as wide as asked", () => {
    const { width, height } = extent(drawn(dot({ size: 12, width: 0.5 })).outline);
    near(width, 6);
    near(height, 12);
  });

  it.each([4, 5, 7, 12])("a star of %i points touches the circle asked for", (count) => {
    for (const roundness of [0, 0.4, 1])
      near(2 * extent(drawn(star({ size: 20, points: count, roundness })).outline).reach, 20);
  });

  it("a ring has the diameter asked for, and so has its dot", () => {
    const motif = drawn(ring({ size: 20, inner: 0.6, core: 0.5 }));
    near(extent(shape(motif, "ring")).width, 20);
    near(extent(shape(motif, "core")).width, 6);
  });

  it.each([0.34, 0.42, 0.5])("a scallop with a rise of %f is as wide as asked", (rise) => {
    for (const ribs of [4, 8, 14])
      near(extent(shape(drawn(scallop({ size: 26, rise, ribs })), "scallop")).width, 26);
  });
});
