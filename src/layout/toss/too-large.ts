import { motifTooLarge } from "../../errors/catalogue.ts";
import type { Body } from "./body.ts";
import { largestStand } from "./largest.ts";
import type { TossEntry } from "./options.ts";
import type { Holding } from "./stand.ts";

/**
 * Refuses drawings that keep no gap from their own copies, however they are turned and wherever they stand.
 * @throws SprigwrightError `motif-too-large`
 */
export async function refuseTooLarge(
  entries: readonly TossEntry[],
  bodies: readonly (readonly Body[])[],
  holding: Holding,
): Promise<void> {
  for (const [index, entry] of entries.entries())
    for (const body of bodies[index]!) {
      const least = entry.scale[0];
      const largest = (await largestStand(body, least, holding))?.scale ?? 0;
      if (largest === least) continue;
      const { box } = body.outline;
      const size = (scale: number): string =>
        `${mm((box[2]! - box[0]!) * scale)} x ${mm((box[3]! - box[1]!) * scale)} mm`;
      const { width, height } = holding.arrangement.unit;
      throw motifTooLarge(
        `toss > motifs[${entry.listed ?? index}]`,
        `"${body.drawn.motif.name}" is ${size(least)} and does not keep a gap of ${mm(holding.gap + body.extra)} mm from its own copies in a repeat of ${mm(width)} x ${mm(height)} mm`,
        largest > 0
          ? `make it at most about ${size(largest)}, make the repeat larger, or lessen the gap`
          : "make the repeat larger, or lessen the gap",
      );
    }
}

const mm = (um: number): number => Math.floor(um / 100) / 10;
