import { badInput } from "../../errors/catalogue.ts";

/** Largest font file read, in bytes (20 MB: the large faces for Chinese and Japanese). */
export const LARGEST = 20_000_000;

/**
 * What kind of font file these bytes are, by their first four.
 * @throws SprigwrightError `font-format` (WOFF2, collections, no font at all), `font-too-large`
 */
export function fontFormat(bytes: Uint8Array): "sfnt" | "woff" {
  const refuse = (code: string, what: string, fix: string): never => {
    throw badInput(code, "font", what, fix);
  };
  if (bytes.length > LARGEST)
    refuse("font-too-large", `the font has ${bytes.length} bytes`, `give at most ${LARGEST}`);
  switch (String.fromCharCode(...bytes.subarray(0, 4))) {
    case "\u0000\u0001\u0000\u0000":
    case "OTTO":
    case "true":
      return "sfnt";
    case "wOFF":
      return "woff";
    case "wOF2":
      return refuse(
        "font-format",
        "this is a WOFF2 font, which is packed",
        "unpack it first: loadFont(await decompress(bytes)), with a WOFF2 decoder of your choice; or give the same font as .woff, .ttf or .otf",
      );
    case "ttcf":
      return refuse("font-format", "this is a collection of fonts", "give one font of it, as .ttf or .otf");
    default:
      return refuse(
        "font-format",
        "these bytes are not a font",
        "give the bytes of a .ttf, .otf or .woff file",
      );
  }
}
