// The door for letters as motifs: sprigwright/lettering.
export { type Font, loadFont } from "./motif/lettering/font.ts";
export type { Glyph, OutlineStep } from "./motif/lettering/glyph.ts";
export { lettering } from "./motif/lettering/lettering.ts";
export type { Arrangement } from "./motif/lettering/monogram/arrange.ts";
export type { Frame } from "./motif/lettering/monogram/frame.ts";
export { type MonogramOptions, monogram } from "./motif/lettering/monogram/monogram.ts";
export { monogramMotif } from "./motif/lettering/monogram/piece.ts";
export type { ArcOptions, LetteringOptions, SetOptions } from "./motif/lettering/options.ts";
export { letteringMotif } from "./motif/lettering/piece.ts";
export type { RoleCycle } from "./motif/lettering/role-cycle.ts";
export type { Align } from "./motif/lettering/set-lines.ts";
export { letterMotifs, type TossedMotif, type TossedOptions, wordMotifs } from "./motif/lettering/tossed.ts";
export { letteringPlugin } from "./plugin/lettering.ts";
