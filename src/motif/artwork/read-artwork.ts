import { badInput } from "../../errors/catalogue.ts";
import type { Length } from "../../units/length.ts";
import { useMotif } from "../define.ts";
import type { MotifUse } from "../motif.ts";
import { artwork } from "./artwork.ts";
import { readColor } from "./color.ts";
import { LIMITS, tooLarge } from "./limits.ts";
import { nameFills } from "./roles.ts";

/** What {@link readArtwork} does to a drawing beside naming its roles. */
export interface ArtworkShaping {
  /** Longer side of the drawing, 1 mm to 2 m; default 30 mm. */
  readonly size?: Length;
  /**
   * Colours that look no more different than this become one role: ΔE00, 0 to 100; default 0, equal colours only.
   * About 2 joins what slipped while drawing, 8 the shades of one colour, 15 and more what belongs together loosely.
   * None is taken farther than that from the largest of its role, or from the colour that you named.
   */
  readonly merge?: number;
  /**
   * What becomes of a plain box that lies under the whole page: "keep" (default) takes it as a shape like any other,
   * "drop" leaves it out as the paper that it mostly is; the drawing's size is then that of what lies on it.
   */
  readonly page?: "keep" | "drop";
  /** How far outlines may stray so that they need fewer nodes, up to 5 mm; default 0: every node is kept. */
  readonly simplify?: Length;
}

/** Options of {@link readArtwork}. */
export interface ArtworkOptions<Roles extends Readonly<Record<string, string>>> extends ArtworkShaping {
  /**
   * What fills which role: by colour of the file, `{ "#ff822d": "fruit" }`, or by name, `"id:stem"`, `"class:leaf"`,
   * `"group:crew"` (a group's id, or the label that your editor shows for the layer). An id goes before a class, a
   * class before a group, and all before colours. Every colour that is left needs a role, unless `merge` brings it to
   * one that is named. Several may share a role.
   */
  readonly roles?: Roles;
}

/**
 * A motif from the text of an SVG file of flat colours. Its roles are called after its colours until you name them;
 * once you do, the types know them, and a colorway that lacks an ink does not compile.
 *
 * Everything the file paints is scaled together to `size` and centred on the origin. Strokes become areas, clip paths
 * cut, gradients become their mean colour, half transparent paint becomes what is seen; text, images, filters and
 * fading masks are left out: {@link inspectArtwork} tells, and says what else became of the file.
 *
 * @throws SprigwrightError `not-svg`, `malformed-svg` (with the line), `unsafe-svg` (entities),
 * `artwork-too-large`, `empty-artwork`, `bad-path-data` and its like (with the element), `missing-role` (lists the
 * fills without one), `unknown-fill`, `too-many-roles`
 */
export function readArtwork<const Roles extends Readonly<Record<string, string>>>(
  svg: string,
  options: ArtworkOptions<Roles> & { readonly roles: Roles },
): MotifUse<Roles[keyof Roles]>;
export function readArtwork(svg: string, options?: ArtworkShaping): MotifUse<string>;
export function readArtwork(svg: string, options: object = {}): MotifUse<string> {
  const given: unknown = svg;
  if (given instanceof Uint8Array)
    throw badInput(
      "wrong-type",
      "artwork > svg",
      "these are bytes, not text",
      'read the file as text, with readFileSync(file, "utf8")',
    );
  if (typeof svg === "string" && svg.length > LIMITS.characters)
    throw tooLarge("artwork > svg", `more than ${LIMITS.characters} characters`);
  const use = useMotif(artwork, { ...options, svg });
  const { roles } = options as ArtworkOptions<Readonly<Record<string, string>>>;
  if (roles !== undefined) refuseUnnamed(use.roles, roles);
  return use;
}

/** A user who names roles should name them all, or a colorway would need inks that no type mentions. */
function refuseUnnamed(
  complete: Readonly<Record<string, string>>,
  roles: Readonly<Record<string, string>>,
): void {
  const keys = new Set(Object.keys(roles).map((key) => readColor(key)?.fill ?? key));
  const given = new Set(Object.values(roles));
  const fills = Object.keys(complete);
  const unnamed = fills.filter((fill) => !keys.has(fill) && !given.has(complete[fill]!));
  if (unnamed.length === 0) return;
  const suggested = Object.entries(nameFills(unnamed)).map(([fill, name]) => `"${fill}": "${name}"`);
  throw badInput(
    "missing-role",
    "artwork > roles",
    `no role is given for ${unnamed.length} of ${fills.length} fills`,
    `add a role for each, such as ${suggested.join(", ")}`,
  );
}
