import { type Box, boxOf, type Path } from "../../geometry/path.ts";
import { mm } from "../../geometry/path-text.ts";
import { boxOperator, copiesInto, decimal, POINTS_PER_MM, pathOperators } from "./content.ts";
import type { FilledPath, PageItem, PdfCloth, PdfPage } from "./page.ts";
import type { Resources } from "./resources.ts";

/** The content stream of a page: in mm from the upper left corner of the trimmed page, y downwards. */
export function pageContent(page: PdfPage, resources: Resources): string {
  const edge = (page.bleed + page.slug) / 1000;
  const height = page.size.height / 1000 + edge;
  const k = decimal(POINTS_PER_MM, 10);
  const turn = `${k} 0 0 -${k} ${decimal(edge * POINTS_PER_MM)} ${decimal(height * POINTS_PER_MM)} cm\n`;
  return `q\n${turn}${page.items.map((item) => paintItem(item, resources)).join("")}Q\n`;
}

const paintItem = (item: PageItem, resources: Resources): string =>
  "block" in item ? paintCloth(item, resources) : paintPath(item, resources);

function paintPath({ path, ink, layer, clip }: FilledPath, resources: Resources): string {
  const fill = `${resources.ink(ink)}\n${pathOperators(path)}\nf\n`;
  const clipped = clip ? `q\n${boxOperator(clip)} W n\n${fill}Q\n` : fill;
  return onLayer(layer, clipped, resources);
}

/**
 * Layer by layer: a form holds the layer's shapes, a second one a row of it, and the page sets that down row by row.
 * Nothing is cut at the blocks' edges, so no viewer or RIP can show a hairline there.
 */
function paintCloth(cloth: PdfCloth, resources: Resources): string {
  const { area, at, scale, block, ground, layers } = cloth;
  const s = decimal(scale, 9);
  const within: Box = {
    minX: (area.minX - at[0]) / scale,
    minY: (area.minY - at[1]) / scale,
    maxX: (area.maxX - at[0]) / scale,
    maxY: (area.maxY - at[1]) / scale,
  };
  const base = `${resources.ink(ground.ink)}\n${boxOperator(area)} f\n`;
  const painted = layers.map(({ path, ink, layer }) => {
    const { columns, rows } = copiesInto(path, block, within);
    if (columns.length === 0 || rows.length === 0) return "";
    const form = resources.form(path);
    const row = columns.map((dx) => `q 1 0 0 1 ${mm(dx)} 0 cm /${form} Do Q\n`).join("");
    const name =
      columns.length === 1 && columns[0] === 0 ? form : resources.group(row, rowBox(path, columns), form);
    const set = rows.map((dy) => `q 1 0 0 1 0 ${mm(dy)} cm /${name} Do Q\n`).join("");
    return onLayer(layer, `${resources.ink(ink)}\n${set}`, resources);
  });
  const move = `${s} 0 0 ${s} ${mm(at[0])} ${mm(at[1])} cm\n`;
  return `${onLayer(ground.layer, base, resources)}q\n${boxOperator(area)} W n\n${move}${painted.join("")}Q\n`;
}

/** The box of a path and its copies in one row. */
function rowBox(path: Path, columns: readonly number[]): Box {
  const box = boxOf(path);
  return { ...box, minX: box.minX + Math.min(...columns), maxX: box.maxX + Math.max(...columns) };
}

const onLayer = (layer: string | undefined, content: string, resources: Resources): string =>
  layer === undefined ? content : `/OC /${resources.layer(layer)} BDC\n${content}EMC\n`;
