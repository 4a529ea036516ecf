import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cellsInBlock, type Lattice, modulo } from "../../src/geometry/lattice.ts";

const straight: Lattice = { a: [160, 0], b: [0, 120], block: { width: 160, height: 120 } };
const halfDrop: Lattice = { a: [160, 60], b: [0, 120], block: { width: 320, height: 120 } };
const halfBrick: Lattice = { a: [160, 0], b: [80, 120], block: { width: 160, height: 240 } };
const thirdDrop: Lattice = { a: [160, 40], b: [0, 120], block: { width: 480, height: 120 } };

/** The same by brute force: every i·a + j·b whose place in the block was not seen before. */
function brute({ a, b, block }: Lattice): Set<string> {
  const seen = new Set<string>();
  for (let i = -12; i <= 12; i++)
    for (let j = -12; j <= 12; j++)
      seen.add(`${modulo(i * a[0] + j * b[0], block.width)},${modulo(i * a[1] + j * b[1], block.height)}`);
  return seen;
}

describe("cellsInBlock", () => {
  it.each([
    ["straight", straight, 1],
    ["half-drop", halfDrop, 2],
    ["half-brick", halfBrick, 2],
    ["third-drop", thirdDrop, 3],
  ])("a %s has as many cells in its block as brute force finds", (_, lattice, count) => {
    const cells = cellsInBlock(lattice);
    expect(cells).toHaveLength(count);
    expect(cells[0]).toEqual([0, 0]);
    expect(new Set(cells.map(([x, y]) => `${x},${y}`))).toEqual(brute(lattice));
  });

  it("finds them for drops by any share, up or down", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 7 }), fc.integer({ min: -7, max: 7 }), (parts, k) => {
        const step = modulo(k, parts);
        const g = gcd(step, parts);
        const lattice: Lattice = {
          a: [100, k * 10],
          b: [0, parts * 10],
          block: { width: 100 * (parts / g), height: parts * 10 },
        };
        const cells = cellsInBlock(lattice);
        expect(cells).toHaveLength(parts / g);
        expect(new Set(cells.map(([x, y]) => `${x},${y}`))).toEqual(brute(lattice));
      }),
      { seed: 16 },
    );
  });
});
const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

it("modulo is never negative", () => {
  expect([-1, 0, 1, 119, 120, -120, -121].map((n) => modulo(n, 120))).toEqual([119, 0, 1, 119, 0, 0, 119]);
});
