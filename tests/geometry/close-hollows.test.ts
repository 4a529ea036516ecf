import BufferOp from "jsts/org/locationtech/jts/operation/buffer/BufferOp.js";
import { describe, expect, test } from "vitest";
import { ringsArea } from "../../src/geometry/clip.ts";
import { closeHollows } from "../../src/geometry/close-hollows.ts";
import { flatten, type Ring } from "../../src/geometry/flatten.ts";
import { blossom, crescent, disc, leaf, sprig, star } from "../layout/toss/fixtures.ts";
import { jstsDistance, polygonOf } from "./jsts.ts";

interface Polygon {
  getArea(): number;
  getNumGeometries(): number;
  getGeometryN(n: number): { getExteriorRing(): unknown };
  getFactory(): { createPolygon(ring: unknown): Polygon };
}
const buffer = (polygon: unknown, by: number): Polygon => BufferOp.bufferOp(polygon, by, 64) as Polygon;

/** Area of the closing by JTS, what it encloses counted as filled. */
function closedArea(rings: readonly Ring[], radius: number): number {
  const closed = buffer(buffer(polygonOf(rings), radius), -radius);
  let area = 0;
  for (let k = 0; k < closed.getNumGeometries(); k++)
    area += closed.getFactory().createPolygon(closed.getGeometryN(k).getExteriorRing()).getArea();
  return area;
}

const shapes = { blossom, crescent, leaf, sprig, star, disc: () => disc(18) };

describe.each(Object.keys(shapes) as (keyof typeof shapes)[])("the hollows of a %s", (name) => {
  const rings = flatten(shapes[name](), 8);
  const plain = ringsArea(rings);

  test.each([900, 4500, 9000, 18_000])("closed with a disc of %i µm are those of JTS", (radius) => {
    const closed = closeHollows(rings, radius);
    const area = ringsArea(closed);
    expect(Math.abs(area / closedArea(rings, radius) - 1)).toBeLessThan(3e-3); // arcs may stray by 20 µm
    expect(area).toBeGreaterThanOrEqual(plain * (1 - 1e-4));
  });

  test("grow with the disc", () => {
    const areas = [500, 2000, 8000, 32_000].map((r) => ringsArea(closeHollows(rings, r)));
    for (const [k, area] of areas.entries())
      if (k > 0) expect(area).toBeGreaterThan(areas[k - 1]! * (1 - 1e-4));
  });
});

test("a chamber behind a narrow mouth is filled whole", () => {
  // A square of 20 mm with a chamber of 12 mm and a mouth of 2 mm: no disc of 3 mm gets in, though it would fit within.
  const jar = [
    -10_000, -10_000, 10_000, -10_000, 10_000, 10_000, 1000, 10_000, 1000, 6000, 6000, 6000, 6000, -6000,
    -6000, -6000, -6000, 6000, -1000, 6000, -1000, 10_000, -10_000, 10_000,
  ];
  const closed = closeHollows([Float64Array.from(jar)], 3000);
  expect(closed).toHaveLength(1);
  expect(Math.abs(ringsArea(closed) / 4e8 - 1)).toBeLessThan(2e-3);
  const open = closeHollows([Float64Array.from(jar)], 900);
  expect(ringsArea(open)).toBeLessThan(2.6e8);
});

test("nothing is lost, whatever the rounding", () => {
  const rings = flatten(star(), 8);
  for (const ring of rings)
    for (let k = 0; k < ring.length; k += 2) {
      const [x, y] = [ring[k]!, ring[k + 1]!];
      const dot = polygonOf([[x - 1, y - 1, x + 1, y - 1, x, y + 1]]);
      expect(jstsDistance(dot, polygonOf([closeHollows(rings, 6000)[0]!]))).toBeLessThan(2);
    }
});
