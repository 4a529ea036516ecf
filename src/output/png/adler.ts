/**
 * The two running sums of Adler-32 (RFC 1950) over a stretch of bytes, before the leading 1 is put in:
 * stretches can be joined, and repeated, without their bytes.
 */
export interface Sums {
  /** Sum of the bytes. */
  readonly plain: number;
  /** Sum of the bytes, each times how many there are from it to the end. */
  readonly weighted: number;
  readonly length: number;
}

const MODULUS = 65_521;

export const noSums: Sums = Object.freeze({ plain: 0, weighted: 0, length: 0 });

/** The sums of one stretch and then another. */
export function joinSums(first: Sums, then: Sums): Sums {
  return {
    plain: (first.plain + then.plain) % MODULUS,
    weighted: (first.weighted + (then.length % MODULUS) * first.plain + then.weighted) % MODULUS,
    length: first.length + then.length,
  };
}

/** The checksum that ends a zlib stream. */
export function adlerOf(sums: Sums): number {
  const whole = joinSums({ plain: 1, weighted: 0, length: 0 }, sums);
  return whole.weighted * 65_536 + whole.plain;
}
