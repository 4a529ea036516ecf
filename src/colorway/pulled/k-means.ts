import { type Cluster, settled, weightOf } from "../../motif/artwork/trace/cluster.ts";
import { apartSquared, type Bin, type Place } from "../../motif/artwork/trace/histogram.ts";
import type { Random } from "../../seed/random.ts";

/** Beginnings that are tried, and rounds of Lloyd's method for each. */
const BEGINNINGS = 6;
const ROUNDS = 24;

/**
 * Bins in `count` clusters or fewer, such that the squared distances from their means, by weight, are small: Lloyd's
 * method from centres drawn as k-means++ does (Arthur and Vassilvitskii 2007), the best of a few beginnings.
 */
export function kMeans(bins: readonly Bin[], count: number, random: Random): readonly Cluster[] {
  let [best, least]: [readonly Cluster[], number] = [[], Number.POSITIVE_INFINITY];
  for (let n = 1; n <= BEGINNINGS; n++) {
    const clusters = settled(bins, centres(bins, count, random.fork(`beginning ${n}`)), ROUNDS);
    const spread = clusters.reduce((sum, cluster) => sum + spreadOf(cluster), 0);
    if (spread < least) [best, least] = [clusters, spread];
  }
  return best.filter(({ bins: own }) => own.length > 0);
}

/** Sum of the squared distances of a cluster's bins from its mean, by weight. */
export const spreadOf = ({ bins, place }: Cluster): number =>
  bins.reduce((sum, bin) => sum + weightOf(bin) * apartSquared(bin.place, place), 0);

/** Places of bins, each drawn by its weight times the squared distance from those drawn before. */
function centres(bins: readonly Bin[], count: number, random: Random): Place[] {
  const chosen: Place[] = [];
  const away = Float64Array.from(bins, weightOf);
  while (chosen.length < count) {
    const total = away.reduce((sum, value) => sum + value, 0);
    if (!(total > 0)) break;
    let left = random.next() * total;
    const at = Math.max(
      0,
      away.findIndex((value) => {
        left -= value;
        return left < 0;
      }),
    );
    const { place } = bins[at]!;
    chosen.push(place);
    bins.forEach((bin, i) => {
      const own = weightOf(bin) * apartSquared(bin.place, place);
      away[i] = chosen.length === 1 ? own : Math.min(away[i]!, own);
    });
  }
  return chosen;
}
