import { wrongType } from "../../errors/catalogue.ts";
import { type Given, shortName } from "../../motif/define.ts";
import { isRecord, readParams } from "../../params/compound.ts";
import type { ParamSpec, ParamsOut } from "../../params/param.ts";
import { bindUse } from "../../params/use.ts";
import type { SchemeColor, SchemePiece, SchemeTools, SchemeUse } from "./scheme.ts";

/** What `defineScheme` is given. */
export interface SchemeDefinition<S extends ParamSpec> {
  /** `namespace/name`, in kebab-case. */
  readonly name: string;
  /** One sentence for a person who chooses among schemes. */
  readonly about: string;
  readonly params: S;
  /** The colours, the one that makes a ground first. A pure function of its parameters and tools. */
  readonly make: (params: ParamsOut<S>, tools: SchemeTools) => readonly SchemeColor[];
}

/** Puts a scheme to use: `schemes.dusk({ count: 5 })`. */
export interface SchemeFactory<S extends ParamSpec> {
  (...options: Given<S, unknown>): SchemeUse;
  readonly piece: SchemePiece;
}

/** Defines a scheme piece and returns the function that puts it to use. */
export function defineScheme<S extends ParamSpec>(definition: SchemeDefinition<S>): SchemeFactory<S> {
  const piece: SchemePiece = {
    kind: "scheme",
    ...definition,
    make: definition.make as SchemePiece["make"],
  };
  const factory = (options: unknown = {}) => useScheme(piece, options);
  return Object.freeze(Object.assign(factory, { piece })) as unknown as SchemeFactory<S>;
}

/** A use of a scheme piece from unchecked options. */
export function useScheme(piece: SchemePiece, options: unknown): SchemeUse {
  const where = shortName(piece.name);
  if (!isRecord(options)) throw wrongType(where, options, "an object of options");
  return bindUse({ use: piece.name, params: readParams(piece.params, options, where) }, piece);
}
