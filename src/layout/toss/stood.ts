import { placing } from "../../geometry/matrix.ts";
import { type Outline, transformOutline } from "../../geometry/outline.ts";
import type { Motif } from "../../motif/motif.ts";
import type { Pose } from "./board.ts";
import { type Body, bodiesOf, flattenedFor } from "./body.ts";
import type { Fixed, TossOptions } from "./options.ts";
import type { Stage } from "./stage.ts";

/** A fixed motif, ready to be put beside the pieces of a stage. */
export interface Stood {
  readonly entry: number;
  readonly pose: Pose;
  readonly outline: Outline;
}

/** See {@link Stood}. A drawing that stands many times is made ready once, and flattened for each of its sizes. */
export function stoodOf({ entries, hollows, fixed = [] }: TossOptions): Stood[] {
  const known = new Map<string, Body>();
  const drawn = new Map<Motif, number>();
  const once = (key: string, make: () => Body): Body => {
    const body = known.get(key) ?? make();
    known.set(key, body);
    return body;
  };
  const bodyOf = ({ entry, motif, placement }: Fixed): Body => {
    const { scale } = placement;
    if (!drawn.has(motif)) drawn.set(motif, drawn.size);
    const key = `${entry} ${placement.motif} ${drawn.get(motif)}`;
    return once(`${key} ${scale}`, () => {
      const first = once(key, () => {
        const own = {
          ...entries[entry]!,
          drawings: [{ index: placement.motif, motif }],
          scale: [scale, scale] as const,
        };
        return bodiesOf(
          entries.map((other, k) => (k === entry ? own : { ...other, drawings: [] })),
          hollows,
        )[entry]![0]!;
      });
      return flattenedFor(first, scale, hollows);
    });
  };
  return fixed.map((one) => {
    const { entry, placement } = one;
    const { x, y, turn, scale, flip } = placement;
    const body = bodyOf(one);
    const matrix = placing(x, y, turn, scale, flip);
    const band = { entry, bodies: [body], low: scale, high: scale, range: [scale, scale] as const };
    return {
      entry,
      pose: { band, body, x, y, turn: 0, scale, flip, matrix },
      outline: transformOutline(body.outline, matrix),
    };
  });
}

/** Counts fixed motifs on a stage; their copies are kin of their entries' pieces, and are never taken up. */
export function countIn({ board, used }: Stage, fixed: readonly Stood[]): void {
  for (const { entry, pose, outline } of fixed) {
    const piece = board.add(pose, outline);
    board.remove(piece);
    board.addKin(entry, piece.copies);
    used[entry]!++;
  }
}
