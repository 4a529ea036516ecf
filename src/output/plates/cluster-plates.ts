import { intersectRings, pathOfRings, subtractRings, uniteRings } from "../../geometry/clip.ts";
import { contains, isCloser } from "../../geometry/distance.ts";
import { flatten, type Ring, ringArea } from "../../geometry/flatten.ts";
import { offsetPath } from "../../geometry/offset.ts";
import { outlineOfRings } from "../../geometry/outline.ts";
import { joinPaths, type Path } from "../../geometry/path.ts";
import { boxAround, boxRing } from "./box-ring.ts";
import { FINENESS, TOUCHING } from "./clusters.ts";
import type { SeparationPlan } from "./plan.ts";

/** What a cluster prints, as polygons (µm). */
export interface ClusterPlates {
  /** By layer, back to front. */
  readonly printed: readonly (readonly Ring[])[];
  /** Where the ground is not printed. */
  readonly kept: readonly Ring[];
  /** Curves of the drawing and of the spreads, along which all these polygons run. */
  readonly curves: Path;
}

/** Ground that is looked at around a cluster, beyond the trap (µm). */
const ROOM = 1000;

/**
 * What each layer of a cluster prints, and what it keeps clear of the ground.
 *
 * A role prints where it covers and nothing lies above it (but what overprints). With a trap, a lighter role also prints
 * where it comes within the trap into the area of a darker one: so no outline of the darker ink changes.
 */
export function clusterPlates(
  drawn: readonly (readonly Ring[])[],
  curves: Path,
  roles: readonly string[],
  {
    trap,
    rank,
    overprint,
    ground: printsGround,
  }: Pick<SeparationPlan, "trap" | "rank" | "overprint" | "ground">,
): ClusterPlates {
  const seen: { role: string; rings: readonly Ring[] }[] = [];
  let above: readonly Ring[] = [];
  for (let i = drawn.length - 1; i >= 0; i--) {
    const [role, rings] = [roles[i]!, drawn[i]!.length === 0 ? [] : uniteRings(drawn[i]!)];
    const knocked = rings.length === 0 || above.length === 0 ? rings : subtractRings(rings, above);
    seen.unshift({ role, rings: knocked });
    if (rings.length > 0 && !overprint.has(role))
      above = above.length === 0 ? rings : uniteRings([...above, ...rings]);
  }
  if (trap === 0) return { printed: seen.map(({ rings }) => rings), kept: above, curves };
  const edges = [curves];
  // No other cluster is within the trap: all around is ground.
  const ground = subtractRings([boxRing(boxAround(drawn.flat(), trap + ROOM))], above);
  // Bare cloth covers no spread, and what overprints has no edge to hide one under.
  const areas = [...(printsGround ? [{ role: "ground", rings: ground }] : []), ...seen].filter(
    ({ role }) => !overprint.has(role),
  );
  const spreadOf = (role: string, rings: readonly Ring[]): readonly Ring[] => {
    const darker = areas.filter((other) => rank.get(other.role)! > rank.get(role)!);
    const under = darker.flatMap((other) => [...other.rings]);
    if (rings.length === 0 || under.length === 0) return [];
    const parallel = offsetPath(pathOfRings(rings), trap);
    edges.push(parallel);
    return adjoining(intersectRings(flatten(parallel, FINENESS), under), rings);
  };
  const groundSpread = spreadOf("ground", ground);
  const printed = seen.map(({ role, rings }) => {
    const spread = spreadOf(role, rings);
    return spread.length === 0 ? rings : uniteRings([...rings, ...spread]);
  });
  const kept = groundSpread.length === 0 ? above : subtractRings(above, groundSpread);
  return { printed, kept, curves: joinPaths(edges) };
}

/** The spreads that begin at the role's own edge: what is near a darker role without meeting it has ground in between. */
function adjoining(spread: readonly Ring[], own: readonly Ring[]): readonly Ring[] {
  const home = outlineOfRings(own);
  const apart = spread.filter(
    (ring) => ringArea(ring) > 0 && !isCloser(outlineOfRings([ring]), home, 0, 0, TOUCHING),
  );
  if (apart.length === 0) return spread;
  const away = outlineOfRings(apart);
  const isAway = (ring: Ring): boolean =>
    ringArea(ring) > 0 ? apart.includes(ring) : contains(away, ring[0]!, ring[1]!);
  return spread.filter((ring) => !isAway(ring));
}
