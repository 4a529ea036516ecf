import { assignments, type Candidate, type Effort } from "./assign.ts";
import type { InkTable } from "./ink-table.ts";
import type { ColorwaysPlan } from "./options.ts";
import type { Rules } from "./search.ts";
import type { Sight } from "./sight.ts";

/** Steps and kept assignments for all palettes together: see {@link Effort}. */
const EFFORT: Effort = { steps: 400_000, kept: 1200 };

/** Candidates among which some are chosen, and the fewest of a ground. */
const POOL = 800;
const LEAST_EACH = 4;

/** Worth below which nothing is offered, as far as there is better. */
const SOUND = 0.75;

/** What of the best of its palette a candidate has to come near: the fewer are wanted, the nearer, since all must be good. */
const worthyPart = (count: number): number => 1 - Math.min(0.15, 0.03 + 0.01 * count);

/** What may be chosen from: of all palettes, the assignments that keep the rules and are worth it; the best first. */
export function goodCandidates(
  plan: ColorwaysPlan,
  sight: Sight,
  table: InkTable,
  order: Rules["order"],
): Candidate[] {
  return good(everyCandidate(plan, sight, table, order), plan.count, sight);
}

function everyCandidate(
  { palettes, hold, minContrast }: ColorwaysPlan,
  sight: Sight,
  table: InkTable,
  order: Rules["order"],
): Candidate[][] {
  const part = (whole: number): number => Math.ceil(whole / palettes.length);
  const effort = { steps: part(EFFORT.steps), kept: part(EFFORT.kept) };
  const numbers = new Map(table.inks.map((ink, i) => [ink, i]));
  return palettes.map(({ inks }, palette) => {
    const held = sight.roles.map((role) =>
      hold.get(role)?.flatMap((name) => (Object.hasOwn(inks, name) ? [numbers.get(inks[name]!)!] : [])),
    );
    const rules = { held, order, minContrast };
    const own = Object.values(inks).map((ink) => numbers.get(ink)!);
    return assignments({ sight, table, rules, palette, inks: own }, effort);
  });
}

/**
 * Those that come near the best of their palette, the same number of every ground at most, so that grounds in which less
 * is possible stand a chance too; the best first. More of the others where that leaves fewer than wanted, as long as they
 * are sound. Of those that look the same, because palettes share inks or a role is never seen, the first.
 */
function good(byPalette: readonly (readonly Candidate[])[], count: number, { weights }: Sight): Candidate[] {
  const best = byPalette.flat().reduce((most, { worth }) => Math.max(most, worth), 0);
  const part = worthyPart(count);
  const floor = Math.min(SOUND, part * best);
  const grounds = new Set(byPalette.flat().map(groundOf)).size;
  const most = Math.max(LEAST_EACH, Math.ceil(POOL / grounds));
  const counts = new Map<number, number>();
  const [worthy, rest]: [Candidate[], Candidate[]] = [[], []];
  for (const all of byPalette) {
    const ranked = all.filter(({ worth }) => worth >= floor).sort(byWorth);
    for (const candidate of ranked) {
      const before = counts.get(groundOf(candidate)) ?? 0;
      const near = before < most && candidate.worth >= part * ranked[0]!.worth;
      if (near) counts.set(groundOf(candidate), before + 1);
      (near ? worthy : rest).push(candidate);
    }
  }
  const looks = new Set<string>();
  const isNew = ({ inks }: Candidate): boolean =>
    looks.size < looks.add(inks.filter((_, role) => weights[role]! > 0).join()).size;
  const found = worthy.sort(byWorth).filter(isNew);
  if (found.length >= count) return found;
  for (const candidate of rest.sort(byWorth)) {
    if (found.length === count) break;
    if (isNew(candidate)) found.push(candidate);
  }
  return found.sort(byWorth);
}

const byWorth = (a: Candidate, b: Candidate): number => b.worth - a.worth;

/** Palette and ink of the ground, as one number. */
const groundOf = ({ palette, inks }: Candidate): number => palette * 1024 + inks[0]!;
