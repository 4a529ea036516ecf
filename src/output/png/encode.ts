import { adlerOf, joinSums, noSums, type Sums } from "./adler.ts";
import { joinBytes } from "./chunks.ts";
import { deflater } from "./deflate.ts";
import { type Picture, ROWS_A_STEP, type Step } from "./picture.ts";

/**
 * The picture's rows, `across` x `down` blocks, as a zlib stream (RFC 1950) of palette entries, each row after
 * a filter byte of 0. The block is compressed once: to the right, rows point back at their first block;
 * below, the compressed block is simply there again. The picture's runs are used up.
 */
export async function encode(
  picture: Picture,
  entryOf: Uint8Array,
  across: number,
  down: number,
  step: Step,
): Promise<Uint8Array> {
  const { width, height } = picture.grid;
  const out = deflater();
  const narrow = width < 3; // less than a match can say; at the most, a block is as wide as one can reach
  const row: number[] = []; // entry and length of each run, where narrow
  let sums = noSums;
  const soFar = new Float64Array(2); // plain and weighted, as in Sums, of the row: below 2^38, so exact
  const put = (mix: number, length: number): void => {
    const entry = entryOf[mix]!;
    soFar[1] = soFar[1]! + length * soFar[0]! + (entry * length * (length + 1)) / 2;
    soFar[0] = soFar[0]! + entry * length;
    out.run(entry, length);
    if (narrow) row.push(entry, length);
  };
  for (let y = 0; y < height; y++) {
    soFar.fill(0);
    row.length = 0;
    out.run(0, 1);
    picture.runs.takeRow(put);
    sums = joinSums(sums, { plain: 0, weighted: 0, length: 1 });
    const block = { plain: soFar[0]!, weighted: soFar[1]!, length: width };
    for (let i = 0; i < across; i++) sums = joinSums(sums, block);
    if (across > 1 && !narrow) out.again(width, (across - 1) * width);
    else
      for (let i = 1; i < across; i++) for (let k = 0; k < row.length; k += 2) out.run(row[k]!, row[k + 1]!);
    if (y % ROWS_A_STEP === 0) await step(y / height);
  }
  await step(1);
  const packed = out.finish();
  let all: Sums = noSums;
  for (let i = 0; i < down; i++) all = joinSums(all, sums);
  return zlibStream(
    Array.from({ length: down }, () => packed),
    adlerOf(all),
  );
}

/** 32 KiB window, fastest method; the blocks; an empty stored block marked as the last; the checksum. */
function zlibStream(blocks: readonly Uint8Array[], checksum: number): Uint8Array {
  const check = new DataView(new ArrayBuffer(4));
  check.setUint32(0, checksum);
  return joinBytes([[0x78, 0x01], ...blocks, [0x01, 0, 0, 0xff, 0xff], new Uint8Array(check.buffer)]);
}
