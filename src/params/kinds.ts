import { badInput, missingOption, outOfRange, shown, unknownName, wrongType } from "../errors/catalogue.ts";
import { type Length, toMm } from "../units/length.ts";
import { type About, type HasDefault, type JsonSchema, makeParam, type Param } from "./param.ts";

interface Range {
  readonly min: number;
  readonly max: number;
}

const param = <In, Out, A extends About<In>>(
  about: A,
  wanted: string,
  schema: JsonSchema,
  check: (value: unknown, where: string) => Out,
): Param<In, Out, HasDefault<A>> => makeParam({ about, wanted, schema, check }, missingOption);

function numeric(value: unknown, where: string, range: Range, wanted: string, whole: boolean): number {
  if (typeof value !== "number" || !Number.isFinite(value) || (whole && !Number.isInteger(value)))
    throw wrongType(where, value, wanted);
  if (value < range.min || value > range.max) throw outOfRange(where, value, range, "");
  return value + 0;
}

/** A length within a range in mm; the piece receives millimetres. */
export function length<const A extends About<Length> & Range>(
  about: A,
): Param<Length, number, HasDefault<A>> {
  const wanted = `a length from ${about.min} mm to ${about.max} mm`;
  const schema = {
    anyOf: [
      { type: "number", minimum: about.min, maximum: about.max },
      { type: "string", pattern: "^\\s*[+-]?(\\d+\\.?\\d*|\\.\\d+)\\s*(mm|cm|in)\\s*$" },
    ],
    "x-unit": "mm",
  };
  return param(about, wanted, schema, (value, where) => {
    const mm = toMm(value as Length, where);
    if (mm < about.min || mm > about.max) throw outOfRange(where, mm, about, "mm", "length-range");
    return mm;
  });
}

/** A number without a unit, within a range. */
export function number<const A extends About<number> & Range>(
  about: A,
): Param<number, number, HasDefault<A>> {
  const wanted = `a number from ${about.min} to ${about.max}`;
  const schema = { type: "number", minimum: about.min, maximum: about.max };
  return param(about, wanted, schema, (v, where) => numeric(v, where, about, wanted, false));
}

/** A whole number within a range. */
export function integer<const A extends About<number> & Range>(
  about: A,
): Param<number, number, HasDefault<A>> {
  const wanted = `a whole number from ${about.min} to ${about.max}`;
  const schema = { type: "integer", minimum: about.min, maximum: about.max };
  return param(about, wanted, schema, (v, where) => numeric(v, where, about, wanted, true));
}

/** A share of a whole, 0 to 1. */
export function share<const A extends About<number>>(about: A): Param<number, number, HasDefault<A>> {
  const range = { min: 0, max: 1 };
  const wanted = "a number from 0 to 1";
  const schema = { type: "number", minimum: 0, maximum: 1 };
  return param(about, wanted, schema, (value, where) => {
    const percent = percentOf(value);
    if (percent === undefined) return numeric(value, where, range, wanted, false);
    const [code, is] = typeof value === "string" ? ["wrong-type", "is not"] : ["number-range", "is outside"];
    const what = `${shown(value)} ${is} ${typeof value === "string" ? wanted : "0 to 1"}`;
    throw badInput(
      code,
      where,
      what,
      `give ${wanted}: ${percent} % is ${Math.round(percent * 100) / 10_000}`,
    );
  });
}

/** What is most likely meant as a part of a hundred: 35 or "35%", but not 0.35, 1.2 or 3500. */
function percentOf(value: unknown): number | undefined {
  const text = typeof value === "string" ? /^\s*(\d{1,3}(?:\.\d{1,6})?)\s*%\s*$/.exec(value)?.[1] : undefined;
  const percent = text === undefined ? value : Number(text);
  if (typeof percent !== "number" || !(percent >= 0 && percent <= 100)) return undefined;
  return text !== undefined || percent >= 5 ? percent : undefined;
}

/** An angle in turns (0.25 is a quarter turn), -1 to 1. */
export function turns<const A extends About<number>>(about: A): Param<number, number, HasDefault<A>> {
  const range = { min: -1, max: 1 };
  const wanted = "an angle in turns from -1 to 1: 0.25 is a quarter turn";
  const schema = { type: "number", minimum: -1, maximum: 1, "x-unit": "turn" };
  return param(about, wanted, schema, (v, where) => {
    if (typeof v === "number" && Number.isFinite(v) && Math.abs(v) > 1)
      throw badInput("number-range", where, `${v} is outside -1 to 1`, `give ${wanted}`);
    return numeric(v, where, range, wanted, false);
  });
}

/** Yes or no. */
export function flag<const A extends About<boolean>>(about: A): Param<boolean, boolean, HasDefault<A>> {
  return param(about, "true or false", { type: "boolean" }, (value, where) => {
    if (typeof value !== "boolean") throw wrongType(where, value, "true or false");
    return value;
  });
}

/** Text of at most `max` characters. */
export function text<const A extends About<string> & { readonly max: number }>(
  about: A,
): Param<string, string, HasDefault<A>> {
  const wanted = `text of at most ${about.max} characters`;
  return param(about, wanted, { type: "string", maxLength: about.max }, (value, where) => {
    if (typeof value !== "string" || value.length > about.max) throw wrongType(where, value, wanted);
    return value;
  });
}

/** One of a few names. */
export function choice<const C extends string, const A extends About<C> & { readonly of: readonly C[] }>(
  about: A & { readonly of: readonly C[] },
): Param<C, C, HasDefault<A>> {
  const wanted = `one of ${about.of.map((name) => `"${name}"`).join(", ")}`;
  return param(about, wanted, { enum: about.of }, (value, where) => {
    if (typeof value !== "string") throw wrongType(where, value, wanted);
    if (!about.of.includes(value as C)) throw unknownName(where, "choice", value, about.of);
    return value as C;
  });
}

/** One number, or a pair [least, most]; the piece receives the pair. */
export function span<const A extends About<number | readonly [number, number]> & Range>(
  about: A,
): Param<number | readonly [number, number], readonly [number, number], HasDefault<A>> {
  const wanted = `a number from ${about.min} to ${about.max}, or a pair [least, most] of them`;
  const one = { type: "number", minimum: about.min, maximum: about.max };
  const schema = { anyOf: [one, { type: "array", items: one, minItems: 2, maxItems: 2 }] };
  return param(about, wanted, schema, (value, where) => {
    const pair: readonly unknown[] = Array.isArray(value) ? value : [value, value];
    if (pair.length !== 2) throw wrongType(where, value, wanted);
    const [low, high] = pair.map((v) => numeric(v, where, about, wanted, false)) as [number, number];
    if (low > high)
      throw badInput(
        "wrong-type",
        where,
        `[${low}, ${high}] does not have the least first`,
        `give [${high}, ${low}]`,
      );
    return Object.freeze([low, high] as const);
  });
}
