import { ringArea } from "../../geometry/flatten.ts";
import type { Size } from "../../geometry/lattice.ts";
import { outlineOfRings } from "../../geometry/outline.ts";
import { fillOutline, fillScratch } from "./fill.ts";
import { gridOf, type PixelGrid } from "./raster.ts";

/** A block as its viewer sees it: the role on top in every pixel. */
export interface RoleRaster extends PixelGrid {
  /** 0 for the ground, n for the n-th layer from the back. */
  readonly roles: Uint8Array;
}

/** Side of a pixel (µm) that is aimed at: an outline of half a millimetre is then several pixels wide. */
const FINE = 140;
const LEAST = 262_144;
const MOST = 4_194_304;

/** Draws layers over the ground, back to front. `layers` holds the flattened contours of each (µm). */
export function roleRasterOf(block: Size, layers: readonly (readonly Float64Array[])[]): RoleRaster {
  const wanted = (block.width / FINE) * (block.height / FINE);
  const grid = gridOf(block, Math.max(LEAST, Math.min(MOST, wanted)));
  const { columns, rows } = grid;
  const roles = new Uint8Array(columns * rows);
  // Contours come one by one, holes apart from what they are cut out of: their windings are added up.
  const winding = new Int16Array(columns * rows);
  const scratch = fillScratch(rows);
  layers.forEach((rings, layer) => {
    winding.fill(0);
    for (const ring of rings) {
      const way = ringArea(ring) < 0 ? -1 : 1;
      fillOutline(grid, outlineOfRings([ring]), 0, 0, scratch, (row, from, to) => {
        for (let column = from; column < to; column++) {
          const at = row * columns + (column & (columns - 1));
          winding[at] = winding[at]! + way;
        }
      });
    }
    for (let i = 0; i < winding.length; i++) if (winding[i] !== 0) roles[i] = layer + 1;
  });
  return { ...grid, roles };
}
