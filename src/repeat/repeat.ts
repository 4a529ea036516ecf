import type { Arrangement } from "../geometry/lattice.ts";
import type { ParamSpec } from "../params/param.ts";
import type { PieceInfo, Use } from "../params/use.ts";

/** A repeat piece: see {@link defineRepeat}. */
export interface RepeatPiece extends PieceInfo<ParamSpec> {
  readonly kind: "repeat";
  readonly arrange: (params: never) => Arrangement;
}

/** A repeat put to use. */
export type RepeatUse = Use;
