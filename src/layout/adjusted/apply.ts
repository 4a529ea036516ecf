import { badInput, unknownName } from "../../errors/catalogue.ts";
import { wrapTurns } from "../../seed/trigonometry.ts";
import { mmToUm } from "../../units/length.ts";
import type { LaidPlacement, LayoutTools } from "../layout.ts";
import type { Change } from "./changes.ts";
import { at, type Plan } from "./plan.ts";
import { drawingOf, standingOf } from "./standing.ts";

/**
 * Carries the changes out on what was laid out, in the order of the list.
 * @throws SprigwrightError `unknown-placement` with the nearest id, `id-taken` for an add
 */
export function applyChanges(
  placements: readonly LaidPlacement[],
  changes: readonly Change[],
  plan: Plan,
  tools: LayoutTools,
): LaidPlacement[] {
  const standing = new Map(plan.standing.map(({ placement }) => [placement.id, placement]));
  const byId = new Map(placements.map((placement): [string, LaidPlacement] => [placement.id, placement]));
  changes.forEach((change, i) => {
    const { id } = change;
    const before = byId.get(id);
    if (change.do === "add") {
      if (before)
        throw badInput("id-taken", `${at(i)} > id`, `"${id}" is there already`, "give it an id of its own");
      byId.set(id, standing.get(id) ?? standingOf(change, change.motif, tools, at(i)).placement);
      return;
    }
    const held = change.do === "hold" ? standing.get(id) : undefined;
    if (held) {
      byId.set(id, held);
      return;
    }
    if (!before) throw unknownName(`${at(i)} > id`, "placement", id, [...byId.keys()]);
    const after = changed(before, change, tools, i, plan);
    if (after) byId.set(id, after);
    else byId.delete(id);
  });
  return [...byId.values()];
}

/** One placement after one change; undefined when it is gone. */
function changed(
  placement: LaidPlacement,
  change: Exclude<Change, { readonly do: "add" }>,
  tools: LayoutTools,
  i: number,
  plan: Plan,
): LaidPlacement | undefined {
  switch (change.do) {
    case "move":
      return { ...placement, x: placement.x + mmToUm(change.dx), y: placement.y + mmToUm(change.dy) };
    case "turn":
      return { ...placement, turn: wrapTurns(placement.turn + change.by) };
    case "scale":
      return { ...placement, scale: placement.scale * change.by };
    case "flip":
      return { ...placement, flip: !placement.flip };
    case "swap":
      return { ...placement, motif: drawingOf(change.motif, change.drawing, tools, at(i)).index };
    case "remove":
      return undefined;
    case "hold": {
      if (!plan.later.has(i)) return placement; // the layout itself has held it
      const [x, y] = [mmToUm(change.x), mmToUm(change.y)];
      const { turn, scale, flip } = change;
      return { ...placement, x, y, turn: wrapTurns(turn), scale, flip };
    }
  }
}
