// The door for imported drawings: sprigwright/artwork.
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
export { artworkPlugin } from "./plugin/artwork.ts";
