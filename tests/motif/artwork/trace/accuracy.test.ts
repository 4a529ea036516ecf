// Outside reference: the path data that resvg rendered. Closed forms: the circle's area is that of its path data.
import { describe, expect, it } from "vitest";
import { held } from "./traced-shape.ts";

const star = (points: number, outer: number, inner: number): string =>
  `${Array.from({ length: 2 * points }, (_, i) => {
    const turn = (Math.PI * i) / points - Math.PI / 2 + 0.1;
    const reach = i % 2 === 0 ? outer : inner;
    return `${i === 0 ? "M" : "L"}${50.2 + reach * Math.cos(turn)} ${50.1 + reach * Math.sin(turn)}`;
  }).join("")}Z`;
const circle =
  "M90.3 49.7A40 40 0 0 1 50.3 89.7A40 40 0 0 1 10.3 49.7A40 40 0 0 1 50.3 9.7A40 40 0 0 1 90.3 49.7Z";
/** A letter like R: stems, a bowl with its counter, a slanting leg; all corners right or sharp. */
const letter =
  "M24 12H55C72 12 81 22 81 35C81 47 74 54 64 57L84 89H66L48 59H39V89H24ZM39 24V47H54C62 47 66 42 66 35.5C66 28 62 24 54 24Z";
/** A leaf: two curves that meet in sharp points. */
const leaf = "M8 62C26 22 66 14 93 22C88 52 52 82 8 62Z";

const SIZES = [100, 200, 400, 900];

describe("what is traced from a clean picture, at 100 to 900 pixels", () => {
  it.each(SIZES)("is a circle, in few nodes (%i px)", (width) => {
    const { area, far, nodes } = held(circle, width);
    expect(Math.abs(area)).toBeLessThan(0.002);
    expect(far).toBeLessThan(0.4);
    expect(nodes).toBeLessThanOrEqual(6);
  });

  it.each(SIZES)("is a star with its ten corners, and no node more (%i px)", (width) => {
    const { area, far, nodes } = held(star(5, 45, 18), width);
    expect(Math.abs(area)).toBeLessThan(0.002);
    expect(far).toBeLessThan(0.4);
    expect(nodes).toBe(10);
  });

  it.each(SIZES)("is a letter with its counter, corners and curves (%i px)", (width) => {
    const { area, far, nodes } = held(letter, width);
    expect(Math.abs(area)).toBeLessThan(0.004);
    expect(far).toBeLessThan(0.5);
    expect(nodes).toBeLessThanOrEqual(30);
  });

  it.each(SIZES)("is a leaf with two points (%i px)", (width) => {
    const { area, far, nodes } = held(leaf, width);
    expect(Math.abs(area)).toBeLessThan(0.004);
    expect(far).toBeLessThan(0.5);
    expect(nodes).toBeLessThanOrEqual(8);
  });

  it("is near at 40 pixels as well", () => {
    for (const data of [circle, star(5, 45, 18), leaf]) {
      const { area, far } = held(data, 40);
      expect(Math.abs(area)).toBeLessThan(0.015);
      expect(far).toBeLessThan(0.6);
    }
  });
});
