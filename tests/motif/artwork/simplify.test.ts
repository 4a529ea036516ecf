import { describe, expect, it } from "vitest";
import { pathOfRings } from "../../../src/geometry/clip.ts";
import { flatten } from "../../../src/geometry/flatten.ts";
import { areaOf, joinPaths, type Path } from "../../../src/geometry/path.ts";
import { ellipse, loop } from "../../../src/geometry/shapes.ts";
import { deviation } from "../../../src/motif/artwork/deviation.ts";
import { inspectArtwork } from "../../../src/motif/artwork/inspect.ts";
import { simplifyPath } from "../../../src/motif/artwork/simplify.ts";
import { polygon } from "../../given.ts";
import { svgOf } from "./picture.ts";

const nodes = (path: Path): number => path.points.length / 6;
/** A curve as a scanner or a tracing leaves it: hundreds of short sides. */
const traced = (path: Path): Path => pathOfRings(flatten(path, 1));

describe("fewer nodes", () => {
  it("stray no farther than was said, measured both ways by brute force", () => {
    const blob = loop([0, -10, 8, -6, 12, 3, 4, 9, -5, 7, -11, 0]);
    for (const path of [
      traced(ellipse(0, 0, 15, 9)),
      traced(blob),
      traced(joinPaths([ellipse(0, 0, 9), blob])),
    ])
      for (const tolerance of [10, 50, 200]) {
        const simple = simplifyPath(path, tolerance);
        expect(nodes(simple)).toBeLessThan(nodes(path) / 3);
        const [a, b] = [flatten(path, 1), flatten(simple, 1)];
        for (const [i, ring] of a.entries())
          expect(deviation(ring, b[i]!, Infinity)).toBeLessThanOrEqual(tolerance + 1);
        expect(areaOf(simple) / areaOf(path)).toBeCloseTo(1, 1);
      }
  });

  it("keep corners", () => {
    const star = polygon(0, -10, 3, -3, 10, -3, 4, 2, 6, 9, 0, 5, -6, 9, -4, 2, -10, -3, -3, -3);
    expect(simplifyPath(star, 100)).toBe(star);
  });

  it("are none where nothing is asked for, and where nothing is gained", () => {
    const path = traced(ellipse(0, 0, 9));
    expect(simplifyPath(path, 0)).toBe(path);
    expect(simplifyPath(ellipse(0, 0, 9), 50)).toEqual(ellipse(0, 0, 9));
  });

  it("are counted in the report", () => {
    const points = Array.from({ length: 200 }, (_, i) => {
      const t = (i / 200) * 2 * Math.PI;
      return `${16 + 12 * Math.cos(t)},${16 + 8 * Math.sin(t)}`;
    });
    const svg = svgOf(`<polygon fill="#c33" points="${points.join(" ")}"/>`);
    expect(inspectArtwork(svg).nodes).toEqual({ before: 200, after: 200 });
    const { nodes: counted } = inspectArtwork(svg, { simplify: "0.05mm" });
    expect(counted.before).toBe(200);
    expect(counted.after).toBeLessThan(20);
  });
});

describe("the deviation of two outlines", () => {
  it("is that of Hausdorff: the side that is missed counts, whichever way it is measured", () => {
    const square = flatten(polygon(0, 0, 10, 0, 10, 10, 0, 10), 1)[0]!;
    const spiked = flatten(polygon(0, 0, 5, -3, 10, 0, 10, 10, 0, 10), 1)[0]!;
    expect(deviation(square, spiked, Infinity)).toBeCloseTo(3000, 6);
    expect(deviation(spiked, square, Infinity)).toBeCloseTo(3000, 6);
    expect(deviation(spiked, square, 2000)).toBe(Infinity);
    expect(deviation(square, square, Infinity)).toBe(0);
  });
});
