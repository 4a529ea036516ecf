import type { Size } from "../../geometry/lattice.ts";
import { nearestWholeDpis, wholePixelStep } from "../../units/pixels.ts";

/** What is whole pixels both ways, nearest to a block and a dpi: other sizes at that dpi, and other dpi at that size. */
export const nearestWhole = (
  block: Size,
  dpi: number,
  mostDpi: number,
): { readonly sizes: readonly string[]; readonly dpis: readonly number[] } => ({
  sizes: wholePixelSizes(block, dpi),
  dpis: nearestWholeDpis([block.width, block.height], dpi).filter((fitting) => fitting <= mostDpi),
});

/**
 * The sizes nearest to `block` that are whole pixels at `dpi` and whole µm both ways, as text in mm:
 * the nearest first, then the one on the other side.
 */
function wholePixelSizes(block: Size, dpi: number): string[] {
  const step = wholePixelStep(dpi);
  const [w, h] = [around(block.width, step), around(block.height, step)];
  const say = (width: number, height: number): string => `${width / 1000} x ${height / 1000} mm`;
  return [...new Set([say(w[0], h[0]), say(w[1], h[1])])];
}

/** The multiple of `step` nearest to `um`, and the next nearest: the same twice where `um` is one. */
function around(um: number, step: number): [nearest: number, other: number] {
  const nearest = Math.max(1, Math.round(um / step)) * step;
  if (nearest === um) return [um, um];
  const other = nearest < um ? nearest + step : nearest - step;
  return [nearest, other > 0 ? other : nearest + step];
}
