import { isRecord } from "../../params/compound.ts";
import type { JsonSchema } from "../../params/param.ts";
import type { Style } from "./style.ts";
import { hang } from "./text.ts";

/** The parameters of a piece, read from their JSON Schema: name, range and default, then what each does. */
export function describeParams(schema: JsonSchema, style: Style, width: number, indent = 0): string[] {
  const properties = schemas(schema["properties"]);
  const required = Array.isArray(schema["required"]) ? (schema["required"] as string[]) : [];
  const pad = " ".repeat(indent);
  return Object.entries(properties).flatMap(([name, param]) => {
    const range = rangeOf(param);
    const fallback = required.includes(name) ? "must be given" : defaultOf(param);
    const inner = isRecord(param["items"]) ? (param["items"] as JsonSchema) : param;
    return [
      "",
      `${pad}${style.name(name)}  ${[range, fallback].filter(Boolean).join("; ")}`,
      `${pad}  ${style.quiet(hang(String(param["description"] ?? ""), indent + 2, width))}`,
      ...(inner["properties"] && inner["x-piece"] === undefined && inner["x-holds"] === undefined
        ? describeParams(inner, style, width, indent + 2)
        : []),
    ];
  });
}

const schemas = (value: unknown): Readonly<Record<string, JsonSchema>> =>
  isRecord(value) ? (value as Readonly<Record<string, JsonSchema>>) : {};

function defaultOf(param: JsonSchema): string {
  return param["default"] === undefined ? "may be left out" : `default ${JSON.stringify(param["default"])}`;
}

/** What a value may be, in a few words. */
function rangeOf(param: JsonSchema): string {
  const {
    anyOf,
    enum: names,
    type,
    minimum,
    maximum,
    maxLength,
    minItems,
    maxItems,
  } = param as Record<string, unknown>;
  const unit = param["x-unit"] ? ` ${String(param["x-unit"])}${param["x-unit"] === "turn" ? "s" : ""}` : "";
  if (param["x-holds"] === "palette") return "a palette: { name, inks }";
  if (param["x-holds"] === "area") return "path data in mm, or stripes({ … }), see describe stripes";
  if (Array.isArray(names)) return names.join(" | ");
  if (Array.isArray(anyOf)) {
    const [first, second] = anyOf as readonly JsonSchema[];
    const range = rangeOf({ ...first, ...(unit ? { "x-unit": param["x-unit"] } : {}) });
    return second?.["type"] === "array" ? `${range}, or ${listOf(second)}` : range;
  }
  if (type === "number" || type === "integer")
    return `${type === "integer" ? "whole number, " : ""}${String(minimum)} to ${String(maximum)}${unit}`;
  if (type === "boolean") return "true | false";
  if (param["x-css"] === "color") return "any opaque CSS colour";
  if (type === "string") return `text of at most ${String(maxLength)} characters`;
  if (param["x-piece"] === "motif") return "what a motif's factory gives, such as leaf({ length: 18 })";
  if (type === "array") return `list of ${String(minItems)} to ${String(maxItems)}`;
  return "";
}

/** What a list of numbers may be, beside a single value: a pair is a range. */
function listOf({ items, minItems, maxItems }: JsonSchema): string {
  if (minItems === 2 && maxItems === 2) return "[least, most]";
  return `a list of ${String(minItems)} to ${String(maxItems)}, each ${rangeOf(items as JsonSchema)}`;
}
