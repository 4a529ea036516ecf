import { missingOption, outOfRange, unknownName, wrongType } from "../errors/catalogue.ts";
import {
  type About,
  type HasDefault,
  type JsonSchema,
  makeParam,
  type Param,
  type ParamSpec,
  type ParamsIn,
  type ParamsOut,
} from "./param.ts";

/** Whether a value is an object with named entries: no list, no null, no class of its own. */
export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return false;
  const proto: unknown = Object.getPrototypeOf(value);
  return proto === null || Object.getPrototypeOf(proto as object) === null;
}

/** A list whose entries are all read by one parameter. */
export function list<In, Out, const A extends About<readonly In[]> & { min: number; max: number }>(
  of: Param<In, Out>,
  about: A,
): Param<readonly In[], readonly Out[], HasDefault<A>> {
  const wanted = `a list of ${about.min} to ${about.max} entries`;
  const schema = { type: "array", items: of.schema, minItems: about.min, maxItems: about.max };
  const check = (value: unknown, where: string): readonly Out[] => {
    if (!Array.isArray(value)) throw wrongType(where, value, wanted);
    if (value.length < about.min || value.length > about.max)
      throw outOfRange(where, value.length, about, "entries", "list-length");
    return Object.freeze(Array.from(value, (entry: unknown, i) => of.read(entry, `${where}[${i}]`)));
  };
  return makeParam({ about, wanted, schema, check }, missingOption);
}

/** An object with parameters of its own. */
export function object<S extends ParamSpec, const A extends About<ParamsIn<S>>>(
  spec: S,
  about: A,
): Param<ParamsIn<S>, ParamsOut<S>, HasDefault<A>> {
  const check = (value: unknown, where: string): ParamsOut<S> => readParams(spec, value, where);
  return makeParam({ about, wanted: "an object", schema: schemaOf(spec), check }, missingOption);
}

/**
 * Reads a whole set of parameters: defaults filled in, ranges checked, unknown names refused with
 * the nearest known one. The result is complete and frozen, and reading it again changes nothing.
 */
export function readParams<S extends ParamSpec>(spec: S, given: unknown, where: string): ParamsOut<S> {
  const values = given ?? {};
  if (!isRecord(values)) throw wrongType(where, given, "an object of options");
  const known = Object.keys(spec);
  for (const key of Object.keys(values))
    if (!Object.hasOwn(spec, key)) throw unknownName(`${where} > ${key}`, "option", key, known);
  const out: Record<string, unknown> = {};
  for (const key of known) {
    const value = Object.hasOwn(values, key) ? values[key] : undefined;
    out[key] = spec[key]!.read(value, `${where} > ${key}`);
  }
  return Object.freeze(out) as ParamsOut<S>;
}

/** The JSON Schema (2020-12) of a set of parameters. */
export function schemaOf(spec: ParamSpec): JsonSchema {
  const properties: Record<string, JsonSchema> = {};
  const required: string[] = [];
  for (const [key, param] of Object.entries(spec)) {
    properties[key] = param.schema;
    if (!param.optional) required.push(key);
  }
  return {
    type: "object",
    properties,
    ...(required.length > 0 ? { required } : {}),
    additionalProperties: false,
  };
}

/** A parameter that may be left out without any default: the piece then receives undefined. */
export function optional<In, Out>(param: Param<In, Out>): Param<In, Out | undefined, true> {
  return {
    optional: true,
    read: (value, where) => (value === undefined ? undefined : param.read(value, where)),
    schema: param.schema,
  };
}
