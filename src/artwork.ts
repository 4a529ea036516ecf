// The door for imported drawings: sprigwright/artwork.
export { artwork } from "./motif/artwork/artwork.ts";
export { type ArtworkFill, type ArtworkReport, inspectArtwork } from "./motif/artwork/inspect.ts";
export { type ArtworkOptions, readArtwork } from "./motif/artwork/read-artwork.ts";
export { artworkPlugin } from "./plugin/artwork.ts";
