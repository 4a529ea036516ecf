import type { Colorway } from "../colorway/colorway.ts";
import { unknownName, wrongType } from "../errors/catalogue.ts";
import { isRecord } from "../params/compound.ts";
import type { Tile } from "../tile/tile.ts";
import { keptText } from "./kept-recipe.ts";
import type { About } from "./xmp.ts";

/** What goes along in a picture's file: what it says about itself, and how it was made. */
export interface FileNotes extends About {
  /**
   * Whether the recipe goes along, from which the tile can be built again; default true. It is enough to make the pattern
   * in any size and colorway: false for files that go to clients and shops.
   */
  readonly recipe?: boolean | undefined;
}

const TEXTS = ["title", "subject", "rights", "creator"] as const;

/** Longest text taken. */
const LONGEST = 2000;

/**
 * What a file of a tile in a colorway says about itself, which is what was given, or else the pattern, the colorway and its
 * subject; and the text of its recipe, if that is to go along.
 * @throws SprigwrightError `unknown-option`, `wrong-type`
 */
export function notesOf(
  tile: Pick<Tile, "name" | "recipe" | "digest">,
  colorway: Colorway,
  given: FileNotes,
): { readonly about: About; readonly kept: string | undefined } {
  checkNotes(given, `${tile.name} > about`);
  const { recipe = true, title, subject, ...more } = given;
  return {
    about: {
      title: title ?? `${tile.name}, ${colorway.name}`,
      subject: subject ?? tile.recipe.subject,
      ...more,
    },
    kept: recipe ? keptText(tile, colorway.name) : undefined,
  };
}

/** @throws SprigwrightError `unknown-option`, `wrong-type` */
export function checkNotes(given: FileNotes, where: string): void {
  if (!isRecord(given)) throw wrongType(where, given, "an object with title, subject, rights or creator");
  const { recipe, ...texts } = given;
  if (recipe !== undefined && typeof recipe !== "boolean")
    throw wrongType(`${where} > recipe`, recipe, "true or false");
  for (const [key, text] of Object.entries(texts)) {
    if (!TEXTS.includes(key as never)) throw unknownName(where, "option", key, [...TEXTS, "recipe"]);
    if (text !== undefined && (typeof text !== "string" || text.length > LONGEST))
      throw wrongType(`${where} > ${key}`, text, `text of at most ${LONGEST} characters`);
  }
}
