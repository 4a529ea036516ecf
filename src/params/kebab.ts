/** Longest name. */
const LONGEST = 40;

/** A name from outside in kebab-case, beginning with a letter, at most 40 characters; empty when nothing is left of it. */
export const kebab = (name: string): string =>
  name
    .normalize("NFKD")
    .replace(/\p{Mn}+/gu, "")
    .replace(/([a-z0-9])([A-Z])/g, "$1-$2")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, LONGEST)
    .replace(/^[-0-9]+|-+$/g, "");

/** A name that is not taken yet: itself, or with the next free number from 2 on, cut to leave room for it. Takes it. */
export function unique(name: string, taken: Set<string>): string {
  let free = name;
  for (let n = 2; taken.has(free); n++) {
    const number = `-${n}`;
    free = `${name.slice(0, LONGEST - number.length)}${number}`;
  }
  taken.add(free);
  return free;
}
