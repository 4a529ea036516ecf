import type { Path } from "../../geometry/path.ts";
import { QUARTER } from "../../geometry/shapes.ts";
import { along, bending, type Chain, slopeAt, toPath } from "./chain.ts";
import { unit, type Vector } from "./vector.ts";

/** The narrowest line that motifs are drawn with, in mm: about what screen and digital printing hold. */
export const FINE = 0.36;

/** How wide a stroke is in mm: at its start, its end, and, of three numbers, what it is drawn to between. */
export type Widths =
  | readonly [start: number, end: number]
  | readonly [start: number, pull: number, end: number];

/** A place on a spine, with what its two sides need to follow it. */
interface Station {
  readonly at: Vector;
  readonly ahead: Vector;
  /** Points and slopes (by the parameter of the curve) of the left and the right side. */
  readonly sides: readonly { readonly at: Vector; readonly slope: Vector }[];
  readonly half: number;
}

/** Pieces that each curve of a spine is cut into for its sides. */
const PIECES = 3;

/** Slope in mm below which a spine counts as standing still. */
const STILL = 1e-6;

/**
 * A tapered stroke with round ends along a chain of cubics, its width changing evenly or, with three widths, as a
 * parabola. The ends reach half a width beyond the chain. The sides are cubics with the exact slope of
 * the offset curve at every knot: O' = P' + h' N + h N'.
 */
export const stroke = (spine: Chain, widths: Widths): Path =>
  strokeAlong(spine, (share) => halfWidth(widths, share));

/** Half the width of a stroke in mm at a share of its spine (counted in curves), and how fast it grows there. */
export type HalfWidth = (share: number) => readonly [half: number, growth: number];

/** A stroke like {@link stroke} whose half width is any smooth function; its sides follow in `pieces` for each curve. */
export function strokeAlong(spine: Chain, widths: HalfWidth, pieces: number = PIECES): Path {
  const curves = (spine.length - 2) / 6;
  const stations: Station[] = [];
  for (let k = 0; k <= curves * pieces; k++) {
    const curve = Math.min(curves - 1, Math.floor(k / pieces));
    stations.push(station(spine, curve * 6, k / pieces - curve, k / (curves * pieces), widths, curves));
  }
  const [first, last] = [stations[0]!, stations[stations.length - 1]!];
  const out: number[] = [...first.sides[0]!.at];
  side(out, stations, 0, 1 / pieces);
  cap(out, last, 0, 1, 1);
  side(out, [...stations].reverse(), 1, -1 / pieces);
  cap(out, first, 1, 0, -1);
  return toPath(out);
}

function station(spine: Chain, i: number, t: number, u: number, widths: HalfWidth, curves: number): Station {
  let [vx, vy] = [slopeAt(spine, i, 0, t), slopeAt(spine, i, 1, t)];
  const [ax, ay] = [bending(spine, i, 0, t), bending(spine, i, 1, t)];
  const speed = Math.sqrt(vx * vx + vy * vy);
  // A control on its end leaves no slope there: the spine then starts the way it bends.
  const still = speed < STILL;
  const [tx, ty] = still ? unit(t < 0.5 ? ax : -ax, t < 0.5 ? ay : -ay) : unit(vx, vy);
  if (still) [vx, vy] = [tx * STILL, ty * STILL];
  const pull = ax * tx + ay * ty;
  const [turnX, turnY] = still ? [0, 0] : [(ax - tx * pull) / speed, (ay - ty * pull) / speed];
  const [half, grow] = widths(u);
  const at: Vector = [along(spine, i, 0, t), along(spine, i, 1, t)];
  const sides = [1, -1].map((hand) => {
    const [h, g] = [half * hand, (grow * hand) / curves];
    return {
      at: [at[0] + h * ty, at[1] - h * tx] as const,
      slope: [vx + g * ty + h * turnY, vy - g * tx - h * turnX] as const,
    };
  });
  return { at, ahead: [tx, ty], sides, half };
}

/** Half the width at a share `u` of the spine, and how fast it grows there. */
function halfWidth(widths: Widths, u: number): readonly [number, number] {
  const [a, c] = [widths[0] / 2, widths[widths.length - 1]! / 2];
  const b = widths.length === 3 ? widths[1] / 2 : (a + c) / 2;
  const s = 1 - u;
  return [s * s * a + 2 * s * u * b + u * u * c, 2 * (s * (b - a) + u * (c - b))];
}

function side(out: number[], stations: readonly Station[], which: 0 | 1, way: number): void {
  const step = way / 3;
  stations.slice(1).forEach((next, k) => {
    const [a, b] = [stations[k]!.sides[which]!, next.sides[which]!];
    out.push(a.at[0] + a.slope[0] * step, a.at[1] + a.slope[1] * step);
    out.push(b.at[0] - b.slope[0] * step, b.at[1] - b.slope[1] * step, b.at[0], b.at[1]);
  });
}

/** A round end from one side to the other, in line with both. */
function cap(out: number[], end: Station, from: 0 | 1, to: 0 | 1, way: number): void {
  const { at, ahead, half } = end;
  const [a, b] = [end.sides[from]!, end.sides[to]!];
  const [x, y] = [at[0] + ahead[0] * half * way, at[1] + ahead[1] * half * way];
  const k = QUARTER;
  const da = unit(a.slope[0] * way, a.slope[1] * way);
  const db = unit(b.slope[0] * way, b.slope[1] * way);
  const [ox, oy] = [(a.at[0] - at[0]) * k, (a.at[1] - at[1]) * k];
  out.push(a.at[0] + da[0] * half * k, a.at[1] + da[1] * half * k, x + ox, y + oy, x, y);
  out.push(x - ox, y - oy, b.at[0] + db[0] * half * k, b.at[1] + db[1] * half * k, b.at[0], b.at[1]);
}
