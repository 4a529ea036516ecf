// The door for print files: sprigwright/print.
export type { Cut } from "./output/cut.ts";
export type { KeptRecipe } from "./output/kept-recipe.ts";
export type { InkChoice, PrintInk } from "./output/pdf/ink-choice.ts";
export { recipeInPdf } from "./output/pdf/recipe.ts";
export { type PdfOptions, toPdf } from "./output/pdf/to-pdf.ts";
export { type PlatePngOptions, plateToPng } from "./output/plates/plate-to-png.ts";
export { plateToSvg } from "./output/plates/plate-to-svg.ts";
export { type Plate, type SeparationOptions, separations } from "./output/plates/separations.ts";
