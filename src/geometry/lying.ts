import { contains } from "./distance.ts";
import { bordersMeet, boxesMeet } from "./meeting.ts";
import type { Outline } from "./outline.ts";

/** Looks of beginnings of rings at points before the answer is left open: some milliseconds. */
const MOST_LOOKS = 2e6;

/**
 * How the first of two united outlines lies to the second, where their borders do not meet: outside, inside or around
 * it. Open where borders meet or touch, one lies partly in a hole of the other, or finding out would take long.
 */
export type Lying = "apart" | "within" | "around" | "open";

/** See {@link Lying}. The first must be united; the second may be several united ones that overlap. */
export function lyingOf(one: Outline, other: Outline): Lying {
  if (!boxesMeet(one.box, 0, other.box, 0)) return "apart";
  const looks = one.rings.length * other.points.length + other.rings.length * one.points.length;
  if (looks > MOST_LOOKS || bordersMeet(one, other)) return "open";
  const [inner, outer] = [beginningsWithin(one, other), beginningsWithin(other, one)];
  if (inner === 0 && outer === 0) return "apart";
  if (inner === one.rings.length - 1 && outer === 0) return "within";
  return outer === other.rings.length - 1 && inner === 0 ? "around" : "open";
}

/** How many rings of `one` begin within `other`. */
function beginningsWithin(one: Outline, other: Outline): number {
  let count = 0;
  for (let r = 0; r + 1 < one.rings.length; r++) {
    const i = one.rings[r]! * 2;
    if (contains(other, one.points[i]!, one.points[i + 1]!)) count++;
  }
  return count;
}
