import type { Matrix } from "../../geometry/matrix.ts";
import { cosTurns, sinTurns } from "../../seed/trigonometry.ts";

/** Frequencies that differ by no more than this share are one: what rounding of an operation's matrix may do. */
const ONE = 1e-6;

/**
 * The power that a wave of frequency (fx, fy) has on average when motifs, together with all their images under the
 * operations, are strewn by chance, against motifs without images: 1 for most; more along mirrors, which double what
 * falls together; 0 for waves that the symmetry forbids.
 *
 * An operation x → Rx + t shows the wave f as Rᵀf with the phase f·t, and images whose Rᵀf are equal add up: |Σ exp(2πi
 * f·t)|² over those, summed over all Rᵀf, ÷ number of operations. It is the statistical weight ε of crystallography with its
 * systematic absences (Wilson 1949; International Tables for Crystallography B, 2.1; from memory).
 */
export function waveChance(operations: readonly Matrix[], fx: number, fy: number): number {
  const near = ONE * Math.sqrt(fx * fx + fy * fy);
  const groups: { readonly u: number; readonly v: number; re: number; im: number }[] = [];
  for (const [a, b, c, d, e, f] of operations) {
    const [u, v] = [fx * a + fy * b, fx * c + fy * d];
    let group = groups.find((other) => Math.abs(other.u - u) <= near && Math.abs(other.v - v) <= near);
    if (!group) {
      group = { u, v, re: 0, im: 0 };
      groups.push(group);
    }
    group.re += cosTurns(fx * e + fy * f);
    group.im += sinTurns(fx * e + fy * f);
  }
  const sum = groups.reduce((total, { re, im }) => total + re * re + im * im, 0);
  return sum / operations.length;
}
