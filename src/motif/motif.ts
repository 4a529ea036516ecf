import type { Path } from "../geometry/path.ts";
import type { ParamSpec } from "../params/param.ts";
import type { PieceInfo, Use } from "../params/use.ts";
import type { ExactMath } from "../seed/math.ts";
import type { Random } from "../seed/random.ts";

/** What one colour fills in a motif: a role and its outline (µm, about the motif's own origin). */
export interface Shape {
  readonly role: string;
  readonly path: Path;
}

/** Most roles of a pattern, the ground included: an index picture names two of them in each pixel. */
export const MOST_ROLES = 64;

/** A drawn motif. */
export interface Motif {
  /** The piece that drew it, with a number where it was drawn in several variants. */
  readonly name: string;
  /** Back to front; at most one shape a role. */
  readonly shapes: readonly Shape[];
  /** All shapes united: what keeps clear of other motifs. */
  readonly outline: Path;
}

/** A motif put to use: its piece, its parameters, and the role that each of its parts fills. */
export interface MotifUse<R extends string = string> extends Use {
  /** Part of the drawing → role of the pattern. */
  readonly roles: Readonly<Record<string, R>>;
  /** How far each drawing strays from the plain one, 0 (not at all) to 1. */
  readonly vary: number;
  /** How many different drawings of it a pattern may use. */
  readonly variants: number;
}

/** What a motif gets besides its parameters. Chance comes from `random`, mathematics from `math`. */
export interface MotifTools {
  readonly random: Random;
  readonly math: ExactMath;
  /** How far to stray, 0 to 1, as asked by the user. */
  readonly vary: number;
  /** `value` by chance up to `spread` (a share) more or less, scaled by `vary`: `value` itself when that is 0. */
  readonly stray: (value: number, spread: number) => number;
  /** Part of the drawing → role. Only a motif whose parts overlap otherwise than they stack needs it. */
  readonly roles: Readonly<Record<string, string>>;
}

/** What `draw` returns: the outline of every part, as one path or several that are united. */
export type Drawing<Part extends string = string> = { readonly [P in Part]: Path | readonly Path[] };

/** A motif piece: see {@link defineMotif}. */
export interface MotifPiece extends PieceInfo<ParamSpec> {
  readonly kind: "motif";
  /** Parts of the drawing, back to front; each fills a role. None: the drawing names its parts itself. */
  readonly parts: readonly string[] | "drawn";
  /**
   * For `"drawn"` parts: every part of the drawing → its role, back to front, from the parameters and the roles
   * that the user gave. Called once, when the motif is put to use, so that the use names all its roles.
   */
  readonly rolesOf?: (
    params: never,
    given: Readonly<Record<string, string>>,
  ) => Readonly<Record<string, string>>;
  readonly draw: (params: never, tools: MotifTools) => Drawing;
}
