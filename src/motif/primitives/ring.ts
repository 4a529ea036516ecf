import { holed } from "../../geometry/shapes.ts";
import { length, number } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { dab } from "../builders/dab.ts";
import { sway } from "../builders/sway.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Outer diameter. 1.5 to 150 mm; default 10 mm. */
  readonly size: LengthParam;
  /** Diameter of the hole as a share of the outer one: larger is a finer ring. 0.2 to 0.85; default 0.66. */
  readonly inner: NumberParam;
  /** Diameter of the dot in the hole as a share of the hole; 0 for none. 0 to 0.8; default 0.34. */
  readonly core: NumberParam;
} = {
  size: length({ about: "Outer diameter.", min: 1.5, max: 150, default: 10 }),
  inner: number({
    about: "Diameter of the hole as a share of the outer one: larger is a finer ring.",
    min: 0.2,
    max: 0.85,
    default: 0.66,
  }),
  core: number({
    about: "Diameter of the dot in the hole as a share of the hole; 0 for none.",
    min: 0,
    max: 0.8,
    default: 0.34,
  }),
};

/**
 * A ring with a real hole, through which the ground shows, and a dot in the hole. The origin is its middle.
 * Without a dot (`core: 0`) map both parts to one role: `roles: { core: "ring" }`.
 */
export const ring: MotifFactory<typeof params, "ring" | "core"> = defineMotif({
  name: "sprigwright/ring",
  about: "A ring with a real hole, and a dot in the hole.",
  params,
  parts: ["ring", "core"],
  draw({ size, inner, core }, tools) {
    const outer = tools.stray(size / 2, 0.06);
    const hole = outer * inner;
    const wall = outer - hole;
    // The hole strays by less than the wall is thick, so that the ring never breaks.
    const [x, y] = [sway(tools, 0.2 * wall), sway(tools, 0.2 * wall)];
    const most = (0.25 * wall) / outer;
    return {
      ring: holed(
        dab(0, 0, outer, tools, Math.min(0.08, most)),
        dab(x, y, hole, tools, Math.min(0.11, most)),
      ),
      core: core === 0 ? [] : dab(x, y, hole * core, tools, 0.14),
    };
  },
});
