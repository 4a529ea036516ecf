import { badInput, shown } from "../errors/catalogue.ts";
import { SprigwrightError, within } from "../errors/error.ts";
import { shortName } from "../motif/define.ts";
import type { Motif, MotifUse } from "../motif/motif.ts";
import { list } from "../params/compound.ts";
import type { Param } from "../params/param.ts";
import { definitionOf } from "../params/use.ts";
import { defineLayout, type LayoutFactory } from "./define.ts";
import type { LaidPlacement, LayoutPiece, LayoutTools, LayoutUse, Standing } from "./layout.ts";
import { layOutWithin } from "./nested.ts";
import { layout } from "./param.ts";

const params: {
  /** The layouts, 1 to 8, in the order in which they are laid out: the one that matters most comes first. */
  readonly layouts: Param<readonly LayoutUse[], readonly LayoutUse[], false>;
} = {
  layouts: list(layout({ about: "A layout: toss, set, placeAt, or one of a plugin." }), {
    about:
      "The layouts, in the order in which they are laid out: a toss keeps clear of all motifs of those before it.",
    min: 1,
    max: 8,
  }),
};

/**
 * Lays out one layout after another over the same unit: heroes, then coordinates, then fillers.
 *
 * A `toss` keeps its gap from every motif of the layouts before it, and the room that a motif of a toss before it wants
 * around it (its entry's `gap`) too; `set` and `placeAt` stand where they are told and avoid nothing, so they come first.
 * Each layout has chance of its own: a change to one moves none before it. Ids are those of the layouts with their number
 * in front: `"2:1-3"`. The gap promised is the smallest of those that the layouts promise; when one promises none, none
 * is promised.
 *
 * This is the order of laying out; which colour lies over which is said by the pattern's `roles`.
 *
 * @example layered({ layouts: [toss({ gap: 8, motifs: heroes }), toss({ gap: 1.5, motifs: fillers })] })
 * @throws SprigwrightError `nested-too-deep` for more than four layouts within each other; when built, what its layouts
 * throw, with their place in the list (`layered > layouts[1] > toss > …`), and `piece-failed` or `bad-placement` for a
 * plugin's layout that throws or returns nonsense
 */
export const layered: LayoutFactory<typeof params> = defineLayout({
  name: "sprigwright/layered",
  about: "Lays out one layout after another, each clear of those before it.",
  params,
  async place({ layouts }, tools) {
    const placements: LaidPlacement[] = [];
    const standing: Standing[] = [...tools.standing];
    let gap: number | undefined = Infinity;
    for (const [index, use] of layouts.entries()) {
      const later = tools.held.filter(({ placement }) => Number.parseInt(placement.id, 10) > index + 1);
      const laid = await layOne(use, index, layouts.length, { ...tools, standing: [...standing, ...later] });
      standing.push(...laid.stood);
      for (const { placement, extra } of laid.stood)
        placements.push(extra === undefined ? placement : { ...placement, extra });
      gap = laid.gap === undefined || gap === undefined ? undefined : Math.min(gap, laid.gap);
    }
    return gap === undefined ? placements : { placements, gap };
  },
  motifOf({ layouts }, id): MotifUse | undefined {
    // By its number, since one layout may be listed twice.
    const index = Number.parseInt(id, 10) - 1;
    const use = layouts[index];
    if (!use || !id.startsWith(prefix(index))) return undefined;
    const { motifOf } = definitionOf<LayoutPiece>(use, "layered");
    return motifOf?.(use.params as never, id.slice(prefix(index).length));
  },
});

/** What stands before the ids of a layout. */
const prefix = (index: number): string => `${index + 1}:`;

/** Lays out one of the layouts, with chance, progress and ids of its own. */
async function layOne(
  use: LayoutUse,
  index: number,
  count: number,
  tools: LayoutTools,
): Promise<{ readonly stood: readonly Standing[]; readonly gap: number | undefined }> {
  const where = `layered > layouts[${index}]`;
  const own = tools.held.filter(({ placement }) => placement.id.startsWith(prefix(index)));
  const drawn = new Map(own.map(({ placement, motif }) => [placement.motif, motif]));
  const { placements, gap } = await prefixed(where, () =>
    layOutWithin(
      use,
      {
        ...tools,
        random: tools.random.fork(`layer ${index + 1}`),
        held: own.map(({ placement, motif }) => ({
          motif,
          placement: { ...placement, id: placement.id.slice(prefix(index).length) },
        })),
        draw(motif) {
          const drawings = tools.draw(motif);
          for (const one of drawings) drawn.set(one.index, one.motif);
          return drawings;
        },
        step: (done) => tools.step((index + Math.min(1, Math.max(0, done))) / count),
      },
      where,
    ),
  );
  const stood = placements.map(({ extra, ...placement }, i) => {
    const at = `${where} > ${shortName(use.use)}[${i}]`;
    const motif = standingMotif(placement, drawn, at);
    return {
      placement: { ...placement, id: prefix(index) + placement.id },
      motif,
      ...(extra === undefined ? {} : { extra: checkedExtra(extra, at) }),
    };
  });
  return { stood, gap };
}

/** Most room that a placement may want around it (µm). */
const MOST_EXTRA = 100_000_000;

/** The room that a placement wants around it. @throws SprigwrightError `bad-placement` */
function checkedExtra(extra: unknown, where: string): number {
  if (typeof extra === "number" && extra >= 0 && extra <= MOST_EXTRA) return extra;
  throw badInput(
    "bad-placement",
    where,
    `the extra room around it is ${shown(extra)}`,
    `give it in µm, from 0 to ${MOST_EXTRA}, or leave it out`,
  );
}

/** The motif of a placement that the layouts after it keep clear of. @throws SprigwrightError `bad-placement` */
function standingMotif(placement: LaidPlacement, drawn: ReadonlyMap<number, Motif>, where: string): Motif {
  const motif = drawn.get(placement.motif);
  const sound = [placement.x, placement.y, placement.turn, placement.scale].every(Number.isFinite);
  if (motif && sound) return motif;
  throw badInput(
    "bad-placement",
    where,
    motif ? "its place, turn or scale is not a number" : `its motif ${placement.motif} is none that it drew`,
    "return a list of { id, motif, x, y, turn, scale, flip }, x and y in whole µm",
  );
}

/** Puts the layout's place in front of what an error names, unless it is there. */
async function prefixed<T>(where: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof SprigwrightError) || error.where.startsWith(where)) throw error;
    return within(where, () => {
      throw error;
    });
  }
}
