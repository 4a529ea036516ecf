import type { Colorway } from "../colorway/colorway.ts";
import type { ParamSpec } from "../params/param.ts";
import type { PieceInfo } from "../params/use.ts";
import type { Tile } from "../tile/tile.ts";
import type { Finding } from "./finding.ts";

/** What a check looks at. */
export interface Inspected {
  readonly tile: Tile;
  readonly colorways: readonly Colorway[];
  /** Dots per inch of the print. */
  readonly dpi: number;
}

/** A check piece: see {@link defineCheck}. */
export interface CheckPiece extends PieceInfo<ParamSpec> {
  readonly kind: "check";
  readonly look: (inspected: Inspected) => readonly Finding[];
}

/** What `defineCheck` is given. */
export interface CheckDefinition {
  /** `namespace/name`, in kebab-case. */
  readonly name: string;
  /** One sentence: what it looks for and why that matters in print. */
  readonly about: string;
  /** Looks at a tile and returns what it finds. It never changes anything. */
  readonly look: (inspected: Inspected) => readonly Finding[];
}

/** Defines a check, which `inspect` runs when it is passed in `checks`. */
export function defineCheck(definition: CheckDefinition): CheckPiece {
  return Object.freeze({ kind: "check", params: {}, ...definition });
}
