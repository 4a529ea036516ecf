import type { Length } from "../units/length.ts";

/** A JSON Schema (2020-12), or a part of one. */
export type JsonSchema = { readonly [key: string]: unknown };

/**
 * One parameter of a piece: how to read it, and what it looks like to a program.
 * The same object serves validation, `describe()`, docs and tests.
 *
 * `In` is what a user may write, `Out` what the piece receives; `Optional` is true when there is a default.
 */
export interface Param<In = unknown, Out = In, Optional extends boolean = boolean> {
  readonly optional: Optional;
  /** Checks and completes one value. @throws SprigwrightError that names `where` */
  readonly read: (value: unknown, where: string) => Out;
  readonly schema: JsonSchema;
  /** Never set: carries `In` for the types. */
  readonly input?: In;
}

/** The parameters of a piece by name. */
export type ParamSpec = { readonly [name: string]: Param };

type InOf<P> = P extends { readonly input?: infer I } ? Exclude<I, undefined> : never;
type OutOf<P> = P extends { readonly read: (value: unknown, where: string) => infer O } ? O : never;
type IsOptional<P> = P extends { readonly optional: true } ? true : false;

/** What a user writes for a spec: names with a default may be left out. Comments on the spec show on hover. */
export type ParamsIn<S extends ParamSpec> = {
  readonly [K in keyof S as IsOptional<S[K]> extends true ? never : K]: InOf<S[K]>;
} & {
  readonly [K in keyof S as IsOptional<S[K]> extends true ? K : never]?: InOf<S[K]>;
};

/** What a piece receives for a spec: complete, checked, lengths in mm. */
export type ParamsOut<S extends ParamSpec> = { readonly [K in keyof S]: OutOf<S[K]> };

/** A length that may be left out, unless `Optional` is false. The piece receives millimetres. */
export type LengthParam<Optional extends boolean = true> = Param<Length, number, Optional>;

/** A number that may be left out, unless `Optional` is false. */
export type NumberParam<Optional extends boolean = true> = Param<number, number, Optional>;

/** What every parameter may say about itself. */
export interface About<D = unknown> {
  /** One sentence: what it does and why one would change it. */
  readonly about: string;
  /** The value when none is given. Without it the parameter must be given. */
  readonly default?: D;
}

/** Whether an `About` has a default, at the type level. */
export type HasDefault<A> = A extends { readonly default: infer D }
  ? [D] extends [undefined]
    ? false
    : true
  : false;

interface Core<In, Out> {
  readonly check: (value: unknown, where: string) => Out;
  readonly schema: JsonSchema;
  readonly wanted: string;
  readonly about: About<In>;
}

/** Builds a parameter from its check: the default is put in here and nowhere else. */
export function makeParam<In, Out, Optional extends boolean>(
  core: Core<In, Out>,
  onMissing: (where: string, wanted: string) => Error,
): Param<In, Out, Optional> {
  const { about, check } = core;
  const fallback = about.default;
  return {
    optional: (fallback !== undefined) as Optional,
    read(value, where) {
      if (value !== undefined) return check(value, where);
      if (fallback === undefined) throw onMissing(where, core.wanted);
      return check(fallback, where);
    },
    schema: {
      ...core.schema,
      description: about.about,
      ...(fallback === undefined ? {} : { default: fallback }),
    },
  };
}
