import { type Line, stretchLine } from "./set-line.ts";
import type { Stand } from "./stand.ts";

/** How lines stand to each other, or one line to its path. */
export type Align = "left" | "center" | "right" | "justify";

/** How far to the right of its edge a text of some width stands in a measure. */
export const SHARE: Readonly<Record<Align, number>> = { left: 0, center: 0.5, right: 1, justify: 0 };

/**
 * Straight lines below each other, `leading` mm from baseline to baseline. The first baseline lies at y = 0; lines
 * meet x = 0 with their left end, middle or right end. Justified lines are spread to the widest, about x = 0.
 */
export function setLines(lines: readonly Line[], size: number, align: Align, leading: number): Stand[] {
  const widest = lines.reduce((most, { width }) => Math.max(most, width), 0);
  return lines.flatMap((given, n) => {
    const gaps = given.signs.length - 1;
    const spread = align === "justify" && gaps > 0 && given.width > 0;
    const line = spread ? stretchLine(given, (widest - given.width) / gaps) : given;
    const left = -(align === "justify" ? 0.5 : SHARE[align]) * line.width;
    return line.signs.map(
      (sign): Stand => ({
        sign,
        line: n,
        x: (left + sign.x + sign.advance / 2) * size,
        y: n * leading,
        along: [1, 0],
      }),
    );
  });
}
