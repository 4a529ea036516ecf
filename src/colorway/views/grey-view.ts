import { converter } from "culori/fn";
import { type Inked, recolored } from "./recolored.ts";

/**
 * A palette or colorway in greys of the same lightness (CIE L*), and so of the same WCAG contrast: the value check.
 * Where two roles run together here, they will run together from across a room.
 *
 * @example raster.png(greyView(pattern.colorways.dawn))
 * @throws SprigwrightError `bad-color`, `wrong-type`
 */
export function greyView<T extends Inked>(of: T): T {
  return recolored(of, (color) => ({ ...converter("lab65")(color), a: 0, b: 0 }), "greyView");
}
