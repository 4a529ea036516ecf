import { along, type Chain } from "./chain.ts";

/** Chords that stand for each curve when its length is measured. */
const CHORDS = 48;

/**
 * Turns shares of a chain's length into shares counted in curves, as `walk` takes them. Lengths are summed over short
 * chords, which for a smooth curve is good to about one part in ten thousand.
 */
export function measured(chain: Chain): (share: number) => number {
  const curves = (chain.length - 2) / 6;
  const sums = [0];
  for (let k = 1; k <= curves * CHORDS; k++) {
    const i = Math.floor((k - 1) / CHORDS);
    const [a, b] = [(k - 1) / CHORDS - i, k / CHORDS - i];
    const [dx, dy] = [0, 1].map((axis) => along(chain, i * 6, axis, b) - along(chain, i * 6, axis, a)) as [
      number,
      number,
    ];
    sums.push(sums[k - 1]! + Math.sqrt(dx * dx + dy * dy));
  }
  return (share) => {
    const wanted = share * sums[sums.length - 1]!;
    let k = 1;
    while (k < sums.length - 1 && sums[k]! < wanted) k++;
    const [low, high] = [sums[k - 1]!, sums[k]!];
    return (k - 1 + (high > low ? (wanted - low) / (high - low) : 0)) / (curves * CHORDS);
  };
}
