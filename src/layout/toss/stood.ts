import { placing } from "../../geometry/matrix.ts";
import { type Outline, transformOutline } from "../../geometry/outline.ts";
import type { Pose } from "./board.ts";
import { bodiesOf } from "./body.ts";
import type { TossOptions } from "./options.ts";
import type { Stage } from "./stage.ts";

/** A fixed motif, ready to be put beside the pieces of a stage. */
export interface Stood {
  readonly entry: number;
  readonly pose: Pose;
  readonly outline: Outline;
}

/** See {@link Stood}. */
export function stoodOf({ entries, hollows, fixed = [] }: TossOptions): Stood[] {
  return fixed.map(({ entry, motif, placement }) => {
    const { x, y, turn, scale, flip } = placement;
    const drawings = [{ index: placement.motif, motif }];
    const own = entries.map((other, k) =>
      k === entry ? { ...other, drawings, scale: [scale, scale] as const } : { ...other, drawings: [] },
    );
    const [body] = bodiesOf(own, hollows)[entry]!;
    const matrix = placing(x, y, turn, scale, flip);
    const band = { entry, bodies: [body!], low: scale, high: scale };
    return {
      entry,
      pose: { band, body: body!, x, y, turn: 0, scale, flip, matrix },
      outline: transformOutline(body!.outline, matrix),
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
