import { apartSquared, type Bin, type Mix, type Place, placeOf } from "./histogram.ts";

/** Bins that are taken for one ink. */
export interface Cluster {
  readonly bins: readonly Bin[];
  readonly pixels: number;
  /** How many of its pixels lie amidst it. */
  readonly amidst: number;
  readonly mix: Mix;
  readonly place: Place;
}

/** Pixels beside an edge count less: what lies there may be a mixture. */
export const weightOf = ({ pixels, amidst }: { pixels: number; amidst: number }): number =>
  pixels + 3 * amidst;

/** Bins as a cluster: its colour is the mean of its pixels, those amidst it above all. */
export function clusterOf(bins: readonly Bin[]): Cluster {
  let [pixels, amidst, weight] = [0, 0, 0];
  const sums: [number, number, number, number] = [0, 0, 0, 0];
  for (const bin of bins) {
    pixels += bin.pixels;
    amidst += bin.amidst;
    const own = weightOf(bin);
    weight += own;
    for (let c = 0; c < 4; c++) sums[c]! += bin.mix[c]! * own;
  }
  const mix: Mix = [sums[0] / weight, sums[1] / weight, sums[2] / weight, sums[3] / weight];
  return { bins, pixels, amidst, mix, place: placeOf(mix) };
}

/** Index of the nearest of some places. */
export function nearest(place: Place, places: readonly Place[]): number {
  let [best, least] = [0, Infinity];
  for (let i = 0; i < places.length; i++) {
    const far = apartSquared(place, places[i]!);
    if (far < least) [best, least] = [i, far];
  }
  return best;
}

/** Bins given to the nearest of some places; one list a place, perhaps empty. */
export function shareOut(bins: readonly Bin[], places: readonly Place[]): Bin[][] {
  const shares: Bin[][] = places.map(() => []);
  for (const bin of bins) shares[nearest(bin.place, places)]!.push(bin);
  return shares;
}

/** How far apart the first, fine clusters are: hardly seen side by side. */
const FINE = 0.03;
/** Most fine clusters. */
const MOST_FINE = 120;

/** Bins, most frequent first, as many small clusters. */
export function fineClusters(bins: readonly Bin[]): Cluster[] {
  const leaders: Place[] = [];
  for (const { place } of bins) {
    if (leaders.length === MOST_FINE) break;
    if (leaders.every((leader) => apartSquared(place, leader) > FINE * FINE)) leaders.push(place);
  }
  const clusters = shareOut(bins, leaders).map(clusterOf);
  return shareOut(
    bins,
    clusters.map(({ place }) => place),
  )
    .filter((share) => share.length > 0)
    .map(clusterOf);
}

/** Clusters whose colours have settled to the means of what is nearest to them (Lloyd's method, `rounds` times). */
export function settled(bins: readonly Bin[], places: readonly Place[], rounds = 8): Cluster[] {
  let found = places;
  let shares: Bin[][] = [];
  for (let round = 0; round < rounds; round++) {
    shares = shareOut(bins, found);
    found = shares.map((share, i) => (share.length > 0 ? clusterOf(share).place : found[i]!));
  }
  return shares.map((share, i) =>
    share.length > 0
      ? clusterOf(share)
      : { bins: [], pixels: 0, amidst: 0, mix: [0, 0, 0, 0], place: places[i]! },
  );
}
