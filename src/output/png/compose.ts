import { type Band, FULL } from "./band.ts";
import { over } from "./mix.ts";

/**
 * Paints the layer whose sides were added to `band.sums` over what the band shows, as `role`, and clears the sums.
 *
 * Walks the runs of both at once, so the cost is that of the edges, not of the pixels. Coverage is the area
 * by nonzero winding, for contours that are united: where shapes lie over each other the sum is cut at 1.
 */
export function paintLayer(band: Band, role: number): void {
  const { words, touched } = band;
  for (let row = 0; row < band.rows; row++)
    for (let word = 0; word < words; word++)
      if (touched[row * words + word] !== 0) {
        paintRow(band, row, word, role);
        break;
      }
}

function paintRow(band: Band, row: number, firstWord: number, role: number): void {
  const { words, sums, touched, marks, mixes } = band;
  const cells = row * band.width;
  let sum = 0;
  let cover = 0; // of 255, from here to the next touched pixel
  let under = 0; // what lay beneath; known only while cover is not 0
  for (let w = row * words + firstWord; w < (row + 1) * words; w++) {
    const changes = touched[w]!;
    if (changes === 0 && cover === 0) continue;
    touched[w] = 0;
    const before = marks[w]!; // as it was before this layer
    const base = cells + (w - row * words) * 32;
    let after = before;
    let todo = changes | before;
    while (todo !== 0) {
      const bit = todo & -todo;
      todo ^= bit;
      const at = base + 31 - Math.clz32(bit);
      const was = cover;
      if ((changes & bit) !== 0) {
        sum += sums[at]!;
        sums[at] = 0;
        cover = (Math.min(FULL, Math.abs(sum)) * 255 + FULL / 2) >> 17;
      }
      if (was === 0 && cover === 0) continue;
      if ((before & bit) !== 0) under = mixes[at]!;
      else if (was === cover) continue;
      else if (was === 0) under = beneath(band, row, after, w, bit);
      if (cover === 255 && was === 255) after &= ~bit;
      else {
        mixes[at] = cover === 0 ? under : over(under, role, cover);
        after |= bit;
      }
    }
    marks[w] = after;
  }
}

/** What the run shows that holds the pixel of `bit` in word `w`, whose marks are `marks` so far. */
function beneath(band: Band, row: number, marks: number, w: number, bit: number): number {
  let word = w;
  let bits = marks & (bit - 1);
  while (bits === 0) bits = band.marks[--word]!;
  return band.mixes[row * band.width + (word - row * band.words) * 32 + 31 - Math.clz32(bits)]!;
}
