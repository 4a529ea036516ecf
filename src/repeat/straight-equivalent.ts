import { cross } from "../geometry/block.ts";
import { arrangementOf } from "./arrangement.ts";
import { type BareUnit, bareUnit } from "./bare-unit.ts";
import type { RepeatUse } from "./repeat.ts";

/** The rectangle to hand to a printer who only repeats straight, and the one for a printer who steps rows himself. */
export interface StraightEquivalent {
  /** The smallest upright rectangle that repeats straight: what a tile's `block` is (mm). */
  readonly block: { readonly width: number; readonly height: number };
  /** How many units it shows, mirrored and turned ones included. */
  readonly units: number;
  /** How far sizes were changed to close on whole µm, as a share of what was asked for. */
  readonly distortion: number;
  /** What recurs without mirrors and turns, for a printer who does the drop himself. */
  readonly bare: BareUnit;
}

/**
 * What a repeat comes to as an upright rectangle, exactly: the block that repeats straight, and the bare unit with
 * the step that a printer must make. Files of the bare unit are cut from the upper left corner of the block.
 *
 * @throws SprigwrightError of the repeat, for sizes that do not close
 */
export function straightEquivalent(repeat: RepeatUse): StraightEquivalent {
  const arrangement = arrangementOf(repeat);
  const { lattice, operations, distortion = 0 } = arrangement;
  const { a, b, block } = lattice;
  const cell = Math.abs(cross(a, b));
  return {
    block: { width: block.width / 1000, height: block.height / 1000 },
    units: Math.round((block.width / cell) * block.height) * operations.length,
    distortion,
    bare: bareUnit(arrangement),
  };
}
