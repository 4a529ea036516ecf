import { crc32, deflateSync, inflateSync } from "node:zlib";

/**
 * An indexed PNG of ours with fewer shades along its edges, for pages that many people load: palette entries that differ by
 * less than `apart` of 255 in every channel become the most frequent of them. All other chunks stay.
 */
export function fewerShades(png, apart) {
  const chunks = chunksOf(png);
  const of = (type) => Buffer.concat(chunks.filter((c) => c.type === type).map((c) => c.data));
  const palette = of("PLTE");
  const pixels = inflateSync(of("IDAT"));
  const head = of("IHDR");
  const line = head.readUInt32BE(0) + 1;
  if (head[8] !== 8 || head[9] !== 3) throw new Error("fewerShades wants indexed pixels of 8 bits");
  const counts = new Array(palette.length / 3).fill(0);
  pixels.forEach((value, i) => {
    if (i % line > 0) counts[value]++;
    else if (value !== 0) throw new Error("fewerShades wants rows without a filter");
  });
  const shade = (i) => palette.subarray(3 * i, 3 * i + 3);
  const alike = (p, q) => [0, 1, 2].every((c) => Math.abs(shade(p)[c] - shade(q)[c]) < apart);
  const kept = [];
  const to = [];
  for (const i of [...counts.keys()].sort((p, q) => counts[q] - counts[p] || p - q)) {
    const near = kept.findIndex((k) => alike(k, i));
    to[i] = near < 0 ? kept.push(i) - 1 : near;
  }
  const merged = pixels.map((value, i) => (i % line > 0 ? to[value] : 0));
  const data = {
    PLTE: () => Buffer.concat(kept.map(shade)),
    IDAT: () => deflateSync(merged, { level: 9, memLevel: 9 }),
  };
  const written = chunks
    .filter(({ type }, i) => type !== "IDAT" || chunks[i - 1].type !== "IDAT")
    .map((one) => chunk(one.type, data[one.type]?.() ?? one.data));
  return Buffer.concat([png.subarray(0, 8), ...written]);
}

function chunksOf(png) {
  const chunks = [];
  for (let at = 8; at < png.length; ) {
    const end = at + 8 + png.readUInt32BE(at);
    chunks.push({ type: png.toString("latin1", at + 4, at + 8), data: png.subarray(at + 8, end) });
    at = end + 4;
  }
  return chunks;
}

function chunk(type, data) {
  const body = Buffer.concat([Buffer.from(type, "latin1"), data]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}
