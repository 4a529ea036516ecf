import type { Arrangement } from "../geometry/lattice.ts";
import { definitionOf } from "../params/use.ts";
import type { RepeatPiece, RepeatUse } from "./repeat.ts";

/**
 * The arrangement of a repeat that is put to use: its unit, its lattice and its operations, in whole µm.
 * @throws SprigwrightError of the repeat for sizes that do not close; `unbound-piece` for a use that was parsed
 */
export function arrangementOf(repeat: RepeatUse): Arrangement {
  const piece = definitionOf<RepeatPiece>(repeat, "repeat");
  return piece.arrange(repeat.params as never);
}
