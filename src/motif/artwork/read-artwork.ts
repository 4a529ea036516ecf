import { badInput } from "../../errors/catalogue.ts";
import type { Length } from "../../units/length.ts";
import { useMotif } from "../define.ts";
import type { MotifUse } from "../motif.ts";
import { artwork } from "./artwork.ts";
import { readColor } from "./color.ts";
import { nameFills } from "./roles.ts";

/** Options of {@link readArtwork}. */
export interface ArtworkOptions<Roles extends Readonly<Record<string, string>>> {
  /** Longer side of the drawing, 1 mm to 2 m; default 30 mm. */
  readonly size?: Length;
  /** Fill of the file → role of the pattern, for every fill: `{ "#ff822d": "fruit" }`. Fills may share a role. */
  readonly roles?: Roles;
}

/**
 * A motif from the text of an SVG file of flat colours. Its roles are called after its colours until you name them;
 * once you do, the types know them, and a colorway that lacks an ink does not compile.
 *
 * Everything the file paints is scaled together to `size` and centred on the origin. Gradients become flat, and
 * text, images, filters, masks and clip paths are left out: {@link inspectArtwork} tells.
 *
 * @throws SprigwrightError `not-svg`, `malformed-svg` (with the line), `unsafe-svg` (entities),
 * `artwork-too-large`, `empty-artwork`, `bad-path-data` and its like (with the element), `missing-role` (lists the
 * fills without one), `unknown-fill`, `too-many-roles`
 */
export function readArtwork<const Roles extends Readonly<Record<string, string>>>(
  svg: string,
  options: ArtworkOptions<Roles> & { readonly roles: Roles },
): MotifUse<Roles[keyof Roles]>;
export function readArtwork(svg: string, options?: { readonly size?: Length }): MotifUse<string>;
export function readArtwork(svg: string, options: object = {}): MotifUse<string> {
  const use = useMotif(artwork, { ...options, svg });
  const { roles } = options as ArtworkOptions<Readonly<Record<string, string>>>;
  if (roles !== undefined) refuseUnnamed(Object.keys(use.roles), Object.keys(roles));
  return use;
}

/** A user who names roles should name them all, or a colorway would need inks that no type mentions. */
function refuseUnnamed(fills: readonly string[], given: readonly string[]): void {
  const named = new Set(given.map((key) => readColor(key)?.fill ?? key));
  const unnamed = fills.filter((fill) => !named.has(fill));
  if (unnamed.length === 0) return;
  const suggested = Object.entries(nameFills(unnamed)).map(([fill, name]) => `"${fill}": "${name}"`);
  throw badInput(
    "missing-role",
    "artwork > roles",
    `no role is given for ${unnamed.length} of ${fills.length} fills`,
    `add a role for each, such as ${suggested.join(", ")}`,
  );
}
