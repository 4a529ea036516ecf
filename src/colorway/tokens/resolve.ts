import { badInput, unknownName } from "../../errors/catalogue.ts";
import { isRecord } from "../../params/compound.ts";
import { readCurly, readPointer } from "./reference.ts";
import { type Group, place, type Token } from "./tree.ts";

/** A token with all references followed. */
export interface Resolved {
  readonly type: unknown;
  readonly value: unknown;
}

/** Most tokens on the way from one to its value. */
const LONGEST = 64;

/** Whether a token only stands for another. */
export const isReference = ({ value }: Token): boolean =>
  readCurly(value) !== undefined || (isRecord(value) && typeof value["$ref"] === "string");

/**
 * Follows references, those within values too. A token's type is its own, else that of the token that it refers to,
 * else that of the nearest group.
 * @throws SprigwrightError `token-cycle`, `unknown-token`, `bad-reference`
 */
export function resolver(root: Group): (token: Token) => Resolved {
  const known = new Map<Token, Resolved>();
  const open = new Set<Token>();

  const resolve = (token: Token): Resolved => {
    const done = known.get(token);
    if (done) return done;
    const where = place(token.path);
    if (open.has(token) || open.size >= LONGEST)
      throw badInput(
        "token-cycle",
        where,
        open.has(token)
          ? `it refers to itself, by way of ${[...open].map(({ path }) => path).join(", ")}`
          : `more than ${LONGEST} tokens refer to one another`,
        "give one of them a value",
      );
    open.add(token);
    try {
      const { value, type } = follow(token.value, where, true);
      const resolved = { value, type: token.ownType ?? type ?? token.groupType };
      known.set(token, resolved);
      return resolved;
    } finally {
      open.delete(token);
    }
  };

  const follow = (value: unknown, where: string, whole: boolean): Resolved => {
    const curly = whole ? readCurly(value) : undefined;
    if (curly) return target(curly, [], where);
    if (Array.isArray(value))
      return { type: undefined, value: value.map((entry) => follow(entry, where, false).value) };
    if (!isRecord(value)) return { type: undefined, value };
    if (value["$ref"] !== undefined) {
      const path = readPointer(value["$ref"], where);
      const at = path.lastIndexOf("$value");
      return at < 0 ? target(path, [], where) : target(path.slice(0, at), path.slice(at + 1), where);
    }
    const entries = Object.entries(value).map(([key, of]) => [key, follow(of, where, false).value]);
    return { type: undefined, value: Object.fromEntries(entries) };
  };

  const target = (path: readonly string[], within: readonly string[], where: string): Resolved => {
    const { value, type } = resolve(tokenAt(root, path, where));
    let part = value;
    for (const key of within) {
      if (typeof part !== "object" || part === null || !Object.hasOwn(part, key))
        throw badInput(
          "bad-reference",
          where,
          `the value of ${path.join(".")} has no ${key}`,
          "mend the $ref",
        );
      part = (part as Record<string, unknown>)[key];
    }
    return { value: part, type: within.length === 0 ? type : undefined };
  };

  return resolve;
}

function tokenAt(root: Group, path: readonly string[], where: string): Token {
  let at: Token | Group = root;
  for (const [i, name] of path.entries()) {
    const entries: ReadonlyMap<string, Token | Group> = at.kind === "group" ? at.entries : new Map();
    const next = entries.get(name);
    if (next === undefined) {
      const known = [...entries.keys()].slice(0, 500).map((key) => [...path.slice(0, i), key].join("."));
      throw unknownName(where, "token", path.join("."), known);
    }
    at = next;
  }
  if (at.kind === "token") return at;
  const inner = at.entries.has("$root") ? "$root" : [...at.entries.keys()][0];
  throw badInput(
    "bad-reference",
    where,
    `${path.join(".") || "the file"} is a group, not a token`,
    inner === undefined ? "name a token" : `name a token in it, such as {${[...path, inner].join(".")}}`,
  );
}
