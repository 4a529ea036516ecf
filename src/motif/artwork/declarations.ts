import { isPaint } from "./color.ts";

/** `name: value` pairs, those marked `!important` apart. */
export interface Declarations {
  readonly plain: Map<string, string>;
  readonly important: Map<string, string>;
  /** Paints that mean nothing, so that what was said before or around holds: `fill: bogus`. */
  readonly unread: Map<string, string>;
}

const PAINTS: ReadonlySet<string> = new Set(["fill", "stroke", "color", "stop-color"]);
const WORDS: ReadonlySet<string> = new Set(["inherit", "initial", "unset"]);

/** Whether a value of a property is one that is read. */
export const isRead = (name: string, value: string): boolean =>
  !PAINTS.has(name) || WORDS.has(value) || value === "" || isPaint(value);

const IMPORTANT = /\s*!\s*important$/i;

/** `name: value` pairs, as a `style` attribute and a rule's braces hold them. */
export function readDeclarations(text: string): Declarations {
  const found: Declarations = { plain: new Map(), important: new Map(), unread: new Map() };
  for (const piece of splitOutside(text, ";")) {
    const colon = piece.indexOf(":");
    if (colon < 0) continue;
    const name = piece.slice(0, colon).trim().toLowerCase();
    const value = piece.slice(colon + 1).trim();
    const tail = value.slice(-24);
    const marked = IMPORTANT.exec(tail);
    const put = marked ? found.important : found.plain;
    const whole = marked ? value.slice(0, value.length - tail.length + marked.index).trim() : value;
    // A variable of its own sheet is not looked up; what it says to take otherwise is.
    const said =
      /^var\(\s*--[\w-]{1,100}\s*,\s*([^()]{1,100}(?:\([^()]{0,100}\))?)\s*\)$/.exec(whole)?.[1]?.trim() ??
      whole;
    // The shorthand stands for three properties of its own.
    for (const one of name === "marker" ? ["marker-start", "marker-mid", "marker-end"] : [name])
      (isRead(one, said) ? put : found.unread).set(one, said);
  }
  return found;
}

/** Pieces between separators, those within quotes or brackets left whole: a `url()` may hold data with any of them. */
function splitOutside(text: string, separator: string): string[] {
  if (!/["'(]/.test(text)) return text.split(separator);
  const pieces: string[] = [];
  let [from, deep, quote] = [0, 0, ""];
  for (let i = 0; i < text.length; i++) {
    const char = text[i]!;
    if (quote !== "") {
      if (char === quote) quote = "";
    } else if (char === '"' || char === "'") quote = char;
    else if (char === "(") deep++;
    else if (char === ")") deep = Math.max(0, deep - 1);
    else if (char === separator && deep === 0) {
      pieces.push(text.slice(from, i));
      from = i + 1;
    }
  }
  pieces.push(text.slice(from));
  return pieces;
}
