import { cosTurns, sinTurns } from "../../seed/trigonometry.ts";
import type { Piece } from "./board.ts";
import type { Body } from "./body.ts";

/** Angles at which the long axes of pieces lie before they are turned (turns, 0 to 0.5), mirrored where the pieces are. */
export function axesOf(pieces: readonly Piece[]): Float64Array {
  const known = new Map<Body, number>();
  return Float64Array.from(pieces, ({ body, flip }) => {
    let axis = known.get(body);
    if (axis === undefined) {
      axis = axisOf(body);
      known.set(body, axis);
    }
    return flip ? 0.5 - axis : axis;
  });
}

/** Angles between which the axis is sought. */
const ANGLES = 180;

/** The direction in which the rim of a body reaches farthest from its centre, by the second moment (turns, 0 to 0.5). */
function axisOf({ rim, circle }: Body): number {
  let [xx, xy, yy] = [0, 0, 0];
  for (let i = 0; i < rim.length; i += 2) {
    const [x, y] = [rim[i]! - circle.x, rim[i + 1]! - circle.y];
    xx += x * x;
    xy += x * y;
    yy += y * y;
  }
  let [best, most] = [0, -Infinity];
  for (let k = 0; k < ANGLES; k++) {
    const [cos, sin] = [cosTurns(k / 2 / ANGLES), sinTurns(k / 2 / ANGLES)];
    const moment = cos * cos * xx + 2 * cos * sin * xy + sin * sin * yy;
    if (moment > most) [best, most] = [k / 2 / ANGLES, moment];
  }
  return best;
}
