import { type Cluster, clusterOf, weightOf } from "./cluster.ts";
import { apartSquared } from "./histogram.ts";

/** Colours farther apart are never joined by their valley. */
const DIFFERENT = 0.2;
/** A valley less deep than this share of its lower side is no valley. */
const SHALLOW = 0.4;

/**
 * Clusters of one paint joined, nearest first. Paint and paper vary, and two colours are one paint when what lies
 * between them is nearly as frequent as the rarer of them; two paints leave a valley.
 * @param alike colours nearer than this are one paint in any case (OKLab)
 */
export function joinPaints(given: readonly Cluster[], alike: number): Cluster[] {
  const clusters = [...given];
  const separate = new Set<string>();
  const ids = clusters.map((_, i) => i);
  let next = clusters.length;
  for (;;) {
    let best: { i: number; j: number; far: number } | undefined;
    for (let i = 0; i < clusters.length; i++)
      for (let j = i + 1; j < clusters.length; j++) {
        if (separate.has(`${ids[i]},${ids[j]}`)) continue;
        const far = apartSquared(clusters[i]!.place, clusters[j]!.place);
        if (far < DIFFERENT * DIFFERENT && far < (best?.far ?? Infinity)) best = { i, j, far };
      }
    if (!best) return clusters;
    const { i, j, far } = best;
    if (far < alike * alike || isOnePaint(clusters[i]!, clusters[j]!)) {
      clusters[i] = clusterOf([...clusters[i]!.bins, ...clusters[j]!.bins]);
      ids[i] = next++;
      clusters.splice(j, 1);
      ids.splice(j, 1);
    } else separate.add(`${ids[i]},${ids[j]}`);
  }
}

/** Cells between the two colours, and as many as half of them beyond each. */
const CELLS = 10;
const BEYOND = 5;

function isOnePaint(one: Cluster, two: Cluster): boolean {
  const from = one.place;
  const way = two.place.map((v, c) => v - from[c]!);
  const length = way.reduce((sum, v) => sum + v * v, 0);
  const cells = new Float64Array(CELLS + 2 * BEYOND + 1);
  for (const bin of [...one.bins, ...two.bins]) {
    const t = way.reduce((sum, v, c) => sum + v * (bin.place[c]! - from[c]!), 0) / length;
    const at = t * CELLS + BEYOND;
    const cell = Math.floor(at);
    if (cell < 0 || cell + 1 >= cells.length) continue;
    const weight = weightOf(bin);
    cells[cell] = cells[cell]! + weight * (cell + 1 - at);
    cells[cell + 1] = cells[cell + 1]! + weight * (at - cell);
  }
  const most = (from: number, to: number): number => Math.max(...cells.subarray(from, to));
  const lower = Math.min(most(BEYOND - 3, BEYOND + 4), most(BEYOND + CELLS - 3, BEYOND + CELLS + 4));
  return Math.min(...cells.subarray(BEYOND + 2, BEYOND + CELLS - 1)) > SHALLOW * lower;
}

/**
 * Clusters joined until `count` are left: those first that are near each other and of which one is rare.
 * `locked` is joined with none.
 */
export function joinDown(given: readonly Cluster[], count: number, locked?: Cluster): Cluster[] {
  const clusters = [...given];
  while (clusters.length > count) {
    let best: { i: number; j: number; cost: number } | undefined;
    for (let i = 0; i < clusters.length; i++)
      for (let j = i + 1; j < clusters.length; j++) {
        if (clusters[i] === locked || clusters[j] === locked) continue;
        const [p, q] = [clusters[i]!, clusters[j]!];
        const cost = apartSquared(p.place, q.place) * Math.sqrt(Math.min(weightOf(p), weightOf(q)));
        if (cost < (best?.cost ?? Infinity)) best = { i, j, cost };
      }
    if (!best) return clusters;
    clusters[best.i] = clusterOf([...clusters[best.i]!.bins, ...clusters[best.j]!.bins]);
    clusters.splice(best.j, 1);
  }
  return clusters;
}
