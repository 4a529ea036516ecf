import type { Colorway } from "../../colorway/colorway.ts";
import type { Size } from "../../geometry/lattice.ts";
import type { Box } from "../../geometry/path.ts";
import { readParams } from "../../params/compound.ts";
import { chipGrid, labelledChips } from "./chips.ts";
import { cut } from "./cut.ts";
import { inInches, inMm, repeatKind, repeatSize, sayIn, titleOf } from "./facts.ts";
import { heading } from "./heading.ts";
import { letters } from "./letters.ts";
import { boxOfMm, INK, QUIET, rectangles } from "./marks.ts";
import * as option from "./options.ts";
import type { Page, SheetItem } from "./page.ts";
import { RULER_HEIGHT, ruler } from "./ruler.ts";

/** What {@link strikeOffSheet} is given. */
export interface StrikeOffOptions extends option.SheetOptions {
  readonly colorway: Colorway;
}

/** Least room between the margins (mm). */
const LEAST = [80, 120] as const;

/**
 * A test print: a cut of the repeat at true size, ticks where one repeat begins and ends, a ruler in mm and inches, and a
 * chip of every ink with its values, to be held against the finished cloth.
 *
 * @throws SprigwrightError `page-too-small`, `missing-glyph` (names the characters), `missing-ink`,
 * `unknown-print-size`, `length-range`, `unknown-option`
 */
export function strikeOffSheet(options: StrikeOffOptions): Page {
  const where = "strikeOffSheet";
  const given = readParams({ ...option.sheet(), colorway: option.colorway() }, options, where);
  const { tile, colorway, font, margin } = given;
  option.checkInks(tile, [colorway]);
  const title = given.title ?? titleOf(tile.name);
  const { size, width, height, u } = option.frameOf(given, LEAST, where);
  // Letters that reach below the line stay within the margin.
  const bottom = margin + height - 0.8 * u;
  const chips = tile.recipe.roles.map((role) => ({ role, ink: colorway.inks[role]! }));
  const chipsTop = bottom - 7 * u - chipGrid(chips.length, width, u).height;
  const rulerTop = chipsTop - 6 * u - RULER_HEIGHT;
  const top = margin + 19 * u;
  if (rulerTop - top < 30)
    throw option.tooSmall(`${where} > size`, `${chips.length} inks leave no room for the cloth`);
  const area = boxOfMm(margin, top, width, rulerTop - 1.5 - top);
  const repeat = repeatSize(tile);
  const cloth = cut(tile, colorway, area, 1, [repeat.width / 2, repeat.height / 2]);
  const say = (words: string, x: number, y: number, scale: number, ink: string, right = false): SheetItem =>
    letters(font, sayIn(font, words), {
      ...{ x, y, ink, size: scale * u, align: right ? "right" : "left" },
      room: right ? width * 0.2 : width * 0.78,
    });
  const right = margin + width;
  const whole = repeat.width <= area.maxX - area.minX && repeat.height <= area.maxY - area.minY;
  const ticksSay = whole ? "Ticks mark one repeat." : "The cloth is a part of one repeat.";
  return {
    title: `${title}, ${colorway.name}: strike-off`,
    size,
    bleed: 0,
    items: [
      ...heading(font, title, "Strike-off", [margin, margin], width, u),
      say(
        `${titleOf(colorway.name)} · ${repeatKind(tile)}, ${inMm(repeat)} (${inInches(repeat)})`,
        margin,
        margin + 12.5 * u,
        3.2,
        QUIET,
      ),
      say("true size", right, margin + 12.5 * u, 3.2, QUIET, true),
      cloth,
      repeatTicks(area, cloth.at, repeat),
      ...ruler(font, margin, rulerTop, width),
      ...labelledChips(font, chips, margin, chipsTop, width, u),
      say(
        `Print at 100 % and measure the ruler before judging the colours. ${ticksSay}`,
        margin,
        bottom,
        2.5,
        QUIET,
      ),
      say(`tile ${tile.digest.slice(0, 8)}`, right, bottom, 2.5, QUIET, true),
    ],
  };
}

/** Ticks along the upper and the left edge of the cloth, wherever a repeat begins. */
function repeatTicks(area: Box, at: readonly [number, number], repeat: Size): SheetItem {
  const [long, weight, off] = [2.2, 0.15, 0.6];
  const boxes: [number, number, number, number][] = [];
  for (const x of startsIn(area.minX, area.maxX, at[0], repeat.width))
    boxes.push([x / 1000 - weight / 2, area.minY / 1000 - off - long, weight, long]);
  for (const y of startsIn(area.minY, area.maxY, at[1], repeat.height))
    boxes.push([area.minX / 1000 - off - long, y / 1000 - weight / 2, long, weight]);
  return rectangles(boxes, INK);
}

/** Every place from..to that lies whole steps from `at`. */
function startsIn(from: number, to: number, at: number, step: number): number[] {
  const starts: number[] = [];
  for (let k = Math.ceil((from - at) / step); at + k * step <= to; k++) starts.push(at + k * step);
  return starts;
}
