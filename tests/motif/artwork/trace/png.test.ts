// PNGs of every kind that the standard knows (PNG, Third Edition), and what only pretends to be one.
import { deflateSync } from "node:zlib";
import { encode } from "fast-png";
import { describe, expect, it } from "vitest";
import { inspectTrace } from "../../../../src/motif/artwork/trace/inspect-trace.ts";
import { readPicture } from "../../../../src/motif/artwork/trace/read-picture.ts";
import { traceImage } from "../../../../src/motif/artwork/trace/trace-image.ts";
import { pixelsOf, rendered, sheetOf } from "./painted.ts";

const drawn = rendered(sheetOf('<circle cx="50" cy="50" r="30" fill="#d9583f"/>'), 64);
const { width, height, data } = pixelsOf(drawn);
const refusal = (picture: unknown): string => {
  try {
    traceImage(picture as Uint8Array);
  } catch (error) {
    return (error as Error).message;
  }
  return "no error";
};

function chunk(name: string, body: Uint8Array): Uint8Array {
  const out = Buffer.alloc(12 + body.length);
  out.writeUInt32BE(body.length, 0);
  out.write(name, 4, "latin1");
  out.set(body, 8);
  return out;
}
const header = (w: number, h: number, depth = 8, type = 2, interlace = 0): Uint8Array => {
  const body = Buffer.alloc(13);
  body.writeUInt32BE(w, 0);
  body.writeUInt32BE(h, 4);
  body.set([depth, type, 0, 0, interlace], 8);
  return chunk("IHDR", body);
};
const png = (...chunks: Uint8Array[]): Uint8Array =>
  new Uint8Array(
    Buffer.concat([
      Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]),
      ...chunks,
      chunk("IEND", new Uint8Array(0)),
    ]),
  );
/** Rows of samples, each with filter 0. */
const rows = (bytes: Uint8Array, length: number): Uint8Array => {
  const lines: Buffer[] = [];
  for (let at = 0; at < bytes.length; at += length)
    lines.push(Buffer.from([0]), Buffer.from(bytes.subarray(at, at + length)));
  return deflateSync(Buffer.concat(lines));
};

describe("a PNG is read", () => {
  const bytes = (picture: unknown): Uint8Array => new Uint8Array(readPicture(picture, "p").data);

  it("of 8 and 16 bits, with and without alpha, straight or interlaced", () => {
    const rgb = data.filter((_, i) => i % 4 !== 3);
    expect(bytes(drawn)).toEqual(data);
    expect(bytes(encode({ width, height, data: rgb, channels: 3 }))).toEqual(data);
    expect(bytes(encode({ width, height, data, channels: 4 }, { interlace: "Adam7" }))).toEqual(data);
    const deep = Uint16Array.from(data, (v) => v * 257);
    expect(bytes(encode({ width, height, data: deep, channels: 4, depth: 16 }))).toEqual(data);
  });

  it("in grey, with a transparent grey, and with grey and alpha", () => {
    const grey = Uint8Array.from({ length: 16 }, (_, i) => (i % 4 < 2 ? 40 : 200));
    const four = (v: number, a = 255): number[] => [v, v, v, a];
    expect(bytes(encode({ width: 4, height: 4, data: grey, channels: 1 }))).toEqual(
      Uint8Array.from([...grey].flatMap((v) => four(v))),
    );
    const keyed = png(header(4, 4, 8, 0), chunk("tRNS", Uint8Array.of(0, 200)), chunk("IDAT", rows(grey, 4)));
    expect(bytes(keyed)).toEqual(Uint8Array.from([...grey].flatMap((v) => four(v, v === 200 ? 0 : 255))));
    const veiled = encode({ width: 1, height: 2, data: Uint8Array.of(10, 20, 30, 40), channels: 2 });
    expect(bytes(veiled)).toEqual(Uint8Array.from([...four(10, 20), ...four(30, 40)]));
  });

  it("with a palette of 1, 2, 4 and 8 bits, opaque and not", () => {
    const palette = Uint8Array.of(10, 20, 30, 200, 100, 50, 0, 255, 0);
    const inks = [
      [10, 20, 30, 0],
      [200, 100, 50, 128],
      [0, 255, 0, 255],
    ];
    for (const depth of [1, 2, 4, 8]) {
      // Five pixels a row: rows of few bits end within a byte.
      const indices = [0, 1, depth === 1 ? 0 : 2, 1, 0];
      const bits = indices.map((v) => v.toString(2).padStart(depth, "0")).join("");
      const row = Uint8Array.from(bits.match(/.{1,8}/g)!, (part) => Number.parseInt(part.padEnd(8, "0"), 2));
      const file = png(
        header(5, 2, depth, 3),
        chunk("PLTE", palette),
        chunk("tRNS", Uint8Array.of(0, 128)),
        chunk("IDAT", rows(Uint8Array.from([...row, ...row]), row.length)),
      );
      expect(bytes(file), `${depth} bits`).toEqual(
        Uint8Array.from([...indices, ...indices].flatMap((v) => inks[v]!)),
      );
    }
  });

  it("without looking at what else it carries", () => {
    const bomb = chunk(
      "iCCP",
      Buffer.concat([Buffer.from("wide gamut\0\0"), deflateSync(Buffer.alloc(1e6))]),
    );
    const [signature, rest] = [drawn.subarray(0, 33), drawn.subarray(33)];
    const file = new Uint8Array(Buffer.concat([signature, bomb, rest]));
    expect(bytes(file)).toEqual(data);
    expect(inspectTrace(file).warnings.join()).toMatch(/profile \(wide gamut\) is not applied/);
  });
});

describe("a picture is refused", () => {
  it("when it is no PNG, by the name of what it is", () => {
    expect(refusal(new Uint8Array(0))).toMatch(/nothing in it[\s\S]*not-png/);
    expect(refusal(Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0, 0))).toMatch(/it is a JPEG/);
    expect(refusal(new TextEncoder().encode("<svg/>"))).toMatch(/it is not a PNG/);
    for (const odd of [
      undefined,
      null,
      "buoy.png",
      { width: 2 },
      { width: 1.5, height: 2, data: new Uint8Array(12) },
    ])
      expect(refusal(odd)).toMatch(/wrong-type/);
    expect(refusal({ width: 2, height: 2, data: new Uint8Array(12) })).toMatch(
      /12 bytes are not 2 x 2[\s\S]*bad-picture/,
    );
  });

  it("when it is cut off anywhere, or damaged", () => {
    for (let length = 8; length < drawn.length; length += 7)
      expect(refusal(drawn.subarray(0, length)), `${length} bytes`).toMatch(/bad-picture/);
    const half = png(header(64, 64), chunk("IDAT", deflateSync(Buffer.alloc(64 * 193).subarray(0, 6000))));
    expect(refusal(half)).toMatch(/only 48 % of it is there/);
    for (let at = 8; at < drawn.length; at += 11) {
      const broken = drawn.slice();
      broken[at]! ^= 0x55;
      const said = refusal(broken);
      expect(said, `byte ${at}`).toMatch(
        /no error|bad-picture|not-png|too-large|empty-artwork|length-range|fix: /,
      );
    }
  });

  it("before anything is unpacked, when it says that it is huge", () => {
    const said = refusal(png(header(30_000, 30_000), chunk("IDAT", deflateSync(Buffer.alloc(10)))));
    expect(said).toMatch(/30000 x 30000 pixels; at most 40 million[\s\S]*picture-too-large/);
    expect(refusal(png(header(0, 5), chunk("IDAT", deflateSync(Buffer.alloc(10)))))).toMatch(/bad-picture/);
    expect(refusal({ width: 30_000, height: 30_000, data: new Uint8Array(4) })).toMatch(/picture-too-large/);
  });

  it("as soon as it unpacks to more than its size", () => {
    const bomb = png(header(10, 10), chunk("IDAT", deflateSync(Buffer.alloc(60_000_000))));
    expect(bomb.length).toBeLessThan(100_000);
    const before = performance.now();
    expect(refusal(bomb)).toMatch(/more image data than its size[\s\S]*bad-picture/);
    expect(performance.now() - before).toBeLessThan(1500);
  });

  it("when its kind is none of the standard's, or is not read", () => {
    const some = chunk("IDAT", deflateSync(Buffer.alloc(40)));
    expect(refusal(png(header(4, 4, 3, 0), some))).toMatch(/3 bits in colour type 0/);
    expect(refusal(png(header(4, 4, 8, 9), some))).toMatch(/bad-picture/);
    expect(refusal(png(header(8, 8, 1, 0, 1), some))).toMatch(/interlaced with 1 bits/);
    expect(refusal(png(header(4, 4, 8, 3), chunk("IDAT", rows(new Uint8Array(16), 4))))).toMatch(
      /bad-picture/,
    );
    const stray = png(
      header(4, 4, 8, 3),
      chunk("PLTE", Uint8Array.of(1, 2, 3)),
      chunk("IDAT", rows(new Uint8Array(16).fill(7), 4)),
    );
    expect(refusal(stray)).toMatch(/colour that its palette does not have/);
  });
});
