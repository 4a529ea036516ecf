import type { Use } from "../params/use.ts";

/** A pattern as JSON: all that is needed to build the same tile again with the same version. */
export interface Recipe {
  /** The version of this library that wrote it. */
  readonly sprigwright: string;
  readonly name: string;
  readonly subject: string;
  readonly seed: string;
  readonly repeat: Use;
  readonly layout: Use;
  /** Back to front, the ground first. */
  readonly roles: readonly string[];
  /** Colorway name → role → colour, `#rrggbb`. */
  readonly colorways: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

