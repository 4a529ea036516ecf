/**
 * A scale to three decimals, which is all that anybody would write down, within the sizes that were asked for: where these
 * have more decimals themselves, rounding would lead out of them.
 */
export const drawnScale = (scale: number, [min, max]: readonly [min: number, max: number]): number =>
  Math.min(max, Math.max(min, Math.round(scale * 1000) / 1000));
