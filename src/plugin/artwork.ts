import { artwork } from "../motif/artwork/artwork.ts";
import { traced } from "../motif/artwork/trace/piece.ts";
import { VERSION } from "../tile/version.ts";
import { definePlugin, type Plugin } from "./plugin.ts";

/**
 * Imported drawings for a kit: `createKit({ plugins: [artworkPlugin()] })` builds recipes that hold them.
 * They are not among the library's own pieces, so that a kit without them carries no SVG reader.
 */
export const artworkPlugin = (): Plugin =>
  definePlugin({ name: "artwork", version: VERSION, pieces: [artwork, traced] });
