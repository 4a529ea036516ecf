/** How deflate says the length of a match: a symbol, then some bits more (RFC 1951, 3.2.5). */
export interface LengthTable {
  /** By length, 3 to 258. */
  readonly symbol: Uint16Array;
  readonly extra: Uint8Array;
  readonly value: Uint8Array;
}

/** Longest match that deflate has. */
export const LONGEST = 258;

/** The table for every length. */
export function lengthTable(): LengthTable {
  const symbol = new Uint16Array(LONGEST + 1);
  const extra = new Uint8Array(LONGEST + 1);
  const value = new Uint8Array(LONGEST + 1);
  for (let length = 3; length < LONGEST; length++) {
    const [s, e, v] = stepped(length - 3, 4);
    symbol[length] = 257 + s;
    extra[length] = e;
    value[length] = v;
  }
  symbol[LONGEST] = 285;
  return { symbol, extra, value };
}

/** How deflate says a distance, 1 to 32 768: symbol, number of extra bits, their value. */
export const distanceSymbol = (distance: number): Stepped => stepped(distance - 1, 2);

type Stepped = readonly [symbol: number, extra: number, value: number];

/** The scheme behind both codes: as numbers double, `per` symbols more, each with a bit more. */
function stepped(n: number, per: 2 | 4): Stepped {
  if (n < 2 * per) return [n, 0, 0];
  const extra = 31 - Math.clz32(n) - per / 2;
  const base = n >> extra;
  return [per * extra + base, extra, n - (base << extra)];
}
