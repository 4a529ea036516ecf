import type { Cmyk, Lab, Press } from "./press.ts";

/** Steps of the search, shares of an ink: each is used until it brings nothing more. */
const STEPS = [0.16, 0.08, 0.04, 0.02, 0.01, 0.005];
/** Most rounds with one step. */
const MOST_ROUNDS = 40;

/** Ways to go: one ink up or down, or two. */
function waysOf(): Cmyk[] {
  const ways: Cmyk[] = [];
  for (let code = 0; code < 81; code++) {
    const way = [0, 1, 2, 3].map((i) => (Math.floor(code / [1, 3, 9, 27][i]!) % 3) - 1);
    const moved = way.filter((step) => step !== 0).length;
    if (moved === 1 || moved === 2) ways.push(way as unknown as Cmyk);
  }
  return ways;
}

/**
 * The inks whose print is nearest to a colour: a pattern search (Hooke and Jeeves 1961) in CMYK from what the profile
 * itself makes of the colour, and from the same without black, within the limit of total ink.
 * @param away how far a print is from the colour, ΔE00 @param most total ink, in inks: 3 for 300 %
 */
export function nearestPrint(press: Press, start: Cmyk, away: (lab: Lab) => number, most: number): Cmyk {
  const ways = waysOf();
  const ends = [start, [start[0], start[1], start[2], 0] as const].map((from) =>
    search(press, within(from, most), away, most, ways),
  );
  return ends.reduce((best, end) => (end.far < best.far ? end : best)).cmyk;
}

interface Found {
  readonly cmyk: Cmyk;
  readonly far: number;
}

function search(
  press: Press,
  start: Cmyk,
  away: (lab: Lab) => number,
  most: number,
  ways: readonly Cmyk[],
): Found {
  let best: Found = { cmyk: start, far: away(press.print([start])[0]!) };
  for (const step of STEPS)
    for (let round = 0; round < MOST_ROUNDS; round++) {
      const tries = ways.map((way) => moved(best.cmyk, way, step)).filter((one) => total(one) <= most);
      const labs = press.print(tries);
      const before = best.far;
      labs.forEach((lab, i) => {
        const far = away(lab);
        if (far < best.far) best = { cmyk: tries[i]!, far };
      });
      if (best.far === before) break;
    }
  return best;
}

const moved = (from: Cmyk, way: Cmyk, step: number): Cmyk =>
  from.map((share, i) => Math.min(1, Math.max(0, share + way[i]! * step))) as unknown as Cmyk;

export const total = ([c, m, y, k]: Cmyk): number => c + m + y + k;

/** Inks brought down in proportion to the most that may be printed, with a hair to spare. */
const within = (inks: Cmyk, most: number): Cmyk => {
  const factor = Math.min(1, (most - 1e-6) / Math.max(1e-6, total(inks)));
  return inks.map((share) => share * factor) as unknown as Cmyk;
};
