import { wrongType } from "../../errors/catalogue.ts";
import type { Length } from "../../units/length.ts";
import { useMotif } from "../define.ts";
import type { MotifUse } from "../motif.ts";
import type { Font } from "./font.ts";
import { letteringMotif } from "./piece.ts";
import { setLine } from "./set-line.ts";

/** Options of {@link lettering}. */
export interface LetteringOptions<Role extends string> {
  /** Size of type, 1 mm to 2 m: the height of an em, of which capitals take about 0.7. Default 20 mm. */
  readonly size?: Length;
  /** The role that the letters fill; default "letter". */
  readonly role?: Role;
}

/**
 * One line of letters as a motif, centred on the origin: `lettering(font, "Harbour", { size: 24, role: "ink" })`.
 * Kerned, without ligatures; letters that overlap are united. A recipe holds the outlines, never the font.
 * @throws SprigwrightError `missing-glyph` (names the character), `bad-lettering`, `length-range`, `wrong-type`
 */
export function lettering<const Role extends string = "letter">(
  font: Font,
  text: string,
  options: LetteringOptions<Role> = {},
): MotifUse<Role> {
  if (typeof font?.glyph !== "function")
    throw wrongType("lettering > font", font, "a font from loadFont(bytes)");
  if (typeof text !== "string" || text.length > 200)
    throw wrongType("lettering > text", text, "one line of at most 200 characters");
  const { role, ...others } = options;
  const roles = role === undefined ? {} : { roles: { letter: role } };
  return useMotif(letteringMotif.piece, {
    ...others,
    ...roles,
    text,
    outline: setLine(font, text),
  }) as MotifUse<Role>;
}
