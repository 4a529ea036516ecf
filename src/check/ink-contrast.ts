import { contrast } from "../colorway/contrast.ts";
import { type CheckPiece, defineCheck } from "./check.ts";

/**
 * Least contrast of an ink against the ground at which a motif still reads from arm's length.
 * Common practice among print designers, not a standard: WCAG's 3:1 is for text and controls,
 * and a quiet tonal print is well below it.
 */
const LEAST = 1.15;

/** Every ink stands out from the ground enough to be seen. */
export const inkContrast: CheckPiece = defineCheck({
  name: "sprigwright/ink-contrast",
  about: "Every ink stands out from the ground enough to be seen in the print.",
  look: ({ tile, colorways }) =>
    colorways.flatMap(({ name, inks }) =>
      tile.layers.flatMap(({ role }) => {
        const [ink, ground] = [(inks as Record<string, string>)[role], inks.ground];
        if (ink === undefined || ground === undefined) return [];
        const measured = contrast(ink, ground);
        if (measured >= LEAST) return [];
        return [
          {
            rule: "ink-contrast",
            severity: "warning" as const,
            role,
            colorway: name,
            measured: Math.round(measured * 100) / 100,
            limit: LEAST,
            unit: "to 1 against the ground",
            fix: `make "${role}" (${ink}) lighter or darker than the ground (${ground}), or accept it where another ink surrounds it`,
          },
        ];
      }),
    ),
});
