import { unknownName } from "../../errors/catalogue.ts";
import type { Path } from "../../geometry/path.ts";
import { readPathData } from "../../geometry/path-data.ts";
import { pathOfRuns } from "../../geometry/path-of-runs.ts";
import { transformRuns } from "../../geometry/sketch.ts";
import { list } from "../../params/compound.ts";
import { length, text } from "../../params/kinds.ts";
import type { ParamsOut } from "../../params/param.ts";
import type { Drawing, MotifPiece } from "../motif.ts";
import { MOST_CHARACTERS } from "./check-text.ts";
import { PARTS_PER_EM } from "./outline-data.ts";
import { MOST_PARTS } from "./role-cycle.ts";

/** Most characters of one part's outlines: some 600 letters of a face with many curves. */
export const MOST_DATA = 1_000_000;

const params = {
  text: text({ about: "What the letters say, for those who read the recipe.", max: 2 * MOST_CHARACTERS }),
  outlines: list(
    text({
      about: "Outlines as SVG path data in hundred-thousandths of an em, y downwards, about the origin.",
      max: MOST_DATA,
    }),
    { about: "Outlines, one for each part, back to front.", min: 1, max: MOST_PARTS },
  ),
  size: length({
    about: "Size of type: the height of an em. Capitals are about 0.7 of it.",
    min: 1,
    max: 2000,
    default: 20,
  }),
};

type Params = ParamsOut<typeof params>;

/** Names of the parts: "letter", or "letter-1" and so on where there are several. */
export const partNames = (count: number): string[] =>
  Array.from({ length: count }, (_, i) => (count === 1 ? "letter" : `letter-${i + 1}`));

/** Every part → its role: as given, or the part's own name. @throws SprigwrightError `unknown-part` */
export function rolesOfParts(
  parts: readonly string[],
  given: Readonly<Record<string, string>>,
): Record<string, string> {
  const stray = Object.keys(given).find((part) => !parts.includes(part));
  if (stray !== undefined) throw unknownName(`roles > ${stray}`, "part", stray, parts);
  return Object.fromEntries(parts.map((part) => [part, given[part] ?? part]));
}

/** Set letters as a motif: it holds their outlines, so that neither the font nor its licence travels along. */
export const letteringMotif: MotifPiece = Object.freeze({
  kind: "motif",
  name: "lettering/lettering",
  about: "Letters, set in a font of yours and kept as outlines.",
  params,
  parts: "drawn",
  rolesOf: ({ outlines }: Params, given: Readonly<Record<string, string>>) =>
    rolesOfParts(partNames(outlines.length), given),
  draw({ outlines, size }: Params): Drawing {
    const names = partNames(outlines.length);
    return Object.fromEntries(
      outlines.map((outline, i) => [names[i]!, outlineOf(outline, size, `outlines[${i}]`)]),
    );
  },
});

/** Stored outlines at a size of `size` mm an em; letters may overlap. */
export function outlineOf(outline: string, size: number, where: string): Path {
  const scale = size / PARTS_PER_EM;
  return pathOfRuns(transformRuns(readPathData(outline, where), [scale, 0, 0, scale, 0, 0]));
}
