import { cosTurns, sinTurns } from "../../seed/trigonometry.ts";
import type { Wheel } from "./belt.ts";
import { heading } from "./vector.ts";

/** A shell-like fan, in mm, the widest places at height 0 before it is centred. */
export interface Fan {
  readonly size: number;
  /** Bulges of the rim from left to right. */
  readonly lobes: readonly Wheel[];
  /** Hollows between them. */
  readonly grooves: readonly Wheel[];
  /** The rounded foot. */
  readonly hinge: Wheel;
  /** The hollow sides, left and right: each is the top of a neighbour in the row below. */
  readonly sides: readonly [Wheel, Wheel];
}

/**
 * A fan `size` wide that fits between its neighbours when fans are set `size` apart in rows `row` apart,
 * every other row half a `size` along.
 *
 * All lobes touch a circle of radius `a` about (0, c) from within; the same circle of the neighbour below
 * is the hollow side, and the end lobes touch it from without. With lobes of radius r that leaves one
 * unknown, c: (size/2 - r)² + c² = (a - r)² and r² + (c + row)² = (a + r)². It is found by halving.
 */
export function fan(size: number, row: number, lobes: number): Fan {
  const r = Math.min(size * 0.15, (size * 0.94) / (lobes + 0.9));
  const w = size / 2 - r;
  const radius = (c: number): number => r + Math.sqrt(w * w + c * c);
  const gap = (c: number): number => Math.sqrt(r * r + (c + row) * (c + row)) - radius(c) - r;
  let [low, high] = [-0.3 * size, 1.2 * size];
  for (let k = 0; k < 60; k++) {
    const c = (low + high) / 2;
    if (gap(c) < 0) low = c;
    else high = c;
  }
  const c = (low + high) / 2;
  const a = radius(c);
  const tip = size * 0.05;
  const foot = c + row - Math.sqrt((a + tip) * (a + tip) - (size * size) / 4);
  // The middle of the box goes to the origin.
  const down = -(c - a + foot + tip) / 2;
  const wheels = rim(lobes, a - r, c + down, r, turnOfCosine(c / (a - r)));
  const [x, y] = [size / 2, c + row + down];
  return {
    size,
    ...wheels,
    hinge: { x: 0, y: foot + down, r: tip },
    sides: [
      { x: -x, y, r: -a },
      { x, y, r: -a },
    ],
  };
}

/** Lobes evenly along an arc that goes `end` turns to both sides of the top, and hollows between them. */
function rim(
  count: number,
  orbit: number,
  c: number,
  r: number,
  end: number,
): Pick<Fan, "lobes" | "grooves"> {
  const lobes: Wheel[] = [];
  const grooves: Wheel[] = [];
  const half = end / (count - 1);
  const apart = orbit * sinTurns(half);
  const hollow = Math.max(r * 0.16, (apart - r) * 1.5);
  const out = orbit * cosTurns(half) + Math.sqrt(Math.max(0, (r + hollow) * (r + hollow) - apart * apart));
  for (let k = 0; k < count; k++) {
    const [x, y] = heading(half * (2 * k - count + 1));
    lobes.push({ x: x * orbit, y: c + y * orbit, r });
    const [u, v] = heading(half * (2 * k - count + 2));
    if (k < count - 1) grooves.push({ x: u * out, y: c + v * out, r: -hollow });
  }
  return { lobes, grooves };
}

/** The wheels of a whole fan, clockwise from its left side. */
export function fanWheels({ lobes, grooves, hinge, sides }: Fan): Wheel[] {
  const top = lobes.flatMap((lobe, k) => [lobe, ...grooves.slice(k, k + 1)]);
  return [sides[0], ...top, sides[1], hinge];
}

/** The angle between 0 and half a turn that has a cosine, by halving. */
function turnOfCosine(cosine: number): number {
  let [low, high] = [0, 0.5];
  for (let k = 0; k < 52; k++) {
    const middle = (low + high) / 2;
    if (cosTurns(middle) > cosine) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * A band along the rim of a fan with round ends, between two copies of the rim that are shrunk towards the
 * middle of its arc.
 */
export function fanBand({ lobes, grooves, sides }: Fan, row: number, outer: number, inner: number): Wheel[] {
  const middle = sides[0].y - row;
  const top = lobes.flatMap((lobe, k) => [lobe, ...grooves.slice(k, k + 1)]);
  const copy = (share: number, hand: number): Wheel[] =>
    top.map(({ x, y, r }) => ({ x: x * share, y: middle + (y - middle) * share, r: r * share * hand }));
  const { x, y, r } = lobes[lobes.length - 1]!;
  const mean = (outer + inner) / 2;
  const end = { y: middle + (y - middle) * mean, r: ((x + r) * (outer - inner) * 0.999) / 2 };
  const right = { x: (x + r) * mean, ...end };
  return [...copy(outer, 1), right, ...copy(inner, -1).reverse(), { ...right, x: -right.x }];
}
