import { decode } from "fast-png";
import type { Picture } from "../picture.ts";
import { type Chunk, chunksOf, fileOf } from "./chunks.ts";
import { readHeader, unpackedLength } from "./header.ts";
import { badPicture } from "./refused.ts";
import { toRgba } from "./to-rgba.ts";
import { checkUnpacked } from "./unpacked.ts";

/** What the picture needs. All else stays outside, above all what is packed, such as profiles and texts. */
const NEEDED: ReadonlySet<string> = new Set(["IHDR", "PLTE", "tRNS", "IDAT", "IEND"]);

/**
 * A PNG as pixels, taken as sRGB. Its size and the length of its data are checked before anything is unpacked.
 * @throws SprigwrightError `not-png`, `bad-picture`, `picture-too-large`
 */
export function readPng(bytes: Uint8Array, where: string): Picture {
  const chunks = chunksOf(bytes, where);
  const header = readHeader(chunks[0], where);
  if (header.interlaced && header.depth < 8)
    throw badPicture(where, `it is interlaced with ${header.depth} bits`, "save the PNG without interlacing");
  const parts = chunks.filter(({ name }) => name === "IDAT").map(({ data }) => data);
  checkUnpacked(parts, unpackedLength(header), where);
  let decoded: ReturnType<typeof decode>;
  try {
    decoded = decode(fileOf(chunks.filter(({ name }) => NEEDED.has(name))));
  } catch (cause) {
    throw badPicture(where, cause instanceof Error ? cause.message : "it cannot be read", undefined, cause);
  }
  const { width, height } = header;
  return {
    width,
    height,
    data: toRgba(decoded, header, where),
    ...resolutionOf(chunks),
    notes: notesOf(chunks),
  };
}

/** Pixels in a mm, by the pHYs chunk (11.3.4.3), where it tells a size and not just a shape. */
function resolutionOf(chunks: readonly Chunk[]): { perMm?: number; perMmDown?: number } {
  const chunk = chunks.find(({ name, data }) => name === "pHYs" && data.length === 9 && data[8] === 1);
  if (!chunk) return {};
  const view = new DataView(chunk.data.buffer, chunk.data.byteOffset, 9);
  const [across, down] = [view.getUint32(0), view.getUint32(4)];
  return across > 0 && down > 0 ? { perMm: across / 1000, perMmDown: down / 1000 } : {};
}

function notesOf(chunks: readonly Chunk[]): string[] {
  const profile = chunks.find(({ name }) => name === "iCCP");
  if (!profile) return [];
  const end = Math.min(79, profile.data.indexOf(0));
  const called = String.fromCharCode(...profile.data.subarray(0, Math.max(0, end)));
  if (/srgb/i.test(called)) return [];
  return [`its colour profile (${called || "without a name"}) is not applied; hex values are read as sRGB`];
}
