import { judge } from "./judge.ts";
import { ruleKeeper } from "./rules.ts";
import type { Search } from "./search.ts";
import type { Sight } from "./sight.ts";

/** Inks given to roles, by their numbers in the table, and what that is worth. */
export interface Candidate {
  /** Number of the palette that the inks come from. */
  readonly palette: number;
  readonly inks: readonly number[];
  /** 0..1. */
  readonly worth: number;
}

/** What one palette may take: inks given in trying all assignments, and how many are kept from role to role otherwise. */
export interface Effort {
  readonly steps: number;
  readonly kept: number;
}

/** Of partial assignments that agree in the ground and the heaviest other role, so many are kept: for variety. */
const ALIKE = 6;

/** Best continuations of each partial assignment that are gone on with. */
const OFFSPRING = 8;

/**
 * Assignments of a palette's inks to all roles, no ink twice, that keep the rules: all of them where they are few enough,
 * else the best that a beam search finds, which gives inks role by role, heaviest first, and goes on with the most
 * promising. In a fixed order.
 */
export function assignments(search: Search, effort: Effort): Candidate[] {
  const { sight, table, rules, palette, inks } = search;
  const keeps = ruleKeeper(search);
  const choices = sight.roles.map((_, role) => {
    const held = rules.held[role];
    return held ? inks.filter((ink) => held.includes(ink)) : inks;
  });
  const roles = rolesByWeight(sight, choices);
  const whole = { sight, table, keeps, choices, roles };
  const found = everyOne(whole, effort.steps) ?? mostPromising(whole, effort.kept);
  return found.map((given) => ({ palette, inks: given, worth: judge(sight, table, given).worth }));
}

interface Whole extends Pick<Search, "sight" | "table"> {
  readonly keeps: (inks: ArrayLike<number>, role: number) => boolean;
  readonly choices: readonly (readonly number[])[];
  /** The order in which roles get their inks. */
  readonly roles: readonly number[];
}

/** The ground, then what weighs most; of roles that weigh alike, the one with fewer choices, then the one further back. */
function rolesByWeight({ roles, weights }: Sight, choices: readonly (readonly number[])[]): number[] {
  const first = (role: number): number => (role === 0 ? 1 : 0);
  return roles
    .map((_, role) => role)
    .sort(
      (a, b) =>
        first(b) - first(a) || weights[b]! - weights[a]! || choices[a]!.length - choices[b]!.length || a - b,
    );
}

/** All assignments that keep the rules; undefined when finding them takes more steps than that. */
function everyOne({ keeps, choices, roles }: Whole, steps: number): (readonly number[])[] | undefined {
  const found: number[][] = [];
  const given = roles.map(() => -1);
  let left = steps;
  const give = (depth: number): void => {
    const role = roles[depth];
    if (role === undefined) {
      found.push(given.slice());
      return;
    }
    for (const ink of choices[role]!) {
      if (given.includes(ink)) continue;
      if (--left < 0) return;
      given[role] = ink;
      if (keeps(given, role)) give(depth + 1);
      given[role] = -1;
    }
  };
  give(0);
  return left < 0 ? undefined : found;
}

/** An assignment of which some roles still wait. */
interface Begun {
  readonly inks: readonly number[];
  readonly worth: number;
}

function mostPromising(whole: Whole, most: number): (readonly number[])[] {
  const { choices, roles } = whole;
  let beam: Begun[] = [{ inks: roles.map(() => -1), worth: 1 }];
  roles.forEach((role, depth) => {
    const next = beam.flatMap(({ inks }) => followers(whole, inks, role, depth < 2 ? most : OFFSPRING));
    next.sort(byWorth);
    const each = depth === 1 ? Math.ceil(most / choices[0]!.length) : ALIKE;
    beam = varied(next, roles.slice(0, Math.min(depth, 2)), each, most);
  });
  return beam.map(({ inks }) => inks);
}

const byWorth = (a: Begun, b: Begun): number => b.worth - a.worth;

/** The best assignments that give one more role its ink. */
function followers(
  { sight, table, keeps, choices }: Whole,
  before: readonly number[],
  role: number,
  most: number,
): Begun[] {
  const inks = before.slice();
  const found: { readonly ink: number; readonly worth: number }[] = [];
  for (const ink of choices[role]!) {
    if (before.includes(ink)) continue;
    inks[role] = ink;
    if (keeps(inks, role)) found.push({ ink, worth: judge(sight, table, inks).worth });
  }
  found.sort((a, b) => b.worth - a.worth);
  return found.slice(0, most).map(({ ink, worth }) => {
    const given = before.slice();
    given[role] = ink;
    return { inks: given, worth };
  });
}

/** The best `most`, but at most `each` of those that agree in some roles, as long as there are others. */
function varied(sorted: readonly Begun[], roles: readonly number[], each: number, most: number): Begun[] {
  const counts = new Map<string, number>();
  const [kept, rest]: [Begun[], Begun[]] = [[], []];
  for (const begun of sorted) {
    const key = roles.map((role) => begun.inks[role]).join(" ");
    const count = counts.get(key) ?? 0;
    counts.set(key, count + 1);
    (count < each ? kept : rest).push(begun);
  }
  return [...kept, ...rest].slice(0, most);
}
