import { unboundPiece } from "../errors/catalogue.ts";
import { isRecord } from "./compound.ts";
import type { ParamSpec } from "./param.ts";

/** The kinds of pieces that can be swapped. */
export type PieceKind = "motif" | "layout" | "repeat" | "scheme" | "check";

/** What every piece says about itself, whatever its kind. */
export interface PieceInfo<S extends ParamSpec = ParamSpec> {
  readonly kind: PieceKind;
  /** `namespace/name`, in kebab-case: the namespace is the plugin's name. */
  readonly name: string;
  /** One sentence for a person who chooses among pieces. */
  readonly about: string;
  readonly params: S;
}

/** A piece put to use: plain data that a recipe can hold. */
export interface Use {
  /** The piece's name, `namespace/name`. */
  readonly use: string;
  /** Complete and checked; lengths in mm. */
  readonly params: Readonly<Record<string, unknown>>;
}

// Registered under a global name, so that two copies of the library in one program still understand each other.
const definition: unique symbol = Symbol.for("sprigwright.definition");

/** Freezes a use and lets it remember its definition, out of sight of JSON and of listings. */
export function bindUse<U extends Use>(use: U, piece: PieceInfo): U {
  return Object.freeze(Object.defineProperty(use, definition, { value: piece }));
}

/** Whether a value looks like a piece put to use. */
export const isUse = (value: unknown): value is Use =>
  isRecord(value) && typeof value["use"] === "string" && isRecord(value["params"]);

/** The definition that a use remembers. @throws SprigwrightError `unbound-piece` when it was copied */
export function definitionOf<P extends PieceInfo>(use: Use, where: string): P {
  const piece = (use as Use & { readonly [definition]?: P })[definition];
  if (!piece) throw unboundPiece(where, use.use);
  return piece;
}
