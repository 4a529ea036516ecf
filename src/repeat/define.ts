import { badInput, wrongType } from "../errors/catalogue.ts";
import type { Arrangement } from "../geometry/lattice.ts";
import { shortName } from "../motif/define.ts";
import { isRecord, readParams } from "../params/compound.ts";
import { length } from "../params/kinds.ts";
import type { Param, ParamSpec, ParamsIn, ParamsOut } from "../params/param.ts";
import { bindUse } from "../params/use.ts";
import type { Length } from "../units/length.ts";
import { mmToUm } from "../units/length.ts";
import type { RepeatPiece, RepeatUse } from "./repeat.ts";

/** What `defineRepeat` is given. */
export interface RepeatDefinition<S extends ParamSpec> {
  /** `namespace/name`, in kebab-case. */
  readonly name: string;
  /** One sentence for a person who chooses among repeats. */
  readonly about: string;
  readonly params: S;
  /** The unit, the lattice and the operations that complete a cell, in whole µm. */
  readonly arrange: (params: ParamsOut<S>) => Arrangement;
}

/** Puts a repeat to use: `halfDrop({ width: "6.4in", height: "4.8in" })`. */
export interface RepeatFactory<S extends ParamSpec> {
  (options: ParamsIn<S>): RepeatUse;
  readonly piece: RepeatPiece;
}

/** Defines a repeat piece and returns the function that puts it to use. */
export function defineRepeat<S extends ParamSpec>(definition: RepeatDefinition<S>): RepeatFactory<S> {
  const piece: RepeatPiece = {
    kind: "repeat",
    ...definition,
    arrange: definition.arrange as RepeatPiece["arrange"],
  };
  const factory = (options: unknown) => useRepeat(piece, options);
  return Object.freeze(Object.assign(factory, { piece })) as unknown as RepeatFactory<S>;
}

/** A use of a repeat piece from unchecked options. */
export function useRepeat(piece: RepeatPiece, options: unknown): RepeatUse {
  const where = shortName(piece.name);
  if (!isRecord(options)) throw wrongType(where, options, "an object of options");
  return bindUse({ use: piece.name, params: readParams(piece.params, options, where) }, piece);
}

/** Width and height of the unit, as every repeat type takes them: 5 mm to 10 m. */
export const unitSize: {
  /** Width of the unit that is drawn and then repeated, 5 mm to 10 m. */
  readonly width: Param<Length, number, false>;
  /** Height of the unit that is drawn and then repeated, 5 mm to 10 m. */
  readonly height: Param<Length, number, false>;
} = {
  width: length({ about: "Width of the unit that is drawn and then repeated.", min: 5, max: 10_000 }),
  height: length({ about: "Height of the unit that is drawn and then repeated.", min: 5, max: 10_000 }),
};

/** Half of a length in whole µm. @throws SprigwrightError `odd-length` when it does not halve exactly */
export function halved(mm: number, where: string): number {
  const um = mmToUm(mm);
  if (um % 2 !== 0)
    throw badInput(
      "odd-length",
      where,
      `${mm} mm is an odd number of micrometres, so half of it is not whole and the repeat would not close`,
      `give ${(um - 1) / 1000} mm or ${(um + 1) / 1000} mm`,
    );
  return um / 2;
}
