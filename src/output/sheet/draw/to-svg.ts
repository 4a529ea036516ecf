import type { Box, Path } from "../../../geometry/path.ts";
import { mm, pathData } from "../../../geometry/path-text.ts";
import { xmlText } from "../../xmp.ts";
import { type Page, pageBox } from "../page.ts";
import { checkPage } from "./check-page.ts";
import { type Coat, coatsOf } from "./coats.ts";

/**
 * A page as an SVG 1.1 file at true size, bleed included: `viewBox` in mm from the corner of the trimmed page. Letters
 * are outlines, so no font is needed to show it. A pattern's shapes are there once for all its colorways.
 *
 * @throws SprigwrightError `bad-page`, `missing-ink` when a colorway is not for its tile, `too-many-shapes`
 */
export function pageToSvg(page: Page): string {
  checkPage(page, "pageToSvg");
  const whole = pageBox(page);
  const coats = coatsOf(page);
  const shared = sharedPaths(coats);
  const clips = clipsOf(coats, whole);
  const body = runsOf(coats).map((run) => {
    const drawn = run.map((coat) => `<${shapeOf(coat, shared)}/>`).join("\n");
    const id = clips.get(boxText(run[0]!.clip));
    return id === undefined ? drawn : `<g clip-path="url(#${id})">\n${drawn}\n</g>`;
  });
  const defs = [
    ...[...clips].map(([box, id]) => `<clipPath id="${id}"><rect ${box}/></clipPath>`),
    ...[...shared].map(([path, id]) => `<path id="${id}" d="${pathData(path)}"/>`),
  ];
  const [width, height] = [mm(whole.maxX - whole.minX), mm(whole.maxY - whole.minY)];
  const view = `${mm(whole.minX)} ${mm(whole.minY)} ${width} ${height}`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="${width}mm" height="${height}mm" viewBox="${view}">`,
    `<title>${xmlText(page.title)}</title>`,
    ...(defs.length > 0 ? [`<defs>\n${defs.join("\n")}\n</defs>`] : []),
    ...body,
    "</svg>\n",
  ].join("\n");
}

/** Paths that are drawn more than once, and the names that they go by. */
function sharedPaths(coats: readonly Coat[]): Map<Path, string> {
  const counts = new Map<Path, number>();
  for (const { path } of coats) counts.set(path, (counts.get(path) ?? 0) + 1);
  const shared = [...counts].filter(([, count]) => count > 1);
  return new Map(shared.map(([path], i) => [path, `shape-${i + 1}`]));
}

/** Boxes, smaller than the page, that coats are cut to. */
function clipsOf(coats: readonly Coat[], whole: Box): Map<string, string> {
  const clips = new Map<string, string>();
  for (const { clip } of coats) {
    const box = boxText(clip);
    if (box !== boxText(whole) && !clips.has(box)) clips.set(box, `cut-${clips.size + 1}`);
  }
  return clips;
}

/** Coats that follow each other and are cut to the same box. */
function runsOf(coats: readonly Coat[]): Coat[][] {
  const runs: Coat[][] = [];
  for (const coat of coats) {
    const last = runs.at(-1);
    if (last && boxText(last[0]!.clip) === boxText(coat.clip)) last.push(coat);
    else runs.push([coat]);
  }
  return runs;
}

function shapeOf({ path, at: [x, y], ink }: Coat, shared: ReadonlyMap<Path, string>): string {
  const id = shared.get(path);
  const moved = x === 0 && y === 0 ? "" : ` transform="translate(${mm(x)} ${mm(y)})"`;
  return id === undefined
    ? `path fill="${ink}"${moved} d="${pathData(path)}"`
    : `use xlink:href="#${id}" fill="${ink}"${moved}`;
}

const boxText = ({ minX, minY, maxX, maxY }: Box): string =>
  `x="${mm(minX)}" y="${mm(minY)}" width="${mm(maxX - minX)}" height="${mm(maxY - minY)}"`;
