import { badInput } from "../../errors/catalogue.ts";
import type { MotifUse } from "../../motif/motif.ts";
import type { LayoutTools, Standing } from "../layout.ts";
import type { Change, Stand } from "./changes.ts";
import { standingOf } from "./standing.ts";

/** What has to be known before the layout is worked out. */
export interface Plan {
  /** Motifs of the layout's own that it packs around, and counts. */
  readonly held: readonly Standing[];
  /** Motifs beside the layout's own that it keeps clear of. */
  readonly standing: readonly Standing[];
  /** Holds that the layout knows nothing of: they are put in when it is done. Number in the list of changes. */
  readonly later: ReadonlyMap<number, Extract<Change, { readonly do: "hold" }>>;
}

/**
 * Sorts out what is held, and refuses changes that contradict each other.
 * @throws SprigwrightError `changed-twice` for a hold or an add of an id that another change speaks of before it, for any
 * other change to a held one, and for any change but an add to one that was removed
 */
export function planOf(
  changes: readonly Change[],
  motifOf: (id: string) => MotifUse | undefined,
  tools: LayoutTools,
): Plan {
  checkChanges(changes);
  const held: Standing[] = [];
  const standing: Standing[] = [];
  const later = new Map<number, Extract<Change, { readonly do: "hold" }>>();
  changes.forEach((change, i) => {
    const where = at(i);
    if (change.do === "add" && change.held) standing.push(standingOf(change, change.motif, tools, where));
    if (change.do !== "hold") return;
    const own = motifOf(change.id);
    if (own) held.push(standingOf(change, change.motif ?? own, tools, where));
    else {
      later.set(i, change);
      if (change.motif) standing.push(standingOf(change, change.motif, tools, where));
    }
  });
  return { held, standing, later };
}

/** Where a change stands, for messages. */
export const at = (i: number): string => `adjusted > changes[${i}]`;

function checkChanges(changes: readonly Change[]): void {
  /** The change that says how it stands with an id: the first, or a removal, or what was added after that. */
  const said = new Map<string, { readonly change: Change; readonly i: number }>();
  changes.forEach((change, i) => {
    const { id } = change;
    const before = said.get(id);
    const gone = before?.change.do === "remove";
    if (before === undefined || change.do === "remove" || gone) said.set(id, { change, i });
    if (before === undefined || (gone && change.do === "add")) return;
    const stands = change.do === "hold" || change.do === "add";
    if (!gone && !stands && !isHeld(before.change)) return;
    const where = `${at(i)} > id`;
    if (gone)
      throw badInput(
        "changed-twice",
        where,
        `changes[${before.i}] removed "${id}", so there is nothing left to ${change.do}`,
        `leave one of the two out${stands ? ": what is held needs no removal" : ""}, or add a motif of that id first`,
      );
    throw badInput(
      "changed-twice",
      where,
      `"${id}" is spoken of in changes[${before.i}] already (${before.change.do}), and ${
        stands
          ? `a change that says "${change.do}" comes first for its id`
          : "what is held takes no other change"
      }`,
      change.do === "add"
        ? "give it an id of its own"
        : "put all of it into one change: a hold says the place, the turn, the size and the motif",
    );
  });
}

const isHeld = (change: Change): change is Stand =>
  change.do === "hold" || (change.do === "add" && change.held);
