import type { Colorway } from "../../colorway/colorway.ts";
import { greyView } from "../../colorway/views/grey-view.ts";
import type { Font } from "../../motif/lettering/font.ts";
import type { Tile } from "../../tile/tile.ts";
import { nameLines, nameSize } from "./cell-name.ts";
import { bareChips } from "./chips.ts";
import { cut } from "./cut.ts";
import { repeatSize, titleOf } from "./facts.ts";
import { letters } from "./letters.ts";
import { boxOfMm, QUIET } from "./marks.ts";
import type { SheetItem } from "./page.ts";

/** Colorways in columns and rows, all cells alike (mm). */
export interface Cells {
  readonly columns: number;
  readonly width: number;
  readonly height: number;
  /** Height of the cloth, and of the greys below it with the gap between them; 0 without greys. */
  readonly cloth: number;
  readonly grey: number;
}

/** Measures at `u` 1, in mm: between cells, and of the name and the chips below a cloth. */
const [GAP_X, GAP_Y, BELOW] = [5, 7, 12.5];

/** Greys are as high as this share of the cloth, and never lower than this (mm at `u` 1). */
const [GREY_SHARE, LEAST_GREY] = [0.28, 8];

/** As many columns as make the cloth largest, where it counts at most a third wider than high. */
export function cellsIn(count: number, width: number, height: number, u: number, greys: boolean): Cells {
  let best: Cells | undefined;
  for (let columns = 1; columns <= count; columns++) {
    const rows = Math.ceil(count / columns);
    const [wide, high] = [
      (width - (columns - 1) * GAP_X * u) / columns,
      (height - (rows - 1) * GAP_Y * u) / rows,
    ];
    const left = high - BELOW * u;
    const grey = greys ? Math.max(LEAST_GREY * u, (left * GREY_SHARE) / (1 + GREY_SHARE)) : 0;
    const cells = { columns, width: wide, height: high, cloth: left - grey, grey };
    if (!best || worth(cells) > worth(best)) best = cells;
  }
  return best!;
}

/** Whether cells are too small to show anything: names and cloth would be cut to nothing (mm). */
export const areCramped = ({ cloth, width }: Cells): boolean => cloth < 9 || width < 14;

/** Side of the square that a cloth is as good as. */
const worth = ({ width, cloth }: Cells): number => Math.min(width, cloth * 1.35);

/** The scale at which an area (mm) shows one repeat on its longer side; never above true size. */
export function scaleFor(tile: Tile, width: number, height: number): number {
  const repeat = repeatSize(tile);
  return Math.min(1, Math.max((width * 1000) / repeat.width, (height * 1000) / repeat.height));
}

/** Room for a name, beside the score if there is one (mm). */
const roomFor = ({ score }: Colorway & { readonly score?: number }, width: number, u: number): number =>
  score === undefined ? width : width - 7 * u;

/** The cell of one colorway, its name set at `size` mm, whose upper left corner is at (x, y) mm: cloth, greys, name, score and inks. */
export function cell(
  font: Font,
  tile: Tile,
  colorway: Colorway & { readonly score?: number },
  [x, y]: readonly [number, number],
  cells: Cells,
  scale: number,
  size: number,
  u: number,
): SheetItem[] {
  const { width, cloth, grey } = cells;
  const gap = 0.8 * u;
  const end = y + cloth + grey;
  const { score } = colorway;
  return [
    cut(tile, colorway, boxOfMm(x, y, width, cloth), scale),
    ...(grey > 0
      ? [cut(tile, greyView(colorway), boxOfMm(x, y + cloth + gap, width, grey - gap), scale)]
      : []),
    ...nameLines(font, titleOf(colorway.name), [x, end], size, roomFor(colorway, width, u), u),
    ...(score === undefined
      ? []
      : [
          letters(font, String(Math.round(score)), {
            ...{ x: x + width, y: end + 5.4 * u, size: 3.1 * u, ink: QUIET, align: "right" },
          }),
        ]),
    ...bareChips(
      tile.recipe.roles.map((role) => colorway.inks[role]!),
      ...([x, end + 7.6 * u, width, 4.4 * u] as const),
    ),
  ];
}

/** All cells of a list of colorways, from (x, y) mm on. */
export const cellsOf = (
  font: Font,
  tile: Tile,
  colorways: readonly Colorway[],
  [x, y]: readonly [number, number],
  cells: Cells,
  scale: number,
  u: number,
): SheetItem[] => {
  const rooms = colorways.map((colorway) => roomFor(colorway, cells.width, u));
  const size = nameSize(
    font,
    colorways.map(({ name }) => titleOf(name)),
    Math.min(...rooms),
    u,
  );
  return colorways.flatMap((colorway, i) => {
    const across = (i % cells.columns) * (cells.width + GAP_X * u);
    const down = Math.floor(i / cells.columns) * (cells.height + GAP_Y * u);
    return cell(font, tile, colorway, [x + across, y + down], cells, scale, size, u);
  });
};
