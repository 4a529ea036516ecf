import { badInput, outOfRange, unknownName, wrongType } from "../errors/catalogue.ts";
import type { Size } from "../geometry/lattice.ts";
import { isRecord } from "../params/compound.ts";
import { bareUnit } from "../repeat/bare-unit.ts";
import type { Tile } from "../tile/tile.ts";
import { type Length, mmToUm, toMm } from "../units/length.ts";

/**
 * The piece of cloth that a file shows, from the block's upper left corner:
 * - `"block"`: the smallest rectangle that repeats straight. For printers who only repeat straight.
 * - `"unit"`: the part of it that makes the cloth when the printer steps columns or rows (a half-drop, say) himself;
 *   `straightEquivalent` says the step. The same as the block where the repeat is straight.
 * - `{ across, down }`: whole blocks side by side, each way at most 1000.
 * - `{ width, height }`: a length of cloth at true size, wherever that cuts the pattern.
 */
export type Cut =
  | "block"
  | "unit"
  | { readonly across: number; readonly down: number }
  | { readonly width: Length; readonly height: Length };

/** Most blocks along one side. */
const MOST_BLOCKS = 1000;

const WORDS = ["block", "unit"] as const;
const WANTED = '"block", "unit", { across, down } in blocks, or { width, height } in lengths';

/**
 * Size of a cut in whole µm.
 * @throws SprigwrightError `unknown-cut`, `unknown-option`, `wrong-type`, `number-range`, `length-range`
 */
export function cutSize(tile: Pick<Tile, "block" | "arrangement">, cut: Cut, where: string): Size {
  const { block, arrangement } = tile;
  if (cut === "block") return block;
  if (cut === "unit") {
    const { width, height } = bareUnit(arrangement);
    return { width: mmToUm(width), height: mmToUm(height) };
  }
  if (typeof cut === "string") throw unknownName(where, "cut", cut, WORDS);
  if (!isRecord(cut)) throw wrongType(where, cut, WANTED);
  const { across, down, width, height } = cut as Partial<Record<string, unknown>>;
  const blocks = across !== undefined || down !== undefined;
  const keys = blocks ? ["across", "down"] : ["width", "height"];
  for (const key of Object.keys(cut)) if (!keys.includes(key)) throw unknownName(where, "option", key, keys);
  if (!blocks) return { width: side(width, `${where} > width`), height: side(height, `${where} > height`) };
  return {
    width: block.width * count(across, `${where} > across`),
    height: block.height * count(down, `${where} > down`),
  };
}

function count(value: unknown, where: string): number {
  if (!Number.isInteger(value)) throw wrongType(where, value, "a whole number of blocks");
  const blocks = value as number;
  if (blocks < 1 || blocks > MOST_BLOCKS) throw outOfRange(where, blocks, { min: 1, max: MOST_BLOCKS }, "");
  return blocks;
}

function side(value: unknown, where: string): number {
  const um = mmToUm(toMm(value as Length, where));
  if (um >= 1) return um;
  throw badInput("length-range", where, "a cut of no size", 'give a length above 0, such as 1500 or "1.5in"');
}
