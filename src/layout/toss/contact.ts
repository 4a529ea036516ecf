import type { Body } from "./body.ts";
import type { Grid } from "./distance-map.ts";

/** Where two bodies are too near each other, added up over the points of both; all zero when they are not. */
export interface Contact {
  /** Sum of depths. */
  weight: number;
  /** Direction that the first is to be pushed, weighted by depth. */
  x: number;
  y: number;
  /** Place, weighted by depth. */
  atX: number;
  atY: number;
  /** The deepest (µm). */
  depth: number;
}

/** No contact. */
export const createContact = (): Contact => ({ weight: 0, x: 0, y: 0, atX: 0, atY: 0, depth: 0 });

/** Makes a contact none. */
export function clearContact(contact: Contact): void {
  contact.weight = 0;
  contact.x = 0;
  contact.y = 0;
  contact.atX = 0;
  contact.atY = 0;
  contact.depth = 0;
}

/**
 * Adds the places where points of one body's rim, under its pose (six numbers as in a matrix), are nearer than `need`
 * µm to the other body, by its grid of distances. `way` is 1 when `one` is the first of the two, else -1. `reach` is how far from the other's centre a
 * point can be near it.
 */
export function addContacts(
  contact: Contact,
  one: Body,
  pose: Float64Array,
  other: Body,
  at: Float64Array,
  scale: number,
  reach: number,
  need: number,
  way: 1 | -1,
): void {
  const { rim } = one;
  const { values, side, pitch, left, top } = other.grid;
  const a = pose[0]!;
  const b = pose[1]!;
  const c = pose[2]!;
  const d = pose[3]!;
  const e = pose[4]!;
  const f = pose[5]!;
  const k = at[0]!;
  const l = at[1]!;
  const m = at[2]!;
  const o = at[3]!;
  const per = 1 / ((k * o - l * m) * pitch);
  const ex = e - at[4]!;
  const ey = f - at[5]!;
  // Texel of a rim point: the pose of the one, then the inverse of the other's.
  const ua = (o * a - m * b) * per;
  const uc = (o * c - m * d) * per;
  const u0 = (o * ex - m * ey) * per - left / pitch;
  const va = (k * b - l * a) * per;
  const vc = (k * d - l * c) * per;
  const v0 = (k * ey - l * ex) * per - top / pitch;
  const last = side - 1.001;
  const midU = (other.circle.x - left) / pitch;
  const midV = (other.circle.y - top) / pitch;
  const far = reach / (scale * pitch);
  const farSquared = far * far;
  for (let i = 0; i < rim.length; i += 2) {
    const x = rim[i]!;
    const y = rim[i + 1]!;
    let u = ua * x + uc * y + u0;
    let v = va * x + vc * y + v0;
    if ((u - midU) * (u - midU) + (v - midV) * (v - midV) > farSquared) continue;
    // Beside the grid, from its nearest point.
    const beyondU = u - Math.max(0, Math.min(u, last));
    const beyondV = v - Math.max(0, Math.min(v, last));
    u -= beyondU;
    v -= beyondV;
    const iu = u | 0;
    const iv = v | 0;
    const texel = iv * side + iu;
    const fu = u - iu;
    const fv = v - iv;
    const t0 = values[texel]!;
    const t1 = values[texel + 1]!;
    const t2 = values[texel + side]!;
    const t3 = values[texel + side + 1]!;
    const upper = t0 + (t1 - t0) * fu;
    const lower = t2 + (t3 - t2) * fu;
    let distance = upper + (lower - upper) * fv;
    if (need <= distance * scale) continue;
    // The slope of the distance points away from the other; its pose turns it onto the page.
    let slopeU = (t1 - t0) * (1 - fv) + (t3 - t2) * fv;
    let slopeV = lower - upper;
    if (beyondU !== 0 || beyondV !== 0) {
      // What is nearest to the grid's point is hardly farther than what is nearest to this one.
      const steep = Math.sqrt(slopeU * slopeU + slopeV * slopeV);
      if (steep === 0) continue;
      slopeU = (slopeU / steep) * distance + beyondU * pitch;
      slopeV = (slopeV / steep) * distance + beyondV * pitch;
      distance = Math.sqrt(slopeU * slopeU + slopeV * slopeV);
    }
    const depth = need - distance * scale;
    if (depth <= 0) continue;
    const slopeX = k * slopeU + m * slopeV;
    const slopeY = l * slopeU + o * slopeV;
    const length = Math.sqrt(slopeX * slopeX + slopeY * slopeY);
    if (length === 0) continue;
    const share = (way * depth) / length;
    contact.weight += depth;
    contact.x += share * slopeX;
    contact.y += share * slopeY;
    contact.atX += depth * (a * x + c * y + e);
    contact.atY += depth * (b * x + d * y + f);
    if (depth > contact.depth) contact.depth = depth;
  }
}

/** Adds the places where points of a body's rim have less room than `need` µm to the ground. */
export function addGroundContacts(
  contact: Contact,
  { rim }: Body,
  pose: Float64Array,
  { cell, left, top, columns, rows }: Grid,
  room: Float32Array,
  need: number,
): void {
  for (let i = 0; i < rim.length; i += 2) {
    const x = pose[0]! * rim[i]! + pose[2]! * rim[i + 1]! + pose[4]!;
    const y = pose[1]! * rim[i]! + pose[3]! * rim[i + 1]! + pose[5]!;
    const u = (x - left) / cell;
    const v = (y - top) / cell;
    if (!(u >= 0 && v >= 0 && u < columns - 1 && v < rows - 1)) continue;
    const at = Math.floor(v) * columns + Math.floor(u);
    const fu = u - Math.floor(u);
    const fv = v - Math.floor(v);
    const upper = room[at]! + (room[at + 1]! - room[at]!) * fu;
    const lower = room[at + columns]! + (room[at + columns + 1]! - room[at + columns]!) * fu;
    const depth = need - (upper + (lower - upper) * fv);
    if (!(depth > 0)) continue;
    const slopeX =
      (room[at + 1]! - room[at]!) * (1 - fv) + (room[at + columns + 1]! - room[at + columns]!) * fv;
    const slopeY = lower - upper;
    const length = Math.sqrt(slopeX * slopeX + slopeY * slopeY);
    if (!(length > 0)) continue;
    contact.weight += depth;
    contact.x += (depth * slopeX) / length;
    contact.y += (depth * slopeY) / length;
    contact.atX += depth * x;
    contact.atY += depth * y;
    if (depth > contact.depth) contact.depth = depth;
  }
}
