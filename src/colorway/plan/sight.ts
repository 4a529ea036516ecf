import type { RoleFigures } from "../../tile/figures/role-figures.ts";

/** Roles by number, with how much each part of the picture weighs. The ground is number 0. */
export interface Sight {
  readonly roles: readonly string[];
  /** Share of the block in which a role is seen, 0..1. */
  readonly shares: readonly number[];
  /** Pairs of roles that meet. */
  readonly edges: readonly SeenEdge[];
  /** Whether anything lies on the ground. */
  readonly lies: boolean;
  /** What a role counts for when two colorways are compared; all of them make 1. */
  readonly weights: readonly number[];
}

/** Two roles that meet, by number. */
export interface SeenEdge {
  readonly below: number;
  readonly above: number;
  /** Length in one block (mm). */
  readonly length: number;
  /** Part of all edges that it counts for; all of them make 1. */
  readonly weight: number;
  /** Part of what lies on the ground that the upper role makes up, by area; 0 where the lower is not the ground. */
  readonly lying: number;
}

/** How much more the ground counts than another role of its size when colorways are compared: it is what sets the mood. */
const GROUND = 2;

/**
 * What a colorway is judged on. Lengths and shares count by their square roots: an edge a hundredth as long is looked
 * at more than a hundredth as much, since a flower's eye draws the look that a field of leaves does not.
 */
export function sightOf(figures: RoleFigures, roles: readonly string[]): Sight {
  const shares = roles.map((role) => figures.shares[role] ?? 0);
  const roots = shares.map((share, role) => Math.sqrt(share) * (role === 0 ? GROUND : 1));
  const seen = roots.reduce((sum, root) => sum + root, 0);
  const lying = figures.edges.map(({ roles: [below, above] }) =>
    below === roles[0] ? (figures.shares[above] ?? 0) : 0,
  );
  const all = Math.max(
    1e-9,
    lying.reduce((sum, share) => sum + share, 0),
  );
  const long = figures.edges.reduce((sum, { length }) => sum + Math.sqrt(length), 0);
  return {
    roles,
    shares,
    lies: lying.some((share) => share > 0),
    weights: roots.map((root) => root / seen),
    edges: figures.edges.map(({ roles: [below, above], length }, i) => ({
      ...{ below: roles.indexOf(below), above: roles.indexOf(above), length },
      weight: Math.sqrt(length) / long,
      lying: lying[i]! / all,
    })),
  };
}
