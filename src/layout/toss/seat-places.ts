import { badInput } from "../../errors/catalogue.ts";
import type { Images } from "../../geometry/images.ts";
import type { Arrangement } from "../../geometry/lattice.ts";
import type { Matrix } from "../../geometry/matrix.ts";
import { fixing } from "../../geometry/symmetry/fixed.ts";
import { type MirrorLine, type SpecialPlaces, specialPlaces } from "../../geometry/symmetry/special.ts";
import type { Random } from "../../seed/random.ts";
import type { Seat } from "./options.ts";

/** A place, in whole µm, that some operations leave where it is. */
export interface SeatPlace {
  readonly x: number;
  readonly y: number;
  readonly kind: "centres" | "mirrors";
  readonly fixing: readonly Matrix[];
}

/** Places on mirror lines are tried this far apart (µm), or farther, but no more of them than that. */
const STEP = 400;
const MOST_PLACES = 1500;

/**
 * Where motifs may be seated: the centres of rotation, those of the highest order first, then places on the mirror
 * lines between them, in an order by chance.
 * @throws SprigwrightError `no-symmetry` when the repeat has no places of the kind that an entry asks for
 */
export function seatPlaces(
  seats: readonly Seat[],
  arrangement: Arrangement,
  images: Images,
  random: Random,
): SeatPlace[] {
  const special = specialPlaces(arrangement);
  for (const [index, seat] of seats.entries()) refuseWithout(special, seat, index);
  const asked = (kind: Seat): boolean => seats.some((seat) => seat === kind || seat === "both");
  const centres = asked("centres") ? special.centres.map(({ x, y }) => placeAt(x, y, "centres", images)) : [];
  const mirrors = asked("mirrors") ? alongMirrors(special.mirrors, images, random) : [];
  return [...centres, ...mirrors];
}

function refuseWithout({ centres, mirrors }: SpecialPlaces, seat: Seat, index: number): void {
  const has = { anywhere: true, centres: centres.length > 0, mirrors: mirrors.length > 0, both: false };
  if (seat === "both" ? has.centres || has.mirrors : has[seat]) return;
  const missing = { anywhere: "", centres: "centre of rotation", mirrors: "mirror line", both: "symmetry" };
  throw badInput(
    "no-symmetry",
    `toss > motifs[${index}] > seat`,
    `the repeat has no ${missing[seat]} for motifs to sit on`,
    seat === "mirrors"
      ? 'take a repeat with mirrors, such as mirror({ … }) or planeGroup({ group: "p4mm", … }), or leave the seat out'
      : 'take a repeat that turns, such as turnover({ … }) or planeGroup({ group: "p4", … }), or leave the seat out',
  );
}

function alongMirrors(lines: readonly MirrorLine[], images: Images, random: Random): SeatPlace[] {
  const lengths = lines.map(({ from, to }) => {
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    return Math.sqrt(dx * dx + dy * dy);
  });
  const step = Math.max(STEP, lengths.reduce((sum, length) => sum + length, 0) / MOST_PLACES);
  const places: SeatPlace[] = [];
  lines.forEach(({ from, to }, i) => {
    const count = Math.max(1, Math.floor(lengths[i]! / step));
    for (let k = 0; k < count; k++) {
      const t = (k + random.next()) / count;
      const place = placeAt(
        from[0] + t * (to[0] - from[0]),
        from[1] + t * (to[1] - from[1]),
        "mirrors",
        images,
      );
      if (place.fixing.length === 1) places.push(place);
    }
  });
  for (let k = places.length - 1; k > 0; k--) {
    const other = random.below(k + 1);
    [places[k], places[other]] = [places[other]!, places[k]!];
  }
  return places;
}

/** The whole µm nearest to a place that what fixes the place moves least: on a diagonal, both must round alike. */
function placeAt(x: number, y: number, kind: SeatPlace["kind"], images: Images): SeatPlace {
  const [nearX, nearY] = [Math.round(x) + 0, Math.round(y) + 0];
  const about = fixing(images, x, y);
  let best = { x: nearX, y: nearY, moved: Infinity };
  for (const [dx, dy] of NEIGHBOURS) {
    const [px, py] = [nearX + dx, nearY + dy];
    const moved = about.reduce((sum, [a, b, c, d, e, f]) => {
      const [ox, oy] = [a * px + c * py + e - px, b * px + d * py + f - py];
      return sum + ox * ox + oy * oy;
    }, 0);
    if (moved < best.moved - 1e-3) best = { x: px, y: py, moved };
  }
  return { x: best.x, y: best.y, kind, fixing: fixing(images, best.x, best.y) };
}

/** Nearest first. */
const NEIGHBOURS: readonly (readonly [number, number])[] = [
  [0, 0],
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
];
