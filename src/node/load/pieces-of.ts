import { isRecord } from "../../params/compound.ts";
import { definitionOf, isUse, type PieceInfo } from "../../params/use.ts";
import type { Pattern } from "../../pattern/pattern.ts";
import { definePlugin, type Piece, type Plugin } from "../../plugin/plugin.ts";

/** Namespaces of the library itself. */
const OWN = ["sprigwright", "artwork", "lettering"];

/** The pieces that patterns use and the library lacks, as plugins, one for each namespace. */
export function piecesOf(patterns: readonly Pattern[]): readonly Plugin[] {
  const found = new Map<string, Map<string, Piece>>();
  const visit = (value: unknown): void => {
    if (Array.isArray(value)) for (const entry of value) visit(entry);
    else if (isRecord(value)) {
      if (isUse(value)) note(definitionOf<PieceInfo>(value, "pattern") as Piece);
      for (const entry of Object.values(value)) visit(entry);
    }
  };
  const note = (piece: Piece): void => {
    const space = piece.name.slice(0, piece.name.indexOf("/"));
    if (OWN.includes(space)) return;
    const pieces = found.get(space) ?? new Map<string, Piece>();
    found.set(space, pieces.set(piece.name, piece));
  };
  for (const { repeat, layout } of patterns) visit([repeat, layout]);
  return [...found].map(([name, pieces]) =>
    definePlugin({ name, version: "0.0.0", pieces: [...pieces.values()] }),
  );
}
