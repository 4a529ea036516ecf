import { type KeptRecipe, readKept } from "../kept-recipe.ts";
import { notesInPdf } from "./notes.ts";

/**
 * The recipe in a PDF that `toPdf` wrote; undefined where there is none.
 * @throws SprigwrightError `bad-pdf`, `wrong-type`
 */
export async function recipeInPdf(bytes: Uint8Array): Promise<KeptRecipe | undefined> {
  const notes = await notesInPdf(bytes, "recipeInPdf");
  return notes === undefined ? undefined : readKept(notes);
}
