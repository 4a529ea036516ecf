import type { Cluster } from "./cluster.ts";
import { nearest } from "./cluster.ts";
import { binOf, placeOf } from "./histogram.ts";
import { SHARED } from "./purity.ts";
import type { Raster } from "./raster.ts";

/** Share of the picture's rim that its paper fills. */
const MOST_OF = 0.5;

/** The cluster that most of the picture's rim has, if any has most of it. */
export function rimCluster(
  raster: Raster,
  purity: Uint8Array,
  clusters: readonly Cluster[],
): Cluster | undefined {
  const { width, height, data } = raster;
  const places = clusters.map(({ place }) => place);
  const known = new Map<number, number>();
  const votes = clusters.map(() => 0);
  let all = 0;
  const vote = (i: number): void => {
    if (purity[i] === SHARED) return;
    const key = binOf(data, i);
    let at = known.get(key);
    if (at === undefined) {
      const mix = [data[4 * i]!, data[4 * i + 1]!, data[4 * i + 2]!, data[4 * i + 3]!] as const;
      at = nearest(placeOf(mix), places);
      known.set(key, at);
    }
    votes[at]!++;
    all++;
  };
  for (let x = 0; x < width; x++) {
    vote(x);
    vote((height - 1) * width + x);
  }
  for (let y = 1; y < height - 1; y++) {
    vote(y * width);
    vote(y * width + width - 1);
  }
  const at = votes.findIndex((count) => count > MOST_OF * all);
  return at < 0 ? undefined : clusters[at];
}
