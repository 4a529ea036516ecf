import { badInput, shown } from "../errors/catalogue.ts";
import { factoryName } from "../motif/define.ts";
import type { MotifUse } from "../motif/motif.ts";
import { object } from "../params/compound.ts";
import type { About, HasDefault, Param, ParamSpec, ParamsIn, ParamsOut } from "../params/param.ts";
import { isUse } from "../params/use.ts";

/** The parameters of an entry: a motif, and more about it. */
type EntrySpec = ParamSpec & { readonly motif: Param<MotifUse, MotifUse, false> };

/** An object that has a motif, and more about it; a motif by itself is refused with how to write it. */
export function entryOf<S extends EntrySpec, const A extends About<ParamsIn<S>>>(
  spec: S,
  about: A,
): Param<ParamsIn<S>, ParamsOut<S>, HasDefault<A>> {
  const entry = object<S, A>(spec, about);
  const must = Object.keys(spec).filter((name) => name !== "motif" && !spec[name]!.optional);
  return {
    ...entry,
    read(value, where) {
      if (!isUse(value)) return entry.read(value, where);
      const factory = factoryName(value.use);
      throw badInput(
        "wrong-type",
        where,
        `${shown(value)} is a motif, where an object that has one is wanted`,
        `write { ${[`motif: ${factory}(…)`, ...must.map((name) => `${name}: …`)].join(", ")} }`,
      );
    },
  };
}
