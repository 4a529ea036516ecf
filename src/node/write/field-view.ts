import type { Size } from "../../geometry/lattice.ts";

/** Width of a field view in pixels: it fills most of a laptop's screen. */
export const FIELD_WIDTH = 1600;

/** Height over width that a field view comes nearest to. */
const FIELD_SHAPE = 3 / 4;

/** How many blocks a field view shows: three across (two of a wide block), and down what makes it about 4 by 3. */
export function fieldRepeats(block: Size): { readonly across: number; readonly down: number } {
  const across = block.width > block.height * 1.8 ? 2 : 3;
  const down = Math.max(1, Math.min(12, Math.round((across * block.width * FIELD_SHAPE) / block.height)));
  return { across, down };
}
