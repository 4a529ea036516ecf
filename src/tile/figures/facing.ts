import { exponential } from "./exponential.ts";
import { kindsOf } from "./neighbours.ts";
import type { Scene } from "./scene.ts";
import { symmetryOrder } from "./symmetry-order.ts";

/** See {@link facingOf}. */
export interface Facing {
  readonly alike: number;
  readonly chance: number;
}

/**
 * How much alike the motifs face, and how likely that is if each had been turned by chance.
 *
 * Angles are multiplied by the motif's order of symmetry, so that turns that nobody sees do not count, and motifs of one
 * order are taken together; motifs on which no turn shows are left out. `alike` is the mean resultant length, Σ R / Σ n
 * over the orders, 0 (every way) to 1 (one way). Images under all operations are taken, so a mirrored pattern is judged
 * as it looks. `chance` is the p-value of Rayleigh's test of uniformity for the order least likely, times the number of
 * orders (Bonferroni), 0 to 1; 1 when there is nothing to judge. In a layout that means to face every way, a chance below
 * one in ten thousand is no accident.
 */
export function facingOf(scene: Scene): Facing {
  const kinds = kindsOf(scene.motifs);
  const orders: number[] = [];
  scene.motifs.forEach(({ outline }, i) => {
    orders.push(kinds[i] === i ? symmetryOrder(outline) : orders[kinds[i]!]!);
  });
  const sums = new Map<number, { x: number; y: number; count: number }>();
  for (const { placement, matrix } of scene.copies) {
    const order = orders[scene.placements[placement]!.motif]!;
    if (order === 0) continue;
    const length = Math.sqrt(matrix[2] * matrix[2] + matrix[3] * matrix[3]);
    const [ux, uy] = [matrix[2] / length, matrix[3] / length];
    let [px, py] = [ux, uy];
    for (let k = 1; k < order; k++) [px, py] = [px * ux - py * uy, px * uy + py * ux];
    const { x, y, count } = sums.get(order) ?? { x: 0, y: 0, count: 0 };
    sums.set(order, { x: x + px, y: y + py, count: count + 1 });
  }
  let [along, all, chance] = [0, 0, 1];
  for (const { x, y, count } of sums.values()) {
    const r = Math.sqrt(x * x + y * y);
    along += r;
    all += count;
    chance = Math.min(chance, sums.size * rayleigh(count / scene.operations.length, r / count));
  }
  return all === 0 ? { alike: 0, chance: 1 } : { alike: along / all, chance };
}

/**
 * The p-value of Rayleigh's test for n angles whose mean resultant length is `alike`: p = exp(√(1 + 4n + 4(n² - R²)) -
 * (1 + 2n)), R = n · alike (Zar, Biostatistical Analysis, after Wilkie 1983; from memory).
 */
export function rayleigh(n: number, alike: number): number {
  const r = n * alike;
  return Math.min(1, exponential(Math.sqrt(Math.max(0, 1 + 4 * n + 4 * (n * n - r * r))) - (1 + 2 * n)));
}
