import type { Colorway } from "../../colorway/colorway.ts";
import { readParams } from "../../params/compound.ts";
import { areCramped, cellsIn, cellsOf, scaleFor } from "./cells.ts";
import { percent, titleOf } from "./facts.ts";
import { heading } from "./heading.ts";
import * as option from "./options.ts";
import type { Page } from "./page.ts";

/** A colorway, with its score where it was planned by `colorways`. */
export interface ScoredColorway extends Colorway {
  /** 0..100. */
  readonly score?: number;
}

/** What {@link colorwaySheet} is given. */
export interface ColorwaySheetOptions extends option.SheetOptions {
  /** 1 to 60 colorways, in the order in which they are shown; what `colorways` planned comes with scores. */
  readonly colorways: readonly ScoredColorway[] | Readonly<Record<string, ScoredColorway>>;
}

/** Most colorways on one sheet. */
export const MOST_ON_COLORWAY_SHEET = 60;

/** Least room between the margins (mm). */
const LEAST = [80, 80] as const;

/**
 * All colorways side by side: the same cut of the cloth in each, below it the same in greys of equal lightness (the value
 * check: what runs together there runs together from across a room), the name, the score and the inks.
 *
 * @throws SprigwrightError `no-colorways`, `too-many-colorways`, `page-too-small`, `missing-glyph`, `missing-ink`,
 * `unknown-print-size`, `length-range`, `unknown-option`
 */
export function colorwaySheet(options: ColorwaySheetOptions): Page {
  const where = "colorwaySheet";
  const given = readParams(
    { ...option.sheet(), colorways: option.colorways(MOST_ON_COLORWAY_SHEET) },
    options,
    where,
  );
  const { tile, colorways, font, margin } = given;
  option.checkInks(tile, colorways);
  const title = given.title ?? titleOf(tile.name);
  const { size, width, height, u } = option.frameOf(given, LEAST, where);
  const top = 15 * u;
  const cells = cellsIn(colorways.length, width, height - top, u, true);
  if (areCramped(cells))
    throw option.tooSmall(`${where} > size`, `${colorways.length} colorways leave no room for the cloth`);
  const scale = scaleFor(tile, cells.width, cells.cloth);
  const count = `${colorways.length} ${colorways.length === 1 ? "colorway" : "colorways"}`;
  const shown = scale === 1 ? "at true size" : `at ${percent(scale)}`;
  const scored = colorways.some(({ score }: ScoredColorway) => score !== undefined);
  return {
    title: `${title}: colorways`,
    size,
    bleed: 0,
    items: [
      ...heading(
        font,
        title,
        `${count} ${shown}${scored ? ", scores out of 100" : ""}`,
        [margin, margin],
        width,
        u,
      ),
      ...cellsOf(font, tile, colorways, [margin, margin + top], cells, scale, u),
    ],
  };
}
