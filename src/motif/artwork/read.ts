import { badInput } from "../../errors/catalogue.ts";
import { evenOdd, unite } from "../../geometry/boolean.ts";
import type { Matrix } from "../../geometry/matrix.ts";
import { areaOf, type Path } from "../../geometry/path.ts";
import { umToMm } from "../../units/length.ts";
import { extentOf } from "./extent.ts";
import { transformOutline } from "./outline.ts";
import { parseSvg } from "./parse.ts";
import { toPath } from "./to-path.ts";
import { walk } from "./walk.ts";

/** One flat area of a drawing, at its size in the pattern. */
export interface FlatArea {
  /** Its colour in the file, `#rrggbb`. */
  readonly fill: string;
  /** United, in µm about the centre of the drawing. */
  readonly path: Path;
}

/** A drawing read from SVG. */
export interface ArtworkDrawing {
  /** Back to front, as the file paints them. */
  readonly areas: readonly FlatArea[];
  /** mm, the longer one being what was asked for. */
  readonly width: number;
  readonly height: number;
  /** From the coordinates of the file's root to mm. */
  readonly placed: Matrix;
  readonly warnings: readonly string[];
}

/** Areas below this are dust of rounding: a hundredth of a millimetre squared (µm²). */
const DUST = 100;

/**
 * Reads a drawing, `size` mm on its longer side, centred on the origin.
 * @throws SprigwrightError `not-svg`, `malformed-svg`, `unsafe-svg`, `artwork-too-large`, `empty-artwork`, and for
 * attributes that cannot be read
 */
export function readDrawing(svg: string, size: number): ArtworkDrawing {
  const { painted, page, warnings } = walk(parseSvg(svg));
  const { minX, minY, maxX, maxY } = extentOf(painted.map((area) => area.outline));
  const longer = Math.max(maxX - minX, maxY - minY);
  if (painted.length === 0 || longer === 0) throw nothingDrawn(warnings);
  if (!Number.isFinite(longer)) throw notFinite();
  const scale = size / longer;
  const placed: Matrix = [scale, 0, 0, scale, (-scale * (minX + maxX)) / 2, (-scale * (minY + maxY)) / 2];
  const areas: FlatArea[] = [];
  const said = [...warnings];
  const slack = longer / 100;
  if (minX < -slack || minY < -slack || maxX > page.width + slack || maxY > page.height + slack)
    said.push("the drawing reaches beyond its page (the viewBox); it is taken whole");
  for (const { fill, outline, rule, from } of painted) {
    const drawn = toPath(transformOutline(outline, placed));
    const path = rule === "evenodd" ? evenOdd(drawn) : unite([drawn]);
    if (areaOf(path) >= DUST) areas.push({ fill, path });
    else said.push(`${from}: it covers nothing at this size, so it is left out`);
  }
  if (areas.length === 0) throw nothingDrawn(said);
  return {
    areas,
    width: umToMm(Math.round((maxX - minX) * scale * 1000)),
    height: umToMm(Math.round((maxY - minY) * scale * 1000)),
    placed,
    warnings: said,
  };
}

const nothingDrawn = (warnings: readonly string[]): Error =>
  badInput(
    "empty-artwork",
    "svg",
    `the file draws nothing that has a colour and an area${warnings[0] ? ` (${warnings[0]})` : ""}`,
    "give a drawing of filled shapes; turn text, images and effects into shapes in its editor",
  );

const notFinite = (): Error =>
  badInput(
    "bad-artwork",
    "svg",
    "a coordinate of the drawing is not a finite number",
    "mend the drawing: its numbers or transforms are too large",
  );
