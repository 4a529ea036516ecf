import { areaOf } from "../../geometry/path.ts";
import type { Tile } from "../../tile/tile.ts";

/** What goes with a subject and is none itself: foliage, plain shapes and small fillers of the library. */
const COMPANIONS: readonly string[] = [
  ...["leaf", "sprig", "bud", "fern", "ivy"],
  ...["arch", "chevron", "cross", "lozenge", "pinwheel", "quatrefoil", "ring", "star", "triangle"],
  ...["asterisk", "crumb", "dash", "dot", "pip", "squiggle", "tick"],
];

/** The kinds of motifs that a tile shows, those that cover most first: "blossom", "leaf". */
export function kindsOf({ motifs, placements }: Tile): readonly string[] {
  const covered = new Map<string, number>();
  for (const { motif, scale } of placements) {
    const { name, outline } = motifs[motif]!;
    // A motif that was drawn in several variants has its number behind its name.
    const kind = name.replace(/-\d+$/, "");
    covered.set(kind, (covered.get(kind) ?? 0) + Math.abs(areaOf(outline)) * scale * scale);
  }
  return [...covered].sort(([p, a], [q, b]) => b - a || (p < q ? -1 : 1)).map(([kind]) => kind);
}

/** Those of some kinds that a pattern can be about. */
export const subjectsAmong = (kinds: readonly string[]): readonly string[] =>
  kinds.filter((kind) => !COMPANIONS.includes(kind));

/** More than one of something, in English: "leaves", "berries", "fish". */
export function plural(word: string): string {
  if (/(s|fish|seaweed)$/.test(word) && !/ss$/.test(word)) return word;
  if (/(ss|x|ch|sh)$/.test(word)) return `${word}es`;
  if (/[^aeiou]y$/.test(word)) return `${word.slice(0, -1)}ies`;
  if (/(lea|kni|hal|loa|shel)f$/.test(word)) return `${word.slice(0, -1)}ves`;
  return `${word}s`;
}

/** Words in a row: "blossoms, sprigs and leaves". */
export const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
