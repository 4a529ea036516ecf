import { missingOption, unknownName, wrongType } from "../errors/catalogue.ts";
import { isRecord, readParams, schemaOf } from "./compound.ts";
import {
  type About,
  type HasDefault,
  makeParam,
  type Param,
  type ParamSpec,
  type ParamsIn,
  type ParamsOut,
} from "./param.ts";

/** The parameters of each kind of object, by the word that names the kind. */
export type TaggedSpecs = { readonly [word: string]: ParamSpec };

/** What a user writes: one of the objects, its word under `Tag`. */
export type TaggedIn<Tag extends string, S extends TaggedSpecs> = {
  [K in keyof S]: { readonly [T in Tag]: K } & ParamsIn<S[K]>;
}[keyof S];

/** What the piece receives: one of the objects, complete and checked. */
export type TaggedOut<Tag extends string, S extends TaggedSpecs> = {
  [K in keyof S]: { readonly [T in Tag]: K } & ParamsOut<S[K]>;
}[keyof S];

/** An object of one of several kinds, told apart by the word that it has under `tag`. */
export function tagged<
  const Tag extends string,
  S extends TaggedSpecs,
  const A extends About<TaggedIn<Tag, S>>,
>(tag: Tag, specs: S, about: A): Param<TaggedIn<Tag, S>, TaggedOut<Tag, S>, HasDefault<A>> {
  const words = Object.keys(specs);
  const wanted = `an object with ${tag}: ${words.map((word) => `"${word}"`).join(", ")}`;
  const oneOf = words.map((word) => {
    const schema = schemaOf(specs[word]!);
    const required = [tag, ...((schema["required"] as string[] | undefined) ?? [])];
    return {
      ...schema,
      properties: { [tag]: { const: word }, ...(schema["properties"] as object) },
      required,
    };
  });
  const check = (value: unknown, where: string): TaggedOut<Tag, S> => {
    if (!isRecord(value)) throw wrongType(where, value, wanted);
    const { [tag]: word, ...rest } = value;
    if (word === undefined) throw missingOption(`${where} > ${tag}`, `one of ${words.join(", ")}`);
    if (typeof word !== "string" || !Object.hasOwn(specs, word))
      throw unknownName(`${where} > ${tag}`, "choice", String(word), words);
    const read = readParams(specs[word]!, rest, where);
    return Object.freeze({ [tag]: word, ...read }) as unknown as TaggedOut<Tag, S>;
  };
  return makeParam({ about, wanted, schema: { oneOf }, check }, missingOption);
}
