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

/**
 * Pixels (red, green, blue, alpha …) as an indexed PNG: colours that differ by less than `apart` of 255 in every channel become
 * the most frequent of them, and all beyond 256 the nearest of those that are kept.
 */
export function indexedPng({ width, height, data }, apart) {
  const counts = new Map();
  for (let i = 0; i < data.length; i += 4) {
    const colour = (data[i] << 16) | (data[i + 1] << 8) | data[i + 2];
    counts.set(colour, (counts.get(colour) ?? 0) + 1);
  }
  const parts = (colour) => [colour >> 16, (colour >> 8) & 255, colour & 255];
  const off = (p, q) => Math.max(...p.map((value, c) => Math.abs(value - q[c])));
  const kept = [];
  const to = new Map();
  for (const [colour] of [...counts].sort((p, q) => q[1] - p[1] || p[0] - q[0])) {
    const mine = parts(colour);
    const distances = kept.map((other) => off(mine, other));
    const nearest = distances.indexOf(Math.min(...distances));
    const isNear = nearest >= 0 && (distances[nearest] < apart || kept.length === 256);
    to.set(colour, isNear ? nearest : kept.push(mine) - 1);
  }
  const rows = Buffer.alloc((width + 1) * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const i = (y * width + x) * 4;
      rows[y * (width + 1) + x + 1] = to.get((data[i] << 16) | (data[i + 1] << 8) | data[i + 2]);
    }
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 3], 8);
  return Buffer.concat([
    Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]),
    chunk("IHDR", head),
    chunk("PLTE", Buffer.from(kept.flat())),
    chunk("IDAT", deflateSync(rows, { level: 9, memLevel: 9 })),
    chunk("IEND", Buffer.alloc(0)),
  ]);
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
