import { expect, test } from "vitest";
import { unite } from "../../src/geometry/boolean.ts";
import { countCrossings } from "../../src/geometry/crossings.ts";
import { flatten } from "../../src/geometry/flatten.ts";
import { pen } from "../../src/geometry/pen.ts";

/** The star polygon {n/k}, drawn in one go: every side crosses 2(k - 1) others, n(k - 1) crossings in all. */
function starPolygon(n: number, k: number) {
  const drawn = pen();
  for (let i = 0; i <= n; i++) {
    const angle = (2 * Math.PI * i * k) / n;
    const [x, y] = [100 * Math.cos(angle), 100 * Math.sin(angle)];
    if (i === 0) drawn.moveTo(x, y);
    else drawn.lineTo(x, y);
  }
  return drawn.path();
}

// n(k - 1): the crossing number of the regular star polygon (a known result; here from memory).
test.each([
  [5, 2, 5],
  [7, 3, 14],
  [31, 15, 434],
])("the star polygon {%i/%i} crosses itself %i times", (n, k, crossings) => {
  expect(countCrossings(flatten(starPolygon(n, k), 2), 100_000)).toBe(crossings);
});

test("counting stops one beyond what is asked for", () => {
  expect(countCrossings(flatten(starPolygon(31, 15), 2), 10)).toBe(11);
});

test("a scribble is united in time, and one beyond all measure is refused in words", () => {
  const began = Date.now();
  expect(unite([starPolygon(301, 150)]).contours.length).toBeGreaterThan(0);
  expect(() => unite([starPolygon(3001, 1500)])).toThrow(/cross each other more than 100000 times/);
  expect(Date.now() - began).toBeLessThan(5000);
});
