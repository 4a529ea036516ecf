import { badInput, missingOption } from "../errors/catalogue.ts";
import type { MotifUse } from "../motif/motif.ts";
import { motif } from "../motif/param.ts";
import { list, optional } from "../params/compound.ts";
import { choice, flag, integer, length, number, share, span } from "../params/kinds.ts";
import type { LengthParam, NumberParam, Param, ParamsIn, ParamsOut } from "../params/param.ts";
import { mmToUm } from "../units/length.ts";
import { type Area, type AreaIn, area } from "./area.ts";
import { defineLayout, type LayoutFactory } from "./define.ts";
import { direction } from "./direction.ts";
import { entryOf } from "./entry-of.ts";
import { tossAround } from "./toss/around.ts";
import { entryOfId } from "./toss/held.ts";
import type { Density, Direction, Seat, TossEntry, TossOptions } from "./toss/options.ts";

/** Most motifs in the unit that may be asked for. */
const MOST = 20_000;

const entry: {
  /** The motif to scatter. */
  readonly motif: Param<MotifUse, MotifUse, false>;
  /** How many of it against the others' shares, by number of motifs, 0.001 to 1000. Default 1. */
  readonly share: NumberParam;
  /** Size as a factor of the motif's own, 0.05 to 20, or a range [least, most] to draw it from. Default 1. */
  readonly scale: Param<number | readonly [number, number], readonly [number, number], true>;
  /** Room kept around it on top of the layout's gap, and of the gap of tosses after it in `layered`, 0 to 200 mm; of two motifs, the larger room counts. Default 0. */
  readonly gap: LengthParam;
  /**
   * Where its motifs sit: anywhere (default), or exactly on the repeat's mirrors, on its centres of rotation, or on
   * both, before all others and as many as fit. A seated motif unites with its own images there into one symmetric
   * figure.
   */
  readonly seat: Param<Seat, Seat, true>;
  /** Exactly so many of it in the unit, 1 to 20 000, and as many in all; all motifs of a toss say a number, or none does, and none says a share then. Default: as the shares have it. */
  readonly count: Param<number, number | undefined, true>;
} = {
  motif: motif({ about: "The motif to scatter." }),
  share: number({
    about: "How many of it against the others' shares, by number of motifs.",
    min: 0.001,
    max: 1000,
    default: 1,
  }),
  scale: span({
    about: "Size as a factor of the motif's own, or a range to draw it from.",
    min: 0.05,
    max: 20,
    default: 1,
  }),
  gap: length({ about: "Room kept around it on top of the layout's gap.", min: 0, max: 200, default: 0 }),
  seat: choice({
    about:
      "Where its motifs sit: anywhere, or exactly on the repeat's mirrors, on its centres of rotation, or on both, before all others and as many as fit. A seated motif unites with its own images there into one symmetric figure.",
    of: ["anywhere", "mirrors", "centres", "both"],
    default: "anywhere",
  }),
  count: optional(
    integer({
      about: "Exactly so many of it in the unit; all motifs of a toss say a number, or none does.",
      min: 1,
      max: MOST,
    }),
  ),
};

const density = choice({
  about:
    "How full the ground gets: airy (few, far apart), even (filled until nothing more fits), packed (then worked over to close the holes; slower).",
  of: ["airy", "even", "packed"],
  default: "even",
});

const params: {
  /** What is scattered, 1 to 64 entries, in any order: the large ones are placed first. */
  readonly motifs: Param<readonly ParamsIn<typeof entry>[], readonly ParamsOut<typeof entry>[], false>;
  /** Least distance between the real outlines of any two motifs, copies across the edges included, 0 to 500 mm. Default 2 mm. */
  readonly gap: LengthParam;
  /** How full the ground gets: airy (few, far apart), even (default: filled until nothing more fits), packed (then worked over to close the holes; slower). A count or a coverage says it in its stead. */
  readonly density: Param<Density, Density, true>;
  /** Exactly so many motifs in the unit, 1 to 20 000, shared out by the shares, at the widest gap at which they fit. Default: as many as the density gives. */
  readonly count: Param<number, number | undefined, true>;
  /** Share of the ground (0 to 1) that the motifs' ink is to cover, at the widest gap at which they fit: reached as nearly as whole motifs can, and as the gap allows. What came of it is `tile.figures.inkCoverage`. */
  readonly coverage: Param<number, number | undefined, true>;
  /** Which ways motifs may face: one-way (all upright), two-way (also upside down), four-way (quarter turns), tossed (default: any), or 1 to 360 angles of your own in turns, -1 to 1, such as [0, 0.1, 0.9]. */
  readonly direction: Param<Direction, Direction, true>;
  /** Whether motifs may also be mirrored. Default false. */
  readonly flip: Param<boolean, boolean, true>;
  /** How strongly motifs of one kind keep away from each other, 0 (not at all) to 1. Default 0.9. */
  readonly spread: NumberParam;
  /** How far hollows of motifs are kept free of others, 0 to 1: those that a disc of this share of the motif's radius cannot enter. 0 (default) lets others in wherever the gap holds, 1 closes nearly all. */
  readonly hollows: NumberParam;
  /** Where motifs lie, wholly: SVG path data in mm from the unit's upper left corner, a path of a pen, or stripes. Its copies in the repeat count too, and those that touch are one area (slits narrower than 4 µm are none): draw it smaller than the cell to keep cells apart. Default: everywhere. */
  readonly inside: Param<AreaIn, Area | undefined, true>;
  /** Where no motif lies: SVG path data in mm, a path of a pen, or stripes, with all copies in the repeat. */
  readonly outside: Param<AreaIn, Area | undefined, true>;
  /** Least distance that motifs keep from the boundaries of `inside` and `outside`, 0 to 500 mm; without either it is refused. Default 0. */
  readonly edge: LengthParam;
} = {
  motifs: list(entryOf(entry, { about: "A motif and how it is scattered." }), {
    about: "What is scattered, in any order: the large ones are placed first.",
    min: 1,
    max: 64,
  }),
  gap: length({
    about: "Least distance between the real outlines of any two motifs, copies across the edges included.",
    min: 0,
    max: 500,
    default: 2,
  }),
  density: {
    ...density,
    read(value, where) {
      if (typeof value !== "number") return density.read(value, where);
      const fix =
        "give one of these; how much of the ground is to be covered is said by coverage, such as coverage: 0.35";
      throw badInput("wrong-type", where, `${value} is not one of "airy", "even", "packed"`, fix);
    },
  },
  count: optional(
    integer({
      about: "Exactly so many motifs in the unit, at the widest gap at which they fit.",
      min: 1,
      max: MOST,
    }),
  ),
  coverage: optional(
    share({ about: "Share of the ground that the motifs' ink is to cover, as nearly as can be." }),
  ),
  direction: direction(
    "Which ways motifs may face: one-way (all upright), two-way (also upside down), four-way (quarter turns), tossed (any), or angles in turns.",
  ),
  flip: flag({ about: "Whether motifs may also be mirrored.", default: false }),
  spread: share({
    about: "How strongly motifs of one kind keep away from each other, 0 (not at all) to 1.",
    default: 0.9,
  }),
  hollows: share({
    about: "How far hollows of motifs are kept free of others, 0 (open) to 1 (nearly all closed).",
    default: 0,
  }),
  inside: optional(
    area({
      about:
        "Where motifs lie, wholly: path data in mm from the unit's upper left corner, or stripes; with all copies in the repeat.",
    }),
  ),
  outside: optional(
    area({ about: "Where no motif lies: path data in mm, or stripes; with all copies in the repeat." }),
  ),
  edge: length({
    about: "Least distance that motifs keep from the boundaries of inside and outside.",
    min: 0,
    max: 500,
    default: 0,
  }),
};

/**
 * The options with counts for each motif turned into shares of their sum, which comes to the same.
 * @throws SprigwrightError `asked-twice` when it is said in two ways how many there are to be, `edge-of-nothing`,
 * `missing-option` when some motifs say a count and others do not, `number-range` for too many in all
 */
function asked(
  options: Omit<TossOptions, "entries">,
  entries: readonly (TossEntry & { readonly count: number | undefined })[],
): TossOptions {
  const counts = entries.flatMap(({ count }) => count ?? []);
  if ((options.edge ?? 0) > 0 && options.inside === undefined && options.outside === undefined)
    throw badInput(
      "edge-of-nothing",
      "toss > edge",
      "there is no area whose edge motifs could keep away from",
      "say inside or outside, or leave the edge out; the distance between motifs is the gap",
    );
  // "even" is also what stands there when nothing was said: it asks for nothing that the others contradict.
  const told = [
    ...(options.density === "even" ? [] : ["density"]),
    ...(options.count === undefined ? [] : ["count"]),
    ...(options.coverage === undefined ? [] : ["coverage"]),
    ...(counts.length === 0 ? [] : ["motifs[] > count"]),
  ];
  if (told.length > 1) throw askedTwice(told[0]!, told[1]!);
  if (counts.length === 0) return { ...options, entries };
  const without = entries.findIndex(({ count }) => count === undefined);
  if (without >= 0)
    throw missingOption(`toss > motifs[${without}] > count`, "a number: either all motifs say one, or none");
  // A share of 1 is also what stands there when nothing was said.
  const shared = entries.findIndex(({ share }) => share !== 1);
  if (shared >= 0) throw askedTwice("share", "count", `toss > motifs[${shared}]`);
  const count = counts.reduce((sum, count) => sum + count, 0);
  if (count > MOST)
    throw badInput(
      "number-range",
      "toss > motifs[] > count",
      `the counts come to ${count} motifs, more than ${MOST}`,
      `ask for at most ${MOST} in all`,
    );
  return { ...options, entries: entries.map((entry) => ({ ...entry, share: entry.count! })), count };
}

const askedTwice = (one: string, other: string, where = "toss"): Error =>
  badInput(
    "asked-twice",
    where,
    `${one} and ${other} both say how many motifs there are to be`,
    `leave out ${one}, or ${other}`,
  );

/**
 * Scatters motifs over the unit so that no two outlines, and no copies across any edge, come closer than the gap.
 * In `layered`, they keep the gap from the motifs of the layouts before it too.
 *
 * @example toss({ gap: 2.5, motifs: [{ motif: pear({ height: 34 }), share: 1 }, { motif: leaf(), share: 2 }] })
 * @throws SprigwrightError at once: `wrong-type`, `number-range`, `length-range`, `unknown-option` and their like;
 * `bad-path-data`, `bad-shape`, `open-path`, `empty-area`, `area-too-detailed` for an area
 * @throws SprigwrightError when built:
 * - `asked-twice` when two of `density`, `count`, `coverage` and counts of the motifs are given, or a motif's count and share;
 *   `missing-option` when only some motifs say a count, `number-range` when their counts come to more than 20 000
 * - `motif-too-large` for a motif that cannot keep the gap from its own copies, with the size that can
 * - `count-too-large` when so many do not fit, with how many do; `count-too-small` when more are held
 * - `no-room` for a motif that finds no place beside what stands already, in the area, or on a seat
 * - `no-symmetry` for seats in a repeat that has none
 * - `edge-of-nothing`, `area-outside-unit`, `area-too-detailed`, `stripes-do-not-close` for areas
 */
export const toss: LayoutFactory<typeof params> = defineLayout({
  name: "sprigwright/toss",
  about: "Scatters motifs over the unit with an exact gap between their outlines.",
  params,
  place: async ({ motifs, ...options }, tools) => {
    const entries = motifs.map(({ motif, ...entry }) => ({ ...entry, drawings: tools.draw(motif) }));
    const placements = await tossAround(asked(options, entries), tools);
    return {
      placements: placements.map((placement) => {
        const extra = mmToUm(entries[entryOfId(placement.id, entries.length)!]!.gap);
        return extra > 0 ? { ...placement, extra } : placement;
      }),
      gap: mmToUm(options.gap),
    };
  },
  motifOf: ({ motifs }, id) => motifs[entryOfId(id, motifs.length) ?? -1]?.motif,
});
