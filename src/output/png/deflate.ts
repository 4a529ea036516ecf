import { bitWriter } from "./bits.ts";
import { FAR, NEAR, writeBlock } from "./block.ts";
import { LONGEST, lengthTable } from "./lengths.ts";

/**
 * Deflate (RFC 1951) for pictures of flat colour: pixels come in as runs, and only two matches are known,
 * "the pixel before again" and "the row's first block again". On such pictures this is as small as a search for
 * matches and many times faster, and it gives the same bytes in every engine.
 */
export interface Deflater {
  /** `count` pixels of `value`, whose highest byte comes first. */
  readonly run: (value: number, count: number) => void;
  /** One byte that is no pixel. */
  readonly byte: (value: number) => void;
  /** `count` bytes as they stood `distance` bytes before; 3 to any number, and 1 to 32 768. */
  readonly again: (distance: number, count: number) => void;
  /** Whole blocks, none of them the last, that end on a whole byte and point at nothing before them. */
  readonly finish: () => Uint8Array;
}

/** Tokens in one block: enough to pay for its codes, few enough that they fit what is there. */
const BLOCK = 1 << 16;

/** A deflater of pixels of `size` bytes. */
export function deflater(size: 1 | 3 = 1): Deflater {
  const out = bitWriter();
  const lengths = lengthTable();
  const tokens = new Uint16Array(BLOCK);
  let used = 0;
  let distance = 0; // of far matches; the same throughout a block
  let value = -1;
  let pending = 0;

  const token = (t: number): void => {
    tokens[used++] = t;
    if (used < BLOCK) return;
    writeBlock(out, lengths, tokens, used, size, distance);
    used = 0;
  };
  const matches = (kind: number, count: number): void => {
    let left = count;
    while (left > LONGEST) {
      // Never leave a rest of 1 or 2, which no match can say.
      const length = left - LONGEST < 3 ? LONGEST - 3 : LONGEST;
      token(kind + length);
      left -= length;
    }
    token(kind + left);
  };
  const pixel = (): void => {
    for (let shift = 8 * (size - 1); shift >= 0; shift -= 8) token((value >> shift) & 255);
  };
  const flush = (): void => {
    if (pending === 0) return;
    const near = (pending - 1) * size;
    const matched = near >= 3;
    for (let i = matched ? 1 : pending; i > 0; i--) pixel();
    if (matched) matches(NEAR, near);
    pending = 0;
  };
  return {
    run(next, count) {
      if (next !== value) {
        flush();
        value = next;
      }
      pending += count;
    },
    byte(lone) {
      flush();
      value = -1;
      token(lone);
    },
    again(back, count) {
      flush();
      value = -1;
      if (back !== distance && used > 0) {
        writeBlock(out, lengths, tokens, used, size, distance);
        used = 0;
      }
      distance = back;
      matches(FAR, count);
    },
    finish() {
      flush();
      if (used > 0) writeBlock(out, lengths, tokens, used, size, distance);
      // An empty stored block brings the stream to a whole byte.
      out.put(0, 3);
      out.align();
      out.put(0, 16);
      out.put(0xffff, 16);
      return out.bytes();
    },
  };
}
