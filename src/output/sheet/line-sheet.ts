import type { Colorway } from "../../colorway/colorway.ts";
import type { Font } from "../../motif/lettering/font.ts";
import { optional, readParams } from "../../params/compound.ts";
import { text } from "../../params/kinds.ts";
import type { Tile } from "../../tile/tile.ts";
import { areCramped, cellsIn, cellsOf, scaleFor } from "./cells.ts";
import { chipGrid, labelledChips } from "./chips.ts";
import { cut } from "./cut.ts";
import { inInches, inMm, percent, repeatKind, repeatSize, sayIn, titleOf } from "./facts.ts";
import { heading } from "./heading.ts";
import { letters } from "./letters.ts";
import { boxOfMm, INK, QUIET } from "./marks.ts";
import * as option from "./options.ts";
import type { Page, SheetItem } from "./page.ts";

/** What {@link lineSheet} is given. */
export interface LineSheetOptions extends option.SheetOptions {
  /** 1 to 25 colorways; the first is shown large. */
  readonly colorways: readonly Colorway[] | Readonly<Record<string, Colorway>>;
  /** Who sells it and how to be reached, in a line at the foot. */
  readonly studio?: string;
}

/** Most colorways on one sheet. */
export const MOST_ON_LINE_SHEET = 25;

/** Least room between the margins (mm). */
const LEAST = [100, 140] as const;

/** Height that the other colorways take, by how many there are: share of the sheet. */
const shareOf = (others: number): number =>
  others === 0 ? 0 : others <= 4 ? 0.2 : others <= 8 ? 0.34 : 0.44;

/**
 * What a buyer is shown: the pattern in its first colorway as large as the sheet allows, subject, repeat and size in mm
 * and inches, the palette, and every other colorway.
 *
 * @throws SprigwrightError `no-colorways`, `too-many-colorways`, `page-too-small`, `missing-glyph`, `missing-ink`,
 * `unknown-print-size`, `length-range`, `unknown-option`
 */
export function lineSheet(options: LineSheetOptions): Page {
  const where = "lineSheet";
  const studio = optional(text({ about: "A line at the foot.", max: 160 }));
  const given = readParams(
    { ...option.sheet(), colorways: option.colorways(MOST_ON_LINE_SHEET), studio },
    options,
    where,
  );
  const { tile, colorways, font, margin } = given;
  option.checkInks(tile, colorways);
  const title = given.title ?? titleOf(tile.name);
  const { size, width, height, u } = option.frameOf(given, LEAST, where);
  // Scores are for the studio, not for buyers.
  const bare = colorways.map(({ name, inks }) => ({ name, inks }));
  const [lead, ...others] = bare as [Colorway, ...Colorway[]];
  const foot = given.studio ? 8 * u : 0;
  const chips = tile.recipe.roles.map((role) => ({ role, ink: lead.inks[role]! }));
  const side = width * 0.32;
  const said = factsOf(tile);
  const middle = Math.max(heightOf(said) * u, chipGrid(chips.length, width - side, u).height);
  const below = others.length === 0 ? 0 : height * shareOf(others.length) + 8 * u;
  const heroTop = margin + 15 * u;
  const hero = margin + height - foot - below - middle - 7 * u - heroTop;
  if (hero < 30 * u)
    throw option.tooSmall(
      `${where} > size`,
      `${chips.length} inks in ${colorways.length} colorways leave no room for the cloth`,
    );
  const scale = scaleFor(tile, width, hero);
  const middleTop = heroTop + hero + 7 * u;
  const items: SheetItem[] = [
    ...heading(
      font,
      title,
      `${titleOf(lead.name)}, ${scale === 1 ? "at true size" : `at ${percent(scale)}`}`,
      [margin, margin],
      width,
      u,
    ),
    cut(tile, lead, boxOfMm(margin, heroTop, width, hero), scale),
    ...facts(font, said, margin, middleTop, side - 6 * u, u),
    ...labelledChips(font, chips, margin + side, middleTop, width - side, u),
  ];
  if (others.length > 0) {
    // Never so few that a cell becomes a strip.
    const count = Math.max(others.length, Math.round(width / (1.6 * below)));
    const cells = cellsIn(count, width, below - 8 * u, u, false);
    if (areCramped(cells))
      throw option.tooSmall(`${where} > size`, `${colorways.length} colorways leave no room for the cloth`);
    const at = [margin, middleTop + middle + 8 * u] as const;
    items.push(...cellsOf(font, tile, others, at, cells, scaleFor(tile, cells.width, cells.cloth), u));
  }
  if (given.studio)
    items.push(
      letters(font, given.studio, {
        x: margin,
        y: margin + height - 0.8 * u,
        size: 2.8 * u,
        ink: QUIET,
        room: width,
      }),
    );
  return { title: `${title}: line sheet`, size, bleed: 0, items };
}

/** What a buyer asks: label and lines. */
function factsOf(tile: Tile): readonly (readonly [label: string, ...lines: string[]])[] {
  const repeat = repeatSize(tile);
  const { subject } = tile.recipe;
  return [
    ...(subject ? [["Subject", subject] as const] : []),
    ["Repeat", `${repeatKind(tile)}, ${inMm(repeat)}`, inInches(repeat)],
    ...(repeat.width === tile.block.width && repeat.height === tile.block.height
      ? []
      : [["Straight block", inMm(tile.block)] as const]),
  ];
}

/** Height of facts at `u` 1 (mm). */
const heightOf = (list: ReturnType<typeof factsOf>): number =>
  list.reduce((sum, [, ...lines]) => sum + 7.4 + lines.length * 4.2, -3.4);

function facts(
  font: Font,
  list: ReturnType<typeof factsOf>,
  x: number,
  y: number,
  room: number,
  u: number,
): SheetItem[] {
  let baseline = y + 2.4 * u;
  return list.flatMap(([label, ...lines]) => {
    const top = baseline;
    baseline += (7.4 + lines.length * 4.2) * u;
    const set = (line: string, i: number): SheetItem =>
      letters(font, sayIn(font, line), {
        ...{ x, y: top + (4.2 + i * 4.2) * u, size: 3.2 * u, least: 2.2 * u, ink: INK, room },
      });
    return [letters(font, label, { x, y: top, size: 2.5 * u, ink: QUIET }), ...lines.map(set)];
  });
}
