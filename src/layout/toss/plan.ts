import type { Body } from "./body.ts";
import type { TossEntry } from "./options.ts";
import { apportion } from "./shares.ts";

/** Largest to smallest size within one band. */
const BAND = 1.8;
/** Motifs whose sizes differ by no more than this are placed turn and turn about. */
const ALIKE = 0.75;

/** Some of the sizes of one entry. */
export interface Band {
  readonly entry: number;
  readonly bodies: readonly Body[];
  /** Smallest and largest scale. */
  readonly low: number;
  readonly high: number;
  /** Sizes asked of its entry. */
  readonly range: readonly [min: number, max: number];
}

/** Bands of about the same size, which are placed together; the classes run from large to small. */
export type SizeClass = readonly Band[];

/** Cuts the sizes of every entry into bands, and puts bands of like size together. */
export function planClasses(
  entries: readonly TossEntry[],
  bodies: readonly (readonly Body[])[],
): readonly SizeClass[] {
  const bands = entries.flatMap((entry, index) =>
    bandsOf(entry.scale).map(([low, high]) => ({
      entry: index,
      bodies: bodies[index]!,
      low,
      high,
      range: entry.scale,
    })),
  );
  const size = (band: Band): number => band.high * Math.max(...band.bodies.map((body) => body.circle.r));
  const sorted = bands
    .map((band) => ({ band, size: size(band) }))
    .sort((a, b) => b.size - a.size || a.band.entry - b.band.entry);
  const classes: Band[][] = [];
  let largest = Infinity;
  for (const { band, size } of sorted) {
    const together = classes.at(-1);
    if (together && size >= largest * ALIKE && !together.some((b) => b.entry === band.entry)) {
      together.push(band);
    } else {
      classes.push([band]);
      largest = size;
    }
  }
  return classes;
}

/** A range of scales cut into bands of equal ratio, the largest first; the last is the least size alone. */
function bandsOf([min, max]: readonly [number, number]): [number, number][] {
  if (max <= min * BAND) return [[min, max]];
  let count = 1;
  for (let reach = min * BAND; reach < max; reach *= BAND) count++;
  const ratio = root(max / min, count);
  const bands: [number, number][] = [];
  let high = max;
  for (let k = 0; k < count; k++) {
    const low = k === count - 1 ? min : high / ratio;
    bands.push([low, high]);
    high = low;
  }
  bands.push([min, min]);
  return bands;
}

/** The n-th root of a number from 1 up, by halving: + - * / only. */
function root(value: number, n: number): number {
  let [low, high] = [1, value];
  for (let k = 0; k < 60; k++) {
    const middle = (low + high) / 2;
    let power = 1;
    for (let i = 0; i < n; i++) power *= middle;
    if (power < value) low = middle;
    else high = middle;
  }
  return low;
}

/** How many of each band when each entry has so many: the more, the smaller, in inverse proportion to the size. */
export function bandQuotas(classes: readonly SizeClass[], counts: readonly number[]): Map<Band, number> {
  const quotas = new Map<Band, number>();
  counts.forEach((count, entry) => {
    const bands = classes.flat().filter((band) => band.entry === entry);
    const parts = apportion(
      count,
      bands.map((band) => (band.high > band.low || bands.length === 1 ? 1 / band.high : 0)),
    );
    bands.forEach((band, k) => {
      quotas.set(band, parts[k]!);
    });
  });
  return quotas;
}
