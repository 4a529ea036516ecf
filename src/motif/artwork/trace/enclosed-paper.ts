import type { Regions } from "./regions.ts";
import type { Shares } from "./shares.ts";

/**
 * Gives paper that does not reach the picture's rim a label of its own, in `shares` itself; whether there was any.
 * Where it shares a pixel, so does the new label.
 */
export function labelEnclosed(shares: Shares, regions: Regions, paper: number, label: number): boolean {
  const { width, height, major, minor } = shares;
  const open = new Uint8Array(regions.count);
  for (let x = 0; x < width; x++) open[regions.of[x]!] = open[regions.of[(height - 1) * width + x]!] = 1;
  for (let y = 0; y < height; y++) open[regions.of[y * width]!] = open[regions.of[(y + 1) * width - 1]!] = 1;
  const enclosed = (i: number): boolean =>
    regions.labels[regions.of[i]!] === paper && open[regions.of[i]!] === 0;
  let any = false;
  const old = major.slice();
  for (let i = 0; i < major.length; i++)
    if (old[i] === paper && enclosed(i)) {
      major[i] = label;
      if (minor[i] === paper) minor[i] = label;
      any = true;
    }
  if (!any) return false;
  for (let i = 0; i < major.length; i++) {
    if (minor[i] !== paper || major[i] === paper || major[i] === label) continue;
    const x = i % width;
    const beside = [x > 0 ? i - 1 : i, x + 1 < width ? i + 1 : i, i - width, i + width];
    if (beside.some((j) => major[j] === label) && !beside.some((j) => major[j] === paper)) minor[i] = label;
  }
  return true;
}
