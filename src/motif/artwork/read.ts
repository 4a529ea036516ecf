import type { Element } from "@xmldom/xmldom";
import { badInput } from "../../errors/catalogue.ts";
import type { Matrix } from "../../geometry/matrix.ts";
import type { Path } from "../../geometry/path.ts";
import { umToMm } from "../../units/length.ts";
import { hiddenOf } from "./cover.ts";
import { boxOfMarks } from "./frame.ts";
import type { Named } from "./journey.ts";
import { layMarks } from "./lay.ts";
import { paperOf } from "./page.ts";
import { parseSvg } from "./parse.ts";
import type { Dropped } from "./report.ts";
import { over } from "./veil.ts";
import { walk } from "./walk.ts";

/** One flat area of a drawing, at its size in the pattern. */
export interface FlatArea {
  /** Its colour in the file, `#rrggbb`. */
  readonly fill: string;
  /** United, in µm about the centre of the drawing. */
  readonly path: Path;
  /** Names of its element and of the groups around it, outermost first. */
  readonly trail: readonly Named[];
  /** Where in the file it comes from. */
  readonly holder: Element;
}

/** What becomes of the paper under a drawing. */
export type Page = "keep" | "drop";

/** A drawing read from SVG. */
export interface ArtworkDrawing {
  /** Back to front, as the file paints them; none is wholly hidden. */
  readonly areas: readonly FlatArea[];
  /** Drawing elements of the file. */
  readonly shapes: number;
  /** mm, the longer one being what was asked for. */
  readonly width: number;
  readonly height: number;
  /** From the coordinates of the file's root to mm. */
  readonly placed: Matrix;
  readonly dropped: readonly Dropped[];
  readonly warnings: readonly string[];
}

/**
 * Reads a drawing, `size` mm on its longer side, centred on the origin.
 * @throws SprigwrightError `not-svg`, `malformed-svg`, `unsafe-svg`, `artwork-too-large`, `empty-artwork`, and for
 * attributes that cannot be read
 */
export function readDrawing(svg: string, size: number, page: Page = "keep"): ArtworkDrawing {
  return drawWalk(walk(parseSvg(svg)), size, page);
}

/** Drawings by the parameters that they were read from: a use is read once, however often it is asked. */
const known = new WeakMap<object, ArtworkDrawing>();

/** {@link readDrawing} for the parameters of a use, which must not change. */
export function drawingOf(params: {
  readonly svg: string;
  readonly size: number;
  readonly page?: Page;
}): ArtworkDrawing {
  const read = known.get(params) ?? readDrawing(params.svg, params.size, params.page);
  known.set(params, read);
  return read;
}

/** What a walk found, `size` mm on its longer side. @throws SprigwrightError `empty-artwork`, `bad-artwork` */
export function drawWalk(
  walked: ReturnType<typeof walk>,
  size: number,
  wanted: Page = "keep",
): ArtworkDrawing {
  const { page } = walked;
  const dropped = [...walked.dropped];
  const warnings = new Set(walked.warnings);
  const paper = paperOf(walked.marks, page);
  if (paper && wanted === "drop") dropped.push({ element: paper.from, why: "page" });
  else if (paper)
    warnings.add(
      `${paper.from}: it covers the whole page; if it is only the paper, leave it out with page: "drop"`,
    );
  const marks = wanted === "drop" ? walked.marks.filter((mark) => mark !== paper) : walked.marks;
  const { minX, minY, maxX, maxY } = boxOfMarks(marks);
  const longer = Math.max(maxX - minX, maxY - minY);
  if (Number.isNaN(longer) || longer === Infinity) throw notFinite();
  if (!(longer > 0)) throw nothingDrawn([...warnings]);

  const scale = size / longer;
  const placed: Matrix = [scale, 0, 0, scale, (-scale * (minX + maxX)) / 2, (-scale * (minY + maxY)) / 2];
  const slack = longer / 100;
  if (minX < -slack || minY < -slack || maxX > page.width + slack || maxY > page.height + slack)
    warnings.add("the drawing reaches beyond its page (the viewBox); it is taken whole");
  const sheets = layMarks(marks, placed, (element, why) => dropped.push({ element, why }));
  const hidden = hiddenOf(sheets.map((sheet) => sheet.path));
  const shown = new Set(sheets.filter((_, i) => !hidden.has(i)).map(({ from }) => from));
  for (const from of new Set(sheets.map((sheet) => sheet.from)))
    if (!shown.has(from)) dropped.push({ element: from, why: "covered" });
  const areas = sheets.flatMap((sheet, i): FlatArea[] => {
    if (hidden.has(i)) return [];
    const { path, trail, holder, from, alpha } = sheet;
    if (alpha < 1)
      warnings.add(
        `${from}: it is half transparent (${Math.round(alpha * 100)} %) over the bare ground; it is drawn as over white`,
      );
    return [{ fill: alpha < 1 ? over(sheet, WHITE).fill : sheet.fill, path, trail, holder }];
  });
  if (areas.length === 0) throw nothingDrawn([...warnings]);
  return {
    ...{ areas, placed, dropped, shapes: walked.shapes },
    width: umToMm(Math.round((maxX - minX) * scale * 1000)),
    height: umToMm(Math.round((maxY - minY) * scale * 1000)),
    warnings: [...warnings],
  };
}

const WHITE = { fill: "#ffffff", alpha: 1 };

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
