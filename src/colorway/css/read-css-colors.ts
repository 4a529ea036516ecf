import { badInput, wrongType } from "../../errors/catalogue.ts";
import { blocksOf } from "../../motif/artwork/blocks.ts";
import { readDeclarations } from "../../motif/artwork/declarations.ts";
import { type ForeignInk, type ForeignOptions, foreignPalette } from "../foreign.ts";
import { isColor, isTranslucent } from "../ink.ts";
import type { Palette } from "../palette.ts";

/** Longest style sheet, and blocks within blocks. */
const MOST_TEXT = 4_000_000;
const DEEPEST = 8;
/** What can only be meant as a colour: it is refused when it is none. */
const MEANT = /^#|^(rgba?|hsla?|hwb|lab|lch|oklab|oklch|color)\(/i;

/**
 * Palettes from the custom properties of a style sheet: each rule that sets colours becomes a palette, called by its
 * selector (`:root` becomes `root`), and `--sea-glass: #9fc2b4` an ink `sea-glass`. Properties that hold no colour, or a
 * translucent one, or stand for another (`var(--kelp)`), are passed over; a colour that comes again keeps its first name.
 * @throws SprigwrightError `css-too-large`, `no-colors`, `bad-color`, and what `palette` throws
 */
export function readCssColors(css: string, options: ForeignOptions = {}): readonly Palette[] {
  if (typeof css !== "string") throw wrongType("css", css, "the text of a style sheet");
  if (css.length > MOST_TEXT)
    throw badInput("css-too-large", "css", `it has more than ${MOST_TEXT} characters`, "read a smaller one");
  const taken = new Set<string>();
  const palettes = rulesOf(css, 0).flatMap(({ head, body }) => {
    const inks = inksOf(body, `css > ${head}`);
    return inks.length === 0 ? [] : [foreignPalette(head, inks, taken, "css", options)];
  });
  if (palettes.length === 0)
    throw badInput(
      "no-colors",
      "css",
      "no custom property has an opaque colour",
      "give rules with --name: colour",
    );
  return Object.freeze(palettes);
}

/** Rules, those within `@media` and its like among them. */
function rulesOf(css: string, depth: number): { readonly head: string; readonly body: string }[] {
  if (depth > DEEPEST)
    throw badInput("css-too-deep", "css", `it nests more than ${DEEPEST} blocks deep`, "read a plainer one");
  return blocksOf(css).flatMap((block) =>
    block.head.startsWith("@") && block.body.includes("{") ? rulesOf(block.body, depth + 1) : [block],
  );
}

function inksOf(body: string, where: string): ForeignInk[] {
  const { plain, important } = readDeclarations(body);
  return [...new Map([...plain, ...important])].flatMap(([name, color]) => {
    const isInk = (MEANT.test(color) || isColor(color)) && !isTranslucent(color);
    if (!name.startsWith("--") || !isInk) return [];
    return [{ name: name.slice(2), color, alias: false, where: `${where} > ${name}` }];
  });
}
