import { badInput } from "../../errors/catalogue.ts";
import { inkBytes } from "../ink.ts";
import { BLACK_POINT, CMYK_16, EXACT, LAB_16, type Lcms, RGB_8 } from "./lcms.ts";

/** Shares of the four inks, 0..1. */
export type Cmyk = readonly [cyan: number, magenta: number, yellow: number, black: number];
/** CIELAB of D50, relative to the paper. */
export type Lab = readonly [lightness: number, a: number, b: number];

/** What a profile does, as functions. */
export interface Press {
  /** As the profile describes itself. */
  readonly name: string;
  /** What the profile makes of an ink `#rrggbb`. */
  readonly separate: (ink: string) => Cmyk;
  /** What inks on paper look like, one after another. */
  readonly print: (inks: readonly Cmyk[]) => readonly Lab[];
}

const INTENTS = { perceptual: 0, relative: 1 } as const;
export type Intent = keyof typeof INTENTS;

/** A profile's own description, in English. */
const DESCRIPTION = 0;

/**
 * Opens a profile in Little CMS: 16-bit formats, no shortcuts. Relative colorimetric is with black point compensation.
 * @throws SprigwrightError `bad-profile`
 */
export function pressOf(lcms: Lcms, bytes: Uint8Array, intent: Intent, where: string): Press {
  const refuse = (what: string, cause?: unknown): Error =>
    badInput("bad-profile", where, what, "ask your printer for the file again", cause);
  try {
    // lcms copies the bytes; on its heap, since its stack is too small for most profiles.
    const pointer = lcms._malloc(bytes.length);
    lcms.HEAPU8.set(bytes, pointer);
    const profile = lcms._cmsOpenProfileFromMem(pointer, bytes.length);
    lcms._free(pointer);
    if (profile === 0) throw refuse("it cannot be opened: it is damaged");
    const [srgb, lab] = [lcms.cmsCreate_sRGBProfile(), lcms.cmsCreateLab4Profile()];
    const flags = intent === "relative" ? EXACT | BLACK_POINT : EXACT;
    const there = lcms.cmsCreateTransform(srgb, RGB_8, profile, CMYK_16, INTENTS[intent], flags);
    const back = lcms.cmsCreateTransform(profile, CMYK_16, lab, LAB_16, INTENTS.relative, EXACT);
    if (there === 0 || back === 0) throw refuse("it lacks the tables between its inks and colours");
    const name = lcms.cmsGetProfileInfoASCII(profile, DESCRIPTION, "en", "US").replace(/\0.*$/s, "").trim();
    for (const one of [profile, srgb, lab]) lcms.cmsCloseProfile(one);
    return {
      name,
      separate: (ink) => {
        const [c, m, y, k] = lcms.cmsDoTransform(there, inkBytes(ink), 1);
        return [c! / 65_535, m! / 65_535, y! / 65_535, k! / 65_535];
      },
      print: (inks) => {
        const levels = Uint16Array.from(inks.flat(), (share) => Math.round(share * 65_535));
        const out = lcms.cmsDoTransform(back, levels, inks.length);
        return inks.map((_, i) => labOf(out, 3 * i));
      },
    };
  } catch (cause) {
    if (cause instanceof Error && cause.name === "SprigwrightError") throw cause;
    throw refuse("it cannot be read", cause);
  }
}

/** Lab of 16 bits (ICC.1:2022, 6.3.4.2): L* 0..100 over all of them, a* and b* from -128 by 257ths. */
const labOf = (levels: Uint16Array, at: number): Lab => [
  (levels[at]! * 100) / 65_535,
  levels[at + 1]! / 257 - 128,
  levels[at + 2]! / 257 - 128,
];
