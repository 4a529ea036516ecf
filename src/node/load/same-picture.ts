import type { Colorway } from "../../colorway/colorway.ts";
import { rasterize } from "../../output/png/rasterize.ts";
import { toSvg } from "../../output/svg/to-svg.ts";
import type { Tile } from "../../tile/tile.ts";
import { isWholePixels } from "../../units/pixels.ts";

/**
 * Whether a PNG or an SVG shows a tile just as this version draws it: it is drawn again at the size that the file
 * says, and what is drawn is compared to the byte, texts left out. Undefined for other files, and other sizes.
 */
export async function isSamePicture(
  bytes: Uint8Array,
  tile: Tile,
  colorway: Colorway,
): Promise<boolean | undefined> {
  const head = Buffer.from(bytes.subarray(0, 4)).toString("latin1");
  if (head === "\x89PNG") return isSamePng(bytes, tile, colorway);
  if (head === "%PDF") return undefined;
  return isSameSvg(Buffer.from(bytes).toString("utf8"), tile, colorway);
}

function isSameSvg(svg: string, tile: Tile, colorway: Colorway): boolean {
  const size = /<svg [^>]*width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg);
  if (!size) return false;
  const again = toSvg(tile, colorway, {
    cut: { width: Number(size[1]), height: Number(size[2]) },
    pattern: svg.includes("<pattern "),
    layers: svg.includes('<rect id="ground"') ? "stacked" : "knocked-out",
  });
  return drawingIn(svg) === drawingIn(again);
}

/** An SVG without its texts. */
const drawingIn = (svg: string): string =>
  svg.replace(/<title>[^<]*<\/title>/, "").replace(/<metadata>.*<\/metadata>/s, "");

async function isSamePng(bytes: Uint8Array, tile: Tile, colorway: Colorway): Promise<boolean | undefined> {
  const own = pixelsIn(bytes);
  if (own.length < 26) return false;
  const [width, height, perMetre] = [own.readUInt32BE(0), own.readUInt32BE(4), own.readUInt32BE(13)];
  const { block } = tile;
  const dpi = Math.round(perMetre * 0.0254);
  const whole = isWholePixels(block.width, dpi) && isWholePixels(block.height, dpi);
  const mm = (pixels: number): number => Math.round((pixels * 25_400) / dpi) / 1000;
  const across = Math.round((width * 1e6) / (perMetre * block.width));
  const size = whole
    ? { dpi, cut: { width: mm(width), height: mm(height) } }
    : { width, cut: { across, down: Math.round((across * height * block.width) / (width * block.height)) } };
  const raster = await rasterize(tile, { ...size, color: own[9] === 3 ? "indexed" : "truecolor" });
  if (raster.width !== width || raster.height !== height) return undefined;
  return own.equals(pixelsIn(raster.png(colorway, { recipe: false })));
}

/** All of a PNG that is seen: the data of its IHDR, pHYs, PLTE and IDAT chunks (PNG, third edition, 5.3). */
function pixelsIn(png: Uint8Array): Buffer {
  const file = Buffer.from(png.buffer, png.byteOffset, png.length);
  const parts: Buffer[] = [];
  for (const wanted of ["IHDR", "pHYs", "PLTE", "IDAT"])
    for (let at = 8; at + 12 <= file.length; at += 12 + file.readUInt32BE(at)) {
      if (file.toString("latin1", at + 4, at + 8) !== wanted) continue;
      parts.push(file.subarray(at + 8, at + 8 + file.readUInt32BE(at)));
    }
  return Buffer.concat(parts);
}
