import { badInput, unknownName, wrongType } from "../../errors/catalogue.ts";
import type { Size } from "../../geometry/lattice.ts";
import { isRecord } from "../../params/compound.ts";
import type { Tile } from "../../tile/tile.ts";
import { checkNotes, type FileNotes } from "../about.ts";
import { type Cut, cutSize } from "../cut.ts";

/** How the layers of a drawing lie: see {@link SvgOptions}. */
export type Layering = "stacked" | "knocked-out";

/** Options of {@link toSvg}; title, subject, rights, creator and recipe are kept in the file's metadata. */
export interface SvgOptions extends FileNotes {
  /** The piece of cloth that the drawing shows; default `"block"`. */
  readonly cut?: Cut | undefined;
  /**
   * - `"stacked"` (default): each role's shapes are whole and lie over those behind. Easiest to edit, and no background
   *   shows between neighbours.
   * - `"knocked-out"`: each role is only what is seen of it; no two overlap, and the ground is a path with holes. For
   *   cutters and for single-colour prints that are laid over each other.
   */
  readonly layers?: Layering | undefined;
  /**
   * Whether the block is there once, as a `<pattern>` with which a rectangle is filled: ready for use in a page or an
   * editor, and small whatever the cut. Default false: shapes, which every program can edit and print.
   */
  readonly pattern?: boolean | undefined;
}

/** What the options come to; `size` in µm. */
export interface SvgPlan {
  readonly size: Size;
  readonly layers: Layering;
  readonly pattern: boolean;
  readonly notes: FileNotes;
}

const KEYS = ["cut", "layers", "pattern", "title", "subject", "rights", "creator", "recipe"];
export const LAYERINGS: readonly Layering[] = ["stacked", "knocked-out"];

/** Most curves in one drawing: some 60 MB of text. */
const MOST_CURVES = 1_000_000;

/**
 * @throws SprigwrightError `unknown-option`, `unknown-layering`, `unknown-cut`, `wrong-type`, `length-range`,
 * `drawing-too-large`
 */
export function readSvgOptions(tile: Tile, options: SvgOptions, where: string): SvgPlan {
  if (!isRecord(options)) throw wrongType(where, options, "options such as { cut, layers, pattern }");
  for (const key of Object.keys(options))
    if (!KEYS.includes(key)) throw unknownName(where, "option", key, KEYS);
  const { cut = "block", layers = "stacked", pattern = false, ...notes } = options as SvgOptions;
  if (!LAYERINGS.includes(layers))
    throw unknownName(`${where} > layers`, "layering", String(layers), LAYERINGS);
  if (typeof pattern !== "boolean") throw wrongType(`${where} > pattern`, pattern, "true or false");
  checkNotes(notes, where);
  const size = cutSize(tile, cut, `${where} > cut`);
  const shown = pattern ? 1 : (size.width / tile.block.width) * (size.height / tile.block.height);
  const curves = shown * tile.layers.reduce((sum, { path }) => sum + path.points.length / 6, 0);
  if (curves > MOST_CURVES)
    throw badInput(
      "drawing-too-large",
      `${where} > cut`,
      `it would hold some ${Math.round(curves)} curves`,
      `keep it to ${MOST_CURVES}: a smaller cut, or pattern: true, which draws one block however large the cut`,
    );
  return { size, layers, pattern, notes };
}
