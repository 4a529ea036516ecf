import { inkBytes } from "../ink.ts";
import { listPalettes, type Palette } from "../palette.ts";

/**
 * Palettes as the text of a design token file (Design Tokens Community Group, 2025.10): a group for each palette, a
 * colour token for each ink, in sRGB with six decimals and its hex. `readTokens` gives the same palettes back.
 * @throws SprigwrightError `same-name` when two palettes share a name
 */
export function toTokens(palettes: Palette | readonly Palette[]): string {
  const groups = listPalettes(palettes, "toTokens").map(({ name, inks }) => [
    name,
    { $type: "color", ...Object.fromEntries(Object.entries(inks).map(([ink, hex]) => [ink, tokenOf(hex)])) },
  ]);
  return `${JSON.stringify(Object.fromEntries(groups), null, 2)}\n`;
}

function tokenOf(hex: string): object {
  const components = inkBytes(hex).map((byte) => Math.round((byte / 255) * 1e6) / 1e6);
  return { $value: { colorSpace: "srgb", components, alpha: 1, hex } };
}
