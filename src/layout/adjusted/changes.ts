import { badInput } from "../../errors/catalogue.ts";
import type { MotifUse } from "../../motif/motif.ts";
import { motif } from "../../motif/param.ts";
import { isRecord, optional } from "../../params/compound.ts";
import { flag, integer, length, number, text, turns } from "../../params/kinds.ts";
import type { LengthParam, NumberParam, Param } from "../../params/param.ts";
import { type TaggedIn, type TaggedOut, tagged } from "../../params/tagged.ts";

type Id = Param<string, string, false>;
type Flag = Param<boolean, boolean, true>;

const id = (about: string): Id => text({ about, max: 60 });
const named = id("The placement's id, as tile.placements lists it.");

/** A place of a hold: who leaves it out mostly means "where it is now", which only a tile knows. */
const heldAt = (param: LengthParam<false>): LengthParam<false> => ({
  ...param,
  read(value, where) {
    if (value !== undefined) return param.read(value, where);
    throw badInput(
      "missing-option",
      where,
      "nothing was given",
      "say where it stands, in mm, or let holdsOf(tile, ids) write the holds: it takes place, turn and size from a tile",
    );
  },
});

const stand: {
  /** From the unit's left edge to the motif's origin; what is added or held stands within the block. */
  readonly x: LengthParam<false>;
  /** From the unit's top edge down to the motif's origin; what is added or held stands within the block. */
  readonly y: LengthParam<false>;
  /** Clockwise turn, in turns from -1 to 1 (0.25 is a quarter). Default 0. */
  readonly turn: NumberParam;
  /** Size as a factor of the motif's own, 0.05 to 20. Default 1. */
  readonly scale: NumberParam;
  /** Whether it is mirrored left to right, before it is turned. Default false. */
  readonly flip: Flag;
  /** Which of the motif's drawings it shows, where it has variants: 1 to 64. Default 1, the first. */
  readonly drawing: NumberParam;
} = {
  x: length({ about: "From the unit's left edge to the motif's origin.", min: -10_000, max: 10_000 }),
  y: length({ about: "From the unit's top edge to the motif's origin.", min: -10_000, max: 10_000 }),
  turn: turns({ about: "Clockwise turn.", default: 0 }),
  scale: number({ about: "Size as a factor of the motif's own.", min: 0.05, max: 20, default: 1 }),
  flip: flag({ about: "Whether it is mirrored left to right, before it is turned.", default: false }),
  drawing: integer({
    about: "Which of the motif's drawings it shows, where it has variants.",
    min: 1,
    max: 64,
    default: 1,
  }),
};

const specs: {
  readonly move: {
    /** The placement's id, as `tile.placements` lists it. */
    readonly id: Id;
    /** How far to the right of where it is (negative: left). Default 0. */
    readonly dx: LengthParam;
    /** How far down from where it is (negative: up). Default 0. */
    readonly dy: LengthParam;
  };
  readonly turn: {
    /** The placement's id, as `tile.placements` lists it. */
    readonly id: Id;
    /** How much further clockwise, in turns from -1 to 1 (0.25 is a quarter). */
    readonly by: NumberParam<false>;
  };
  readonly scale: {
    /** The placement's id, as `tile.placements` lists it. */
    readonly id: Id;
    /** Factor on top of the size that it has, 0.05 to 20. */
    readonly by: NumberParam<false>;
  };
  readonly flip: {
    /** The placement's id, as `tile.placements` lists it. */
    readonly id: Id;
  };
  readonly swap: {
    /** The placement's id, as `tile.placements` lists it. */
    readonly id: Id;
    /** The motif that takes its place, turned, sized and mirrored alike. */
    readonly motif: Param<MotifUse, MotifUse, false>;
    /** Which of the motif's drawings it shows, where it has variants: 1 to 64. Default 1, the first. */
    readonly drawing: NumberParam;
  };
  readonly remove: {
    /** The placement's id, as `tile.placements` lists it. */
    readonly id: Id;
  };
  readonly add: {
    /** An id of its own, that no other placement has. */
    readonly id: Id;
    /** The motif to add. */
    readonly motif: Param<MotifUse, MotifUse, false>;
    /** Whether the layout packs around it. Default false: it is laid over what is there. */
    readonly held: Flag;
  } & typeof stand;
  readonly hold: {
    /** The id that it has, or would have: a toss calls the first motif of its second entry "2-1". */
    readonly id: Id;
    /** The motif that stands there. Default: the one that the layout draws under that id. */
    readonly motif: Param<MotifUse, MotifUse | undefined, true>;
  } & typeof stand;
} = {
  move: {
    id: named,
    dx: length({ about: "How far to the right.", min: -10_000, max: 10_000, default: 0 }),
    dy: length({ about: "How far down.", min: -10_000, max: 10_000, default: 0 }),
  },
  turn: { id: named, by: turns({ about: "How much further clockwise." }) },
  scale: {
    id: named,
    by: number({ about: "Factor on top of the size that it has.", min: 0.05, max: 20 }),
  },
  flip: { id: named },
  swap: {
    id: named,
    motif: motif({ about: "The motif that takes its place, turned, sized and mirrored alike." }),
    drawing: stand.drawing,
  },
  remove: { id: named },
  add: {
    id: id("An id of its own, that no other placement has."),
    motif: motif({ about: "The motif to add." }),
    ...stand,
    held: flag({
      about: "Whether the layout packs around it; otherwise it is laid over what is there.",
      default: false,
    }),
  },
  hold: {
    id: id('The id that it has, or would have: a toss calls the first motif of its second entry "2-1".'),
    motif: optional(motif({ about: "The motif that stands there, if not the layout's own." })),
    ...stand,
    x: heldAt(stand.x),
    y: heldAt(stand.y),
  },
};

/** One change by hand, as it is written. */
export type ChangeInput = TaggedIn<"do", typeof specs>;

/** One change by hand, complete and checked; lengths in mm. */
export type Change = TaggedOut<"do", typeof specs>;

/** A change that says where a motif stands. */
export type Stand = Extract<Change, { readonly do: "add" | "hold" }>;

/** One change as a parameter; a move to a place is refused with how far it is told. */
export const change = (): Param<ChangeInput, Change, false> => {
  const one = tagged("do", specs, { about: "A change to one placement." }) as Param<
    ChangeInput,
    Change,
    false
  >;
  return {
    ...one,
    read(value, where) {
      const axis = isRecord(value) && value["do"] === "move" && ["x", "y"].find((name) => name in value);
      if (!axis) return one.read(value, where);
      throw badInput(
        "unknown-option",
        `${where} > ${axis}`,
        `there is no option "${axis}" in a move, which starts from where the motif is`,
        "say dx and dy: how far to the right and how far down",
      );
    },
  };
};
