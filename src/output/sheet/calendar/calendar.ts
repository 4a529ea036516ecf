import type { Colorway } from "../../../colorway/colorway.ts";
import { contrast } from "../../../colorway/contrast.ts";
import { inkBytes } from "../../../colorway/ink.ts";
import type { Font } from "../../../motif/lettering/font.ts";
import { list, object, optional, readParams } from "../../../params/compound.ts";
import { choice, flag, integer, length, text } from "../../../params/kinds.ts";
import type { Tile } from "../../../tile/tile.ts";
import { type Length, mmToUm } from "../../../units/length.ts";
import type { PrintSize } from "../../../units/print-sizes.ts";
import { checkSafe, readCentre } from "../centre.ts";
import { cut } from "../cut.ts";
import { inMm, sayIn } from "../facts.ts";
import { letters } from "../letters.ts";
import { INK, PAPER, QUIET, rectangles } from "../marks.ts";
import * as option from "../options.ts";
import type { Page, SheetItem } from "../page.ts";
import { YEARS } from "./dates.ts";
import { monthGrid } from "./month.ts";
import { type CalendarNames, calendarNames } from "./names.ts";

/** A month's picture. */
export interface CalendarPicture {
  readonly tile: Tile;
  readonly colorway: Colorway;
  /** What is in the middle: the middle of the repeat (default), or one motif, by the `id` of its placement. */
  readonly centre?: string;
}

/** What {@link calendar} is given. */
export interface CalendarOptions {
  /** 1970 to 2100. */
  readonly year: number;
  /** 1 to 12 pictures, at true size: they take turns, January first. */
  readonly pictures: readonly CalendarPicture[];
  /** The font of all text, from `loadFont`. */
  readonly font: Font;
  /** Size of the picture, which is a frame's: the page is as wide, and higher by the month. Default "8x10in". */
  readonly size?: PrintSize;
  /** Whether the picture's longer side lies level. Default false. */
  readonly landscape?: boolean;
  /** Height of the month below the picture, 60 to 1000 mm. Default: 0.6 of the width, at most 0.75 of the picture's height. */
  readonly month?: Length;
  /** Default "monday", as in ISO 8601. */
  readonly weekStart?: "monday" | "sunday";
  /** Whether ISO weeks are numbered (with weeks from Sunday: by the row's Thursday). Default true. */
  readonly weekNumbers?: boolean;
  /** How far the picture goes on beyond the trim, 0 to 50 mm. Default 3 mm; ask your printer. */
  readonly bleed?: Length;
  /** How far from the trim the month, and a motif at the centre, stay: 0 to 500 mm. Default 10 mm. */
  readonly safe?: Length;
  /** Names of months and days; what is left out is English. */
  readonly names?: Partial<CalendarNames>;
}

/**
 * A calendar: twelve pages, each with a picture of the size of a frame above a cut line and the month below it. When the
 * month is over, the picture is cut off and framed.
 *
 * @throws SprigwrightError `number-range` for other years, `unknown-print-size`, `page-too-small`,
 * `motif-outside-safe-margin`, `unknown-motif-id`, `missing-glyph`, `missing-ink`, `unknown-option`
 */
export function calendar(options: CalendarOptions): readonly Page[] {
  const where = "calendar";
  const picture = object(
    {
      tile: option.tile(),
      colorway: option.colorway(),
      centre: text({ about: 'What is in the middle: "repeat" or an id.', max: 200, default: "repeat" }),
    },
    { about: "A month's picture." },
  );
  const given = readParams(
    {
      year: integer({ about: "The year.", ...YEARS }),
      pictures: list(picture, { about: "Pictures, which take turns.", min: 1, max: 12 }),
      font: option.font(),
      size: option.printSize("Size of the picture.", "8x10in"),
      landscape: flag({ about: "Whether the longer side lies level.", default: false }),
      month: optional(length({ about: "Height of the month.", min: 60, max: 1000 })),
      weekStart: choice({ about: "First day of weeks.", of: ["monday", "sunday"], default: "monday" }),
      weekNumbers: flag({ about: "Whether ISO weeks are numbered.", default: true }),
      bleed: length({ about: "How far the picture goes on beyond the trim.", min: 0, max: 50, default: 3 }),
      safe: length({ about: "How far from the trim the month stays.", min: 0, max: 500, default: 10 }),
      names: calendarNames(),
    },
    options,
    where,
  );
  const { year, pictures, font, safe, names, weekNumbers } = given;
  const { size } = option.frameOf({ ...given, margin: safe }, [60, 40], where);
  const below = given.month ?? Math.max(60, Math.min(size.width * 0.6, size.height * 0.75) / 1000);
  if (below - 2 * safe < 35)
    throw option.tooSmall(
      `${where} > month`,
      `a safe margin of ${safe} mm leaves ${below - 2 * safe} mm of ${below} mm for the month`,
    );
  const bleed = mmToUm(given.bleed);
  const [width, height] = [size.width / 1000, size.height / 1000];
  const area = { minX: -bleed, minY: -bleed, maxX: size.width + bleed, maxY: size.height };
  const cloths = pictures.map(({ tile, colorway, centre }, i) => {
    const place = `${where} > pictures[${i}] > centre`;
    option.checkInks(tile, [colorway]);
    const at = readCentre(tile, centre, place);
    checkSafe(at, size.width, size.height, mmToUm(safe), place);
    return cut(tile, colorway, area, 1, at.at, [size.width / 2, size.height / 2]);
  });
  return names.months.map((name, i) => {
    const cloth = cloths[i % cloths.length]!;
    const month = { year, month: i + 1, first: given.weekStart === "monday" ? 1 : 7, weekNumbers, names };
    return {
      title: `${name} ${year}`,
      size: { width: size.width, height: size.height + mmToUm(below) },
      bleed,
      items: [
        cloth,
        ...cutLine(
          font,
          width,
          height,
          safe,
          `Cut here for a print of ${nameOf(options.size ?? "8x10in", size)}`,
        ),
        ...monthGrid(font, { ...month, accent: accentOf(cloth.colorway) }, [
          safe,
          height + safe,
          width - 2 * safe,
          below - 2 * safe,
        ]),
      ],
    };
  });
}

/** A dashed line just below the picture, and what it is for. */
function cutLine(font: Font, width: number, y: number, safe: number, said: string): SheetItem[] {
  const [dash, gap] = [2, 1.5];
  const dashes: [number, number, number, number][] = [];
  for (let x = 0; x < width; x += dash + gap) dashes.push([x, y, Math.min(dash, width - x), 0.25]);
  return [
    rectangles(dashes, QUIET),
    letters(font, sayIn(font, said), {
      x: width - safe,
      y: y + 3,
      size: 2,
      ink: QUIET,
      align: "right",
      room: width - 2 * safe,
    }),
  ];
}

/** A size by its name where it has one: "8 × 10 in". */
const nameOf = (size: PrintSize, um: { readonly width: number; readonly height: number }): string =>
  typeof size !== "string" ? inMm(um) : size.replace(/^(\d+)x(\d+)(in|cm)$/, "$1 × $2 $3");

/** Least contrast of letters as large as a month's name on white (WCAG 2.2, 1.4.3, large text). */
const READABLE = 3;

/** The most colourful ink of a colorway that reads on white. */
function accentOf({ inks }: Colorway): string {
  let [best, most] = [INK, 24];
  for (const ink of Object.values<string>(inks)) {
    const bytes = inkBytes(ink);
    const colour = Math.max(...bytes) - Math.min(...bytes);
    if (colour > most && contrast(ink, PAPER) >= READABLE) [best, most] = [ink, colour];
  }
  return best;
}
