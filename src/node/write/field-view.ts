import type { Size } from "../../geometry/lattice.ts";

/** Width of a field view in pixels: it fills most of a laptop's screen. */
export const FIELD_WIDTH = 1600;

/** Height over width that a field view comes nearest to. */
const FIELD_SHAPE = 3 / 4;

/** Most blocks each way, for blocks that are very long. */
const MOST = 12;

/**
 * How many blocks a field view shows: three across (two of a wide block, more of a tall one), and down what makes it
 * about 4 by 3; always at least two each way, so that both seams show.
 */
export function fieldRepeats(block: Size): { readonly across: number; readonly down: number } {
  let across = block.width > block.height * 1.8 ? 2 : 3;
  const down = (): number => Math.round((across * block.width * FIELD_SHAPE) / block.height);
  while (down() < 2 && across < MOST) across++;
  return { across, down: Math.max(2, Math.min(MOST, down())) };
}
