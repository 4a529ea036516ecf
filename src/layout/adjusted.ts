import { list } from "../params/compound.ts";
import type { Param } from "../params/param.ts";
import { definitionOf } from "../params/use.ts";
import { applyChanges } from "./adjusted/apply.ts";
import { type Change, type ChangeInput, change } from "./adjusted/changes.ts";
import { planOf } from "./adjusted/plan.ts";
import { defineLayout, type LayoutFactory } from "./define.ts";
import type { LayoutPiece, LayoutUse } from "./layout.ts";
import { layOutWithin } from "./nested.ts";
import { layout } from "./param.ts";

const params: {
  /** The layout that is adjusted. */
  readonly layout: Param<LayoutUse, LayoutUse, false>;
  /** What is changed by hand, each to one placement by its id; carried out in this order. */
  readonly changes: Param<readonly ChangeInput[], readonly Change[], false>;
} = {
  layout: layout({ about: "The layout that is adjusted." }),
  changes: list(change(), {
    about: "What is changed by hand, each to one placement by its id; carried out in this order.",
    min: 0,
    max: 10_000,
  }),
};

/**
 * A layout tidied by hand: single motifs moved, turned, scaled, flipped, swapped, removed, added or held, each named
 * by the id that it has in `tile.placements`.
 *
 * Changes are carried out one after the other on what the layout came to, and nothing else gives way: what is
 * removed leaves its place empty, and what comes too close to a neighbour stays there, for `inspect` to report. Several
 * changes to one id add up in the order of the list. Only what is held (a `hold`, or an `add` with `held: true`) comes
 * before the layout: a toss packs the rest around it, whatever its seed, gap or other motifs. What is held stands where
 * the change says and takes no other change.
 *
 * @example adjusted({ layout: toss({ motifs }), changes: [{ do: "move", id: "2-5", dx: 3 }, { do: "remove", id: "1-4" }] })
 * @throws SprigwrightError when built: `unknown-placement`, `changed-twice`, `id-taken`, `outside-repeat`
 */
export const adjusted: LayoutFactory<typeof params> = defineLayout({
  name: "sprigwright/adjusted",
  about: "A layout tidied by hand: motifs moved, turned, scaled, flipped, swapped, removed, added or held.",
  params,
  place: async ({ layout, changes }, tools) => {
    const piece = definitionOf<LayoutPiece>(layout, "adjusted > layout");
    const motifOf = (id: string) => piece.motifOf?.(layout.params as never, id);
    const plan = planOf(changes, motifOf, tools);
    const inner = {
      ...tools,
      held: [...tools.held, ...plan.held],
      standing: [...tools.standing, ...plan.standing],
    };
    const { placements, gap } = await layOutWithin(layout, inner, "adjusted");
    const after = applyChanges(placements, changes, plan, tools);
    return gap === undefined ? after : { placements: after, gap };
  },
  motifOf: ({ layout }, id) => {
    const piece = definitionOf<LayoutPiece>(layout, "adjusted > layout");
    return piece.motifOf?.(layout.params as never, id);
  },
});
