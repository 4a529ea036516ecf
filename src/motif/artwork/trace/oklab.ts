/** A colour in OKLab (B. Ottosson, "A perceptual color space for image processing", 2020): lightness 0 to 1, a, b. */
export type Oklab = readonly [lightness: number, a: number, b: number];

let linear: Float64Array | undefined;

/** Light of each 8-bit sRGB value, 0 to 1 (IEC 61966-2-1); the power 2.4 is x² times the square of x's fifth root. */
function linearTable(): Float64Array {
  linear ??= Float64Array.from({ length: 256 }, (_, byte) => {
    const value = byte / 255;
    if (value <= 0.04045) return value / 12.92;
    const x = (value + 0.055) / 1.055;
    const root = fifthRoot(x);
    return x * x * root * root;
  });
  return linear;
}

/** Newton's method from above, where it only falls; for values up to 1. */
function fifthRoot(x: number): number {
  let root = 1;
  for (;;) {
    const square = root * root;
    const next = (4 * root + x / (square * square)) / 5;
    if (!(next < root)) return root;
    root = next;
  }
}

/** Cube root of a value from 0 to 1 by Halley's method: three rounds from x^(5/16) are exact to the last bit or two. */
export function cubeRoot(x: number): number {
  if (!(x > 0)) return 0;
  const fourth = Math.sqrt(Math.sqrt(x));
  let root = fourth * Math.sqrt(Math.sqrt(fourth));
  for (let round = 0; round < 4; round++) {
    const cube = root * root * root;
    root *= (cube + 2 * x) / (2 * cube + x);
  }
  return root;
}

/** An sRGB colour of 8-bit channels, whole or between (0 to 255), in OKLab. */
export function oklabOf(red: number, green: number, blue: number): Oklab {
  const [r, g, b] = [light(red), light(green), light(blue)];
  const l = cubeRoot(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
  const m = cubeRoot(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
  const s = cubeRoot(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
  return [
    0.2104542553 * l + 0.793617785 * m - 0.0040720468 * s,
    1.9779984951 * l - 2.428592205 * m + 0.4505937099 * s,
    0.0259040371 * l + 0.7827717662 * m - 0.808675766 * s,
  ];
}

/** Light of a value between two bytes: along the straight line between theirs. */
function light(value: number): number {
  const table = linearTable();
  const below = Math.max(0, Math.min(254, Math.floor(value)));
  return table[below]! + (table[below + 1]! - table[below]!) * (value - below);
}
