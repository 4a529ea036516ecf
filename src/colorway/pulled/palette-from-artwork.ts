import { wrongType } from "../../errors/catalogue.ts";
import { roleFills } from "../../motif/artwork/role-fills.ts";
import type { MotifUse } from "../../motif/motif.ts";
import { readParams } from "../../params/compound.ts";
import { text } from "../../params/kinds.ts";
import { isUse } from "../../params/use.ts";
import { type Palette, readPalette } from "../palette.ts";

/** Options of {@link paletteFromArtwork}. */
export interface ArtworkPaletteOptions {
  /** Name of the palette, in kebab-case. */
  readonly name: string;
}

const spec = { name: text({ about: "Name of the palette.", max: 40 }) };

/**
 * The palette of a drawing that `readArtwork` or `traceImage` read: an ink for each role, called as the role, in the colour
 * that most of it has, back to front. Of roles of one colour the first names it.
 *
 * @example paletteFromArtwork(readArtwork(svg, { roles: { "#1d3c57": "fin" } }), { name: "fish" })
 * @throws SprigwrightError `wrong-type` for any other motif, `unknown-option`
 */
export function paletteFromArtwork(artwork: MotifUse, options: ArtworkPaletteOptions): Palette {
  const where = "paletteFromArtwork";
  const { name } = readParams(spec, options, where);
  const fills = isUse(artwork) ? roleFills(artwork) : undefined;
  if (!fills) throw wrongType(where, artwork, "a motif that readArtwork or traceImage made");
  const first = fills.filter(({ fill }, i) => fills.findIndex((other) => other.fill === fill) === i);
  return readPalette({ name, inks: Object.fromEntries(first.map(({ role, fill }) => [role, fill])) }, where);
}
