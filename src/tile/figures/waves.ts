import { middleOf } from "../../geometry/middle.ts";
import { cosTurns, sinTurns } from "../../seed/trigonometry.ts";
import type { Scene } from "./scene.ts";
import { waveChance } from "./wave-chance.ts";

/** Waves whose power is this little by chance are forbidden by the symmetry, but for rounding. */
const FORBIDDEN = 1e-3;

/** Most waves along either vector of the lattice. */
const MOST = 40;

/** One wave that closes on the lattice, and how strongly the ink follows it. */
export interface Wave {
  /** How many times it closes along each vector of the lattice. */
  readonly k: number;
  readonly l: number;
  /** Its frequency, in waves per spacing. */
  readonly frequency: number;
  /** Its power, against what the same motifs strewn by blind chance, under the same symmetry, would have on average. */
  readonly power: number;
}

/**
 * The long waves in a tile's ink: all whose length is at least `longest⁻¹` spacings, half of the plane.
 *
 * Power is the structure factor weighted by ink: S(f) = |Σ aᵢ exp(2πi f·xᵢ)|² / Σ aᵢ², aᵢ the ink of a copy and xᵢ the
 * middle of its ink. Motifs strewn independently have S = 1 on average (a Poisson process), evenly spread ones less
 * for all waves longer than their spacing; with images under operations it is divided by {@link waveChance}. (Structure factor after Torquato and Stillinger 2003, from memory.)
 */
export function wavesOf(scene: Scene, highest: number): Wave[] {
  const { a, b } = scene.lattice;
  const det = a[0] * b[1] - a[1] * b[0];
  const { spacing } = scene;
  const waves: (Omit<Wave, "power"> & { readonly chance: number })[] = [];
  const reach = (v: readonly [number, number]): number =>
    Math.min(MOST, Math.floor((Math.sqrt(v[0] * v[0] + v[1] * v[1]) * highest) / spacing));
  const [K, L] = [reach(a), reach(b)];
  for (let k = 0; k <= K; k++)
    for (let l = k === 0 ? 1 : -L; l <= L; l++) {
      const fx = (k * b[1] - l * a[1]) / det;
      const fy = (l * a[0] - k * b[0]) / det;
      const frequency = Math.sqrt(fx * fx + fy * fy) * spacing;
      if (frequency > highest) continue;
      const chance = waveChance(scene.operations, fx, fy);
      if (chance > FORBIDDEN) waves.push({ k, l, frequency, chance });
    }
  if (waves.length === 0) return [];
  const middles = scene.motifs.map((motif) => middleOf(motif.outline));
  const [across, along] = [new Float64Array(2 * K + 2), new Float64Array(2 * L + 2)];
  let squares = 0;
  const [re, im] = [new Float64Array(waves.length), new Float64Array(waves.length)];
  for (const { placement, matrix, area } of scene.copies) {
    const [mx, my] = middles[scene.placements[placement]!.motif]!;
    const x = matrix[0] * mx + matrix[2] * my + matrix[4];
    const y = matrix[1] * mx + matrix[3] * my + matrix[5];
    setMultiples(across, (x * b[1] - y * b[0]) / det);
    setMultiples(along, (y * a[0] - x * a[1]) / det);
    squares += area * area;
    for (let w = 0; w < waves.length; w++) {
      const { k, l } = waves[w]!;
      const p = across[2 * k]! * area;
      const q = across[2 * k + 1]! * area;
      const r = along[2 * Math.abs(l)]!;
      const s = l < 0 ? -along[1 - 2 * l]! : along[2 * l + 1]!;
      re[w] = re[w]! + p * r - q * s;
      im[w] = im[w]! + p * s + q * r;
    }
  }
  return waves.map(({ chance, ...wave }, w) => ({
    ...wave,
    power: (re[w]! * re[w]! + im[w]! * im[w]!) / (squares * chance),
  }));
}

/** Writes cosine and sine of all whole multiples of an angle, cosine first. */
function setMultiples(table: Float64Array, turns: number): void {
  const t = turns - Math.floor(turns);
  for (let k = 0; 2 * k < table.length; k++) {
    table[2 * k] = cosTurns(k * t);
    table[2 * k + 1] = sinTurns(k * t);
  }
}
