import type { Field } from "./layer.ts";

/**
 * Weights that take the finest steps out of a field and leave its curves where they are: with B the binomial filter,
 * 2B - B², whose second moment is 0. A plain blur would pull small circles inwards.
 */
const FINE = [-1, 4, 10, 4, -1];
const COARSE = [-1, -8, 4, 72, 122, 72, 4, -8, -1];

/** A field without the steps of its pixels, with one more pixel all around that is outside. */
export function softened(field: Field, rough: boolean): Field {
  const { width, height, values } = field;
  const weights = rough ? COARSE : FINE;
  const reach = (weights.length - 1) / 2;
  const across = new Float32Array(values.length);
  for (let y = 0; y < height; y++)
    for (let x = 0, at = y * width; x < width; x++, at++) {
      let sum = 0;
      const free = x >= reach && x < width - reach;
      for (let k = -reach; k <= reach; k++)
        sum +=
          weights[k + reach]! * values[free ? at + k : y * width + Math.max(0, Math.min(width - 1, x + k))]!;
      across[at] = sum;
    }
  const wide = width + 2;
  const out = new Float32Array(wide * (height + 2)).fill(-1);
  for (let y = 0; y < height; y++) {
    const free = y >= reach && y < height - reach;
    for (let x = 0; x < width; x++) {
      let sum = 0;
      for (let k = -reach; k <= reach; k++) {
        const row = free ? y + k : Math.max(0, Math.min(height - 1, y + k));
        sum += weights[k + reach]! * across[row * width + x]!;
      }
      // A value of just 0 would put a point on a corner of the grid twice.
      out[(y + 1) * wide + x + 1] = sum === 0 ? -1 : sum;
    }
  }
  rim(out, wide, height + 2);
  return { width: wide, height: height + 2, x: field.x - 1, y: field.y - 1, values: out };
}

/** Sets the outermost pixels so that what is inside ends halfway to them: at the edge of the picture. */
function rim(values: Float32Array, width: number, height: number): void {
  const mirror = (at: number, from: number): void => {
    values[at] = -Math.abs(values[from]!);
  };
  for (let x = 0; x < width; x++) {
    mirror(x, width + x);
    mirror((height - 1) * width + x, (height - 2) * width + x);
  }
  for (let y = 0; y < height; y++) {
    mirror(y * width, y * width + 1);
    mirror(y * width + width - 1, y * width + width - 2);
  }
}
