import type { Size } from "../../geometry/lattice.ts";
import { pixelsPerMetre } from "../../units/pixels.ts";
import { chunk, joinBytes, SIGNATURE } from "./chunks.ts";
import type { Grid } from "./grid.ts";
import type { ColorType } from "./options.ts";

/** Signature, IHDR (8 bits, palette or truecolour), sRGB and pHYs: what goes before the palette. */
export function headerBytes(pixels: Size, grid: Grid, color: ColorType): Uint8Array {
  const ihdr = new DataView(new ArrayBuffer(13));
  ihdr.setUint32(0, pixels.width);
  ihdr.setUint32(4, pixels.height);
  ihdr.setUint8(8, 8);
  ihdr.setUint8(9, color === "indexed" ? 3 : 2);
  const phys = new DataView(new ArrayBuffer(9));
  const across = pixelsPerMetre(grid.width, grid.block.width);
  const down = pixelsPerMetre(grid.height, grid.block.height);
  phys.setUint32(0, across);
  phys.setUint32(4, down);
  phys.setUint8(8, 1);
  const perceptual = Uint8Array.of(0);
  return joinBytes([
    SIGNATURE,
    chunk("IHDR", new Uint8Array(ihdr.buffer)),
    chunk("sRGB", perceptual),
    // Coarser than a pixel a metre the chunk cannot say.
    across > 0 && down > 0 ? chunk("pHYs", new Uint8Array(phys.buffer)) : [],
  ]);
}
