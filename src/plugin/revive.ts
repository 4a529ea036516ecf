import { useScheme } from "../colorway/schemes/define.ts";
import { badInput, unknownName, wrongType } from "../errors/catalogue.ts";
import { within } from "../errors/error.ts";
import { useLayout } from "../layout/define.ts";
import { useMotif } from "../motif/define.ts";
import { isRecord } from "../params/compound.ts";
import { isUse, type PieceKind, type Use } from "../params/use.ts";
import { useRepeat } from "../repeat/define.ts";
import type { Piece } from "./plugin.ts";

const KEYS = { motif: ["use", "params", "roles", "vary", "variants"], other: ["use", "params"] };

/** Gives every use inside a recipe's data its definition back, innermost first, checked like any user's options. */
export function revive(value: unknown, pieces: ReadonlyMap<string, Piece>, where: string): unknown {
  if (Array.isArray(value)) return value.map((entry, i) => revive(entry, pieces, `${where}[${i}]`));
  if (!isRecord(value)) return value;
  if (isUse(value)) return reviveUse(value, pieces, where);
  return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, revive(v, pieces, `${where} > ${k}`)]));
}

/** One use, of the kind that is wanted there. */
export function reviveAs(
  kind: PieceKind,
  value: unknown,
  pieces: ReadonlyMap<string, Piece>,
  where: string,
): Use {
  if (!isUse(value)) throw wrongType(where, value, `a ${kind}: { use, params }`);
  const piece = pieces.get(value.use);
  if (piece && piece.kind !== kind)
    throw badInput("wrong-kind", where, `"${value.use}" is a ${piece.kind}`, `name a ${kind}`);
  return reviveUse(value, pieces, where);
}

function reviveUse(value: Use, pieces: ReadonlyMap<string, Piece>, where: string): Use {
  const piece = pieces.get(value.use);
  if (!piece) throw unknownPiece(where, value.use, [...pieces.keys()]);
  const known = piece.kind === "motif" ? KEYS.motif : KEYS.other;
  for (const key of Object.keys(value))
    if (!known.includes(key)) throw unknownName(`${where} > ${key}`, "key", key, known);
  const params = revive(value.params, pieces, `${where} > params`) as Readonly<Record<string, unknown>>;
  return within(where, () => {
    switch (piece.kind) {
      case "motif": {
        for (const key of ["roles", "vary", "variants"])
          if (Object.hasOwn(params, key))
            throw unknownName(`params > ${key}`, "option", key, Object.keys(piece.params));
        const { roles, vary, variants } = value as Use & Readonly<Record<string, unknown>>;
        return useMotif(piece, { ...params, roles: roles ?? {}, vary, variants });
      }
      case "layout":
        return useLayout(piece, params);
      case "repeat":
        return useRepeat(piece, params);
      case "scheme":
        return useScheme(piece, params);
      default:
        throw badInput(
          "wrong-kind",
          where,
          `"${value.use}" is a ${piece.kind}`,
          "a recipe holds motifs, layouts and repeats",
        );
    }
  });
}

/** The library's plugins that have a door of their own, by namespace: the way in is said when a recipe needs one. */
const DOORS: Readonly<Record<string, string>> = { artwork: "artworkPlugin", lettering: "letteringPlugin" };

function unknownPiece(where: string, use: string, known: readonly string[]): Error {
  const space = use.slice(0, use.indexOf("/"));
  if (!Object.hasOwn(DOORS, space)) return unknownName(where, "piece", use, known);
  const plugin = DOORS[space]!;
  return badInput(
    "unknown-piece",
    where,
    `this kit does not have "${use}"`,
    `import { ${plugin} } from "sprigwright/${space}" and build with createKit({ plugins: [${plugin}()] })`,
  );
}
