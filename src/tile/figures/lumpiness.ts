import type { Scene } from "./scene.ts";
import { wavesOf } from "./waves.ts";

/** Waves up to this frequency, in waves per spacing, are long: two spacings and more. */
const LONG = 0.5;

/**
 * Lumpiness: the mean power of all waves in the ink that are two spacings long or longer, against motifs strewn by blind
 * chance, from 0. The longest count most, by 1 - (2 f)² for a frequency of f waves per spacing. About 1 is as cloudy as
 * chance; evenly spread layouts stay below 0.2; clouds, holes and thin patches raise it.
 *
 * The spacing is √(cell / n'), n' = (Σ a)² / Σ a² the number of motifs that count when each is weighed by its ink; so
 * layouts of the same motifs can be compared. 0 where the repeat is too small for a long wave. Low-frequency power is the
 * usual measure of unevenness of point sets (Lagae and Dutré 2008, on radial spectra; from memory).
 */
export function lumpiness(scene: Scene): number {
  let [sum, weights] = [0, 0];
  for (const { frequency, power } of wavesOf(scene, LONG)) {
    const weight = 1 - (frequency * frequency) / (LONG * LONG);
    sum += weight * power;
    weights += weight;
  }
  return weights > 0 ? sum / weights : 0;
}
