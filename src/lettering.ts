// The door for letters as motifs: sprigwright/lettering.
export { type Font, type Glyph, loadFont } from "./motif/lettering/font.ts";
export { type LetteringOptions, lettering } from "./motif/lettering/lettering.ts";
export { letteringMotif } from "./motif/lettering/piece.ts";
export { letteringPlugin } from "./plugin/lettering.ts";
