import { badInput } from "../../errors/catalogue.ts";
import type { MotifUse } from "../motif.ts";
import { checkText } from "./check-text.ts";
import type { Font } from "./font.ts";
import { glyphsOf } from "./glyphs-of.ts";
import { checkFont, lettering } from "./lettering.ts";
import { readBareSetting, type SetOptions } from "./options.ts";

/** Options of {@link letterMotifs} and {@link wordMotifs}. */
export interface TossedOptions<Role extends string> extends SetOptions {
  /** The role that all of them fill; default "letter". */
  readonly role?: Role;
}

/** One entry of a layout's `motifs`: a letter or a word, and how often it comes in the text. */
export interface TossedMotif<Role extends string> {
  readonly motif: MotifUse<Role>;
  readonly share: number;
}

/** Most different letters or words: as many as a toss takes. */
const MOST = 64;

/**
 * Every letter of a text as a motif: `toss({ motifs: letterMotifs(font, "Hollin Quay", { size: 16 }) })`.
 * The same letter is the same motif; its share is how often it comes. Capitals and small letters differ.
 * @throws SprigwrightError `missing-glyph`, `bad-lettering`, `too-many-motifs` (more than 64), and as `lettering`
 */
export function letterMotifs<const Role extends string = "letter">(
  font: Font,
  text: string,
  options: TossedOptions<Role> = {},
): TossedMotif<Role>[] {
  const where = "letterMotifs";
  const plain = checked(font, text, options, where);
  const drawn = glyphsOf(font, plain, `${where} > text`)
    .flat()
    .filter(({ glyph }) => glyph.commands.length > 0);
  return counted(
    font,
    drawn.map(({ character }) => character),
    options,
    where,
  );
}

/**
 * Every word of a text as a motif, parted at spaces and line breaks: `toss({ motifs: wordMotifs(font, "tide salt
 * tide") })`. The same word is the same motif; its share is how often it comes.
 * @throws SprigwrightError `missing-glyph`, `bad-lettering`, `too-many-motifs` (more than 64), and as `lettering`
 */
export function wordMotifs<const Role extends string = "letter">(
  font: Font,
  text: string,
  options: TossedOptions<Role> = {},
): TossedMotif<Role>[] {
  const where = "wordMotifs";
  const plain = checked(font, text, options, where);
  glyphsOf(font, plain, `${where} > text`);
  return counted(
    font,
    plain.split(/\s+/).filter((word) => word !== ""),
    options,
    where,
  );
}

function checked(font: Font, text: string, options: object, where: string): string {
  checkFont(font, where);
  readBareSetting(options, where);
  return checkText(text, `${where} > text`);
}

function counted<Role extends string>(
  font: Font,
  pieces: readonly string[],
  options: TossedOptions<Role>,
  where: string,
): TossedMotif<Role>[] {
  const times = new Map<string, number>();
  for (const piece of pieces) times.set(piece, (times.get(piece) ?? 0) + 1);
  if (times.size > MOST)
    throw badInput(
      "too-many-motifs",
      `${where} > text`,
      `it has ${times.size} different ones, and a toss takes ${MOST}`,
      "give a shorter text, or several tosses",
    );
  return [...times].map(([piece, share]) => ({
    motif: lettering(font, piece, options) as MotifUse<Role>,
    share,
  }));
}
