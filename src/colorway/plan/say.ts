import { wrongType } from "../../errors/catalogue.ts";
import { isRecord } from "../../params/compound.ts";
import type { Rating } from "./rating.ts";

/**
 * A rating as one line for a person.
 *
 * @example sayRating(planned[0]!) // "86 of 100: edges clear (0.93), motifs well off the ground (0.9), …"
 * @throws SprigwrightError `wrong-type` for a colorway that was not rated, or a list
 */
export function sayRating(rating: Rating): string {
  if (!isRecord(rating) || !isRecord(rating.why))
    throw wrongType("sayRating", rating, "one planned colorway, or what rateColorway gives");
  const { score, why } = rating;
  const { terms, weakest } = why;
  const said = [
    `edges ${grade(terms.edges, ["clear", "soft", "hard to see"])}`,
    `motifs ${grade(terms.ground, ["well off the ground", "near the ground", "lost in the ground"])}`,
    `large areas ${grade(terms.quiet, ["quiet", "lively", "loud"])}`,
    `accents ${grade(terms.accent, ["strong", "mild", "missing"])}`,
  ].join(", ");
  if (!weakest) return `${score} of 100: ${said}`;
  const { roles, inks, deltaE, lightness, length, reads } = weakest;
  const manner = reads < 0.5 ? "hard to tell apart" : "weakest";
  return `${score} of 100: ${said}; ${manner} where ${roles[1]} (${inks[1]}) meets ${roles[0]} (${inks[0]}): ΔE00 ${deltaE}, ${lightness} apart in lightness, along ${Math.round(length)} mm`;
}

const grade = (value: number, [high, middle, low]: readonly [string, string, string]): string =>
  `${value >= 0.66 ? high : value >= 0.33 ? middle : low} (${value})`;
