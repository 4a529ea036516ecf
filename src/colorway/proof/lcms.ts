import { badInput } from "../../errors/catalogue.ts";

/**
 * What is used of `lcms-wasm` (MIT), which brings Little CMS: what its `instantiate()` gives. Pass your own where your
 * bundler has to be told where the WASM file is.
 */
export interface Lcms {
  readonly HEAPU8: Uint8Array;
  readonly _malloc: (bytes: number) => number;
  readonly _free: (pointer: number) => void;
  readonly _cmsOpenProfileFromMem: (pointer: number, bytes: number) => number;
  readonly cmsCreate_sRGBProfile: () => number;
  readonly cmsCreateLab4Profile: () => number;
  readonly cmsCloseProfile: (profile: number) => void;
  readonly cmsGetProfileInfoASCII: (
    profile: number,
    info: number,
    language: string,
    country: string,
  ) => string;
  readonly cmsCreateTransform: (
    from: number,
    fromFormat: number,
    to: number,
    toFormat: number,
    intent: number,
    flags: number,
  ) => number;
  readonly cmsDoTransform: (transform: number, from: ArrayLike<number>, count: number) => Uint16Array;
}

/** Formats and flags of Little CMS 2 (lcms2.h): colour space, channels, bytes a channel. */
export const RGB_8: number = (4 << 16) | (3 << 3) | 1;
export const CMYK_16: number = (6 << 16) | (4 << 3) | 2;
export const LAB_16: number = (10 << 16) | (3 << 3) | 2;
export const EXACT: number = 0x0140; // no optimisation, no cache
export const BLACK_POINT: number = 0x2000;

/** The package, where the user passed none. @throws SprigwrightError `missing-package` */
export async function loadLcms(): Promise<Lcms> {
  try {
    const { instantiate } = await import("lcms-wasm");
    return await instantiate();
  } catch (cause) {
    throw badInput(
      "missing-package",
      "openProfile",
      "lcms-wasm, which reads colour profiles, cannot be loaded",
      "npm install lcms-wasm, or pass lcms: await instantiate() of it",
      cause,
    );
  }
}
