/** The eight bytes that every PNG starts with. */
export const SIGNATURE: readonly number[] = [137, 80, 78, 71, 13, 10, 26, 10];

/** A PNG chunk: length, type, data, CRC-32 of type and data (PNG, third edition, 5.3). */
export function chunk(type: string, data: Uint8Array): Uint8Array {
  const out = new Uint8Array(data.length + 12);
  const view = new DataView(out.buffer);
  view.setUint32(0, data.length);
  for (let i = 0; i < 4; i++) out[4 + i] = type.charCodeAt(i);
  out.set(data, 8);
  view.setUint32(data.length + 8, crc32(out.subarray(4, data.length + 8)));
  return out;
}

/** Most data bytes in one IDAT chunk. */
const MOST = 1 << 20;

/** A zlib stream, or a piece of one, as IDAT chunks, one after the other. */
export function dataChunks(stream: Uint8Array): Uint8Array {
  const chunks: Uint8Array[] = [];
  for (let at = 0; at < stream.length; at += MOST) chunks.push(chunk("IDAT", stream.subarray(at, at + MOST)));
  return joinBytes(chunks);
}

export function joinBytes(parts: readonly ArrayLike<number>[]): Uint8Array {
  const out = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    out.set(part, at);
    at += part.length;
  }
  return out;
}

/** CRC-32 as in PNG, annex D (polynomial 0xEDB88320). */
export function crc32(bytes: Uint8Array): number {
  const table = Uint32Array.from({ length: 256 }, (_, n) => {
    let c = n;
    for (let k = 0; k < 8; k++) c = (c & 1) === 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
    return c;
  });
  let crc = -1;
  for (let i = 0; i < bytes.length; i++) crc = table[(crc ^ bytes[i]!) & 255]! ^ (crc >>> 8);
  return ~crc >>> 0;
}
