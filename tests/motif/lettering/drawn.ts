import { drawMotif } from "../../../src/motif/draw.ts";
import type { Motif, MotifUse } from "../../../src/motif/motif.ts";
import { createRandom } from "../../../src/seed/random.ts";

/** The first drawing of a motif. */
export const drawn = (use: MotifUse): Motif => drawMotif(use, createRandom("letters"))[0]!;
