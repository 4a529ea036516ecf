import { motif } from "../motif/param.ts";
import { list, object } from "../params/compound.ts";
import { flag, length, number, turns } from "../params/kinds.ts";
import { mmToUm } from "../units/length.ts";
import { defineLayout, type LayoutFactory } from "./define.ts";

const params = {
  places: list(
    object(
      {
        motif: motif({ about: "The motif that stands here." }),
        x: length({ about: "From the unit's left edge to the motif's origin.", min: -10_000, max: 10_000 }),
        y: length({ about: "From the unit's top edge to the motif's origin.", min: -10_000, max: 10_000 }),
        turn: turns({ about: "Clockwise turn.", default: 0 }),
        scale: number({ about: "Size as a factor of the motif's own.", min: 0.05, max: 20, default: 1 }),
        flip: flag({ about: "Whether it is mirrored left to right, before it is turned.", default: false }),
      },
      { about: "A motif and where it stands." },
    ),
    { about: "Where motifs stand; nothing is moved and overlaps are allowed.", min: 1, max: 10_000 },
  ),
};

/** Places motifs by hand, at the spots given. What crosses an edge goes on at the opposite one. */
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
      turn: place.turn - Math.floor(place.turn),
      scale: place.scale,
      flip: place.flip,
    })),
});
