import { badInput } from "../../errors/catalogue.ts";
import { LIMITS, tooLarge } from "./limits.ts";

/** Most names that a file may declare, and the longest value of one. */
const MOST = 64;
const LONGEST = 200;

/**
 * The text without its DOCTYPE. Declarations of entities can grow a small file to any size, and can name other files;
 * so only names for plain text are taken, such as some programs declare for their namespaces: text that holds no
 * other name and is short. They are written out wherever they are used, and the length of it all is bounded.
 * @throws SprigwrightError `unsafe-svg`, `artwork-too-large`
 */
export function withoutEntities(source: string): string {
  const at = source.indexOf("<!DOCTYPE");
  if (at < 0) {
    if (source.includes("<!ENTITY")) throw unsafe("the file declares entities");
    return source;
  }
  const open = source.indexOf("[", at);
  const plain = source.indexOf(">", at);
  if (plain < 0) throw unsafe("its DOCTYPE has no end");
  if (open < 0 || open > plain) {
    if (source.includes("<!ENTITY")) throw unsafe("the file declares entities");
    return blanked(source, at, plain + 1);
  }
  const close = source.indexOf("]", open);
  const end = close < 0 ? -1 : source.indexOf(">", close);
  if (end < 0) throw unsafe("its DOCTYPE has no end");
  const names = declared(source.slice(open + 1, close));
  const rest = blanked(source, at, end + 1);
  if (rest.includes("<!ENTITY")) throw unsafe("the file declares entities");
  let left = LIMITS.characters - rest.length;
  return rest.replace(/&([\w.-]{1,60});/g, (whole, name: string) => {
    const value = names.get(name);
    if (value === undefined) return whole;
    left -= value.length;
    if (left < 0)
      throw tooLarge("svg", `more than ${LIMITS.characters} characters with its entities written out`);
    return value;
  });
}

/** Entities of plain text. Anything else, a reference within a value or another file, is refused. */
function declared(subset: string): ReadonlyMap<string, string> {
  const names = new Map<string, string>();
  const one = /^\s*<!ENTITY\s+([\w.-]{1,60})\s+(?:"([^"<&%]{0,200})"|'([^'<&%]{0,200})')\s*>/;
  let rest = subset;
  for (let match = one.exec(rest); match; match = one.exec(rest)) {
    if (names.size >= MOST) throw unsafe(`its DOCTYPE declares more than ${MOST} entities`);
    names.set(match[1]!, (match[2] ?? match[3] ?? "").replaceAll('"', "&quot;").replaceAll("'", "&apos;"));
    rest = rest.slice(match[0].length);
  }
  if (rest.trim() !== "")
    throw unsafe(
      `its DOCTYPE declares more than plain names of at most ${LONGEST} characters: "${rest.trim().slice(0, 40)}"`,
    );
  return names;
}

/** Cut out, but for its line ends: messages name lines. */
const blanked = (source: string, from: number, to: number): string =>
  source.slice(0, from) + source.slice(from, to).replace(/[^\n]+/g, "") + source.slice(to);

const unsafe = (what: string): Error =>
  badInput("unsafe-svg", "svg", what, "delete the <!DOCTYPE …> lines, or save the drawing as plain SVG");
