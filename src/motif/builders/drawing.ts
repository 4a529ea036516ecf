import { placing, transformPath } from "../../geometry/matrix.ts";
import type { Path } from "../../geometry/path.ts";
import { definitionOf } from "../../params/use.ts";
import { mmToUm } from "../../units/length.ts";
import type { Drawing, MotifPiece, MotifTools, MotifUse } from "../motif.ts";
import { checkNumbers, checkOptions } from "./given.ts";
import { listed } from "./offset.ts";

/** A drawing part by part, each a list of paths. */
export type Parts<Part extends string = string> = Readonly<Record<Part, readonly Path[]>>;

/** Where a drawing is set. */
export interface Spot {
  /** Where its origin goes, in mm. Default 0. */
  readonly x?: number;
  readonly y?: number;
  /** Clockwise in turns. Default 0. */
  readonly turn?: number;
  /** Default 1. */
  readonly scale?: number;
  /** Whether it is mirrored left to right first. Default false. */
  readonly flip?: boolean;
}

/**
 * A drawing set somewhere else: flipped, scaled, turned, then moved.
 * @throws SprigwrightError `unknown-option`, `not-mm`
 */
export function place<Part extends string>(drawing: Drawing<Part>, spot: Spot): Parts<Part> {
  checkOptions("place", spot, ["x", "y", "turn", "scale", "flip"]);
  const { x = 0, y = 0, turn = 0, scale = 1, flip = false } = spot;
  checkNumbers("place", { x, y, turn, scale });
  const matrix = placing(mmToUm(x), mmToUm(y), turn, scale, flip);
  return mapParts(drawing, (paths) => paths.map((path) => transformPath(path, matrix)));
}

/**
 * What another motif draws, part by part under the parts' own names, to be placed and stacked within a motif of your own:
 * `shapes.drawingOf(tulip({ height: 30 }), tools)`. It strays as far as the motif that it becomes part of.
 */
export function drawingOf(use: MotifUse, tools: MotifTools): Parts {
  const drawing = definitionOf<MotifPiece>(use, "motif").draw(use.params as never, {
    ...tools,
    roles: use.roles,
  });
  return mapParts(drawing, (paths) => paths);
}

/** The same parts, each list of paths changed. */
export function mapParts<Part extends string>(
  drawing: Drawing<Part>,
  change: (paths: readonly Path[], part: Part) => readonly Path[],
): Parts<Part> {
  const parts = Object.keys(drawing) as Part[];
  return Object.fromEntries(parts.map((part) => [part, change(listed(drawing[part]), part)])) as Parts<Part>;
}
