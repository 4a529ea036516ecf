import { badInput } from "../../errors/catalogue.ts";
import { MOST_ROLES } from "../motif.ts";

/** What a drawing may take, so that a file from a stranger cannot hold a program up. */
export const LIMITS = {
  /** Characters of the file. */
  characters: 4_000_000,
  /** Elements, counting what `use` repeats. */
  elements: 10_000,
  /** Elements inside one another, counting what `use` enters. */
  depth: 64,
  /** Points of all paths together. */
  points: 200_000,
  /** Characters of attributes read, counting what `use` repeats. */
  text: 10_000_000,
  /** Rules of style sheets, and how often one is tried on an element. */
  rules: 2000,
  trials: 4_000_000,
  /** Dashes of all strokes together. */
  dashes: 20_000,
  /** Overlaps of half transparent areas with what lies below them. */
  veils: 1200,
  /** Pairs of shapes of which one is cut for the other. */
  knockOuts: 15_000,
  /** Different roles: as many as a pattern has beside its ground. */
  roles: (MOST_ROLES - 1) as number,
} as const;

/** Counts what a drawing takes and stops it at the limits. */
export interface Budget {
  /** One more element is entered. */
  element(where: string, depth: number): void;
  /** So many characters more are read. */
  text(where: string, count: number): void;
  /** So many points more are drawn. */
  points(where: string, count: number): void;
  /** So many dashes more are drawn. */
  dashes(where: string, count: number): void;
}

/** A fresh count. */
export function budget(): Budget {
  let [elements, points, text, dashes] = [0, 0, 0, 0];
  return {
    element(where, depth) {
      if (depth > LIMITS.depth)
        throw tooLarge(where, `more than ${LIMITS.depth} elements inside one another`);
      elements++;
      if (elements > LIMITS.elements) throw tooLarge(where, `more than ${LIMITS.elements} elements`);
    },
    text(where, count) {
      text += count;
      if (text > LIMITS.text)
        throw tooLarge(where, `more than ${LIMITS.text} characters of attributes to read`);
    },
    points(where, count) {
      points += count;
      if (points > LIMITS.points) throw tooLarge(where, `more than ${LIMITS.points} points`);
    },
    dashes(where, count) {
      dashes += count;
      if (dashes > LIMITS.dashes) throw tooLarge(where, `more than ${LIMITS.dashes} dashes`);
    },
  };
}

/** A drawing that passes a limit. */
export const tooLarge = (where: string, what: string): Error =>
  badInput(
    "artwork-too-large",
    where,
    what,
    "simplify the drawing in its editor: fewer points, no hidden or repeated parts",
  );
