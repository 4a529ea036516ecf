import { wrongType } from "../../errors/catalogue.ts";
import { type KeptRecipe, readKept } from "../kept-recipe.ts";

/** Namespace of the element that holds what a drawing was made from. */
export const RECIPE_NAMESPACE = "urn:sprigwright:recipe";

/**
 * The recipe in an SVG that `toSvg` wrote; undefined where there is none. Looks for the element alone, since a file
 * that another program has saved again may hold anything around it, a prefix to its name included.
 * @throws SprigwrightError `wrong-type`
 */
export function recipeInSvg(svg: string): KeptRecipe | undefined {
  if (typeof svg !== "string") throw wrongType("recipeInSvg", svg, "the text of an SVG");
  const at = svg.indexOf(RECIPE_NAMESPACE);
  if (at < 0) return undefined;
  // The namespace may be declared far from the element: every element of that name is tried.
  for (const [, text] of svg.matchAll(/<(?:[\w-]+:)?recipe\b[^<>]*>([^<]*)</g)) {
    const kept = readKept(plain(text!));
    if (kept) return kept;
  }
  return undefined;
}

const ENTITIES: Readonly<Record<string, string>> = { lt: "<", gt: ">", quot: '"', apos: "'", amp: "&" };

/** Text as it was before XML's marks were escaped. */
const plain = (text: string): string =>
  text.replace(/&(?:#(\d{1,7})|#x([0-9a-fA-F]{1,6})|(\w{1,8}));/g, (all, decimal, hex, name) => {
    if (name) return ENTITIES[name as string] ?? all;
    const code = decimal ? Number(decimal) : Number.parseInt(hex as string, 16);
    return code <= 0x10ffff ? String.fromCodePoint(code) : all;
  });
