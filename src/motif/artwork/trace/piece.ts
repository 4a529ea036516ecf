import { badInput, unknownName } from "../../../errors/catalogue.ts";
import type { Path } from "../../../geometry/path.ts";
import { readPathData } from "../../../geometry/path-data.ts";
import { pathOfRuns } from "../../../geometry/path-of-runs.ts";
import { transformRuns } from "../../../geometry/sketch.ts";
import { list } from "../../../params/compound.ts";
import { length, text } from "../../../params/kinds.ts";
import type { ParamsOut } from "../../../params/param.ts";
import type { Drawing, MotifPiece } from "../../motif.ts";
import { nameFills } from "../roles.ts";
import { PARTS } from "./outline-data.ts";

/** Most characters of one ink's outlines. */
export const MOST_DATA = 4_000_000;
const MOST_INKS = 24;

const params = {
  inks: list(text({ about: "An ink of the picture, as #rrggbb.", max: 7 }), {
    about: "Inks of the picture, one for each outline, back to front.",
    min: 1,
    max: MOST_INKS,
  }),
  outlines: list(
    text({
      about:
        "Outlines as SVG path data in hundred-thousandths of the longer side, y downwards, about the middle.",
      max: MOST_DATA,
    }),
    { about: "What each ink covers, back to front.", min: 1, max: MOST_INKS },
  ),
  size: length({
    about: "Longer side of the drawing: everything it paints is scaled to it together.",
    min: 1,
    max: 2000,
    default: 30,
  }),
};

type Params = ParamsOut<typeof params>;

/** A traced picture as a motif: it holds the outlines, so that the picture itself does not travel along. */
export const traced: MotifPiece = Object.freeze({
  kind: "motif",
  name: "artwork/traced",
  about: "A painted or inked drawing, traced from its scan and kept as outlines; each ink becomes a role.",
  params,
  parts: "drawn",
  rolesOf({ inks, outlines }: Params, given: Readonly<Record<string, string>>): Record<string, string> {
    if (inks.length !== outlines.length)
      throw badInput(
        "bad-trace",
        "inks",
        `${inks.length} inks have ${outlines.length} outlines`,
        "give one for each",
      );
    const bad = inks.find((ink, i) => !/^#[0-9a-f]{6}$/.test(ink) || inks.indexOf(ink) < i);
    if (bad !== undefined)
      throw badInput("bad-trace", "inks", `"${bad}" is no ink of its own`, "give each ink once, as #rrggbb");
    const stray = Object.keys(given).find((ink) => !inks.includes(ink));
    if (stray !== undefined) throw unknownName(`roles > ${stray}`, "part", stray, inks);
    const unnamed = inks.filter((ink) => given[ink] === undefined);
    const names = nameFills(unnamed, Object.values(given));
    return Object.fromEntries(inks.map((ink) => [ink, given[ink] ?? names[ink]!]));
  },
  draw({ inks, outlines, size }: Params): Drawing {
    const path = (outline: string, i: number): Path => {
      const scale = size / PARTS;
      return pathOfRuns(transformRuns(readPathData(outline, `outlines[${i}]`), [scale, 0, 0, scale, 0, 0]));
    };
    return Object.fromEntries(outlines.map((outline, i) => [inks[i]!, path(outline, i)]));
  },
});
