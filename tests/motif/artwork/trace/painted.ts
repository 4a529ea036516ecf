// Pictures for the tests: drawings rendered by resvg, clean or as if painted and scanned.
import { Resvg } from "@resvg/resvg-js";
import { PNG } from "pngjs";
import type { Pixels } from "../../../../src/motif/artwork/trace/picture.ts";
import { createRandom } from "../../../../src/seed/random.ts";

/** A drawing on paper of 100 x 100 units. */
export const sheetOf = (body: string, paper = "#f6ead7"): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100"><rect width="100" height="100" fill="${paper}"/>${body}</svg>`;

export const rendered = (svg: string, width: number): Uint8Array =>
  new Uint8Array(new Resvg(svg, { fitTo: { mode: "width", value: width } }).render().asPng());

export function pixelsOf(png: Uint8Array): Pixels {
  const { width, height, data } = PNG.sync.read(Buffer.from(png));
  return { width, height, data: new Uint8Array(data) };
}

export interface Paint {
  /** Standard deviation of what each pixel strays by, in levels of 255. */
  readonly grain: number;
  /** How far the tone of paint drifts over some dozens of pixels, in levels. */
  readonly mottle: number;
  /** Passes of a blur of three pixels, as a scanner's lens has. */
  readonly blur: number;
  readonly seed: string;
}

/** A drawing as if it had been painted on rough paper and scanned. */
export function scanned(svg: string, width: number, { grain, mottle, blur, seed }: Paint): Pixels {
  const clean = pixelsOf(rendered(svg, width));
  const { height } = clean;
  const random = createRandom(seed);
  const data = new Uint8Array(clean.data);
  for (let pass = 0; pass < blur; pass++) smear(data, width, height);
  const drift = [wander(width, height, 37, random), wander(width, height, 11, random)];
  for (let i = 0; i < width * height; i++) {
    const tone = mottle * (drift[0]![i]! + 0.5 * drift[1]![i]!);
    const tooth = grain * normal(random);
    for (let c = 0; c < 3; c++) {
      const value = data[4 * i + c]! + tone + tooth + grain * 0.5 * normal(random);
      data[4 * i + c] = Math.max(0, Math.min(255, Math.round(value)));
    }
  }
  return { width, height, data };
}

/** A sum of four even chances: nearly normal, deviation 1. */
function normal(random: ReturnType<typeof createRandom>): number {
  const sum = random.between(-1, 1) + random.between(-1, 1) + random.between(-1, 1) + random.between(-1, 1);
  return sum * Math.sqrt(3 / 4);
}

/** Smooth chance: values at knots `step` pixels apart, blended between. */
function wander(
  width: number,
  height: number,
  step: number,
  random: ReturnType<typeof createRandom>,
): Float32Array {
  const columns = Math.ceil(width / step) + 2;
  const knots = Float32Array.from({ length: columns * (Math.ceil(height / step) + 2) }, () =>
    random.between(-1, 1),
  );
  const out = new Float32Array(width * height);
  const ease = (t: number): number => t * t * (3 - 2 * t);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const [column, row] = [Math.floor(x / step), Math.floor(y / step)];
      const [u, v] = [ease(x / step - column), ease(y / step - row)];
      const at = row * columns + column;
      const top = knots[at]! * (1 - u) + knots[at + 1]! * u;
      const bottom = knots[at + columns]! * (1 - u) + knots[at + columns + 1]! * u;
      out[y * width + x] = top * (1 - v) + bottom * v;
    }
  return out;
}

function smear(data: Uint8Array, width: number, height: number): void {
  for (const [step, count, other] of [
    [4, width, height],
    [4 * width, height, width],
  ] as const) {
    const from = data.slice();
    const across = step === 4 ? 4 * width : 4;
    for (let k = 0; k < other; k++)
      for (let n = 1; n + 1 < count; n++) {
        const at = k * across + n * step;
        for (let c = at; c < at + 3; c++)
          data[c] = Math.round((from[c - step]! + 2 * from[c]! + from[c + step]!) / 4);
      }
  }
}
