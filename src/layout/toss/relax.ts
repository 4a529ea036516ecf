import type { Images } from "../../geometry/images.ts";
import type { Matrix } from "../../geometry/matrix.ts";
import type { Body } from "./body.ts";
import { addContacts, addGroundContacts, type Contact, clearContact, createContact } from "./contact.ts";
import { type Crowd, placeOf, push, swayOf } from "./crowd.ts";
import type { Grid } from "./distance-map.ts";
import { kinPairsOf, pairsOf } from "./pairs.ts";

/** How those of one kind drift apart while all are pushed. */
export interface Drift {
  /** How far the middles of their ink are to lie from each other (µm): by entry. */
  readonly apart: readonly number[];
  /** Rounds over all pairs in which they do, before the rounds in which all are freed. */
  readonly sweeps: number;
}

/** How a crowd is pushed apart. */
export interface Relaxing {
  /** Least distance wanted (µm). */
  readonly gap: number;
  /** Most rounds over all pairs. */
  readonly sweeps: number;
  /** Least distance of centres of two of one entry, as a share of the larger radius: by entry. */
  readonly nests: readonly number[];
  /** How those of one kind drift apart first. */
  readonly drift: Drift;
  /** Whether bodies that have not moved keep the gap from each other already, and are left so. */
  readonly kept: boolean;
  /** Kept on top of the gap, and overlaps that count as none: shares of the larger radius of the two. */
  readonly margin: number;
  readonly close: number;
  /** Room to what does not move, see {@link Stage.room}. */
  readonly grid: Grid;
  readonly room: Float32Array | undefined;
  /** Awaited every so many pairs. */
  readonly breathe: () => Promise<void>;
}

/** Farthest that one contact pushes, as a share of the smaller radius. */
const STRIDE = 0.3;
/** Sweeps after which the deepest overlap must have shrunk to this share of what it was, or it is given up. */
const PATIENCE = 40;
const STALLED = 0.8;
/** How far bodies may move before pairs are listed anew, as a share of the smallest radius. */
const SKIN = 0.4;
/** Bodies are in each other when their widest discs overlap by more than this share of the narrower one's radius. */
const WITHIN = 0.5;
/** How fast those of a kind drift apart: share of the way in one sweep. */
const PULL = 0.12;
/** Pairs looked at between two breaths. */
const BREATH = 20_000;

/**
 * Pushes the bodies of a crowd apart until none overlap, or the sweeps are over. Returns the deepest overlap that
 * each body was left with in the last sweep (µm), 0 where it was close enough.
 *
 * One contact at a time (Gauss-Seidel), each resolved in full by moving and turning both bodies in proportion to
 * their lightness: position-based dynamics (Müller and others 2007) without velocities.
 */
export async function relax(images: Images, crowd: Crowd, ways: Relaxing): Promise<Float64Array> {
  const { movers, x, y, radius, lightness, spin } = crowd;
  const { gap, margin, close, nests, room, grid, breathe, drift } = ways;
  const count = movers.length;
  const left = new Float64Array(count);
  const moved = new Float64Array(count); // since the pairs were listed
  // When each moved last: none of those that keep the gap already has to be looked at.
  const last = Float64Array.from(crowd.moved, (moved) => (ways.kept ? moved - 1.5 : -0.5));
  const grounded = new Float64Array(count).fill(-1); // when each was last held against the ground
  const smallest = radius.reduce((least, r) => Math.min(least, r), Infinity);
  const largest = radius.reduce((most, r) => Math.max(most, r), 0);
  const extra = movers.reduce((most, { body }) => Math.max(most, body.extra), 0);
  const skin = Math.max(SKIN * smallest, gap / 2);
  const list = (): ReturnType<typeof pairsOf> =>
    pairsOf(images, crowd, gap + margin * largest + extra + skin);
  let pairs = list();
  let kin = kinPairsOf(images, crowd, drift.apart);
  let clear = new Float64Array(pairs.first.length).fill(-1); // when each pair was last looked at
  const one = new Float64Array(6);
  const two = new Float64Array(6);
  const contact: Contact = createContact();
  let time = 0;
  let before = Infinity;
  let worst = 0;
  let farthest = 0;
  let breath = BREATH;

  const rest = (): Promise<void> => {
    breath = BREATH;
    return breathe();
  };
  /** Notes what is left of a contact, and returns how far it is to push, or 0. */
  const depthOf = (i: number, j: number, larger: number): number => {
    const { depth } = contact;
    if (depth > close * larger) {
      worst = Math.max(worst, depth);
      left[i] = Math.max(left[i]!, depth);
      left[j] = Math.max(left[j]!, depth);
    }
    return Math.min(depth, STRIDE * Math.min(radius[i]!, radius[j]!));
  };
  const note = (i: number, way: number): void => {
    moved[i]! += way;
    farthest = Math.max(farthest, moved[i]!);
    last[i] = ++time;
  };

  const meet = (i: number, j: number, operation: Matrix, dx: number, dy: number): void => {
    const [oa, ob, oc, od, oe, of] = operation;
    const jx = oa * x[j]! + oc * y[j]! + oe + dx;
    const jy = ob * x[j]! + od * y[j]! + of + dy;
    const ox = jx - x[i]!;
    const oy = jy - y[i]!;
    const apart = ox * ox + oy * oy;
    const { body: first, scale } = movers[i]!;
    const { body: second, scale: other } = movers[j]!;
    const larger = Math.max(radius[i]!, radius[j]!);
    const need = gap + margin * larger + Math.max(first.extra, second.extra);
    const touch = radius[i]! + radius[j]! + need;
    if (apart >= touch * touch) return;
    placeOf(crowd, i, one);
    placeOf(crowd, j, two, operation, jx, jy);
    clearContact(contact);
    addContacts(contact, first, one, second, two, other, radius[j]! + need, need, 1);
    addContacts(contact, second, two, first, one, scale, radius[i]! + need, need, -1);
    if (contact.weight > 0) partNested(contact, first, one, scale, second, two, other, need);
    else {
      const least = nests[first.entry]! * larger;
      if (first.entry !== second.entry || apart >= least * least) return;
      // Two of one kind, one in the other's hollow: the centres are pushed apart.
      contact.weight = 1;
      contact.x = -ox;
      contact.y = -oy;
      contact.atX = x[i]! + ox / 2;
      contact.atY = y[i]! + oy / 2;
      contact.depth = (least - Math.sqrt(apart)) / 2;
    }
    const length = Math.sqrt(contact.x * contact.x + contact.y * contact.y);
    if (length === 0) return;
    const nx = contact.x / length;
    const ny = contact.y / length;
    const atX = contact.atX / contact.weight;
    const atY = contact.atY / contact.weight;
    const far = depthOf(i, j, larger);
    const torque = (atX - x[i]!) * ny - (atY - y[i]!) * nx;
    const torqueBack = (atX - jx) * ny - (atY - jy) * nx;
    const ease =
      lightness[i]! + lightness[j]! + spin[i]! * torque * torque + spin[j]! * torqueBack * torqueBack;
    const impulse = far / ease;
    note(i, push(crowd, i, impulse, nx, ny, torque));
    // Back through the operation, whose inverse is its transpose: a reflection turns the other way.
    const way = oa * od - ob * oc > 0 ? -torqueBack : torqueBack;
    note(j, push(crowd, j, impulse, -(oa * nx + ob * ny), -(oc * nx + od * ny), way));
  };

  const meetGround = (i: number, ground: Float32Array): void => {
    const { body } = movers[i]!;
    placeOf(crowd, i, one);
    clearContact(contact);
    addGroundContacts(contact, body, one, grid, ground, margin * radius[i]! + body.extra);
    const length = Math.sqrt(contact.x * contact.x + contact.y * contact.y);
    if (length === 0) return;
    const [nx, ny] = [contact.x / length, contact.y / length];
    const [ax, ay] = [contact.atX / contact.weight - x[i]!, contact.atY / contact.weight - y[i]!];
    const torque = ax * ny - ay * nx;
    const far = depthOf(i, i, radius[i]!);
    note(i, push(crowd, i, far / (lightness[i]! + spin[i]! * torque * torque), nx, ny, torque));
  };

  /** Moves two of a kind a little from each other, if their middles are too near. */
  const part = (i: number, j: number, operation: Matrix, dx: number, dy: number, apart: number): void => {
    const [oa, ob, oc, od, oe, of] = operation;
    const [ix, iy] = swayOf(crowd, i);
    const [jx, jy] = swayOf(crowd, j);
    const [mx, my] = [x[j]! + jx, y[j]! + jy];
    const ox = oa * mx + oc * my + oe + dx - x[i]! - ix;
    const oy = ob * mx + od * my + of + dy - y[i]! - iy;
    const far = Math.sqrt(ox * ox + oy * oy);
    if (far >= apart || far === 0) return;
    const way = Math.min(PULL * (apart - far), STRIDE * Math.min(radius[i]!, radius[j]!));
    const impulse = way / (lightness[i]! + lightness[j]!);
    const [nx, ny] = [ox / far, oy / far];
    note(i, push(crowd, i, impulse, -nx, -ny, 0));
    note(j, push(crowd, j, impulse, oa * nx + ob * ny, oc * nx + od * ny, 0));
  };

  for (let sweep = 0; sweep < drift.sweeps + ways.sweeps; sweep++) {
    worst = 0;
    farthest = 0;
    left.fill(0);
    if (sweep < drift.sweeps)
      for (let k = 0; k < kin.first.length; k++) {
        if (--breath === 0) await rest();
        const i = kin.first[k]!;
        part(
          i,
          kin.second[k]!,
          images.operations[kin.operation[k]!]!,
          kin.dx[k]!,
          kin.dy[k]!,
          drift.apart[movers[i]!.body.entry]!,
        );
      }
    for (let k = 0; k < clear.length; k++) {
      const i = pairs.first[k]!;
      const j = pairs.second[k]!;
      if (clear[k]! > last[i]! && clear[k]! > last[j]!) continue;
      clear[k] = ++time;
      if (--breath === 0) await rest();
      meet(i, j, images.operations[pairs.operation[k]!]!, pairs.dx[k]!, pairs.dy[k]!);
    }
    if (room)
      for (let i = 0; i < count; i++) {
        if (grounded[i]! > last[i]!) continue;
        grounded[i] = ++time;
        if (--breath === 0) await rest();
        meetGround(i, room);
      }
    if (sweep < drift.sweeps) before = Infinity;
    else if (worst === 0) break;
    if (sweep >= drift.sweeps && (sweep - drift.sweeps) % PATIENCE === PATIENCE - 1) {
      if (worst > STALLED * before) break;
      before = worst;
    }
    if (2 * farthest > skin) {
      pairs = list();
      if (sweep < drift.sweeps) kin = kinPairsOf(images, crowd, drift.apart);
      clear = new Float64Array(pairs.first.length).fill(-1);
      moved.fill(0);
    }
  }
  return left;
}

/**
 * Turns round the contact of two bodies that lie in each other, if it would push them further in: each point of a rim
 * shows the way out that is nearest to it, and that may lead past the middle. The widest discs are pushed apart instead.
 */
function partNested(
  contact: Contact,
  { spots: first }: Body,
  one: Float64Array,
  scale: number,
  { spots: second }: Body,
  two: Float64Array,
  other: number,
  need: number,
): void {
  const x = one[0]! * first[0]! + one[2]! * first[1]! + one[4]!;
  const y = one[1]! * first[0]! + one[3]! * first[1]! + one[5]!;
  const dx = x - (two[0]! * second[0]! + two[2]! * second[1]! + two[4]!);
  const dy = y - (two[1]! * second[0]! + two[3]! * second[1]! + two[5]!);
  const [r, s] = [first[2]! * scale, second[2]! * other];
  const apart = Math.sqrt(dx * dx + dy * dy);
  const overlap = r + s - apart;
  if (overlap <= WITHIN * Math.min(r, s) || contact.x * dx + contact.y * dy > 0) return;
  contact.weight = 1;
  contact.x = apart > 0 ? dx : 1;
  contact.y = dy;
  contact.atX = x - dx / 2;
  contact.atY = y - dy / 2;
  contact.depth = overlap + need;
}
