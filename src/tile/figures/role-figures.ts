import { flatten } from "../../geometry/flatten.ts";
import { deepFreeze } from "../../params/canonical.ts";
import { checkTile } from "../check-tile.ts";
import type { Tile } from "../tile.ts";
import { edgeLengths } from "./role-edges.ts";
import { roleRasterOf } from "./role-raster.ts";

/** Two roles that are seen to meet, the lower first, and along how much of one block. */
export interface RoleEdge {
  readonly roles: readonly [below: string, above: string];
  /** Length of the edge between them in one block (mm). */
  readonly length: number;
}

/** How much of each role is seen, and which roles meet. */
export interface RoleFigures {
  /** Share of the block in which the role is seen, 0..1, the ground included; all of them add up to 1. */
  readonly shares: Readonly<Record<string, number>>;
  /** Mean width of what is seen of a role, 2 · area / edge length (mm): a line's width, a disc's radius; 0 when unseen. */
  readonly widths: Readonly<Record<string, number>>;
  /** Every two roles that meet, the longest edge first. */
  readonly edges: readonly RoleEdge[];
}

/** How far flattened contours stray from the curves (µm). */
const TOLERANCE = 10;

/** Tiles never change: each is measured once, as long as it lives. */
const measured: WeakMap<Tile, RoleFigures> = /* @__PURE__ */ new WeakMap();

/**
 * Measures what is seen of a tile's roles once all layers lie on each other, without any colour: which meet and how
 * long, how much of the block each takes, how wide it is. It is what colorways are planned on.
 *
 * Lengths are right to about a hundredth (less at tips where two roles run out in a wedge), shares to about 0.002. In a block up to 290 mm square, what is thinner
 * than about 0.3 mm (in larger blocks more) may be overlooked.
 *
 * @throws SprigwrightError `wrong-type` for what is no tile
 */
export function measureRoles(tile: Tile): RoleFigures {
  checkTile(tile, "measureRoles > tile");
  const known = measured.get(tile);
  if (known) return known;
  const figures = figuresOf(tile);
  measured.set(tile, figures);
  return figures;
}

function figuresOf(tile: Tile): RoleFigures {
  const contours = tile.layers.map(({ path }) => flatten(path, TOLERANCE));
  const raster = roleRasterOf(tile.block, contours);
  const lengths = edgeLengths(raster, contours);
  const roles = ["ground", ...tile.layers.map(({ role }) => role)];
  const count = roles.length;
  const pixels = roles.map(() => 0);
  for (const role of raster.roles) pixels[role]!++;
  const shares = pixels.map((seen) => round(seen / raster.roles.length, 1e6));
  const area = (tile.block.width / 1000) * (tile.block.height / 1000);
  const widths = shares.map((share, a) => {
    let rim = 0;
    for (let b = 0; b < count; b++) rim += lengths[a * count + b]! / 1000;
    return rim > 0 ? round((2 * share * area) / rim, 1e3) : 0;
  });
  const edges: RoleEdge[] = [];
  for (let b = 1; b < count; b++)
    for (let a = 0; a < b; a++) {
      const length = round(lengths[a * count + b]! / 1000, 1e3);
      if (length > 0) edges.push({ roles: [roles[a]!, roles[b]!], length });
    }
  edges.sort((p, q) => q.length - p.length || rank(roles, p) - rank(roles, q));
  const byRole = (values: readonly number[]): Record<string, number> =>
    Object.fromEntries(roles.map((role, i) => [role, values[i]!]));
  return deepFreeze({ shares: byRole(shares), widths: byRole(widths), edges });
}

const round = (value: number, parts: number): number => Math.round(value * parts) / parts + 0;

const rank = (roles: readonly string[], { roles: [below, above] }: RoleEdge): number =>
  roles.indexOf(above) * roles.length + roles.indexOf(below);
