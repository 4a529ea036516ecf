import { missingOption, wrongType } from "../errors/catalogue.ts";
import { type About, type HasDefault, makeParam, type Param } from "../params/param.ts";
import { definitionOf, isUse } from "../params/use.ts";
import type { MotifPiece, MotifUse } from "./motif.ts";

/** A motif as a parameter of a layout: what a motif's factory returned. */
export function motif<const A extends About<MotifUse>>(about: A): Param<MotifUse, MotifUse, HasDefault<A>> {
  const wanted = "a motif, such as leaf({ length: 18 })";
  const schema = {
    type: "object",
    "x-piece": "motif",
    properties: {
      use: { type: "string" },
      params: { type: "object" },
      roles: { type: "object", additionalProperties: { type: "string" } },
      vary: { type: "number", minimum: 0, maximum: 1 },
      variants: { type: "integer", minimum: 1, maximum: 64 },
    },
    required: ["use"],
  };
  const check = (value: unknown, where: string): MotifUse => {
    if (!isUse(value) || definitionOf<MotifPiece>(value, where).kind !== "motif")
      throw wrongType(where, value, wanted);
    return value as MotifUse;
  };
  return makeParam({ about, wanted, schema, check }, missingOption);
}
