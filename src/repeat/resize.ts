import { definitionOf } from "../params/use.ts";
import { useRepeat } from "./define.ts";
import type { RepeatPiece, RepeatUse } from "./repeat.ts";

/** Parameters that are measured down the page; all other lengths are measured across it. */
const DOWNWARDS = ["height", "margin"];

/**
 * The same repeat with every length multiplied and rounded to whole µm, those across by one factor and those down by
 * another. Which parameters are lengths, the piece's own schemas say; a pair of lengths is a move, right and down.
 */
export function resize(repeat: RepeatUse, across: number, down: number): RepeatUse {
  const piece = definitionOf<RepeatPiece>(repeat, "repeat");
  const params: Record<string, unknown> = { ...repeat.params };
  const times = (mm: unknown, factor: number): number => Math.round((mm as number) * 1000 * factor) / 1000;
  for (const [name, value] of Object.entries(params)) {
    if (piece.params[name]?.schema["x-unit"] !== "mm" || value === undefined) continue;
    params[name] = Array.isArray(value)
      ? [times(value[0], across), times(value[1], down)]
      : times(value, DOWNWARDS.includes(name) ? down : across);
  }
  return useRepeat(piece, params);
}
