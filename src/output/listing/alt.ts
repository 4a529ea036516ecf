import type { Tile } from "../../tile/tile.ts";
import { repeatKind } from "../sheet/facts.ts";
import { colourWord } from "./colour-word.ts";
import { listed, plural } from "./kinds.ts";

/** "Seamless half-drop repeat of pear blossom: blossoms, sprigs and leaves in red and green on cream." */
export function altOf(
  tile: Tile,
  inks: Readonly<Record<string, string>>,
  subject: string,
  shown: readonly string[],
): string {
  const painted = [...tile.layers].sort(
    (a, b) => (tile.figures.coverage[b.role] ?? 0) - (tile.figures.coverage[a.role] ?? 0),
  );
  const ground = colourWord(inks["ground"]!);
  const colours = [...new Set(painted.map(({ role }) => colourWord(inks[role]!)))];
  const said = colours.filter((word) => word !== ground).slice(0, 4);
  const motifs = listed(shown);
  const what = shown.includes(plural(subject)) ? motifs : `${subject}: ${motifs}`;
  return `Seamless ${repeatKind(tile)} repeat of ${what}${said.length > 0 ? ` in ${listed(said)}` : ""} on ${ground}.`;
}
