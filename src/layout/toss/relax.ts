import type { Images } from "../../geometry/images.ts";
import { addContacts, type Contact, createContact } from "./contact.ts";
import { type Crowd, turnTo } from "./crowd.ts";
import { type Pairs, pairsOf } from "./pairs.ts";

/** How a crowd is pushed apart. */
export interface Relaxing {
  /** Least distance wanted (µm). */
  readonly gap: number;
  /** Most rounds over all pairs. */
  readonly sweeps: number;
  /** Least distance of centres of two of one entry, as a share of the larger radius: by entry. */
  readonly nests: readonly number[];
  /** Kept on top of the gap, and overlaps that count as none: shares of the larger radius of the two. */
  readonly margin: number;
  readonly close: number;
}

const TAU = 2 * Math.PI;
/** Farthest that one contact pushes, as a share of the smaller radius. */
const STRIDE = 0.3;
/** Sweeps after which the deepest overlap must have shrunk to this share of what it was, or it is given up. */
const PATIENCE = 40;
const STALLED = 0.8;

/**
 * Pushes the bodies of a crowd apart until none overlap, or the sweeps are over. Returns the deepest overlap that
 * each body was left with in the last sweep (µm), 0 where it was close enough.
 *
 * One contact at a time (Gauss-Seidel), each resolved in full by moving and turning both bodies in proportion to
 * their lightness: position-based dynamics (Müller and others 2007) without velocities.
 */
export function relax(images: Images, crowd: Crowd, ways: Relaxing): Float64Array {
  const { movers, x, y, radius, lightness, spin, linear, turn } = crowd;
  const { operations } = images;
  const { gap, margin } = ways;
  const count = movers.length;
  const left = new Float64Array(count);
  const moved = new Float64Array(count); // since the pairs were listed
  const last = new Float64Array(count); // when each moved last, in contacts looked at
  let smallest = Infinity;
  let largest = 0;
  for (let i = 0; i < count; i++) {
    smallest = Math.min(smallest, radius[i]!);
    largest = Math.max(largest, radius[i]!);
  }
  const skin = Math.max(0.4 * smallest, gap / 2);
  const reach =
    gap + margin * largest + movers.reduce((most, { body }) => Math.max(most, body.extra), 0) + skin;
  let pairs: Pairs = pairsOf(images, crowd, reach);
  let clear = new Float64Array(pairs.first.length).fill(-1); // when each pair was last found clear
  const one = new Float64Array(6);
  const two = new Float64Array(6);
  const contact: Contact = createContact();
  let time = 0;
  let before = Infinity;
  for (let sweep = 0; sweep < ways.sweeps; sweep++) {
    let worst = 0;
    let farthest = 0;
    left.fill(0);
    for (let k = 0; k < clear.length; k++) {
      const i = pairs.first[k]!;
      const j = pairs.second[k]!;
      if (clear[k]! > last[i]! && clear[k]! > last[j]!) continue;
      clear[k] = ++time;
      const [oa, ob, oc, od, oe, of] = operations[pairs.operation[k]!]!;
      const jx = oa * x[j]! + oc * y[j]! + oe + pairs.dx[k]!;
      const jy = ob * x[j]! + od * y[j]! + of + pairs.dy[k]!;
      const ox = jx - x[i]!;
      const oy = jy - y[i]!;
      const apart = ox * ox + oy * oy;
      const first = movers[i]!;
      const second = movers[j]!;
      const larger = Math.max(radius[i]!, radius[j]!);
      const need = gap + margin * larger + Math.max(first.body.extra, second.body.extra);
      const touch = radius[i]! + radius[j]! + need;
      if (apart >= touch * touch) continue;
      const { circle } = first.body;
      const { circle: disc } = second.body;
      one[0] = linear[4 * i]!;
      one[1] = linear[4 * i + 1]!;
      one[2] = linear[4 * i + 2]!;
      one[3] = linear[4 * i + 3]!;
      one[4] = x[i]! - one[0] * circle.x - one[2] * circle.y;
      one[5] = y[i]! - one[1] * circle.x - one[3] * circle.y;
      two[0] = oa * linear[4 * j]! + oc * linear[4 * j + 1]!;
      two[1] = ob * linear[4 * j]! + od * linear[4 * j + 1]!;
      two[2] = oa * linear[4 * j + 2]! + oc * linear[4 * j + 3]!;
      two[3] = ob * linear[4 * j + 2]! + od * linear[4 * j + 3]!;
      two[4] = jx - two[0] * disc.x - two[2] * disc.y;
      two[5] = jy - two[1] * disc.x - two[3] * disc.y;
      contact.weight = contact.x = contact.y = contact.atX = contact.atY = contact.depth = 0;
      addContacts(contact, first.body, one, second.body, two, second.scale, radius[j]! + need, need, 1);
      addContacts(contact, second.body, two, first.body, one, first.scale, radius[i]! + need, need, -1);
      if (contact.weight === 0) {
        if (first.body.entry !== second.body.entry || apart === 0) continue;
        const least = ways.nests[first.body.entry]! * larger;
        if (apart >= least * least) continue;
        // Two of one kind, one in the other's hollow: push the centres apart.
        contact.weight = 1;
        contact.x = -ox;
        contact.y = -oy;
        contact.atX = x[i]! + ox / 2;
        contact.atY = y[i]! + oy / 2;
        contact.depth = (least - Math.sqrt(apart)) / 2;
      }
      const length = Math.sqrt(contact.x * contact.x + contact.y * contact.y);
      if (length === 0) continue;
      const nx = contact.x / length;
      const ny = contact.y / length;
      const atX = contact.atX / contact.weight;
      const atY = contact.atY / contact.weight;
      const { depth } = contact;
      if (depth > ways.close * larger) {
        worst = Math.max(worst, depth);
        left[i] = Math.max(left[i]!, depth);
        left[j] = Math.max(left[j]!, depth);
      }
      const torque = (atX - x[i]!) * ny - (atY - y[i]!) * nx;
      const torqueBack = (atX - jx) * ny - (atY - jy) * nx;
      const ease =
        lightness[i]! + lightness[j]! + spin[i]! * torque * torque + spin[j]! * torqueBack * torqueBack;
      if (ease === 0) continue;
      const push = Math.min(depth, STRIDE * Math.min(radius[i]!, radius[j]!)) / ease;
      if (lightness[i]! > 0) {
        const way = push * lightness[i]!;
        x[i]! += way * nx;
        y[i]! += way * ny;
        if (spin[i]! > 0) {
          turn[i]! += (push * spin[i]! * torque) / TAU;
          turnTo(crowd, i);
        }
        moved[i]! += way;
        farthest = Math.max(farthest, moved[i]!);
        last[i] = ++time;
      }
      if (lightness[j]! > 0) {
        const way = push * lightness[j]!;
        x[j]! -= way * (oa * nx + ob * ny);
        y[j]! -= way * (oc * nx + od * ny);
        if (spin[j]! > 0) {
          turn[j]! -= ((oa * od - ob * oc) * push * spin[j]! * torqueBack) / TAU;
          turnTo(crowd, j);
        }
        moved[j]! += way;
        farthest = Math.max(farthest, moved[j]!);
        last[j] = ++time;
      }
    }
    if (worst === 0) break;
    if (sweep % PATIENCE === PATIENCE - 1) {
      if (worst > STALLED * before) break;
      before = worst;
    }
    if (2 * farthest > skin) {
      pairs = pairsOf(images, crowd, reach);
      clear = new Float64Array(pairs.first.length).fill(-1);
      moved.fill(0);
    }
  }
  return left;
}
