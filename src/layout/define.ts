import { wrongType } from "../errors/catalogue.ts";
import { shortName } from "../motif/define.ts";
import type { MotifUse } from "../motif/motif.ts";
import { isRecord, readParams } from "../params/compound.ts";
import type { ParamSpec, ParamsIn, ParamsOut } from "../params/param.ts";
import { bindUse } from "../params/use.ts";
import type { LaidOut, LayoutPiece, LayoutTools, LayoutUse, WithRoles } from "./layout.ts";

/** What `defineLayout` is given. */
export interface LayoutDefinition<S extends ParamSpec> {
  /** `namespace/name`, in kebab-case. */
  readonly name: string;
  /** One sentence for a person who chooses among layouts. */
  readonly about: string;
  readonly params: S;
  /**
   * Says where motifs go within the unit. A pure function of its parameters and tools.
   * It may be async, and should then await `tools.step` so that it can be called off.
   */
  readonly place: (params: ParamsOut<S>, tools: LayoutTools) => LaidOut | Promise<LaidOut>;
  /** Which motif the placement of an id shows, for a layout that packs around `tools.held`: see {@link LayoutPiece}. */
  readonly motifOf?: (params: ParamsOut<S>, id: string) => MotifUse | undefined;
}

/** Puts a layout to use; the roles of the motifs in its options are known to the types. */
export interface LayoutFactory<S extends ParamSpec> {
  <R extends string>(options: WithRoles<ParamsIn<S>, R>): LayoutUse<R>;
  readonly piece: LayoutPiece;
}

/** Defines a layout piece and returns the function that puts it to use. */
export function defineLayout<S extends ParamSpec>(definition: LayoutDefinition<S>): LayoutFactory<S> {
  const piece: LayoutPiece = {
    kind: "layout",
    ...definition,
    place: definition.place as LayoutPiece["place"],
    ...(definition.motifOf ? { motifOf: definition.motifOf as NonNullable<LayoutPiece["motifOf"]> } : {}),
  } as LayoutPiece;
  const factory = (options: unknown) => useLayout(piece, options);
  return Object.freeze(Object.assign(factory, { piece })) as unknown as LayoutFactory<S>;
}

/** A use of a layout piece from unchecked options. */
export function useLayout(piece: LayoutPiece, options: unknown): LayoutUse {
  const where = shortName(piece.name);
  if (!isRecord(options)) throw wrongType(where, options, "an object of options");
  return bindUse({ use: piece.name, params: readParams(piece.params, options, where) }, piece);
}
