import type { ParamSpec } from "../../params/param.ts";
import type { PieceInfo, Use } from "../../params/use.ts";
import type { ExactMath } from "../../seed/math.ts";
import type { Random } from "../../seed/random.ts";

/** A colour in OKLCH (Ottosson 2020; CSS Color 4, 9.4). Outside sRGB it is brought in by lowering its chroma. */
export interface SchemeColor {
  /** What the ink is called, in kebab-case; default: a word for its colour, numbered where there are several. */
  readonly name?: string;
  /** 0 black to 1 white. */
  readonly lightness: number;
  /** 0 grey; the strongest inks have 0.2 to 0.3; at most 1. */
  readonly chroma: number;
  /** Turns, -8 to 8: red 0.08, orange 0.16, yellow 0.3, green 0.4, teal 0.54, blue 0.73, violet 0.84, pink 0.98. */
  readonly hue: number;
}

/** What a scheme gets besides its parameters. */
export interface SchemeTools {
  readonly random: Random;
  readonly math: ExactMath;
}

/** A scheme piece: see {@link defineScheme}. */
export interface SchemePiece extends PieceInfo<ParamSpec> {
  readonly kind: "scheme";
  readonly make: (params: never, tools: SchemeTools) => readonly SchemeColor[];
}

/** A scheme put to use, ready for `makePalette`. */
export type SchemeUse = Use;
