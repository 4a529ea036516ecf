import { badInput, wrongType } from "../../errors/catalogue.ts";

/** Most characters of one lettering. */
export const MOST_CHARACTERS = 400;

/** Scripts whose letters join, change or run leftwards, which needs more than one glyph after another. */
const SHAPED =
  /[\u0590-\u08ff\u0900-\u0dff\u0e00-\u0eff\u0f00-\u109f\u1780-\u17ff\ufb1d-\ufdff\ufe70-\ufeff]/;

/** Signs that draw nothing and steer what does, and halves of a character. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]/u;

/**
 * A text as it will be set: line breaks as `\n`, accents joined with their letters.
 * @throws SprigwrightError `wrong-type`, `bad-lettering` (empty, control characters, scripts that need shaping)
 */
export function checkText(text: unknown, where: string): string {
  const wanted = `text of at most ${MOST_CHARACTERS} characters`;
  if (typeof text !== "string" || text.length > 2 * MOST_CHARACTERS) throw wrongType(where, text, wanted);
  const plain = text.replace(/\r\n?/g, "\n").normalize("NFC");
  if ([...plain].length > MOST_CHARACTERS) throw wrongType(where, text, wanted);
  if (plain.trim() === "")
    throw badText(where, "there is nothing to set", "give at least one letter that is drawn");
  const unseen = UNSEEN.exec(plain.replace(/\n/g, " "));
  if (unseen)
    throw badText(
      where,
      `the text holds ${codeOf(unseen[0])}, which is no letter`,
      "take control and formatting characters out; for a new line, write \\n",
    );
  const shaped = SHAPED.exec(plain);
  if (shaped)
    throw badText(
      where,
      `"${shaped[0]}" is of a script whose letters are shaped together, which is not supported`,
      "set the text as outlines in a drawing program and import it with readArtwork",
    );
  const mark = /.?\p{M}/u.exec(plain);
  if (mark)
    throw badText(
      where,
      `"${mark[0]}" has a mark (${codeOf(mark[0].slice(-1))}) that would have to be put in its place, which is not supported`,
      "use a letter that Unicode has as one character, such as é, or leave the mark out",
    );
  return plain;
}

/** A character's number as Unicode writes it. */
export const codeOf = (character: string): string =>
  `U+${character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0")}`;

/** What is wrong with a text. */
export const badText = (where: string, what: string, fix: string): Error =>
  badInput("bad-lettering", where, what, fix);
