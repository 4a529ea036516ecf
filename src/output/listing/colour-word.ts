import { inkBytes } from "../../colorway/ink.ts";

/** Hues by where they end, in degrees of the HSL hexagon. */
const HUES: readonly (readonly [end: number, word: string])[] = [
  [13, "red"],
  [36, "orange"],
  [68, "yellow"],
  [158, "green"],
  [197, "teal"],
  [255, "blue"],
  [310, "purple"],
  [345, "pink"],
  [360, "red"],
];

/** A plain English word for an ink, for descriptions: "cream", "navy", "pale green". Rough on purpose. */
export function colourWord(ink: string): string {
  const [r, g, b] = inkBytes(ink);
  const [most, least] = [Math.max(r, g, b), Math.min(r, g, b)];
  const [chroma, light] = [most - least, (most + least) / 2];
  const sixth = most === r ? (g - b) / chroma : most === g ? 2 + (b - r) / chroma : 4 + (r - g) / chroma;
  const hue = (sixth * 60 + 360) % 360;
  if (light > 214 && chroma >= 10 && chroma < 56 && hue > 20 && hue < 68) return "cream";
  if (chroma < 16) return light > 235 ? "white" : light < 40 ? "black" : `${depth(light)}grey`;
  const word = HUES.find(([end]) => hue < end)![1];
  if (word === "orange" && light < 100) return "brown";
  if (word === "orange" && light > 185) return "peach";
  if (word === "yellow" && light < 110) return "olive";
  if (word === "yellow" && light < 150 && chroma < 190) return "ochre";
  if (word === "red" && light > 165) return "pink";
  if (word === "blue" && light < 66) return "navy";
  return `${depth(light)}${word}`;
}

const depth = (light: number): string => (light < 60 ? "dark " : light > 190 ? "pale " : "");
