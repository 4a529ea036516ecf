import { badInput } from "../../errors/catalogue.ts";

/** The parts of `sharp` that are used here: the package itself need not be installed. */
export type Sharp = (
  input: Uint8Array,
  options: { limitInputPixels: number; sequentialRead: boolean },
) => Picture;

interface Picture {
  readonly metadata: () => Promise<{ density?: number; channels?: number; bitsPerSample?: number }>;
  readonly toColourspace: (space: "b-w") => Picture;
  readonly withIccProfile: (profile: string) => Picture;
  readonly tiff: (options: {
    xres: number;
    yres: number;
    resolutionUnit: "inch";
    compression: "lzw" | "ccittfax4";
    bitdepth?: 1;
  }) => Picture;
  readonly toBuffer: () => Promise<Uint8Array>;
}

/** @throws SprigwrightError `missing-package` */
export async function loadSharp(): Promise<Sharp> {
  try {
    return ((await import("sharp")) as unknown as { default: Sharp }).default;
  } catch (cause) {
    throw badInput(
      "missing-package",
      "toTiff",
      'TIFF files are written by the package "sharp", which is not installed',
      "run: npm install sharp",
      cause,
    );
  }
}
