/** Kerning between two glyphs of one script, in font units. */
export type PairKerning = (left: number, right: number) => number;

/** A 'kern' lookup: what it adds between two glyphs, undefined where another subtable is to be asked. */
type Subtable = (left: number, right: number) => number | undefined;

/**
 * Reads the kerning of a font's GPOS table for a script (OpenType 1.9, "GPOS": pair adjustment, formats 1 and 2,
 * also behind extensions). Lookups apply one after the other, each with the first subtable that has the pair.
 * Read here and not by the font library, which passes over extensions and all lookups but one.
 *
 * @returns undefined where the font has no such table, script or feature
 * @throws RangeError where the table points outside itself
 */
export function readPairKerning(
  gpos: DataView | undefined,
  scripts: readonly string[],
): PairKerning | undefined {
  if (!gpos) return undefined;
  const lookups = kernLookups(gpos, scripts);
  if (lookups.length === 0) return undefined;
  const read = lookups.map((at) => subtablesOf(gpos, at));
  return (left, right) => {
    let sum = 0;
    for (const subtables of read)
      for (const subtable of subtables) {
        const value = subtable(left, right);
        if (value === undefined) continue;
        sum += value;
        break;
      }
    return sum;
  };
}

const tagAt = (view: DataView, at: number): string =>
  String.fromCharCode(...[0, 1, 2, 3].map((i) => view.getUint8(at + i)));

/** Offsets at `at + start + step * i` for the count that stands at `at`. */
function listAt(view: DataView, at: number, step: number): number[] {
  return Array.from({ length: view.getUint16(at) }, (_, i) => at + 2 + step * i);
}

/** Where the lookups of the 'kern' feature start, in the order of the font's list: of the first script it has. */
function kernLookups(view: DataView, scripts: readonly string[]): number[] {
  const [scriptList, featureList, lookupList] = [4, 6, 8].map((at) => view.getUint16(at)) as [
    number,
    number,
    number,
  ];
  const records = listAt(view, scriptList, 6);
  const record = scripts
    .map((tag) => records.find((at) => tagAt(view, at) === tag))
    .find((at) => at !== undefined);
  if (record === undefined) return [];
  const script = scriptList + view.getUint16(record + 4);
  const language = view.getUint16(script);
  if (language === 0) return [];
  const numbers = new Set<number>();
  for (const at of listAt(view, script + language + 4, 2)) {
    const feature = featureList + 2 + 6 * view.getUint16(at);
    if (tagAt(view, feature) !== "kern") continue;
    for (const entry of listAt(view, featureList + view.getUint16(feature + 4) + 2, 2))
      numbers.add(view.getUint16(entry));
  }
  return [...numbers].sort((a, b) => a - b).map((n) => lookupList + view.getUint16(lookupList + 2 + 2 * n));
}

const [PAIRS, EXTENSION] = [2, 9];

function subtablesOf(view: DataView, lookup: number): Subtable[] {
  const type = view.getUint16(lookup);
  return listAt(view, lookup + 4, 2).flatMap((entry) => {
    const at = lookup + view.getUint16(entry);
    if (type === PAIRS) return [readSubtable(view, at)];
    return type === EXTENSION && view.getUint16(at + 2) === PAIRS
      ? [readSubtable(view, at + view.getUint32(at + 4))]
      : [];
  });
}

const X_ADVANCE = 4;

/** Bytes that a value record of some format takes: two for each bit set. */
function sizeOf(format: number): number {
  let size = 0;
  for (let rest = format & 0xff; rest > 0; rest >>= 1) size += 2 * (rest & 1);
  return size;
}

function readSubtable(view: DataView, at: number): Subtable {
  const covered = (left: number): number => coverage(view, at + view.getUint16(at + 2), left);
  const [first, second] = [view.getUint16(at + 4), view.getUint16(at + 6)];
  const record = sizeOf(first) + sizeOf(second);
  // Placements, which stand before the advance, are passed over.
  const advance = (value: number): number =>
    first & X_ADVANCE ? view.getInt16(value + sizeOf(first & (X_ADVANCE - 1))) : 0;
  const format = view.getUint16(at);
  if (format === 1)
    return (left, right) => {
      const index = covered(left);
      if (index < 0 || index >= view.getUint16(at + 8)) return undefined;
      const set = at + view.getUint16(at + 10 + 2 * index);
      const found = search(view.getUint16(set), (i) => view.getUint16(set + 2 + (2 + record) * i) - right);
      return found < 0 ? undefined : advance(set + 4 + (2 + record) * found);
    };
  if (format !== 2) return () => undefined;
  const [columns, body] = [view.getUint16(at + 14), at + 16];
  return (left, right) => {
    if (covered(left) < 0) return undefined;
    const row = classOf(view, at + view.getUint16(at + 8), left);
    const column = classOf(view, at + view.getUint16(at + 10), right);
    return row < view.getUint16(at + 12) && column < columns
      ? advance(body + record * (row * columns + column))
      : undefined;
  };
}

/** A glyph's place in a coverage table; -1 when it is not covered. */
function coverage(view: DataView, at: number, glyph: number): number {
  const count = view.getUint16(at + 2);
  if (view.getUint16(at) === 1) return search(count, (i) => view.getUint16(at + 4 + 2 * i) - glyph);
  const range = rangeOf(view, at + 4, count, glyph);
  return range < 0 ? -1 : view.getUint16(range + 4) + glyph - view.getUint16(range);
}

/** A glyph's class; 0 for all that are in none. */
function classOf(view: DataView, at: number, glyph: number): number {
  if (view.getUint16(at) === 1) {
    const index = glyph - view.getUint16(at + 2);
    return index >= 0 && index < view.getUint16(at + 4) ? view.getUint16(at + 6 + 2 * index) : 0;
  }
  const range = rangeOf(view, at + 4, view.getUint16(at + 2), glyph);
  return range < 0 ? 0 : view.getUint16(range + 4);
}

/** Where the range (first, last, value) that holds a glyph starts; -1 for none. */
function rangeOf(view: DataView, at: number, count: number, glyph: number): number {
  const found = search(count, (i) => {
    const [first, last] = [view.getUint16(at + 6 * i), view.getUint16(at + 6 * i + 2)];
    return glyph < first ? 1 : glyph > last ? -1 : 0;
  });
  return found < 0 ? -1 : at + 6 * found;
}

/** The entry of a sorted list for which `side` is zero (positive: it lies before); -1 for none. */
function search(count: number, side: (index: number) => number): number {
  let [low, high] = [0, count - 1];
  while (low <= high) {
    const middle = (low + high) >> 1;
    const way = side(middle);
    if (way === 0) return middle;
    if (way > 0) high = middle - 1;
    else low = middle + 1;
  }
  return -1;
}
