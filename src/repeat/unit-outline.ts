import type { Path } from "../geometry/path.ts";
import { pen } from "../geometry/pen.ts";
import { arrangementOf } from "./arrangement.ts";
import type { RepeatUse } from "./repeat.ts";

/**
 * The outline of what is drawn and then repeated, from its upper left corner, in whole µm: a rectangle for most
 * repeats, a diamond, a parallelogram, or the asymmetric unit of a plane group. To draw into, or to draw.
 *
 * @throws SprigwrightError of the repeat, for sizes that do not close
 */
export function unitOutline(repeat: RepeatUse): Path {
  const { unit, region } = arrangementOf(repeat);
  const { width, height } = unit;
  const corners = region ?? [
    [0, 0] as const,
    [width, 0] as const,
    [width, height] as const,
    [0, height] as const,
  ];
  const draw = pen();
  corners.forEach(([x, y], i) => {
    if (i === 0) draw.moveTo(x / 1000, y / 1000);
    else draw.lineTo(x / 1000, y / 1000);
  });
  return draw.path();
}
