import { wrongType } from "../errors/catalogue.ts";
import { length } from "../params/kinds.ts";
import type { Param } from "../params/param.ts";
import type { Length } from "../units/length.ts";

/** A move across the page: right and down, as two lengths. */
export type Move = readonly [right: Length, down: Length];

const component = length({ about: "How far right, or how far down.", min: -10_000, max: 10_000 });

/** A parameter that takes a {@link Move}; the piece receives millimetres. */
export function move(about: string): Param<Move, readonly [number, number], false> {
  const wanted = "a pair of lengths [right, down], such as [80, 15]";
  return {
    optional: false,
    read(value, where) {
      if (!Array.isArray(value) || value.length !== 2) throw wrongType(where, value, wanted);
      const [right, down] = value as unknown[];
      return Object.freeze([
        component.read(right, `${where}[0]`),
        component.read(down, `${where}[1]`),
      ] as const);
    },
    schema: {
      type: "array",
      items: component.schema,
      minItems: 2,
      maxItems: 2,
      description: about,
      "x-unit": "mm",
    },
  };
}
