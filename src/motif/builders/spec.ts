import type { Param } from "../../params/param.ts";
import type { Length } from "../../units/length.ts";

/** Parameters that are lengths with defaults, by name. */
export type Lengths<Name extends string> = { readonly [N in Name]: Param<Length, number, true> };

/** Parameters that are numbers with defaults, by name. */
export type Numbers<Name extends string> = { readonly [N in Name]: Param<number, number, true> };
