import { badInput, wrongType } from "../../../errors/catalogue.ts";
import { type Box, isPath } from "../../../geometry/path.ts";
import { isRecord } from "../../../params/compound.ts";
import { checkTile } from "../../../tile/check-tile.ts";
import type { Page } from "../page.ts";

/** Largest side of a page, bleed, and number of items (µm). */
const [LARGEST, MOST_BLEED, MOST_ITEMS] = [6_000_000, 200_000, 100_000];

const isWhole = (value: unknown, least: number, most: number): boolean =>
  Number.isInteger(value) && (value as number) >= least && (value as number) <= most;

const isBox = (value: unknown): value is Box =>
  isRecord(value) &&
  ["minX", "minY", "maxX", "maxY"].every((key) => isWhole(value[key], -LARGEST, 2 * LARGEST)) &&
  (value as unknown as Box).minX < (value as unknown as Box).maxX &&
  (value as unknown as Box).minY < (value as unknown as Box).maxY;

/**
 * Refuses what is no sound page: pages are plain data, and may be made by hand.
 * @throws SprigwrightError `bad-page`, `wrong-type`
 */
export function checkPage(page: Page, where: string): void {
  if (!isRecord(page) || !isRecord(page.size))
    throw wrongType(where, page, "a page, such as strikeOffSheet gives");
  const { title, size, bleed, items } = page;
  const place = `${where} > ${String(title).slice(0, 80)}`;
  const bad = (at: string, what: string): Error =>
    badInput("bad-page", `${place}${at}`, what, "see docs/sheets.md for what a page is made of");
  if (typeof title !== "string" || title.length > 400)
    throw bad("", "its title is no text of at most 400 characters");
  if (!isWhole(size.width, 1000, LARGEST) || !isWhole(size.height, 1000, LARGEST))
    throw bad(" > size", "width and height are not whole µm from 1 mm to 6 m");
  if (!isWhole(bleed, 0, MOST_BLEED)) throw bad(" > bleed", "it is not whole µm from 0 to 200 mm");
  if (!Array.isArray(items) || items.length > MOST_ITEMS)
    throw bad(" > items", `it is no list of at most ${MOST_ITEMS}`);
  for (const [i, item] of items.entries()) {
    const at = ` > items[${i}]`;
    if (item?.kind === "fill") {
      if (!/^#[0-9a-f]{6}$/.test(item.ink)) throw bad(at, "its ink is not written #rrggbb");
      if (!isPath(item.path)) throw bad(at, "its path is no path: draw it with pen()");
    } else if (item?.kind === "cloth") {
      checkTile(item.tile, `${place}${at} > tile`);
      if (!isBox(item.area)) throw bad(at, "its area is no box of whole µm");
      if (
        !Array.isArray(item.at) ||
        item.at.length !== 2 ||
        !item.at.every((v: unknown) => isWhole(v, -LARGEST, 2 * LARGEST))
      )
        throw bad(at, "`at` is no pair of whole µm");
      if (!(item.scale >= 0.01 && item.scale <= 100)) throw bad(at, "its scale is outside 0.01 to 100");
    } else throw bad(at, 'its kind is neither "cloth" nor "fill"');
  }
}
