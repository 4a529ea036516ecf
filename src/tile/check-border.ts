import { badInput } from "../errors/catalogue.ts";
import { extentOf } from "../geometry/extent.ts";
import type { Arrangement } from "../geometry/lattice.ts";
import { placing, transformPath } from "../geometry/matrix.ts";
import type { Placement } from "../layout/layout.ts";
import type { Motif } from "../motif/motif.ts";

/**
 * Refuses motifs that come nearer to the long edges of a border than its margin, whatever layout placed them.
 * @throws SprigwrightError `crosses-border`
 */
export function checkBorder(
  placements: readonly Placement[],
  motifs: readonly Motif[],
  { border, unit }: Arrangement,
  where: string,
): void {
  if (!border) return;
  const { margin } = border;
  const mm = (um: number): number => Math.round(um) / 1000;
  for (const { id, motif, x, y, turn, scale, flip } of placements) {
    const { name, outline } = motifs[motif]!;
    const [top, bottom] = extentOf(transformPath(outline, placing(x, y, turn, scale, flip)), 1);
    if (top >= margin && bottom <= unit.height - margin) continue;
    const [edge, over] = top < margin ? ["top", margin - top] : ["bottom", bottom - unit.height + margin];
    throw badInput(
      "crosses-border",
      `${where} > ${id} > ${name}`,
      `it reaches ${mm(over as number)} mm beyond where the ${edge} edge of the border (its margin of ${mm(margin)} mm included) lets it`,
      "move it towards the middle, draw it smaller, or make the border higher",
    );
  }
}
