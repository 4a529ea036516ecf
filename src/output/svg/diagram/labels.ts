import type { Tile } from "../../../tile/tile.ts";
import { xmlText } from "../../xmp.ts";
import type { Centre } from "./elements.ts";
import { INK } from "./marks.ts";
import { n } from "./symbols.ts";

/** How wide a letter is, in ems: digits of sans-serif faces come near it. */
const LETTER = 0.57;
/** Room beside a text, and the height of its label, in ems. */
const BESIDE = 0.8;
const HIGH = 1.5;
/** Most characters of an id that are shown. */
const SHOWN = 24;
/** How wide a common label may be, against the mean distance of motifs. */
const WIDE = 0.72;
/** Half the size of a centre's symbol, against a thin line. */
const CENTRE = 5.2;
/** Rows that a label may be moved by, in the order in which they are tried. */
const ROWS = [0, 1, -1, 2, -2, 3, -3];

/**
 * Every placement of the unit by its id, on a small label over the motif's origin; where labels would lie over each
 * other or on a centre's symbol one is moved up or down, and a line leads from it to its origin. The more motifs, the
 * smaller.
 */
export function idMarks(
  { placements, arrangement: { unit } }: Tile,
  centres: readonly Centre[],
  thin: number,
  size: number,
): string {
  const texts = placements.map(({ id }) => (id.length > SHOWN ? `${id.slice(0, SHOWN - 1)}…` : id));
  const ems = (text: string): number => LETTER * text.length + BESIDE;
  const common = texts.reduce((sum, text) => sum + ems(text), 0) / texts.length;
  const apart = Math.sqrt((unit.width * unit.height) / texts.length) / 1000;
  const font = Math.min(size * 0.62, (WIDE * apart) / common);
  const height = font * HIGH;
  const rows = new Map<number, [left: number, right: number][]>();
  const take = (row: number, left: number, right: number): void => {
    const taken = rows.get(row);
    if (taken) taken.push([left, right]);
    else rows.set(row, [[left, right]]);
  };
  const symbol = thin * CENTRE;
  for (const { x, y } of centres) {
    const [cx, cy] = [x / 1000, y / 1000];
    const last = Math.round((cy + symbol) / height);
    for (let row = Math.round((cy - symbol) / height); row <= last; row++)
      take(row, cx - symbol, cx + symbol);
  }
  const line = `stroke="${INK}" stroke-width="${n(thin * 0.7)}"`;
  const lines: string[] = [];
  const labels = placements.map(({ x, y }, i) => {
    const [cx, cy, width] = [x / 1000, y / 1000, font * ems(texts[i]!)];
    const [left, right] = [cx - width / 2, cx + width / 2];
    const own = Math.round(cy / height);
    const isFree = (row: number): boolean => !rows.get(row)?.some(([l, r]) => l < right && left < r);
    const row = ROWS.map((by) => own + by).find(isFree) ?? own;
    take(row, left, right);
    const middle = row * height;
    if (row !== own) lines.push(`M${n(cx)} ${n(cy)}V${n(middle)}`);
    return (
      `<rect fill="#fff" ${line} x="${n(left)}" y="${n(middle - height / 2)}" width="${n(width)}" height="${n(height)}" rx="${n(height / 2)}"/>` +
      `<text x="${n(cx)}" y="${n(middle + font * 0.36)}">${xmlText(texts[i]!)}</text>`
    );
  });
  return [
    `<g id="placements" font-size="${n(font)}" text-anchor="middle">`,
    lines.length > 0 ? `<path d="${lines.join("")}" fill="none" ${line}/>` : "",
    ...labels,
    "</g>",
  ].join("");
}
