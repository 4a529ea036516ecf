import { unite } from "../../geometry/boolean.ts";
import type { Matrix } from "../../geometry/matrix.ts";
import { length, text } from "../../params/kinds.ts";
import type { Param } from "../../params/param.ts";
import type { Length } from "../../units/length.ts";
import { extentOf } from "../artwork/extent.ts";
import { transformOutline } from "../artwork/outline.ts";
import { readPathData } from "../artwork/path-data.ts";
import { toPath } from "../artwork/to-path.ts";
import { defineMotif, type MotifFactory } from "../define.ts";
import { PARTS_PER_EM } from "./set-line.ts";

const params: {
  readonly text: Param<string, string, false>;
  readonly outline: Param<string, string, false>;
  readonly size: Param<Length, number, true>;
} = {
  text: text({ about: "What the letters say, for those who read the recipe.", max: 200 }),
  outline: text({
    about: "The letters' outlines, as SVG path data in hundred-thousandths of an em, y downwards.",
    max: 500_000,
  }),
  size: length({
    about: "Size of type: the height of an em. Capitals are about 0.7 of it.",
    min: 1,
    max: 2000,
    default: 20,
  }),
};

/** Set letters as a motif: it holds their outlines, so that neither the font nor its licence travels along. */
export const letteringMotif: MotifFactory<typeof params, "letter"> = defineMotif({
  name: "lettering/lettering",
  about: "One line of letters, set in a font of yours and kept as outlines.",
  params,
  parts: ["letter"],
  draw({ outline, size }) {
    const runs = readPathData(outline, "outline");
    const { minX, minY, maxX, maxY } = extentOf([runs]);
    const scale = size / PARTS_PER_EM;
    const centred: Matrix = [scale, 0, 0, scale, (-scale * (minX + maxX)) / 2, (-scale * (minY + maxY)) / 2];
    return { letter: unite([toPath(transformOutline(runs, centred))]) };
  },
});
