import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { areaOf, boxOf } from "../../../src/geometry/path.ts";
import { readArtwork } from "../../../src/motif/artwork/read-artwork.ts";
import { stackRoles } from "../../../src/motif/artwork/stack.ts";
import { rectangle } from "../../given.ts";
import { drawnBy, likeness, redrawn, svgOf } from "./picture.ts";

const disc = (fill: string, cx: number, cy: number, r: number): string =>
  `<circle fill="${fill}" cx="${cx}" cy="${cy}" r="${r}"/>`;
const ground = '<rect width="32" height="32" fill="#7fa8b8"/>';

describe("colours that lie above and below one another", () => {
  it("stay whole when an order of roles suits them all", () => {
    const svg = svgOf(disc("#111111", 16, 16, 15) + disc("#ffffff", 16, 16, 10) + disc("#dd2211", 16, 16, 5));
    const { shapes } = drawnBy(readArtwork(svg));
    expect(shapes.map((shape) => shape.role)).toEqual(["black", "white", "red"]);
    const [black, white, red] = shapes.map((shape) => areaOf(shape.path));
    expect(black! / white!).toBeCloseTo(225 / 100, 3);
    expect(white! / red!).toBeCloseTo(4, 3);
  });

  it("are cut where no order does, as little as may be", () => {
    // An eye: the glint is of the white that lies below the pupil.
    const svg = svgOf(disc("#ffffff", 16, 16, 15) + disc("#111111", 16, 16, 8) + disc("#ffffff", 18, 14, 2));
    const { shapes } = drawnBy(readArtwork(svg));
    expect(shapes.map((shape) => shape.role)).toEqual(["white", "black"]);
    expect(areaOf(shapes[1]!.path) / areaOf(shapes[0]!.path)).toBeCloseTo((64 - 4) / 225, 3);
    expect(likeness(svgOf(ground + svg), redrawn(svg, ground))).toBeGreaterThan(40);
  });

  it("let no ground through where they were cut", () => {
    // Red over white over red, on nothing: one of the two is cut, and what it is cut for spreads under it.
    const svg = svgOf(disc("#dd2211", 11, 16, 10) + disc("#ffffff", 20, 16, 10) + disc("#dd2211", 18, 16, 4));
    const given = svgOf(`<rect width="32" height="32" fill="#00ff00"/>${svg}`);
    expect(likeness(given, redrawn(svg, '<rect width="32" height="32" fill="#00ff00"/>'))).toBeGreaterThan(
      45,
    );
  });

  it("look the same after as before, whatever the heap of discs", () => {
    const fill = fc.constantFrom("#dd2211", "#ffffff", "#115599", "#ffcc33");
    const place = fc.integer({ min: 6, max: 26 });
    const heap = fc.array(fc.tuple(fill, place, place, fc.integer({ min: 2, max: 6 })), {
      minLength: 2,
      maxLength: 9,
    });
    fc.assert(
      fc.property(heap, (discs) => {
        const body = discs.map(([color, x, y, r]) => disc(color, x, y, r)).join("");
        const svg = svgOf(body);
        expect(likeness(svgOf(ground + body), redrawn(svg, ground))).toBeGreaterThan(36);
      }),
      { seed: 30, numRuns: 24 },
    );
  });

  it("would show if a cut were left out", () => {
    const svg = svgOf(disc("#ffffff", 16, 16, 15) + disc("#111111", 16, 16, 8) + disc("#ffffff", 18, 14, 2));
    const uncut = svgOf(ground + disc("#ffffff", 16, 16, 15) + disc("#111111", 16, 16, 8));
    expect(likeness(uncut, redrawn(svg, ground))).toBeLessThan(25);
  });
});

describe("the order of roles", () => {
  const coat = (role: string, x: number, size: number) => {
    const path = rectangle(x, 0, size, size);
    return { role, path, box: boxOf(path) };
  };

  it("is that of first paint where nothing overlaps", () => {
    expect(stackRoles([coat("c", 0, 1), coat("a", 2, 1), coat("b", 4, 1), coat("a", 6, 1)])).toEqual([
      "c",
      "a",
      "b",
    ]);
  });

  it("lets the larger overlap decide", () => {
    const small = [coat("a", 0, 1), coat("b", 0, 1), coat("b", 4, 3), coat("a", 4, 3)];
    expect(stackRoles(small)).toEqual(["b", "a"]);
  });
});
