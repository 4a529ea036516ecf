import { integer, length, number, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { cosTurns, sinTurns } from "../../seed/trigonometry.ts";
import { belt, type Wheel } from "../builders/belt.ts";
import { toPath } from "../builders/chain.ts";
import { sway } from "../builders/sway.ts";
import { heading, mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Across: diameter of the circle that the points touch. 2 to 200 mm; default 14 mm. */
  readonly size: LengthParam;
  /** How many points. 4 to 12; default 5. */
  readonly points: NumberParam;
  /** How far the valleys are from the middle, as a share of how far the points are; four points leave room for 0.6, five for 0.68. 0.3 to 0.75; default 0.54. */
  readonly inner: NumberParam;
  /** How soft points and valleys are: 0 is crisp, 1 is puffy. 0 to 1; default 0.4. */
  readonly roundness: NumberParam;
} = {
  size: length({
    about: "Across: diameter of the circle that the points touch.",
    min: 2,
    max: 200,
    default: 14,
  }),
  points: integer({ about: "How many points.", min: 4, max: 12, default: 5 }),
  inner: number({
    about:
      "How far the valleys are from the middle, as a share of how far the points are; four points leave room for 0.6, five for 0.68.",
    min: 0.3,
    max: 0.75,
    default: 0.54,
  }),
  roundness: share({
    about: "How soft points and valleys are: 0 is crisp, 1 is puffy.",
    default: 0.4,
  }),
};

/** A star whose points and valleys are rounded, as if cut from paper. The origin is its middle; a point is up. */
export const star: MotifFactory<typeof params, "star"> = defineMotif({
  name: "sprigwright/star",
  about: "A star with soft points, four to twelve of them.",
  params,
  parts: ["star"],
  draw({ size, points, inner, roundness }, tools) {
    const R = size / 2;
    // A valley lies well inside of the line between two points, also where both stray inwards.
    const deep = Math.min(inner, 0.85 * cosTurns(0.5 / points));
    // No softer than the room at a point and between two arms allows.
    const tip = mix(Math.min(0.25, R * 0.06), Math.min(R * 0.24, (R * deep * 1.9) / points), roundness);
    const valley = R * deep * sinTurns(0.5 / points) * mix(0.1, 0.75, roundness);
    const wheels: Wheel[] = [];
    const spin = sway(tools, 0.2 / points);
    for (let k = 0; k < points; k++) {
      const far = tools.stray(R, 0.09) - tip;
      const [x, y] = heading(spin + sway(tools, 0.1 / points) + k / points);
      wheels.push({ x: x * far, y: y * far, r: tip });
      const near = tools.stray(R * deep, 0.06) + valley;
      const [u, v] = heading(spin + (k + 0.5) / points);
      wheels.push({ x: u * near, y: v * near, r: -valley });
    }
    return { star: toPath(belt(wheels)) };
  },
});
