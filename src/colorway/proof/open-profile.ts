import { type Color, converter } from "culori/fn";
import { readParams } from "../../params/compound.ts";
import { choice, number } from "../../params/kinds.ts";
import { deltaOf } from "../delta-e.ts";
import { parseColor, readInk, toInk } from "../ink.ts";
import { type Inked, recolored } from "../views/recolored.ts";
import { checkProfile } from "./check-profile.ts";
import { type Lcms, loadLcms } from "./lcms.ts";
import { nearestPrint, total } from "./nearest-print.ts";
import { type Cmyk, type Lab, type Press, pressOf } from "./press.ts";

/** Options of {@link openProfile}. */
export interface ProfileOptions {
  /**
   * How colours that the press lacks are brought in, ICC's rendering intents: `"relative"` colorimetric with black point
   * compensation (default) keeps the others as they are; `"perceptual"` moves all of them. Ask your printer which is used.
   */
  readonly intent?: "relative" | "perceptual";
  /** Most ink that paper and press bear, the four together, 100 to 400 %; default 300 (common practice on coated paper). */
  readonly mostInk?: number;
  /** What `instantiate()` of `lcms-wasm` gave; default: the package is imported. */
  readonly lcms?: Lcms;
}

/** What becomes of an ink in print. */
export interface InkProof {
  /** The ink, `#rrggbb`. */
  readonly ink: string;
  /** % of each process ink, to 0.1. */
  readonly cmyk: {
    readonly cyan: number;
    readonly magenta: number;
    readonly yellow: number;
    readonly black: number;
  };
  /** The four together, %. */
  readonly total: number;
  /** What it looks like in print, as far as a screen can show it: `#rrggbb`, the paper being white. */
  readonly printed: string;
  /** ΔE00 between the ink and its printed self; over 3 is seen side by side, over 6 at once (common practice). */
  readonly deltaE: number;
}

/** A press, by its profile. */
export interface PrintProfile {
  /** What the profile calls itself. */
  readonly name: string;
  readonly mostInk: number;
  /** What becomes of an ink, any opaque CSS colour. */
  proof(ink: string): InkProof;
  /**
   * The ink that comes nearest to one and prints as it looks, within the limit of total ink. `cmyk` is what to print for it,
   * `printed` the ink to use instead, `deltaE` how far that is from the one asked for.
   */
  nearest(ink: string): InkProof;
  /** A palette or colorway as it will look in print: the soft proof. */
  view<T extends Inked>(of: T): T;
}

const spec = {
  intent: choice({
    about: "How colours that the press lacks are brought in.",
    of: ["relative", "perceptual"],
    default: "relative",
  }),
  mostInk: number({ about: "Most ink, %.", min: 100, max: 400, default: 300 }),
};

/**
 * Opens the ICC profile of a CMYK press: what your printer sends as an .icc file. None is bundled, since most may not be
 * passed on. Reading it takes `lcms-wasm`, which is installed beside this package.
 *
 * Differences are between the ink and the colour that the profile's tables give for its print, both relative to the paper
 * (D50, CIEDE2000). Inks that match on paper in one light and not in another (metamerism) are beyond a profile, and left out.
 *
 * @example const press = await openProfile(await readFile("press.icc")); press.proof("#d9603b").deltaE
 * @throws SprigwrightError `bad-profile`, `not-cmyk`, `wrong-type`, `missing-package`, `unknown-option`, `number-range`
 */
export async function openProfile(
  profile: Uint8Array | ArrayBuffer,
  options: ProfileOptions = {},
): Promise<PrintProfile> {
  const where = "openProfile";
  const { lcms, ...others } = options;
  const { intent, mostInk } = readParams(spec, others, where);
  const bytes = checkProfile(profile, where);
  const press = pressOf(lcms ?? (await loadLcms()), bytes, intent, where);
  return Object.freeze({
    name: press.name,
    mostInk,
    proof: (ink: string) => proofOf(press, readInk(ink, "proof")),
    nearest: (ink: string) => nearestOf(press, readInk(ink, "nearest"), mostInk / 100),
    view<T extends Inked>(of: T): T {
      return recolored(of, (color) => printed(press, press.separate(toInk(color))), "view");
    },
  });
}

const colorOf = ([l, a, b]: Lab): Color => ({ mode: "lab", l, a, b });
const printed = (press: Press, cmyk: Cmyk): Color => colorOf(press.print([cmyk])[0]!);

/** How far a print is from an ink: CIEDE2000 of the D50 values as they are, which culori does for the mode `lab65`. */
function awayFrom(ink: string): (lab: Lab) => number {
  const { l, a, b } = converter("lab")(parseColor(ink, "ink"));
  return ([pl, pa, pb]) => deltaOf({ mode: "lab65", l, a, b }, { mode: "lab65", l: pl, a: pa, b: pb });
}

function proofOf(press: Press, ink: string): InkProof {
  return reported(press, ink, press.separate(ink));
}

function nearestOf(press: Press, ink: string, most: number): InkProof {
  const cmyk = nearestPrint(press, press.separate(ink), awayFrom(ink), most);
  return reported(press, ink, cmyk);
}

function reported(press: Press, ink: string, cmyk: Cmyk): InkProof {
  const [lab] = press.print([cmyk]);
  const [cyan, magenta, yellow, black] = cmyk.map(percent) as unknown as Cmyk;
  return Object.freeze({
    ink,
    cmyk: Object.freeze({ cyan, magenta, yellow, black }),
    total: percent(total(cmyk)),
    printed: toInk(colorOf(lab!)),
    deltaE: Math.round(awayFrom(ink)(lab!) * 100) / 100,
  });
}

const percent = (share: number): number => Math.round(share * 1000) / 10;
