import { type Cluster, weightOf } from "./cluster.ts";

/** Share of its pixels that a real ink has amidst it, unless it is a thin line of its own colour. */
const THIN = 0.12;

/**
 * Clusters that are inks: not the few pixels that noise explains, and not what only lies between two others along
 * their edges.
 */
export function trueInks(clusters: readonly Cluster[], pixels: number): Cluster[] {
  const enough = Math.max(12, pixels / 25_000);
  const many = clusters.filter(
    ({ amidst, pixels: own }) => amidst >= enough || own >= Math.max(40, pixels / 1500),
  );
  const kept = many.length > 0 ? many : clusters.slice(0, 1);
  return kept.filter((one) => {
    if (one.amidst > THIN * one.pixels) return true;
    const heavier = kept.filter((other) => other !== one && weightOf(other) > weightOf(one));
    return !heavier.some((a, i) => heavier.some((b, j) => j > i && isMixture(one, a, b)));
  });
}

/** Whether a colour is near the middle part of the line between two others. */
function isMixture(one: Cluster, a: Cluster, b: Cluster): boolean {
  let [along, across, own] = [0, 0, 0];
  for (let c = 0; c < 4; c++) {
    const [way, off] = [b.mix[c]! - a.mix[c]!, one.mix[c]! - a.mix[c]!];
    along += way * off;
    across += way * way;
    own += off * off;
  }
  if (across === 0) return false;
  const t = along / across;
  return t > 0.1 && t < 0.9 && own - t * along < 0.02 * across;
}
