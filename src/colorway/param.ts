import { missingOption, wrongType } from "../errors/catalogue.ts";
import { type About, type HasDefault, makeParam, type Param } from "../params/param.ts";
import { readInk } from "./ink.ts";
import { type Palette, readPalette } from "./palette.ts";

/** Any opaque CSS colour; the piece receives `#rrggbb`. */
export function ink<const A extends About<string>>(about: A): Param<string, string, HasDefault<A>> {
  const schema = { type: "string", maxLength: 200, "x-css": "color" };
  return makeParam({ about, wanted: "a CSS colour", schema, check: readInk }, missingOption);
}

/** A palette; the piece receives it checked. */
export function palette<const A extends About<Palette>>(about: A): Param<Palette, Palette, HasDefault<A>> {
  const wanted = "a palette: { name, inks }";
  const schema = {
    type: "object",
    "x-holds": "palette",
    properties: {
      name: { type: "string" },
      inks: { type: "object", additionalProperties: { type: "string" } },
    },
    required: ["name", "inks"],
    additionalProperties: false,
  };
  const check = (value: unknown, where: string): Palette => {
    if (typeof value !== "object") throw wrongType(where, value, wanted);
    return readPalette(value, where);
  };
  return makeParam({ about, wanted, schema, check }, missingOption);
}
