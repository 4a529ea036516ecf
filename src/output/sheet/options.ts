import type { Colorway } from "../../colorway/colorway.ts";
import { badInput, missingOption, wrongType } from "../../errors/catalogue.ts";
import type { Size } from "../../geometry/lattice.ts";
import type { Font } from "../../motif/lettering/font.ts";
import { checkFont } from "../../motif/lettering/lettering.ts";
import { optional } from "../../params/compound.ts";
import { flag, length, text } from "../../params/kinds.ts";
import { type LengthParam, makeParam, type Param } from "../../params/param.ts";
import { checkTile } from "../../tile/check-tile.ts";
import type { Tile } from "../../tile/tile.ts";
import type { Length } from "../../units/length.ts";
import { type PrintSize, readPrintSize } from "../../units/print-sizes.ts";
import { inksFor } from "../inks.ts";

// What several sheets are given, read alike.

/** The font of all that a sheet says. */
export const font = (): Param<Font, Font, false> =>
  makeParam(
    {
      about: { about: "The font of all text, from loadFont." },
      wanted: "a font from loadFont(bytes)",
      schema: {},
      check: (value, where) => {
        checkFont(value, where.replace(/ > font$/, ""));
        return value as Font;
      },
    },
    missingOption,
  );

/** A finished tile. */
export const tile = (): Param<Tile, Tile, false> =>
  makeParam(
    {
      about: { about: "The tile that is shown." },
      wanted: "a tile: what `await buildTile(pattern)` gives",
      schema: {},
      check: (value, where) => {
        checkTile(value as Tile, where);
        return value as Tile;
      },
    },
    missingOption,
  );

/** A colorway; whether it is for its tile, the sheet checks. */
export const colorway = (): Param<Colorway, Colorway, false> =>
  makeParam(
    {
      about: { about: "The colorway that is shown." },
      wanted: "a colorway: one of the pattern's, or what colorwayFor(tile, name, inks) gives",
      schema: {},
      check: (value) => value as Colorway,
    },
    missingOption,
  );

/** Colorways of one tile, as a list or by name. */
export type Colorways = readonly Colorway[] | Readonly<Record<string, Colorway>>;

/** 1 to `most` colorways. @throws SprigwrightError `no-colorways`, `wrong-type` */
export const colorways = (most: number): Param<Colorways, readonly Colorway[], false> =>
  makeParam(
    {
      about: { about: "The colorways that are shown, as a list or by name; the first leads." },
      wanted: `1 to ${most} colorways, as a list or by name`,
      schema: {},
      check: (value, where) => {
        if (typeof value !== "object" || value === null) throw wrongType(where, value, "colorways");
        const list = Array.isArray(value) ? (value as Colorway[]) : (Object.values(value) as Colorway[]);
        if (list.length === 0)
          throw badInput(
            "no-colorways",
            where,
            "there are none",
            "give at least one colorway of the pattern",
          );
        if (list.length > most)
          throw badInput(
            "too-many-colorways",
            where,
            `${list.length} colorways do not go on one sheet`,
            `give at most ${most}, and make several sheets`,
          );
        return list;
      },
    },
    missingOption,
  );

/** The size of a page; the sheet receives whole µm. */
export function printSize<D extends PrintSize | undefined>(
  about: string,
  fallback?: D,
): Param<PrintSize, Size, D extends undefined ? false : true> {
  return makeParam(
    {
      about: fallback === undefined ? { about } : { about, default: fallback },
      wanted: 'a size such as "A4", "8x10in" or { width: "12in", height: "12in" }',
      schema: {},
      check: readPrintSize,
    },
    missingOption,
  );
}

/** What every sheet of one pattern is given. */
export const sheet = (): {
  readonly tile: Param<Tile, Tile, false>;
  readonly font: Param<Font, Font, false>;
  readonly size: Param<PrintSize, Size, true>;
  readonly landscape: Param<boolean, boolean, true>;
  readonly margin: LengthParam;
  readonly title: Param<string, string | undefined, true>;
} => ({
  tile: tile(),
  font: font(),
  size: printSize("Size of the sheet.", "A4"),
  landscape: flag({ about: "Whether the longer side lies level.", default: false }),
  margin: length({ about: "White on every side.", min: 0, max: 500, default: 12 }),
  title: optional(text({ about: "Heading.", max: 120 })),
});

/** The options of every sheet of one pattern, as a user writes them. */
export interface SheetOptions {
  readonly tile: Tile;
  /** The font of all text, from `loadFont`. */
  readonly font: Font;
  /** Size of the sheet. Default "A4". */
  readonly size?: PrintSize;
  /** Whether the longer side lies level. Default false. */
  readonly landscape?: boolean;
  /** White around it, 0 to 500 mm. Default 12 mm: most printers cannot reach the edge. */
  readonly margin?: Length;
  /** Heading, at most 120 characters. Default: the pattern's name. */
  readonly title?: string;
}

/** A sheet between its margins (mm), and the unit that its type and gaps are measured in: 1 on an A4 sheet. */
export interface Frame {
  /** The sheet (µm). */
  readonly size: Size;
  readonly width: number;
  readonly height: number;
  readonly u: number;
}

/** @throws SprigwrightError `page-too-small` when less than `least` mm are left between the margins */
export function frameOf(
  given: { readonly size: Size; readonly landscape: boolean; readonly margin: number },
  least: readonly [number, number],
  where: string,
): Frame {
  const size = given.landscape ? lying(given.size) : given.size;
  const [width, height] = [size.width / 1000 - 2 * given.margin, size.height / 1000 - 2 * given.margin];
  if (width < least[0] || height < least[1])
    throw tooSmall(
      `${where} > size`,
      `a page of ${size.width / 1000} x ${size.height / 1000} mm with ${given.margin} mm of margin leaves ${Math.max(0, width)} x ${Math.max(0, height)} mm, and ${least[0]} x ${least[1]} mm are wanted`,
    );
  return { size, width, height, u: Math.sqrt((width * height) / (186 * 273)) };
}

/** A size with its longer side level. */
export const lying = ({ width, height }: Size): Size => ({
  width: Math.max(width, height),
  height: Math.min(width, height),
});

/** Refuses a colorway that is not for a tile. @throws SprigwrightError `missing-ink`, `wrong-type` */
export const checkInks = (given: Tile, list: readonly Colorway[]): void => {
  for (const one of list) inksFor(given, one);
};

/** A page on which what has to be there has no room. */
export const tooSmall = (where: string, what: string): Error =>
  badInput("page-too-small", where, what, "give a larger size or a smaller margin");
