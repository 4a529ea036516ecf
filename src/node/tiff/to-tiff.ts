import { readFile } from "node:fs/promises";
import { readProfile } from "../../colorway/proof/read-profile.ts";
import { badInput, wrongType } from "../../errors/catalogue.ts";
import { optional, readParams } from "../../params/compound.ts";
import { text } from "../../params/kinds.ts";
import { reasonOf } from "../faults.ts";
import { loadSharp, type Sharp } from "./load-sharp.ts";

/** Options of {@link toTiff}. */
export interface TiffOptions {
  /**
   * Path of the ICC profile that your printer gave you, for RGB or CMYK: the colours are taken from sRGB into its space by its
   * own tables, and it goes with the file. Default: RGB, tagged as sRGB.
   */
  readonly profile?: string | undefined;
}

const spec = { profile: optional(text({ about: "Path of an ICC profile.", max: 4000 })) } as const;

/** Most pixels taken: what `rasterize` and `plateToPng` can make. */
const MOST_PIXELS = 1_073_741_824;

/**
 * A PNG of this library as a TIFF at the same true size, through the package `sharp`, which you install beside this one.
 *
 * Pictures come out in RGB, or in the space of the profile, LZW-compressed. Plates stay grey: those of one bit a pixel in
 * Group 4, which films and screens are sent in. The bytes depend on the version of `sharp`.
 *
 * @example await toTiff((await rasterize(tile, { dpi: 300 })).png(colorway), { profile: "fogra39.icc" })
 * @throws SprigwrightError `missing-package` without `sharp`, `bad-picture`, `unreadable-profile`, `bad-profile`,
 * `wrong-profile` (for plates, or a grey one), `unknown-option`, `wrong-type`
 */
export async function toTiff(png: Uint8Array, options: TiffOptions = {}): Promise<Uint8Array> {
  if (!(png instanceof Uint8Array)) throw wrongType("toTiff > png", png, "the bytes of a PNG, a Uint8Array");
  const { profile } = readParams(spec, options, "toTiff");
  if (profile !== undefined) await checkProfile(profile);
  const sharp = await loadSharp();
  try {
    const picture = sharp(png, { limitInputPixels: MOST_PIXELS, sequentialRead: true });
    const { density, channels, bitsPerSample } = await picture.metadata();
    const perMm = (density ?? 72) / 25.4;
    const size = { xres: perMm, yres: perMm, resolutionUnit: "inch" } as const;
    if (channels === 1) {
      if (profile !== undefined) throw plateWithProfile();
      const grey = picture.toColourspace("b-w");
      return await bytesOf(
        bitsPerSample === 1
          ? grey.tiff({ ...size, bitdepth: 1, compression: "ccittfax4" })
          : grey.tiff({ ...size, compression: "lzw" }),
      );
    }
    return await bytesOf(picture.withIccProfile(profile ?? "srgb").tiff({ ...size, compression: "lzw" }));
  } catch (cause) {
    if (cause instanceof Error && cause.name === "SprigwrightError") throw cause;
    throw badInput(
      "bad-picture",
      "toTiff > png",
      `it could not be turned into a TIFF: ${reasonOf(cause)}`,
      "give the whole bytes of a PNG that rasterize or plateToPng made",
      cause,
    );
  }
}

const bytesOf = async (picture: ReturnType<Sharp>): Promise<Uint8Array> =>
  Uint8Array.from(await picture.toBuffer());

async function checkProfile(file: string): Promise<void> {
  let bytes: Uint8Array;
  try {
    bytes = Uint8Array.from(await readFile(file));
  } catch (cause) {
    throw badInput(
      "unreadable-profile",
      `toTiff > profile ${file}`,
      `it cannot be read: ${reasonOf(cause)}`,
      "give the path of an .icc file",
      cause,
    );
  }
  const { space } = readProfile(bytes, `toTiff > profile ${file}`);
  if (space !== "GRAY") return;
  throw badInput(
    "wrong-profile",
    `toTiff > profile ${file}`,
    "it is for grey",
    "give a profile for RGB or CMYK",
  );
}

const plateWithProfile = (): Error =>
  badInput(
    "wrong-profile",
    "toTiff > profile",
    "a plate is one ink, and has no colours to convert",
    "leave the profile out",
  );
