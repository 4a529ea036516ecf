// The door for imported drawings: sprigwright/artwork.
export { type ArtworkPaletteOptions, paletteFromArtwork } from "./colorway/pulled/palette-from-artwork.ts";
export { type ImagePaletteOptions, paletteFromImage } from "./colorway/pulled/palette-from-image.ts";
export { artwork } from "./motif/artwork/artwork.ts";
export {
  type ArtworkFill,
  type ArtworkReport,
  type ArtworkRole,
  inspectArtwork,
  sayArtwork,
} from "./motif/artwork/inspect.ts";
export { type ArtworkOptions, type ArtworkShaping, readArtwork } from "./motif/artwork/read-artwork.ts";
export type { Dropped } from "./motif/artwork/report.ts";
export { artworkSheet, type SheetShaping } from "./motif/artwork/sheet.ts";
export {
  inspectTrace,
  sayTrace,
  type TracedInk,
  type TraceReport,
} from "./motif/artwork/trace/inspect-trace.ts";
export type { PictureLength, TraceOptions, TraceShaping } from "./motif/artwork/trace/options.ts";
export type { Pixels } from "./motif/artwork/trace/picture.ts";
export { traced } from "./motif/artwork/trace/piece.ts";
export { traceImage } from "./motif/artwork/trace/trace-image.ts";
export { artworkPlugin } from "./plugin/artwork.ts";
