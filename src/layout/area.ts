import { badInput, missingOption, wrongType } from "../errors/catalogue.ts";
import { SprigwrightError, within } from "../errors/error.ts";
import { ringsArea, uniteRings } from "../geometry/clip.ts";
import { flatten } from "../geometry/flatten.ts";
import { isPath, type Path } from "../geometry/path.ts";
import { readPathData } from "../geometry/path-data.ts";
import { pathOfRuns } from "../geometry/path-of-runs.ts";
import { pathData } from "../geometry/path-text.ts";
import type { Runs } from "../geometry/sketch.ts";
import { isRecord } from "../params/compound.ts";
import { type About, type HasDefault, makeParam, type Param } from "../params/param.ts";
import { tagged } from "../params/tagged.ts";
import { type Stripes, stripesSpec } from "./stripes.ts";

/** Most characters of path data, and most curves that it may hold. */
const MOST_TEXT = 100_000;
const MOST_CURVES = 5000;

/**
 * A part of the ground: SVG path data in mm from the unit's upper left corner, a `Path` (of a pen, of `ogeeCurve`, of
 * `unitOutline`), or `stripes`.
 */
export type AreaIn = string | Path | Stripes;

/** The same as a recipe holds it. */
export type Area = string | Stripes;

const WANTED =
  'an area: SVG path data such as "M0 0H80V40H0Z" in mm, a path of a pen, or stripes({ count: 3 })';

const stripesParam = tagged("area", { stripes: stripesSpec }, { about: "Even stripes." });

/** A part of the ground as a parameter; a `Path` becomes path data, so that a recipe stays JSON. */
export function area<const A extends About<AreaIn>>(about: A): Param<AreaIn, Area, HasDefault<A>> {
  const schema = {
    anyOf: [{ type: "string", maxLength: MOST_TEXT }, stripesParam.schema],
    "x-unit": "mm",
    "x-holds": "area",
  };
  const check = (value: unknown, where: string): Area => {
    if (isRecord(value) && Object.hasOwn(value, "area")) return stripesParam.read(value, where) as Stripes;
    if (typeof value !== "string" && !isPath(value)) throw wrongType(where, value, WANTED);
    const text = typeof value === "string" ? value.trim() : pathData(value);
    areaPath(text, where);
    return text;
  };
  return makeParam({ about, wanted: WANTED, schema, check }, missingOption);
}

/**
 * Path data as a path.
 * @throws SprigwrightError `bad-path-data`, `open-path`, `area-too-detailed`, `empty-area`
 */
export function areaPath(text: string, where: string): Path {
  if (text.length > MOST_TEXT) throw tooDetailed(where, `${text.length} characters of path data`);
  const runs = readRuns(text, where);
  for (const { closed, points } of runs) {
    const end = points.length - 2;
    if (closed || (points[0] === points[end] && points[1] === points[end + 1])) continue;
    throw badInput(
      "open-path",
      where,
      `a line that starts at ${points[0]}, ${points[1]} does not come back to where it began`,
      "close every line of the path with Z",
    );
  }
  const path = within(where, () => pathOfRuns(runs));
  const curves = path.contours.reduce((sum, count) => sum + count, 0);
  if (curves > MOST_CURVES) throw tooDetailed(where, `${curves} sides and curves`);
  if (!(ringsArea(uniteRings(flatten(path, 50))) > 0))
    throw badInput("empty-area", where, "the path encloses no area", "draw a closed shape, in mm");
  return path;
}

/** Path data, refused in words for somebody who describes an area. */
function readRuns(text: string, where: string): Runs {
  try {
    return readPathData(text, where);
  } catch (error) {
    if (!(error instanceof SprigwrightError) || error.code !== "bad-path-data") throw error;
    throw badInput(error.code, where, error.what, `give ${WANTED}`, error.cause);
  }
}

const tooDetailed = (where: string, what: string): Error =>
  badInput(
    "area-too-detailed",
    where,
    `${what} are more than an area may have`,
    `simplify the path: at most ${MOST_TEXT} characters and ${MOST_CURVES} sides and curves`,
  );
