import { badInput } from "../../errors/catalogue.ts";
import type { LayoutTools, Placement } from "../layout.ts";
import { countByEntry, entryOfId, fixedOf, stillWanted } from "./held.ts";
import type { Fixed, TossOptions } from "./options.ts";
import { packTossed } from "./pack.ts";
import { seatedCoverage } from "./seated-coverage.ts";
import { takeSeats } from "./seats.ts";

/**
 * A toss around what stands: first what is held, then motifs on their seats, then all others by {@link packTossed}. Held
 * motifs count for their entries' shares; entries with seats stand outside the shares and take as many as there are,
 * unless a count limits all.
 *
 * @throws SprigwrightError `count-too-small` when more are held than there are to be
 */
export async function tossAround(options: TossOptions, tools: LayoutTools): Promise<readonly Placement[]> {
  const { entries, count, coverage } = options;
  const { own, others } = fixedOf(tools.held, entries);
  if (own.length === 0 && entries.every(({ seat = "anywhere" }) => seat === "anywhere"))
    return packTossed(options, { ...tools, standing: [...tools.standing, ...others] });
  const already = countByEntry(own, entries.length);
  if (count !== undefined && own.length > count) throw countTooSmall(own.length, count);
  const most =
    count === undefined
      ? entries.map(() => Infinity)
      : stillWanted(
          count,
          entries.map(({ share }) => share),
          already,
        );
  const before = [...tools.standing, ...others, ...own];
  const seated = await takeSeats(options, most, before, tools);
  const free = entries.flatMap(({ seat = "anywhere" }, k) => (seat === "anywhere" ? [k] : []));
  const fixed = own.flatMap((one) => {
    const entry = free.indexOf(one.entry);
    return entry < 0 ? [] : [{ ...one, entry }];
  });
  // Held motifs of entries that are seated stand outside the shares, like those that are seated now.
  const unshared = own.filter(({ entry }) => !free.includes(entry));
  const packed = await packTossed(
    {
      ...options,
      entries: free.map((k) => ({ ...entries[k]!, listed: k })),
      count: count === undefined ? undefined : count - seated.length - unshared.length,
      coverage:
        coverage === undefined
          ? undefined
          : coverage - seatedCoverage([...seated, ...unshared], tools.arrangement),
      fixed,
    },
    { ...tools, standing: [...before, ...seated], held: [] },
  );
  const placements = [
    ...own.map(({ placement }) => placement),
    ...numbered(seated, ({ entry }) => entry, own),
    ...numbered(
      packed.map((placement) => ({ placement })),
      ({ placement }) => free[entryOfId(placement.id, free.length)!]!,
      own,
    ),
  ];
  if (count !== undefined && placements.length < count) throw countTooLarge(placements.length, count);
  return placements;
}

/** Placements numbered within their entries from 1 up, past the numbers that are held. */
function numbered<T extends { readonly placement: Placement }>(
  list: readonly T[],
  entryOf: (one: T) => number,
  own: readonly Fixed[],
): Placement[] {
  const held = new Set(own.map(({ placement }) => placement.id));
  const running = new Map<number, number>();
  return list.map((one) => {
    const entry = entryOf(one);
    let number = (running.get(entry) ?? 0) + 1;
    while (held.has(`${entry + 1}-${number}`)) number++;
    running.set(entry, number);
    return { ...one.placement, id: `${entry + 1}-${number}` };
  });
}

const countTooSmall = (held: number, count: number): Error =>
  badInput(
    "count-too-small",
    "toss > count",
    `${held} motifs are held, and there are to be ${count} in all`,
    `ask for at least ${held}, or hold fewer`,
  );

const countTooLarge = (seats: number, count: number): Error =>
  badInput(
    "count-too-large",
    "toss > count",
    `only ${seats} motifs find a seat, and there are to be ${count}`,
    `ask for at most ${seats}, or add motifs that need no seat`,
  );
