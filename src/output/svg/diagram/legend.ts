import { escaped, n } from "./symbols.ts";

/** One entry: what is drawn in a square of side 1 about (0, 0), and what it means. */
export interface LegendEntry {
  readonly mark: (x: number, y: number) => string;
  readonly text: string;
}

/** How wide a letter is, in ems: sans-serif faces come near it. */
const LETTER = 0.54;

/** Entries in lines below a picture `width` mm wide, with letters `size` mm high; and how high that is. */
export function legend(
  entries: readonly LegendEntry[],
  left: number,
  top: number,
  width: number,
  size: number,
): { readonly svg: string; readonly height: number } {
  const parts: string[] = [];
  let [x, y] = [left, top + size * 1.2];
  for (const { mark, text } of entries) {
    const wide = size * (2.1 + LETTER * text.length);
    if (x > left && x + wide > left + width) {
      x = left;
      y += size * 2;
    }
    parts.push(
      mark(x + size * 0.7, y),
      `<text x="${n(x + size * 1.8)}" y="${n(y + size * 0.35)}">${escaped(text)}</text>`,
    );
    x += wide + size * 1.2;
  }
  return { svg: parts.join("\n"), height: entries.length === 0 ? 0 : y + size * 1.2 - top };
}
