import { Clipper, EndType, JoinType } from "clipper2-ts";
import type { Ring } from "./flatten.ts";
import { pointsOf, ringsOf } from "./points.ts";

/** How a line is drawn with a pen: SVG's words and meanings. */
export interface StrokeStyle {
  /** Width of the line, in the unit of its points. */
  readonly width: number;
  readonly join: "miter" | "round" | "bevel";
  readonly cap: "butt" | "round" | "square";
  /** Longest miter, as a multiple of the width. */
  readonly miterLimit: number;
  /** How far a round join or cap may stray from its circle, in the unit of the points. */
  readonly tolerance: number;
}

const JOINS = { miter: JoinType.Miter, round: JoinType.Round, bevel: JoinType.Bevel } as const;
const CAPS = { butt: EndType.Butt, round: EndType.Round, square: EndType.Square } as const;

/**
 * The area that a line of some width covers, as polygons for nonzero filling. Points are whole numbers; take a
 * unit so small that rounding to it does not show. A miter beyond the limit is cut square at the limit.
 */
export function strokeRing(line: Ring, closed: boolean, style: StrokeStyle): Ring[] {
  const end = closed ? EndType.Joined : CAPS[style.cap];
  const paths = Clipper.inflatePaths(
    [pointsOf(line)],
    style.width / 2,
    JOINS[style.join],
    end,
    style.miterLimit,
    style.tolerance,
  );
  return ringsOf(paths);
}
