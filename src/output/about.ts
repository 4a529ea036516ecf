import type { Colorway } from "../colorway/colorway.ts";
import { unknownName, wrongType } from "../errors/catalogue.ts";
import { isRecord } from "../params/compound.ts";
import type { Tile } from "../tile/tile.ts";
import type { About } from "./xmp.ts";

const KEYS = ["title", "subject", "rights", "creator"] as const;

/** Longest text taken. */
const LONGEST = 2000;

/**
 * What a file of a tile in a colorway says about itself: what was given, or else the pattern, the colorway and its subject.
 * @throws SprigwrightError `unknown-option`, `wrong-type`
 */
export function aboutTile(tile: Pick<Tile, "name" | "recipe">, colorway: Colorway, given: About): About {
  checkAbout(given, `${tile.name} > about`);
  return { title: `${tile.name}, ${colorway.name}`, subject: tile.recipe.subject, ...given };
}

/** @throws SprigwrightError `unknown-option`, `wrong-type` */
export function checkAbout(given: About, where: string): void {
  if (!isRecord(given)) throw wrongType(where, given, "an object with title, subject, rights or creator");
  for (const [key, text] of Object.entries(given)) {
    if (!KEYS.includes(key as never)) throw unknownName(where, "option", key, KEYS);
    if (text !== undefined && (typeof text !== "string" || text.length > LONGEST))
      throw wrongType(`${where} > ${key}`, text, `text of at most ${LONGEST} characters`);
  }
}
