import type { Arrangement } from "../geometry/lattice.ts";
import { identity } from "../geometry/matrix.ts";
import { length } from "../params/kinds.ts";
import type { NumberParam, Param } from "../params/param.ts";
import type { Length } from "../units/length.ts";
import { closing, distortion } from "./closing.ts";

/** Width and height of a unit that stands on its point, from tip to tip. */
export const tipToTip: {
  /** From the left tip of the unit to the right one. 5 mm to 10 m. */
  readonly width: Param<Length, number, false>;
  /** From the upper tip of the unit to the lower one. 5 mm to 10 m. */
  readonly height: Param<Length, number, false>;
  /** How far sizes may be changed so that the repeat closes, as a share of them. 0 to 0.05; default 0: an odd number of µm is refused. */
  readonly distortion: NumberParam;
} = {
  width: length({ about: "From the left tip of the unit to the right one.", min: 5, max: 10_000 }),
  height: length({ about: "From the upper tip of the unit to the lower one.", min: 5, max: 10_000 }),
  ...distortion,
};

/** Units that stand on their points and fill the gaps of the row above: the lattice of diamonds and of ogees. */
export function lozenges(
  size: { readonly width: number; readonly height: number; readonly distortion: number },
  where: string,
): Arrangement {
  const across = closing(size.width, 2, `${where} > width`, size.distortion);
  const down = closing(size.height, 2, `${where} > height`, size.distortion);
  const [width, height] = [across.um, down.um];
  const [x, y] = [width / 2, height / 2];
  return {
    unit: { width, height },
    region: [
      [x, 0],
      [width, y],
      [x, height],
      [0, y],
    ],
    lattice: { a: [x, y], b: [-x, y], block: { width, height } },
    operations: [identity],
    distortion: Math.max(across.off, down.off),
  };
}
