import { badInput, unknownName, wrongType } from "../../errors/catalogue.ts";
import { isRecord } from "../../params/compound.ts";
import { readCurly, readPointer } from "./reference.ts";

/** A token as its file has it. */
export interface Token {
  readonly kind: "token";
  /** Where it is written: `sea.kelp`. */
  readonly path: string;
  /** Its own `$type`, and that of the nearest group around it. */
  readonly ownType: unknown;
  readonly groupType: unknown;
  /** Its `$value`; for a token that is only a `$ref`, the object with it. */
  readonly value: unknown;
}

/** A group with everything that it extends in it. */
export interface Group {
  readonly kind: "group";
  readonly path: string;
  readonly ownType: unknown;
  readonly entries: ReadonlyMap<string, Token | Group>;
}

/** Most entries of a file, those that `$extends` brings counted each time; and most groups on the way to one. */
const MOST_ENTRIES = 50_000;
const DEEPEST = 64;

type Raw = Readonly<Record<string, unknown>>;

interface Work {
  readonly file: Raw;
  readonly open: Set<string>;
  made: number;
}

/**
 * The groups and tokens of a file (Design Tokens Format Module 2025.10): `$extends` worked out, with what a group says
 * itself before what it extends, and the `$type` of groups handed down.
 * @throws SprigwrightError `token-cycle`, `tokens-too-large`, `bad-token`, `bad-reference`, `unknown-group`
 */
export function tokenTree(file: Raw): Group {
  return expand(file, [], undefined, { file, open: new Set(), made: 0 });
}

const isToken = (raw: Raw, file: Raw, path: string): boolean => {
  if (Object.hasOwn(raw, "$value")) return true;
  const { $ref } = raw;
  if (typeof $ref !== "string") return false;
  const target = readPointer($ref, place(path)).reduce<unknown>(
    (at, key) => (isRecord(at) && Object.hasOwn(at, key) ? at[key] : undefined),
    file,
  );
  return !isRecord(target) || Object.hasOwn(target, "$value") || Object.hasOwn(target, "colorSpace");
};

function expand(raw: Raw, path: readonly string[], inherited: unknown, work: Work): Group {
  const here = path.join(".");
  const where = place(here);
  if (work.open.has(here))
    throw badInput("token-cycle", where, "the group extends itself", "take one $extends out of the circle");
  if (work.open.size > DEEPEST)
    throw badInput("tokens-too-large", where, `more than ${DEEPEST} groups lead to it`, "extend less deeply");
  work.open.add(here);
  const base = baseOf(raw, where, work);
  const ownType = raw["$type"] ?? base?.ownType;
  const groupType = ownType ?? inherited;
  const entries = new Map<string, Token | Group>(base?.entries);
  count(work, entries.size, where);
  for (const [name, child] of Object.entries(raw)) {
    if (name.startsWith("$") && name !== "$root") continue;
    const trail = [...path, name];
    const own = trail.join(".");
    if (/[{}.]/.test(name) || name === "")
      throw badInput("bad-token", place(own), "a name may not hold {, } or .", "rename the token or group");
    if (!isRecord(child) && (name === "value" || name === "type"))
      throw badInput(
        "bad-token",
        place(own),
        `it is called "${name}", as drafts of the format had it`,
        'write "$value" and "$type"',
      );
    if (!isRecord(child)) throw wrongType(place(own), child, "a token or a group: an object");
    count(work, 1, where);
    if (isToken(child, work.file, own)) entries.set(name, tokenOf(child, own, groupType));
    else {
      const group = expand(child, trail, groupType, work);
      const known = entries.get(name);
      entries.set(name, known?.kind === "group" ? merged(known, group) : group);
    }
  }
  work.open.delete(here);
  return { kind: "group", path: here, ownType, entries };
}

function tokenOf(raw: Raw, path: string, groupType: unknown): Token {
  const inner = Object.keys(raw).find((key) => !key.startsWith("$"));
  if (inner !== undefined)
    throw badInput(
      "bad-token",
      place(path),
      `it has a value and holds "${inner}" as well`,
      "make it a group, and its own value the token $root in it",
    );
  const value = Object.hasOwn(raw, "$value") ? raw["$value"] : { $ref: raw["$ref"] };
  return { kind: "token", path, ownType: raw["$type"], groupType, value };
}

function merged(base: Group, own: Group): Group {
  const entries = new Map(base.entries);
  for (const [name, entry] of own.entries) {
    const known = entries.get(name);
    entries.set(name, known?.kind === "group" && entry.kind === "group" ? merged(known, entry) : entry);
  }
  return { ...own, ownType: own.ownType ?? base.ownType, entries };
}

/** The group that another extends: `"{sea}"`, `"#/sea"` or `{ "$ref": "#/sea" }`. */
function baseOf(raw: Raw, where: string, work: Work): Group | undefined {
  const asked = extendsOf(raw);
  if (asked === undefined) return undefined;
  const path = readCurly(asked) ?? readPointer(asked, `${where} > $extends`);
  let [group, inherited]: [Raw, unknown] = [work.file, undefined];
  let at = 0;
  // Where a group on the way extends another, what it has is known only once that is worked out.
  for (; at < path.length && (at === 0 || extendsOf(group) === undefined); at++) {
    const child = Object.hasOwn(group, path[at]!) ? group[path[at]!] : undefined;
    if (!isRecord(child) || Object.hasOwn(child, "$value"))
      throw unknownGroup(path, at, Object.keys(group), where);
    inherited = group["$type"] ?? inherited;
    group = child;
  }
  let found = expand(group, path.slice(0, at), inherited, work);
  for (; at < path.length; at++) {
    const child = found.entries.get(path[at]!);
    if (child?.kind !== "group") throw unknownGroup(path, at, [...found.entries.keys()], where);
    found = child;
  }
  return found;
}

const extendsOf = (raw: Raw): unknown => {
  const asked = raw["$extends"] ?? raw["$ref"];
  return isRecord(asked) ? asked["$ref"] : asked;
};

function unknownGroup(path: readonly string[], at: number, keys: readonly string[], where: string): Error {
  const known = keys
    .filter((key) => !key.startsWith("$"))
    .map((key) => [...path.slice(0, at), key].join("."));
  return unknownName(`${where} > $extends`, "group", path.join("."), known);
}

function count(work: Work, more: number, where: string): void {
  work.made += more;
  if (work.made > MOST_ENTRIES)
    throw badInput(
      "tokens-too-large",
      where,
      `there are more than ${MOST_ENTRIES} tokens and groups, extended ones included`,
      "read a smaller file",
    );
}

/** A path within a token file as errors name it. */
export const place = (path: string): string => (path === "" ? "tokens" : `tokens > ${path}`);
