import type { Ring } from "../../geometry/flatten.ts";
import { boxRing } from "./box-ring.ts";

/** Letters, figures and signs of plate names on a grid of 5 x 7 and two rows below the line, a row each, as bits from left (16) to right (1). */
const LETTERS: Readonly<Record<string, readonly number[]>> = {
  a: [0, 0, 14, 1, 15, 17, 15],
  b: [16, 16, 30, 17, 17, 17, 30],
  c: [0, 0, 14, 17, 16, 17, 14],
  d: [1, 1, 15, 17, 17, 17, 15],
  e: [0, 0, 14, 17, 31, 16, 14],
  f: [6, 8, 28, 8, 8, 8, 8],
  g: [0, 0, 15, 17, 17, 17, 15, 1, 14],
  h: [16, 16, 30, 17, 17, 17, 17],
  i: [4, 0, 12, 4, 4, 4, 14],
  j: [2, 0, 6, 2, 2, 2, 2, 18, 12],
  k: [16, 16, 18, 20, 24, 20, 18],
  l: [12, 4, 4, 4, 4, 4, 14],
  m: [0, 0, 26, 21, 21, 21, 21],
  n: [0, 0, 30, 17, 17, 17, 17],
  o: [0, 0, 14, 17, 17, 17, 14],
  p: [0, 0, 30, 17, 17, 17, 30, 16, 16],
  q: [0, 0, 15, 17, 17, 17, 15, 1, 1],
  r: [0, 0, 22, 25, 16, 16, 16],
  s: [0, 0, 15, 16, 14, 1, 30],
  t: [8, 8, 28, 8, 8, 9, 6],
  u: [0, 0, 17, 17, 17, 17, 15],
  v: [0, 0, 17, 17, 17, 10, 4],
  w: [0, 0, 17, 21, 21, 21, 10],
  x: [0, 0, 17, 10, 4, 10, 17],
  y: [0, 0, 17, 17, 17, 17, 15, 1, 14],
  z: [0, 0, 31, 2, 4, 8, 31],
  "0": [14, 17, 19, 21, 25, 17, 14],
  "1": [4, 12, 4, 4, 4, 4, 14],
  "2": [14, 17, 1, 2, 4, 8, 31],
  "3": [30, 1, 1, 14, 1, 1, 30],
  "4": [2, 6, 10, 18, 31, 2, 2],
  "5": [31, 16, 30, 1, 1, 17, 14],
  "6": [6, 8, 16, 30, 17, 17, 14],
  "7": [31, 1, 2, 4, 8, 8, 8],
  "8": [14, 17, 17, 14, 17, 17, 14],
  "9": [14, 17, 17, 15, 1, 2, 12],
  "-": [0, 0, 0, 31, 0, 0, 0],
  "/": [1, 1, 2, 4, 8, 16, 16],
  ".": [0, 0, 0, 0, 0, 12, 12],
};

/** Columns from one letter to the next. */
const ADVANCE = 6;

/**
 * Text as rectangles, `dot` µm to a dot of the grid, from its upper left corner (x, y). Names of roles and patterns are of
 * these letters; what is none of them is a space.
 */
export function spell(text: string, x: number, y: number, dot: number): Ring[] {
  const bars: Ring[] = [];
  [...text.toLowerCase()].forEach((letter, at) => {
    LETTERS[letter]?.forEach((bits, row) => {
      for (let column = 0; column < 5; column++) {
        const set = (c: number): boolean => c < 5 && (bits & (16 >> c)) !== 0;
        if (!set(column)) continue;
        const first = column;
        while (set(column + 1)) column++;
        const left = x + (at * ADVANCE + first) * dot;
        const top = y + row * dot;
        bars.push(
          boxRing({ minX: left, minY: top, maxX: left + (column - first + 1) * dot, maxY: top + dot }),
        );
      }
    });
  });
  return bars;
}
