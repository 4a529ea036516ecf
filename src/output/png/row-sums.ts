import type { Sums } from "./adler.ts";

/** The sums of `count` pixels of `size` bytes, whose highest byte comes first: below 2^43, so exact. */
export function sumsOfRun(value: number, count: number, size: 1 | 3): Sums {
  const [g, b] = size === 1 ? [0, 0] : [(value >> 8) & 255, value & 255];
  const pixel = size === 1 ? value : (value >> 16) + g + b;
  return {
    plain: count * pixel,
    weighted: (size * pixel * count * (count + 1)) / 2 - count * (g + 2 * b),
    length: count * size,
  };
}

/** One stretch and then another, as `joinSums` has them, without the modulus: for a row's worth of bytes at the most. */
export const addSums = (first: Sums, then: Sums): Sums => ({
  plain: first.plain + then.plain,
  weighted: first.weighted + then.length * first.plain + then.weighted,
  length: first.length + then.length,
});
