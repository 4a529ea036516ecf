import { badInput, missingOption, wrongType } from "../errors/catalogue.ts";
import { isRecord } from "../params/compound.ts";
import { type About, type HasDefault, makeParam, type Param } from "../params/param.ts";
import { definitionOf, isUse } from "../params/use.ts";
import type { LayoutPiece, LayoutUse } from "./layout.ts";

/** How many layouts may lie within each other, the innermost included. */
const DEEPEST = 4;

/** A layout as a parameter of another: what a layout's factory returned. */
export function layout<const A extends About<LayoutUse>>(
  about: A,
): Param<LayoutUse, LayoutUse, HasDefault<A>> {
  const wanted = "a layout, such as toss({ motifs: [...] })";
  const schema = {
    type: "object",
    "x-piece": "layout",
    properties: { use: { type: "string" }, params: { type: "object" } },
    required: ["use"],
  };
  const check = (value: unknown, where: string): LayoutUse => {
    if (!isLayout(value, where)) throw wrongType(where, value, wanted);
    if (depthOf(value, where) >= DEEPEST)
      throw badInput(
        "nested-too-deep",
        where,
        `${DEEPEST} layouts lie within each other there already`,
        "put layouts beside each other in one list",
      );
    return value;
  };
  return makeParam({ about, wanted, schema, check }, missingOption);
}

const isLayout = (value: unknown, where: string): value is LayoutUse =>
  isUse(value) && definitionOf<LayoutPiece>(value, where).kind === "layout";

/** How many layouts lie within each other in a value: 1 for a toss. */
function depthOf(value: unknown, where: string): number {
  if (!Array.isArray(value) && !isRecord(value)) return 0;
  const within = Object.values(value).reduce<number>(
    (most, entry) => Math.max(most, depthOf(entry, where)),
    0,
  );
  return within + (isUse(value) && isLayout(value, where) ? 1 : 0);
}
