import { sfntTable } from "./sfnt-table.ts";

/** Most simple outlines that one glyph may be put together from: accented letters take two or three. */
const MOST_PIECES = 1000;

/** Flags of a component (OpenType 1.9, "glyf"): its arguments are words; it has a scale; more components follow. */
const [WORDS, SCALE, MORE, TWO_SCALES, FOUR_SCALES] = [0x01, 0x08, 0x20, 0x40, 0x80];

/**
 * Makes a check that a glyph is not put together from itself, nor from so many others that reading it never ends:
 * a damaged or hostile font may repeat glyphs of glyphs of glyphs.
 * @returns a function that throws an Error for such a glyph, and nothing for fonts that have no such glyphs
 */
export function compositeCheck(sfnt: Uint8Array): (glyph: number) => void {
  const [head, loca, glyf] = ["head", "loca", "glyf"].map((tag) => sfntTable(sfnt, tag));
  if (!head || !loca || !glyf) return () => undefined;
  const long = head.getInt16(50) !== 0;
  const offset = (glyph: number): number =>
    long ? loca.getUint32(4 * glyph) : 2 * loca.getUint16(2 * glyph);
  const known = new Map<number, number>();
  const open = new Set<number>();
  const count = (glyph: number): number => {
    const before = known.get(glyph);
    if (before !== undefined) return before;
    if (open.has(glyph)) throw new Error(`glyph ${glyph} is made of itself`);
    open.add(glyph);
    let pieces = 0;
    const at = offset(glyph);
    const composite = offset(glyph + 1) > at && glyf.getInt16(at) < 0;
    for (const part of composite ? componentsOf(glyf, at + 10) : []) pieces += count(part);
    open.delete(glyph);
    pieces = Math.max(1, pieces);
    if (pieces > MOST_PIECES) throw new Error(`glyph ${glyph} is made of more than ${MOST_PIECES} pieces`);
    known.set(glyph, pieces);
    return pieces;
  };
  return (glyph) => {
    count(glyph);
  };
}

function componentsOf(glyf: DataView, from: number): number[] {
  const parts: number[] = [];
  for (let at = from, flags = MORE; flags & MORE && parts.length <= MOST_PIECES; ) {
    flags = glyf.getUint16(at);
    parts.push(glyf.getUint16(at + 2));
    at += flags & WORDS ? 8 : 6;
    at += flags & SCALE ? 2 : flags & TWO_SCALES ? 4 : flags & FOUR_SCALES ? 8 : 0;
  }
  return parts;
}
