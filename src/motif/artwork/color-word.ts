import { bytesOf } from "./color.ts";

/** Hues in degrees, each word up to the angle beside it. */
const HUES: readonly (readonly [until: number, word: string])[] = [
  [14, "red"],
  [42, "orange"],
  [66, "yellow"],
  [84, "lime"],
  [160, "green"],
  [194, "teal"],
  [252, "blue"],
  [288, "violet"],
  [322, "purple"],
  [346, "pink"],
  [360, "red"],
];

/**
 * A word for a colour, `orange`, `pale-yellow` or `deep-brown`, to name a role by until the designer names it
 * after what it colours. Decided on 8-bit values with whole thresholds: hue and chroma as in HSV, lightness as
 * the luma of Rec. 709.
 */
export function colorWord(fill: string): string {
  const [red, green, blue] = bytesOf(fill);
  const most = Math.max(red, green, blue);
  const chroma = most - Math.min(red, green, blue);
  const light = (2126 * red + 7152 * green + 722 * blue) / 10_000;
  if (most < 58) return "black";
  if (chroma < 20 || chroma * 9 < most) return greyWord(light, red - blue);
  const hue = hueOf(red, green, blue, most, chroma);
  const vivid = chroma * 10 >= most * 6;
  if (!vivid && light < 125 && (hue < 8 || hue >= 335)) return light < 70 ? "deep-brown" : "brown";
  if (hue >= 8 && hue < 48) {
    // Orange when it is bright or strong; else the browns and creams of the same hues.
    if (light < 125 && (most < 190 || !vivid)) return light < 70 ? "deep-brown" : "brown";
    if (!vivid && light < 205) return chroma * 10 < most * 4 || light < 150 ? "tan" : "pale-orange";
    if (!vivid) return "cream";
  }
  const word = HUES.find(([until]) => hue < until)![1];
  if (word === "red" && light > 135) return light > 200 ? "pale-pink" : "pink";
  if (light > (PALE_ABOVE[word] ?? 190)) return `pale-${word}`;
  return most < (DEEP_BELOW[word] ?? 120) ? `deep-${word}` : word;
}

/** Luma above which a colour is pale: yellow and lime are light by nature, blue and violet dark. */
const PALE_ABOVE: Readonly<Record<string, number>> = {
  yellow: 225,
  lime: 225,
  blue: 170,
  violet: 170,
  purple: 170,
};
/** Largest channel below which a colour is deep: a pink or red that darkens soon looks like wine. */
const DEEP_BELOW: Readonly<Record<string, number>> = { red: 170, pink: 215, yellow: 190, lime: 150 };

function greyWord(light: number, warmth: number): string {
  if (light >= 246) return "white";
  if (light >= 215) return warmth >= 10 ? "cream" : "pale-grey";
  if (light >= 165) return "pale-grey";
  if (light >= 95) return "grey";
  return light >= 45 ? "deep-grey" : "black";
}

function hueOf(red: number, green: number, blue: number, most: number, chroma: number): number {
  if (most === red) return ((60 * (green - blue)) / chroma + 360) % 360;
  return most === green ? (60 * (blue - red)) / chroma + 120 : (60 * (red - green)) / chroma + 240;
}
