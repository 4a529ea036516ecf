import { MIX_COUNT, type Mix } from "./mix.ts";

/**
 * A painted picture as runs of equal pixels, row after row, in 4 bytes each: the mix in the low 20 bits, the
 * length above. A longer run is several. Flat colour keeps this small: about a run for each pixel of outline.
 */
export interface Runs {
  /** Adds a run. */
  readonly put: (mix: Mix, length: number) => void;
  /**
   * Reads the rows from the first on: each call of what it gives calls `visit` for the runs of the next row.
   * With `forget` they are given up as they are read, and cannot be read again.
   */
  readonly reader: (forget: boolean) => (visit: (mix: Mix, length: number) => void) => void;
}

const PIECE = 1 << 16;
const LONGEST = 0xfff;

/** No runs yet, for rows of `width` pixels. */
export function createRuns(width: number): Runs {
  const pieces: Uint32Array[] = [];
  let piece = new Uint32Array(0);
  let used = 0;
  return {
    put(mix, length) {
      for (let left = length; left > 0; left -= LONGEST) {
        if (used === piece.length) {
          piece = new Uint32Array(PIECE);
          pieces.push(piece);
          used = 0;
        }
        piece[used++] = (Math.min(left, LONGEST) << 20) | mix;
      }
    },
    reader(forget) {
      let [first, next] = [0, 0]; // the piece, and the place in it, that comes next
      return (visit) => {
        for (let left = width; left > 0; ) {
          if (next === PIECE) {
            if (forget) pieces[first] = new Uint32Array(0);
            first++;
            next = 0;
          }
          const run = pieces[first]![next++]!;
          const length = run >>> 20;
          visit(run & (MIX_COUNT - 1), length);
          left -= length;
        }
      };
    },
  };
}
