import { badInput, shown, unknownName } from "../../errors/catalogue.ts";
import { isRecord } from "../../params/compound.ts";
import { inkBytes } from "../ink.ts";

type Range = readonly [least: number, most: number];
const ONE: Range = [0, 1];
const HUNDRED: Range = [0, 100];
const HUE: Range = [0, 360];
const ANY: Range = [-1000, 1000];
const CHROMA: Range = [0, 1000];

/** The colour spaces of the Color Module 2025.10, 4: their ranges, and how CSS Color 4 writes them. */
const SPACES: Readonly<
  Record<string, { readonly ranges: readonly [Range, Range, Range]; readonly css: string }>
> = {
  srgb: { ranges: [ONE, ONE, ONE], css: "color(srgb A B C)" },
  "srgb-linear": { ranges: [ONE, ONE, ONE], css: "color(srgb-linear A B C)" },
  hsl: { ranges: [HUE, HUNDRED, HUNDRED], css: "hsl(A B% C%)" },
  hwb: { ranges: [HUE, HUNDRED, HUNDRED], css: "hwb(A B% C%)" },
  lab: { ranges: [HUNDRED, ANY, ANY], css: "lab(A B C)" },
  lch: { ranges: [HUNDRED, CHROMA, HUE], css: "lch(A B C)" },
  oklab: { ranges: [ONE, ANY, ANY], css: "oklab(A B C)" },
  oklch: { ranges: [ONE, CHROMA, HUE], css: "oklch(A B C)" },
  "display-p3": { ranges: [ONE, ONE, ONE], css: "color(display-p3 A B C)" },
  "a98-rgb": { ranges: [ONE, ONE, ONE], css: "color(a98-rgb A B C)" },
  "prophoto-rgb": { ranges: [ONE, ONE, ONE], css: "color(prophoto-rgb A B C)" },
  rec2020: { ranges: [ONE, ONE, ONE], css: "color(rec2020 A B C)" },
  // White has a Z of 1.089 in D65.
  "xyz-d65": { ranges: [ONE, ONE, [0, 1.2]], css: "color(xyz-d65 A B C)" },
  "xyz-d50": { ranges: [ONE, ONE, [0, 1.2]], css: "color(xyz-d50 A B C)" },
};
const KEYS = ["colorSpace", "components", "alpha", "hex"];

/**
 * The value of a colour token as CSS. Its components decide; `hex` is a fallback for programs that do not know the
 * space, and only checked: its form, and in sRGB that it is the same colour. Undefined for a translucent colour: an ink is opaque.
 * @throws SprigwrightError `bad-token-color`, `unknown-color-space`
 */
export function cssOfToken(value: unknown, where: string): string | undefined {
  const wrong = (what: string, fix: string): Error => badInput("bad-token-color", where, what, fix);
  if (typeof value === "string")
    throw wrong(
      `${shown(value)} is a text, as drafts of the format had it`,
      'write { "colorSpace": "srgb", "components": [r, g, b], "hex": "#rrggbb" } with r, g, b from 0 to 1',
    );
  if (!isRecord(value))
    throw wrong(`${shown(value)} is no colour`, "give an object with colorSpace and components");
  for (const key of Object.keys(value))
    if (!KEYS.includes(key)) throw unknownName(`${where} > ${key}`, "key", key, KEYS);
  const { colorSpace, components, alpha = 1, hex } = value;
  if (typeof colorSpace !== "string" || !Object.hasOwn(SPACES, colorSpace))
    throw unknownName(`${where} > colorSpace`, "color space", String(colorSpace), Object.keys(SPACES));
  const { ranges, css } = SPACES[colorSpace]!;
  if (!Array.isArray(components) || components.length !== 3)
    throw wrong(`its components are ${shown(components)}`, 'give three numbers, or "none"');
  const [a, b, c] = components.map((part: unknown, i) => {
    const [least, most] = ranges[i]!;
    if (part === "none") return "none";
    if (typeof part !== "number" || !(part >= least && part <= most))
      throw wrong(
        `component ${i + 1} is ${shown(part)}`,
        `give a number from ${least} to ${most}, or "none", in ${colorSpace}`,
      );
    return String(part);
  });
  if (typeof alpha !== "number" || !(alpha >= 0 && alpha <= 1))
    throw wrong(`its alpha is ${shown(alpha)}`, "give a number from 0 to 1");
  if (hex !== undefined && (typeof hex !== "string" || !/^#[0-9a-f]{6}$/i.test(hex)))
    throw wrong(`its hex is ${shown(hex)}`, "give six hexadecimal digits after #, or leave it out");
  if (alpha < 1) return undefined;
  if (colorSpace === "srgb" && hex !== undefined && isOff(components, hex as string))
    throw wrong(`its hex ${hex} is another colour than its components`, "correct one of them");
  return css.replace("A", a!).replace("B", b!).replace("C", c!);
}

/** Whether a hex is off the sRGB components that it stands for by more than rounding can be. */
const isOff = (components: readonly unknown[], hex: string): boolean =>
  inkBytes(hex).some(
    (byte, i) => Math.abs(byte - (components[i] === "none" ? 0 : Number(components[i])) * 255) > 1.5,
  );
