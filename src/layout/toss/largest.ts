import { imagesOf } from "../../geometry/images.ts";
import type { Body } from "./body.ts";
import { closeLook, firstLook } from "./looks.ts";
import { type Holding, type Stand, standsAt } from "./stand.ts";

/** A place, and the largest scale found there. */
export interface Found {
  readonly stand: Stand;
  readonly scale: number;
}

/** Where none will do, so many of the best are looked at closely. */
const BEST = 6;
/** A scale counts as larger from this factor on, in the first look and in the close one; halvings that find how large. */
const LARGER = 1.02;
const HARDLY_LARGER = 1.0005;
const HALVINGS = 6;
/** The smallest scale looked for, as a share of the one asked. */
const LEAST = 1 / 256;
/** Places between two breaths. */
const BREATH = 256;

/**
 * The largest scale up to `most` at which a drawing keeps the gap from its own copies in some place and some turn, and where,
 * as far as looking at some of them tells; undefined when it does nowhere.
 */
export async function largestStand(body: Body, most: number, holding: Holding): Promise<Found | undefined> {
  const { breathe } = holding;
  const images = imagesOf(holding.arrangement);
  const stands = (stand: Stand, scale: number): boolean => standsAt(images, body, stand, scale, holding);
  let looks = 0;
  const rest = async (): Promise<void> => {
    if (++looks % BREATH === 0) await breathe();
  };
  for (const stand of firstLook(images, body, most, holding)) {
    if (stands(stand, most)) return { stand, scale: most };
    await rest();
  }
  let leaders: Found[] = [];
  let own: Found | undefined;
  for (const stand of firstLook(images, body, most, holding)) {
    await rest();
    if (own && (own.stand.turn !== stand.turn || own.stand.flip !== stand.flip)) {
      leaders.push(own);
      own = undefined;
    }
    const better = own ? own.scale * LARGER : most * LEAST;
    if (better < most && stands(stand, better)) own = { stand, scale: enlarged(stand, better, most, stands) };
  }
  if (own) leaders.push(own);
  leaders = leaders.sort(
    (p, q) => q.scale - p.scale || p.stand.turn - q.stand.turn || Number(p.stand.flip) - Number(q.stand.flip),
  );
  let largest: Found | undefined;
  for (const leader of leaders.slice(0, BEST)) {
    let best = leader;
    for (const stand of closeLook(images, holding, () => best.stand)) {
      await rest();
      const better = best.scale * HARDLY_LARGER;
      if (better >= most || !stands(stand, better)) continue;
      if (stands(stand, most)) return { stand, scale: most };
      best = { stand, scale: enlarged(stand, better, most, stands) };
    }
    if (!largest || best.scale > largest.scale) largest = best;
  }
  return largest;
}

/** The largest scale between one that stands and one that does not, by halving. */
function enlarged(
  stand: Stand,
  low: number,
  high: number,
  stands: (stand: Stand, scale: number) => boolean,
): number {
  let [least, most] = [low, high];
  for (let k = 0; k < HALVINGS; k++) {
    const middle = (least + most) / 2;
    if (stands(stand, middle)) least = middle;
    else most = middle;
  }
  return least;
}
