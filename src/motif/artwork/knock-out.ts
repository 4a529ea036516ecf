import { subtractAll } from "../../geometry/boolean.ts";
import { intersectRings, pathOfRings, subtractRings } from "../../geometry/clip.ts";
import { flatten, type Ring } from "../../geometry/flatten.ts";
import { growRings } from "../../geometry/grow.ts";
import { areaOf, type Box, joinPaths, type Path } from "../../geometry/path.ts";
import { LIMITS, tooLarge } from "./limits.ts";
import { boxesMeet, type Coat } from "./stack.ts";

/** How far a colour spreads under one that is cut away for it (µm): about a pixel at 150 dpi. */
const SPREAD = 150;
/** How finely outlines are flattened where what comes of it stays hidden (µm). */
const HIDDEN = 10;

/** An area of a role that was cut away, since a role that lies lower in the stack is painted over it. */
export interface CutAway {
  readonly role: string;
  readonly for: readonly string[];
  /** µm² */
  readonly area: number;
}

/**
 * One path a role (as pieces to be united), such that stacking the roles in order looks as painting the coats did.
 *
 * A coat that is painted over by a role further down the stack is cut away there; all others stay whole. Colours
 * that merely abut let the ground through along their common edge, so what a coat is cut away for spreads a
 * little under it, where the coat hides it: the trap of a printer, and invisible.
 */
export function knockOut(
  coats: readonly Coat[],
  order: readonly string[],
): { readonly drawn: ReadonlyMap<string, readonly Path[]>; readonly cut: readonly CutAway[] } {
  const level = new Map(order.map((role, i) => [role, i]));
  const drawn = new Map<string, Path[]>(order.map((role) => [role, []]));
  const cut: CutAway[] = [];
  let pairs = 0;
  // All pairs are counted before any work is done.
  const covering = coats.map((coat, i) => {
    const covers = coats
      .slice(i + 1)
      .filter((later) => level.get(later.role)! < level.get(coat.role)! && boxesMeet(later.box, coat.box));
    pairs += covers.length;
    if (pairs > LIMITS.knockOuts)
      throw tooLarge("svg", `colours lie over and under each other more than ${LIMITS.knockOuts} times`);
    return covers;
  });
  coats.forEach((coat, i) => {
    const covers = covering[i]!;
    const left =
      covers.length === 0
        ? coat.path
        : subtractAll(
            coat.path,
            covers.map((cover) => cover.path),
          );
    if (left.contours.length > 0) drawn.get(coat.role)!.push(left);
    if (left === coat.path) return;
    const roles = [...new Set(covers.map((cover) => cover.role))];
    cut.push({ role: coat.role, for: roles, area: areaOf(coat.path) - areaOf(left) });
    for (const [role, path] of spreads(coat, covers)) drawn.get(role)!.push(path);
  });
  return { drawn, cut };
}

/** What each covering role adds under the coat: itself grown, within the coat and outside all other covers. */
function spreads(coat: Coat, covers: readonly Coat[]): [role: string, path: Path][] {
  const rings = (some: readonly Coat[]): Ring[] =>
    flatten(joinPaths(some.map(({ path }) => path)), HIDDEN).filter((ring) => comesNear(ring, coat.box));
  const whole = flatten(coat.path, 2);
  return [...new Set(covers.map((cover) => cover.role))].map((role) => {
    const own = rings(covers.filter((cover) => cover.role === role));
    const others = rings(covers.filter((cover) => cover.role !== role));
    const room = others.length > 0 ? subtractRings(whole, others) : whole;
    return [role, pathOfRings(intersectRings(growRings(own, SPREAD, HIDDEN), room))];
  });
}

/** Whether a ring, once grown, reaches a box: one that does not neither adds to what lies in it nor takes away. */
function comesNear(ring: Ring, { minX, minY, maxX, maxY }: Box): boolean {
  const far = SPREAD + HIDDEN;
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < ring.length; i += 2) {
    left = Math.min(left, ring[i]!);
    right = Math.max(right, ring[i]!);
    top = Math.min(top, ring[i + 1]!);
    bottom = Math.max(bottom, ring[i + 1]!);
  }
  return left <= maxX + far && right >= minX - far && top <= maxY + far && bottom >= minY - far;
}
