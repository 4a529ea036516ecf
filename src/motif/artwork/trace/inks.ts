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
const LISTED = 0.03;

/** Colours nearer than this are one ink, however clean the picture (OKLab). */
const ALIKE = 0.03;
/** The same where paint and paper are uneven: a start, and more for each level of it. */
const ROUGHLY_ALIKE = 0.05;
const PER_LEVEL = 0.003;
const ALIKE_MOST = 0.1;
/** From which unevenness on that holds. */
const UNEVEN = 3;
/** How much nearer colours may be with each try, where more inks are asked for than there seem to be. */
const CLOSER = 0.85;
const TRIES = 10;

/** Finds the inks of a picture; `unevenness` is how unlike the pixels of one paint are, in levels of 255. */
export function paletteOf(raster: Raster, purity: Uint8Array, unevenness: number, wish: Wish): Palette {
  const bins = binsOf(raster, purity);
  const pixels = raster.width * raster.height;
  const fine = fineClusters(bins);
  let alike = unevenness < UNEVEN ? ALIKE : Math.min(ALIKE_MOST, ROUGHLY_ALIKE + PER_LEVEL * unevenness);
  let found = trueInks(joinPaints(fine, alike), pixels);
  let rim = rimOf(raster, purity, found, wish.paper);
  const { inks } = wish;
  if (Array.isArray(inks)) return listed(bins, inks as readonly string[], rim);
  const enough = (inks as number | undefined) ?? wish.most;
  for (let n = 0; n < TRIES && inks !== undefined && found.length < enough + (rim ? 1 : 0); n++) {
    alike *= CLOSER;
    found = trueInks(joinPaints(fine, alike), pixels);
    rim = rimOf(raster, purity, found, wish.paper);
  }
  const clusters = joinDown(found, enough + (rim ? 1 : 0), rim);
  const end = settled(
    bins,
    clusters.map(({ place }) => place),
  );
  return { inks: end.map((cluster) => inkOf(cluster)), paper: rim ? clusters.indexOf(rim) : -1 };
}

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
