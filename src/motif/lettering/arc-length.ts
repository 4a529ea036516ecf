/** A cubic Bézier: start, two controls, end. */
export type Cubic = readonly [
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  x3: number,
  y3: number,
];

/** A cubic so short that its length is known by {@link shortLength}. */
interface Bit {
  readonly cubic: Cubic;
  readonly from: number;
  readonly length: number;
}

/** Cubics in a row, measured. */
export interface Measured {
  readonly length: number;
  /** The point at so much of the length from the start. */
  readonly at: (s: number) => readonly [x: number, y: number];
}

const distance = (dx: number, dy: number): number => Math.sqrt(dx * dx + dy * dy);

/** A cubic is halved until both halves together are as long as itself, but for this share. */
const CLOSE = 1e-7;

/** Cubics are halved at most so often: what is left of a cusp by then is a millionth of the curve. */
const DEEPEST = 20;

/**
 * The mean of the chord and of the way along the controls: Gravesen's estimate for cubics ("Adaptive subdivision and
 * the length and energy of Bézier curves", 1997), whose error falls with the fourth power of the cubic's own bend.
 */
function shortLength([x0, y0, x1, y1, x2, y2, x3, y3]: Cubic): number {
  const chord = distance(x3 - x0, y3 - y0);
  return (chord + distance(x1 - x0, y1 - y0) + distance(x2 - x1, y2 - y1) + distance(x3 - x2, y3 - y2)) / 2;
}

/** Both parts of a cubic that is cut at `t` (de Casteljau). */
function cut([x0, y0, x1, y1, x2, y2, x3, y3]: Cubic, t: number): readonly [Cubic, Cubic] {
  const mix = (a: number, b: number): number => a + (b - a) * t;
  const [ax, ay, bx, by, cx, cy] = [
    mix(x0, x1),
    mix(y0, y1),
    mix(x1, x2),
    mix(y1, y2),
    mix(x2, x3),
    mix(y2, y3),
  ];
  const [dx, dy, ex, ey] = [mix(ax, bx), mix(ay, by), mix(bx, cx), mix(by, cy)];
  const [x, y] = [mix(dx, ex), mix(dy, ey)];
  return [
    [x0, y0, ax, ay, dx, dy, x, y],
    [x, y, ex, ey, cx, cy, x3, y3],
  ];
}

/**
 * Measures cubics that follow each other, to about a ten-millionth of their length: halved until their lengths
 * settle, by Gravesen's formula. Only + - * / and square roots, so every engine finds the same.
 */
export function measure(cubics: readonly Cubic[]): Measured {
  const bits: Bit[] = [];
  let length = 0;
  const keep = (cubic: Cubic, own: number): void => {
    if (own === 0) return;
    bits.push({ cubic, from: length, length: own });
    length += own;
  };
  const add = (cubic: Cubic, own: number, depth: number): void => {
    const [head, tail] = cut(cubic, 0.5);
    const [first, second] = [shortLength(head), shortLength(tail)];
    const settled = Math.abs(own - first - second) <= CLOSE * own;
    if (depth > 1 && (settled || depth === DEEPEST)) {
      keep(head, first);
      keep(tail, second);
      return;
    }
    add(head, first, depth + 1);
    add(tail, second, depth + 1);
  };
  for (const cubic of cubics) {
    const own = shortLength(cubic);
    if (isStraight(cubic)) keep(cubic, own);
    else add(cubic, own, 0);
  }
  return { length, at: (s) => pointAt(bits, Math.max(0, Math.min(length, s))) };
}

/** Whether the controls lie on the ends. */
const isStraight = ([x0, y0, x1, y1, x2, y2, x3, y3]: Cubic): boolean =>
  x0 === x1 && y0 === y1 && x2 === x3 && y2 === y3;

function pointAt(bits: readonly Bit[], s: number): readonly [number, number] {
  let [low, high] = [0, bits.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (bits[middle]!.from <= s) low = middle;
    else high = middle - 1;
  }
  const { cubic, from, length } = bits[low]!;
  if (s <= from) return [cubic[0], cubic[1]];
  if (s >= from + length) return [cubic[6], cubic[7]];
  if (isStraight(cubic)) {
    const share = (s - from) / length;
    return [cubic[0] + share * (cubic[6] - cubic[0]), cubic[1] + share * (cubic[7] - cubic[1])];
  }
  return pointWithin(cubic, (s - from) / length);
}

/** Rounds of the search within a bit, and what is left at its end as a share of the bit. */
const [ROUNDS, NEAR] = [40, 1e-10];

/** The point that parts a short cubic's length by `share`. Speed hardly changes in it: secants meet it in a few steps. */
function pointWithin(cubic: Cubic, share: number): readonly [number, number] {
  let [low, high, short, over] = [0, 1, -share, 1 - share];
  for (let round = 1; ; round++) {
    // Every third step halves, so that no bend can hold the search up.
    const t = round % 3 === 0 ? (low + high) / 2 : low + ((high - low) * short) / (short - over);
    const [head, tail] = cut(cubic, t);
    const [first, second] = [shortLength(head), shortLength(tail)];
    const miss = first / (first + second) - share;
    if (Math.abs(miss) <= NEAR || round === ROUNDS) return [tail[0], tail[1]];
    if (miss < 0) [low, short] = [t, miss];
    else [high, over] = [t, miss];
  }
}
