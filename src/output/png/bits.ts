/** Writes bits, the lowest of each number first, as deflate wants them (RFC 1951, 3.1.1). */
export interface BitWriter {
  /** Adds the low `count` bits of `value`; `value` has no others, and `count` is at most 24. */
  readonly put: (value: number, count: number) => void;
  /** Fills the last byte with 0 bits. */
  readonly align: () => void;
  /** All that was written; call after `align`. */
  readonly bytes: () => Uint8Array;
}

export function bitWriter(): BitWriter {
  let out = new Uint8Array(1 << 16);
  let length = 0;
  let held = 0;
  let holds = 0;
  const room = (): void => {
    if (length + 8 <= out.length) return;
    const larger = new Uint8Array(out.length * 2);
    larger.set(out);
    out = larger;
  };
  return {
    put(value, count) {
      held |= value << holds;
      holds += count;
      if (holds < 8) return;
      room();
      for (; holds >= 8; holds -= 8) {
        out[length++] = held & 255;
        held >>>= 8;
      }
    },
    align() {
      room();
      if (holds > 0) out[length++] = held & 255;
      held = 0;
      holds = 0;
    },
    bytes: () => out.subarray(0, length),
  };
}
