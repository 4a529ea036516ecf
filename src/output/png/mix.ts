import { MOST_ROLES } from "../../motif/motif.ts";

/**
 * What one pixel shows, before any colour, packed in 20 bits: two role numbers of 6 bits, the smaller first,
 * and in the low 8 bits the share of the second, 1 to 254 of 255. A pixel of one role has it twice and share 0.
 */
export type Mix = number;

/** One more than the largest mix. */
export const MIX_COUNT: number = MOST_ROLES * MOST_ROLES * 256;

/** A pixel that `role` fills. */
export const solid = (role: number): Mix => (role << 14) | (role << 8);

/** The pair of roles that a mix is made of, as one number below 4096. */
export const pairOf = (mix: Mix): number => mix >> 8;

/** Two roles, `share` of 255 of the second. */
function mixOf(a: number, b: number, share: number): Mix {
  if (share <= 0) return solid(a);
  if (share >= 255) return solid(b);
  return a < b ? (a << 14) | (b << 8) | share : (b << 14) | (a << 8) | (255 - share);
}

/**
 * `role` painted with `cover` of 255 over a pixel ("over" of Porter and Duff, 1984, on shares of roles).
 * Where three roles meet, the least (of equals the one further back) is dropped and the others make it up.
 */
export function over(under: Mix, role: number, cover: number): Mix {
  const low = under >> 14;
  const high = (under >> 8) & 63;
  if (low === high) return low === role ? under : mixOf(low, role, cover);
  const rest = 255 - cover;
  const share = under & 255;
  const a = (255 - share) * rest; // of 255 * 255
  const b = share * rest;
  const c = cover * 255;
  if (role === high) return mixOf(low, high, ((b + c + 127) / 255) | 0);
  if (role === low) return mixOf(high, low, ((a + c + 127) / 255) | 0);
  if (a <= b && a <= c) return mixOf(high, role, shareOf(c, b));
  if (b <= a && b <= c) return mixOf(low, role, shareOf(c, a));
  return mixOf(low, high, share);
}

const shareOf = (part: number, other: number): number => Math.floor((part * 255) / (part + other) + 0.5);
