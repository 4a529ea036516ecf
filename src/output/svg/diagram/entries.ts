import { mm } from "../../../geometry/path-text.ts";
import { cornerOf } from "../../../tile/finish.ts";
import type { Tile } from "../../../tile/tile.ts";
import type { LegendEntry } from "./legend.ts";
import { elementsShown, INK, PENCIL } from "./marks.ts";
import { n, rotationSymbol } from "./symbols.ts";

const TURNS = { 2: "half turn", 3: "third of a turn", 4: "quarter turn", 6: "sixth of a turn" } as const;

/** What the legend of a tile's diagram says: only what the diagram shows. */
export function entriesFor(tile: Tile, thin: number, size: number): LegendEntry[] {
  const { width, height } = tile.block;
  const isCorner = cornerOf(tile.arrangement) !== undefined;
  const { centres, axes } = elementsShown(tile);
  const s = size * 0.42;
  const box = (x: number, y: number, color: string, stroke: number): string =>
    `<rect x="${n(x - s)}" y="${n(y - s)}" width="${n(2 * s)}" height="${n(2 * s)}" fill="none" stroke="${color}" stroke-width="${n(stroke)}"/>`;
  const line = (x: number, y: number, dashes: string): string =>
    `<path d="M${n(x - s * 1.4)} ${n(y)}L${n(x + s * 1.4)} ${n(y)}" stroke="${INK}" stroke-width="${n(thin * 1.2)}"${dashes}/>`;
  const entries: LegendEntry[] = [
    {
      mark: (x, y) => box(x, y, INK, thin * 0.8),
      text: `block ${mm(width)} × ${mm(height)} mm`,
    },
  ];
  if (!isCorner) entries.unshift({ mark: (x, y) => box(x, y, PENCIL, thin * 1.4), text: "unit" });
  if (axes.some(({ glide }) => !glide))
    entries.push({ mark: (x, y) => line(x, y, ""), text: isCorner ? "mitre" : "mirror line" });
  if (axes.some(({ glide }) => glide))
    entries.push({
      mark: (x, y) => line(x, y, ` stroke-dasharray="${n(thin * 3.4)} ${n(thin * 2.4)}"`),
      text: "glide line",
    });
  for (const order of [2, 3, 4, 6] as const)
    if (centres.some((centre) => centre.order === order))
      entries.push({
        mark: (x, y) => `<path d="${rotationSymbol(order, x, y, thin * 5.2)}"/>`,
        text: TURNS[order],
      });
  return entries;
}
