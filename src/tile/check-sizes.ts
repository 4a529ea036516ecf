import { motifTooLarge } from "../errors/catalogue.ts";
import type { Size } from "../geometry/lattice.ts";
import { boxOf } from "../geometry/path.ts";
import type { Placement } from "../layout/layout.ts";
import type { Motif } from "../motif/motif.ts";

/** Most copies of one motif that may lie over a block, by the corners of a square that it turns within. */
const MOST_COPIES = 100;

/**
 * A motif may be larger than the block and lie over itself, as scales do, but not so large that a block
 * takes hundreds of copies, nor that its coordinates leave 32 bits.
 * @throws SprigwrightError `motif-too-large`
 */
export function checkSizes(
  placements: readonly Placement[],
  motifs: readonly Motif[],
  block: Size,
  where: string,
): void {
  const sizes = motifs.map(({ outline }) => {
    const { minX, minY, maxX, maxY } = boxOf(outline);
    return { width: maxX - minX, height: maxY - minY };
  });
  for (const { id, motif, scale } of placements) {
    const width = sizes[motif]!.width * scale;
    const height = sizes[motif]!.height * scale;
    const reach = Math.sqrt(width * width + height * height);
    if ((reach / block.width + 1) * (reach / block.height + 1) <= MOST_COPIES) continue;
    const mm = (um: number): number => Math.round(um) / 1000;
    throw motifTooLarge(
      `${where} > ${id} > ${motifs[motif]!.name}`,
      `it is ${mm(width)} x ${mm(height)} mm there, far larger than the block of ${mm(block.width)} x ${mm(block.height)} mm`,
      "draw it smaller, scale it less, or enlarge the repeat",
    );
  }
}
