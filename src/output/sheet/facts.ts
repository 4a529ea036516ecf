import type { Size } from "../../geometry/lattice.ts";
import type { Font } from "../../motif/lettering/font.ts";
import { bareUnit } from "../../repeat/bare-unit.ts";
import type { Tile } from "../../tile/tile.ts";
import { UM_PER_INCH } from "../../units/length.ts";

/** A kebab-case name as a title: "orchard-blossom" is "Orchard blossom". */
export function titleOf(name: string): string {
  const words = name.replace(/-/g, " ");
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}

/** The repeat's kind, as the trade calls it: "half-drop". */
export const repeatKind = (tile: Tile): string => tile.recipe.repeat.use.replace(/^[^/]*\//, "");

/** What repeats, as the trade measures it (µm): for a half-drop, one column of the straight block. */
export function repeatSize({ arrangement }: Tile): Size {
  const { width, height } = bareUnit(arrangement);
  return { width: width * 1000, height: height * 1000 };
}

const decimals = (value: number, places: 1 | 2): string => {
  const whole = places === 1 ? 10 : 100;
  return String(Math.round(value * whole) / whole);
};

/** A share as a whole percentage, "58 %"; below ten to a tenth. */
export const percent = (share: number): string =>
  `${decimals(share * 100, 1).replace(/^(\d\d+)\.\d$/, "$1")} %`;

/** A size in mm, to a hundredth: "162.56 × 81.28 mm". */
export const inMm = ({ width, height }: Size): string =>
  `${decimals(width / 1000, 2)} × ${decimals(height / 1000, 2)} mm`;

/** A size in inches, to a hundredth: "6.4 × 3.2 in". */
export const inInches = ({ width, height }: Size): string =>
  `${decimals(width / UM_PER_INCH, 2)} × ${decimals(height / UM_PER_INCH, 2)} in`;

/** What a plain font may lack, and what says the same. */
const PLAIN: readonly (readonly [sign: string, instead: string])[] = [
  ["×", "x"],
  ["·", "-"],
  ["–", "-"],
  ["…", "..."],
];

/** Words of ours in the signs that a font has. */
export const sayIn = (font: Font, text: string): string =>
  PLAIN.reduce((said, [sign, instead]) => (font.glyph(sign) ? said : said.replaceAll(sign, instead)), text);
