import type { MotifUse } from "../motif/motif.ts";
import { motif } from "../motif/param.ts";
import { list } from "../params/compound.ts";
import { flag, length, number, turns } from "../params/kinds.ts";
import type { LengthParam, NumberParam, Param, ParamsIn, ParamsOut } from "../params/param.ts";
import { wrapTurns } from "../seed/trigonometry.ts";
import { mmToUm } from "../units/length.ts";
import { defineLayout, type LayoutFactory } from "./define.ts";
import { entryOf } from "./entry-of.ts";

const place: {
  /** The motif that stands here. */
  readonly motif: Param<MotifUse, MotifUse, false>;
  /** From the unit's left edge to the motif's origin, at most 10 m either way. */
  readonly x: LengthParam<false>;
  /** From the unit's top edge down to the motif's origin, at most 10 m either way. */
  readonly y: LengthParam<false>;
  /** Clockwise turn, in turns from -1 to 1 (0.25 is a quarter). Default 0. */
  readonly turn: NumberParam;
  /** Size as a factor of the motif's own, 0.05 to 20. Default 1. */
  readonly scale: NumberParam;
  /** Whether it is mirrored left to right, before it is turned. Default false. */
  readonly flip: Param<boolean, boolean, true>;
} = {
  motif: motif({ about: "The motif that stands here." }),
  x: length({ about: "From the unit's left edge to the motif's origin.", min: -10_000, max: 10_000 }),
  y: length({ about: "From the unit's top edge to the motif's origin.", min: -10_000, max: 10_000 }),
  turn: turns({ about: "Clockwise turn.", default: 0 }),
  scale: number({ about: "Size as a factor of the motif's own.", min: 0.05, max: 20, default: 1 }),
  flip: flag({ about: "Whether it is mirrored left to right, before it is turned.", default: false }),
};

const params: {
  /** Where motifs stand, 1 to 10 000 of them; nothing is moved and overlaps are allowed. */
  readonly places: Param<readonly ParamsIn<typeof place>[], readonly ParamsOut<typeof place>[], false>;
} = {
  places: list(entryOf(place, { about: "A motif and where it stands." }), {
    about: "Where motifs stand; nothing is moved and overlaps are allowed.",
    min: 1,
    max: 10_000,
  }),
};

/**
 * Places motifs by hand, at the spots given. What crosses an edge goes on at the opposite one. It avoids nothing: in
 * `layered`, it comes before the layouts that are to keep clear of it. Ids are `"p1"`, `"p2"` and so on, in the order of
 * the list.
 *
 * @example placeAt({ places: [{ motif: lighthouse({ height: 60 }), x: 40, y: "7cm" }] })
 */
export const placeAt: LayoutFactory<typeof params> = defineLayout({
  name: "sprigwright/place-at",
  about: "Places motifs by hand.",
  params,
  place: ({ places }, tools) =>
    places.map((place, i) => ({
      id: `p${i + 1}`,
      motif: tools.random.pick(tools.draw(place.motif)).index,
      x: mmToUm(place.x),
      y: mmToUm(place.y),
      turn: wrapTurns(place.turn),
      scale: place.scale,
      flip: place.flip,
    })),
});
