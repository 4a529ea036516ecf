import { badInput, wrongType } from "../../errors/catalogue.ts";
import { type Bounds, checkBounds } from "../../params/bounds.ts";
import { isRecord } from "../../params/compound.ts";
import { type ForeignInk, type ForeignOptions, foreignPalette, parsedJson } from "../foreign.ts";
import type { Palette } from "../palette.ts";
import { cssOfToken } from "./color-value.ts";
import { isReference, type Resolved, resolver } from "./resolve.ts";
import { type Group, place, type Token, tokenTree } from "./tree.ts";

const BOUNDS: Bounds = {
  what: "tokens",
  deepest: 32,
  mostValues: 200_000,
  mostText: 4_000_000,
  fix: "read a smaller token file",
};

/**
 * Palettes from a file of design tokens, its text or parsed (Design Tokens Community Group, Format and Color Modules
 * 2025.10; the older form, a colour as a text, is refused). Each group that holds colour tokens becomes a palette, called
 * by its path; tokens of other types, and translucent colours, are passed over. A token whose colour its palette has already
 * is another name for it, and left out.
 *
 * Types are inherited, `{group.token}` and `$ref` followed, `$extends` worked out; `$root` is called after its group.
 * References to other files are refused, and so are circles.
 *
 * @throws SprigwrightError naming the token: `bad-json`, `tokens-too-deep`, `tokens-too-large`, `token-cycle`, `unknown-token`,
 * `unknown-group`, `bad-reference`, `bad-token`, `bad-token-color`, `unknown-color-space`, `no-colors`, and what `palette` throws
 */
export function readTokens(file: string | object, options: ForeignOptions = {}): readonly Palette[] {
  const parsed = typeof file === "string" ? parsedJson(file, "tokens", BOUNDS.mostText) : file;
  checkBounds(parsed, BOUNDS);
  if (!isRecord(parsed)) throw wrongType("tokens", parsed, "an object of groups and tokens");
  const root = tokenTree(parsed);
  const resolve = resolver(root);
  const taken = new Set<string>();
  const palettes = groupsOf(root).flatMap((group) => {
    const inks = inksOf(group, resolve);
    return inks.length === 0 ? [] : [foreignPalette(group.path, inks, taken, "tokens", options)];
  });
  if (palettes.length === 0)
    throw badInput(
      "no-colors",
      "tokens",
      "no token has an opaque colour",
      'give tokens, or a group around them, "$type": "color"',
    );
  return Object.freeze(palettes);
}

function groupsOf(group: Group): Group[] {
  const inner = [...group.entries.values()].filter((entry) => entry.kind === "group");
  return [group, ...inner.flatMap(groupsOf)];
}

function inksOf(group: Group, resolve: (token: Token) => Resolved): ForeignInk[] {
  return [...group.entries].flatMap(([key, token]) => {
    const resolved = token.kind === "token" ? colorOf(token, resolve) : undefined;
    if (token.kind !== "token" || !resolved) return [];
    const { type, value } = resolved;
    const where = place(token.path);
    if (type === undefined && isRecord(value) && value["colorSpace"] !== undefined)
      throw badInput("bad-token", where, "nothing says that it is a colour", 'give it "$type": "color"');
    if (type !== "color") return [];
    const color = cssOfToken(value, where);
    if (color === undefined) return [];
    const last = group.path.split(".").at(-1)!;
    const name = key === "$root" ? last : /^\d/.test(key) ? `${last}-${key}` : key;
    return [{ name, color, alias: isReference(token), where }];
  });
}

/** What a token comes to, unless it or its group says that it is something else: then it is none of ours, sound or not. */
function colorOf(token: Token, resolve: (token: Token) => Resolved): Resolved | undefined {
  const { ownType, groupType } = token;
  if (ownType !== undefined) return ownType === "color" ? resolve(token) : undefined;
  if (groupType === undefined || groupType === "color") return resolve(token);
  if (!isReference(token)) return undefined;
  try {
    return resolve(token);
  } catch {
    return undefined;
  }
}
