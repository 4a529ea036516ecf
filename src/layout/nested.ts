import { badInput, pieceFailed, shown } from "../errors/catalogue.ts";
import { SprigwrightError } from "../errors/error.ts";
import { shortName } from "../motif/define.ts";
import { isRecord } from "../params/compound.ts";
import { definitionOf } from "../params/use.ts";
import type { LaidPlacement, LayoutPiece, LayoutTools, LayoutUse } from "./layout.ts";

/** What a layout within a layout laid out. */
export interface NestedLaid {
  readonly placements: readonly LaidPlacement[];
  /** See {@link LaidOut}; undefined when it promises none. */
  readonly gap: number | undefined;
}

/**
 * Lays out a layout that is a parameter of another, with tools of its own.
 * @throws SprigwrightError `piece-failed` that names the inner piece, `bad-placement`; what `step` throws, as it is
 */
export async function layOutWithin(use: LayoutUse, tools: LayoutTools, where: string): Promise<NestedLaid> {
  const piece = definitionOf<LayoutPiece>(use, where);
  const at = `${where} > ${shortName(piece.name)}`;
  let calledOff: unknown;
  const step = async (done: number): Promise<void> => {
    try {
      await tools.step(done);
    } catch (reason) {
      calledOff = reason;
      throw reason;
    }
  };
  let laid: unknown;
  try {
    laid = await piece.place(use.params as never, { ...tools, step });
  } catch (cause) {
    if (cause instanceof SprigwrightError || cause === calledOff) throw cause;
    throw pieceFailed(at, cause);
  }
  const list = isRecord(laid) ? laid["placements"] : laid;
  if (!Array.isArray(list) || !list.every((entry) => isRecord(entry) && typeof entry["id"] === "string"))
    throw badInput(
      "bad-placement",
      at,
      `it returned ${shown(laid)} where placements were wanted`,
      "return a list of { id, motif, x, y, turn, scale, flip }, x and y in whole µm",
    );
  const gap = isRecord(laid) ? laid["gap"] : undefined;
  return { placements: list as readonly LaidPlacement[], gap: typeof gap === "number" ? gap : undefined };
}
