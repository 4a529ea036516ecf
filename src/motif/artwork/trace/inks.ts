import { bytesOf, hexOf } from "../color.ts";
import { type Cluster, fineClusters, settled } from "./cluster.ts";
import { apartSquared, type Bin, binsOf, type Mix, type Place, placeOf } from "./histogram.ts";
import { joinDown, joinPaints } from "./join.ts";
import { rimCluster } from "./paper.ts";
import type { Raster } from "./raster.ts";
import { trueInks } from "./true-inks.ts";

/** An ink of a picture. */
export interface Ink {
  /** `#rrggbb`, as over white paper. */
  readonly fill: string;
  readonly mix: Mix;
  readonly place: Place;
  /** Whether it is not there at all. */
  readonly clear: boolean;
}

/** What is asked of the colours of a picture. */
export interface Wish {
  /** How many inks, which inks, or undefined: as many as there are. */
  readonly inks: number | readonly string[] | undefined;
  /** Most inks that are found. */
  readonly most: number;
  /** `"keep"`, `"drop"` or `"around"`, or the paper's colour. */
  readonly paper: string;
}

/** The inks of a picture, and which of them is its paper (-1: none). */
export interface Palette {
  readonly inks: readonly Ink[];
  readonly paper: number;
}

/** How near a paper that is named, or a listed ink, must be to a colour of the picture to stand for it. */
const NAMED = 0.15;
const LISTED = 0.08;

/** Finds the inks of a picture; `grain` is what it had before it was smoothed. */
export function paletteOf(raster: Raster, purity: Uint8Array, grain: number, wish: Wish): Palette {
  const bins = binsOf(raster, purity);
  const pixels = raster.width * raster.height;
  const fine = fineClusters(bins);
  const found = trueInks(joinPaints(fine, grain), pixels);
  const rim = rimOf(raster, purity, found, wish.paper);
  const { inks } = wish;
  if (Array.isArray(inks)) return listed(bins, inks as readonly string[], rim);
  const apart = rim ? 1 : 0;
  const enough = (inks as number | undefined) ?? wish.most;
  const start =
    inks === undefined || found.length >= enough + apart
      ? found
      : [...(rim ? [rim] : []), ...trueInks(fine, pixels).filter((one) => !rim || !holds(rim, one))];
  const clusters = joinDown(start, enough + apart, rim);
  const at = rim ? clusters.indexOf(rim) : -1;
  const end = settled(
    bins,
    clusters.map(({ place }) => place),
  );
  return { inks: end.map((cluster) => inkOf(cluster)), paper: at };
}

/** Whether a cluster took in all bins of another. */
const holds = (whole: Cluster, part: Cluster): boolean => whole.bins.includes(part.bins[0]!);

function rimOf(
  raster: Raster,
  purity: Uint8Array,
  found: readonly Cluster[],
  paper: string,
): Cluster | undefined {
  if (!paper.startsWith("#")) {
    const rim = rimCluster(raster, purity, found);
    return paper === "keep" && rim && !isClear(rim.mix) ? undefined : rim;
  }
  const place = placeOf([...bytesOf(paper), 255]);
  const near = found.filter((one) => apartSquared(one.place, place) < NAMED * NAMED);
  return near.sort((p, q) => apartSquared(p.place, place) - apartSquared(q.place, place))[0];
}

function listed(bins: readonly Bin[], fills: readonly string[], rim: Cluster | undefined): Palette {
  const places = fills.map((fill) => placeOf([...bytesOf(fill), 255]));
  const same = rim ? places.findIndex((place) => apartSquared(place, rim.place) < LISTED * LISTED) : -1;
  const all = rim && same < 0 ? [...places, rim.place] : places;
  const end = settled(bins, all);
  return {
    inks: end.map((cluster, i) => {
      const fill = fills[i] ?? inkOf(cluster).fill;
      // An ink that the picture does not have stays as it was listed.
      const mix: Mix = cluster.pixels > 0 ? cluster.mix : [...bytesOf(fill), 255];
      return { ...inkOf({ ...cluster, mix }), fill };
    }),
    paper: rim ? (same < 0 ? fills.length : same) : -1,
  };
}

const isClear = (mix: Mix): boolean => mix[3] < 20;

function inkOf({ mix, place }: Cluster): Ink {
  const clear = 255 - mix[3];
  return { fill: hexOf(mix[0] + clear, mix[1] + clear, mix[2] + clear), mix, place, clear: isClear(mix) };
}
