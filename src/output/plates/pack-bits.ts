type Visit = (mix: number, length: number) => void;

/** How much of a pixel is printed on, of 255, where role 1 was painted over role 0. */
export function coverOf(mix: number): number {
  const [low, high] = [mix >> 14, (mix >> 8) & 63];
  return low === high ? low * 255 : mix & 255;
}

/**
 * A row's runs as bytes of eight pixels, the leftmost in the highest bit: 0 where a pixel is printed on by half or more, as
 * grey of one bit has it; bits beyond the row are 1. Bytes come as runs too.
 */
export function packBits(eachRun: (visit: Visit) => void, put: (byte: number, length: number) => void): void {
  let [byte, used] = [0, 0];
  let [waiting, times] = [-1, 0];
  const out = (value: number, length: number): void => {
    if (value !== waiting) {
      if (times > 0) put(waiting, times);
      [waiting, times] = [value, 0];
    }
    times += length;
  };
  const bits = (paper: boolean, count: number): void => {
    byte = (byte << count) | (paper ? (1 << count) - 1 : 0);
    used += count;
    if (used < 8) return;
    out(byte, 1);
    [byte, used] = [0, 0];
  };
  eachRun((mix, length) => {
    const paper = coverOf(mix) < 128;
    const first = Math.min(length, (8 - used) & 7);
    if (first > 0) bits(paper, first);
    const whole = Math.floor((length - first) / 8);
    if (whole > 0) out(paper ? 255 : 0, whole);
    const last = length - first - whole * 8;
    if (last > 0) bits(paper, last);
  });
  if (used > 0) bits(true, 8 - used);
  if (times > 0) put(waiting, times);
}
