// Drawings that knock out, offset and fit curves, as one text, for two engines to compare.
import { drawMotif } from "../../../src/motif/draw.ts";
import type { MotifUse } from "../../../src/motif/motif.ts";
import * as primitives from "../../../src/motif/primitives/index.ts";
import { createRandom } from "../../../src/seed/random.ts";

/** Every coordinate of a few drawings that stray, and of the plain ones of the names given. */
export function drawings(names: readonly string[]): string {
  const factories = primitives as unknown as Record<string, (options: object) => MotifUse>;
  return names
    .flatMap((name) => [factories[name]!({}), factories[name]!({ vary: 0.8, variants: 1 })])
    .map((use) => drawMotif(use, createRandom("engines"))[0]!)
    .flatMap(({ shapes }) => shapes.map(({ role, path }) => `${role} ${path.contours} ${path.points}`))
    .join("\n");
}
