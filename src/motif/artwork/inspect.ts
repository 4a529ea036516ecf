import { within } from "../../errors/error.ts";
import { areaOf } from "../../geometry/path.ts";
import { createRandom } from "../../seed/random.ts";
import { type Length, toMm } from "../../units/length.ts";
import { drawMotif } from "../draw.ts";
import { readDrawing } from "./read.ts";
import { readArtwork } from "./read-artwork.ts";

/** One colour of a drawing. */
export interface ArtworkFill {
  /** Its colour in the file, `#rrggbb`. */
  readonly fill: string;
  /** The role it fills unless you name another. */
  readonly role: string;
  /** What it paints, in mm², parts that others cover included. */
  readonly area: number;
}

/** What {@link readArtwork} would make of a drawing. */
export interface ArtworkReport {
  /** mm */
  readonly width: number;
  /** mm */
  readonly height: number;
  /** Back to front, as its layers stack. */
  readonly fills: readonly ArtworkFill[];
  /** Flat areas that the file paints. */
  readonly areas: number;
  /** Curves and straight sides that they become, all layers together. */
  readonly curves: number;
  /** What was changed or left out, naming the element; empty when the drawing is taken as it is. */
  readonly warnings: readonly string[];
}

/** Says what a drawing holds before it is used: copy its fills from here to name their roles. @throws as readArtwork */
export function inspectArtwork(svg: string, options: { readonly size?: Length } = {}): ArtworkReport {
  const use = readArtwork(svg, options);
  const { areas, width, height, warnings } = within("artwork", () =>
    readDrawing(svg, toMm(use.params["size"] as number)),
  );
  const [motif] = drawMotif(use, createRandom("inspect"));
  const fills = Object.entries(use.roles).map(([fill, role]) => {
    const shape = motif!.shapes.find((one) => one.role === role);
    return { fill, role, area: shape ? Math.round(areaOf(shape.path) / 1e3) / 1e3 : 0 };
  });
  const curves = motif!.shapes.reduce((sum, { path }) => sum + path.points.length / 6, 0);
  return { width, height, fills, areas: areas.length, curves, warnings };
}
