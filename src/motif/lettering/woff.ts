import { unzlibSync } from "fflate";

/**
 * A .woff file as the .ttf or .otf inside it (W3C, WOFF File Format 1.0): a directory of tables, each deflated or
 * plain. Read here and not by the font library, whose own inflate never returns for some damaged files.
 * @throws Error for a file that does not hold what its directory says
 */
export function sfntOfWoff(bytes: Uint8Array, largest: number): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const count = view.getUint16(12);
  const tables = Array.from({ length: count }, (_, k) => {
    const at = 44 + 20 * k;
    const [offset, packed, size] = [view.getUint32(at + 4), view.getUint32(at + 8), view.getUint32(at + 12)];
    if (offset + packed > bytes.length || packed > size || size > largest)
      throw new Error(`table ${k + 1} of ${count} lies outside the file`);
    const data = bytes.subarray(offset, offset + packed);
    return { tag: view.getUint32(at), checksum: view.getUint32(at + 16), data, size };
  });
  const whole = tables.reduce((sum, { size }) => sum + ((size + 3) & ~3), 12 + 16 * count);
  if (whole > largest) throw new Error(`it unpacks to more than ${largest} bytes`);
  const out = new Uint8Array(whole);
  const to = new DataView(out.buffer);
  to.setUint32(0, view.getUint32(4));
  to.setUint16(4, count);
  let at = 12 + 16 * count;
  tables.forEach(({ tag, checksum, data, size }, k) => {
    const table = data.length === size ? data : unzlibSync(data, { out: new Uint8Array(size) });
    if (table.length !== size) throw new Error(`table ${k + 1} of ${count} has another length than it says`);
    const entry = 12 + 16 * k;
    [tag, checksum, at, size].forEach((value, i) => {
      to.setUint32(entry + 4 * i, value);
    });
    out.set(table, at);
    at += (size + 3) & ~3;
  });
  return out;
}
