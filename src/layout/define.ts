import { wrongType } from "../errors/catalogue.ts";
import { factoryName, shortName } from "../motif/define.ts";
import type { MotifUse } from "../motif/motif.ts";
import { isRecord, readParams } from "../params/compound.ts";
import type { ParamSpec, ParamsIn, ParamsOut } from "../params/param.ts";
import { bindUse } from "../params/use.ts";
import type { LaidOut, LayoutPiece, LayoutTools, LayoutUse, WithRoles } from "./layout.ts";

/** What `defineLayout` is given. */
export interface LayoutDefinition<S extends ParamSpec> {
  /** `namespace/name`, in kebab-case: the namespace is the plugin's name. */
  readonly name: string;
  /** One sentence for a person who chooses among layouts. */
  readonly about: string;
  /** What a user may say, made with the kinds of `param`. */
  readonly params: S;
  /**
   * Says where motifs go within the unit. A pure function of its parameters (complete and checked, lengths in mm) and
   * tools, which measure in µm. It may be async, and should then await `tools.step` so that it can be called off. What it
   * throws is wrapped in `piece-failed`, a SprigwrightError excepted; what it may return is said at {@link LaidOut}.
   */
  readonly place: (params: ParamsOut<S>, tools: LayoutTools) => LaidOut | Promise<LaidOut>;
  /** Which motif the placement of an id shows, for a layout that packs around `tools.held`: see {@link LayoutPiece}. */
  readonly motifOf?: (params: ParamsOut<S>, id: string) => MotifUse | undefined;
}

/**
 * Puts a layout to use; the roles of the motifs in its options are known to the types.
 * @throws SprigwrightError `wrong-type`, `unknown-option`, `missing-option` and what each parameter refuses
 */
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
  if (!isRecord(options)) throw wrongType(where, options, optionsOf(piece, options));
  return bindUse({ use: piece.name, params: readParams(piece.params, options, where) }, piece);
}

/** What a layout is given in words: for a list by itself, how the list is written as an option. */
function optionsOf({ name, params }: LayoutPiece, given: unknown): string {
  const list = Object.keys(params).find((key) => params[key]!.schema["type"] === "array");
  const asOption = Array.isArray(given) && list ? `: ${factoryName(name)}({ ${list}: [ … ] })` : "";
  return `an object of options${asOption}`;
}
