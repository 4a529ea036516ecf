import { pixelsPerMetre } from "../../units/pixels.ts";
import { chunk, joinBytes, SIGNATURE } from "./chunks.ts";

/** What a picture's first chunks say. */
export interface PictureSize {
  /** Pixels across and down. */
  readonly width: number;
  readonly height: number;
  /** The same in µm. */
  readonly widthUm: number;
  readonly heightUm: number;
}

/** Signature, IHDR (8-bit palette), sRGB and pHYs: what goes before the palette. */
export function headerBytes(size: PictureSize): Uint8Array {
  const ihdr = new DataView(new ArrayBuffer(13));
  ihdr.setUint32(0, size.width);
  ihdr.setUint32(4, size.height);
  ihdr.setUint8(8, 8);
  ihdr.setUint8(9, 3);
  const phys = new DataView(new ArrayBuffer(9));
  const [across, down] = [
    pixelsPerMetre(size.width, size.widthUm),
    pixelsPerMetre(size.height, size.heightUm),
  ];
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
