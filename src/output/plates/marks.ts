import { flatten, type Ring } from "../../geometry/flatten.ts";
import type { Size } from "../../geometry/lattice.ts";
import { ellipse } from "../../geometry/shapes.ts";
import { spell } from "./alphabet.ts";
import { boxRing } from "./box-ring.ts";

/** Room for marks on every side, beyond the bleed (µm). */
export const SLUG = 15_000;

/** Half the width of a line, and how far marks keep from the bleed (µm). */
const [HALF, AWAY] = [50, 2000];

/** Length of a trim mark; a register cross reaches as far; radius of its circle (µm). */
const [TRIM, CROSS, CIRCLE] = [6000, 4000, 2500];

/** Side of a dot of the letters (µm): they are 1.75 mm high, and 1.5 mm wide with the room between them. */
const [DOT, LETTER] = [250, 1500];

/**
 * Marks outside a sheet's bleed, the same on every plate: trim marks at the corners, a register cross in the middle of every
 * side; and what the plate is, above its upper left corner.
 */
export function marksOf({ width, height }: Size, bleed: number, label: string): Ring[] {
  const out = bleed + AWAY;
  const middle = out + CROSS;
  const level = (x: number, y: number, length: number): Ring =>
    boxRing({ minX: x, minY: y - HALF, maxX: x + length, maxY: y + HALF });
  const upright = (x: number, y: number, length: number): Ring =>
    boxRing({ minX: x - HALF, minY: y, maxX: x + HALF, maxY: y + length });
  const corners = [0, width].flatMap((x) =>
    [0, height].flatMap((y) => [
      level(x === 0 ? -out - TRIM : x + out, y, TRIM),
      upright(x, y === 0 ? -out - TRIM : y + out, TRIM),
    ]),
  );
  const crosses = [
    [width / 2, -middle],
    [width / 2, height + middle],
    [-middle, height / 2],
    [width + middle, height / 2],
  ].flatMap(([x, y]) => {
    const [cx, cy] = [Math.round(x!), Math.round(y!)];
    return [
      level(cx - CROSS, cy, 2 * CROSS),
      upright(cx, cy - CROSS, 2 * CROSS),
      ...circleLine(cx, cy, CIRCLE),
    ];
  });
  const room = Math.floor((width + 2 * (bleed + SLUG - AWAY)) / LETTER);
  const name = spell(label.slice(0, room), AWAY - SLUG - bleed, AWAY - SLUG - bleed, DOT);
  return [...corners, ...crosses, ...name];
}

/** A circle as a line. */
function circleLine(x: number, y: number, radius: number): Ring[] {
  const [outer, inner] = [radius + HALF, radius - HALF].map(
    (r) => flatten(ellipse(x / 1000, y / 1000, r / 1000), 2)[0]!,
  );
  const back = Float64Array.from(inner!, (_, i) => inner![inner!.length - 2 - i + 2 * (i % 2)]!);
  return [outer!, back];
}
