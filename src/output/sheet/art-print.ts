import type { Colorway } from "../../colorway/colorway.ts";
import { readParams } from "../../params/compound.ts";
import { flag, length, text } from "../../params/kinds.ts";
import type { Tile } from "../../tile/tile.ts";
import type { Length } from "../../units/length.ts";
import { mmToUm } from "../../units/length.ts";
import type { PrintSize } from "../../units/print-sizes.ts";
import { checkSafe, readCentre } from "./centre.ts";
import { cut } from "./cut.ts";
import { titleOf } from "./facts.ts";
import * as option from "./options.ts";
import { type Page, pageBox } from "./page.ts";

/** What {@link artPrint} is given. */
export interface ArtPrintOptions {
  readonly tile: Tile;
  readonly colorway: Colorway;
  /** The trimmed print: "A3", "8x10in", "50x70cm", or a width and height. */
  readonly size: PrintSize;
  /** Whether the longer side lies level. Default false. */
  readonly landscape?: boolean;
  /** How far the pattern goes on beyond the trim on every side, 0 to 50 mm. Default 3 mm; ask your printer. */
  readonly bleed?: Length;
  /** How far from the trim the motif at the centre stays, 0 to 500 mm: a frame covers some 5 mm. Default 10 mm. */
  readonly safe?: Length;
  /** What is in the middle: the middle of the repeat (default), or one motif, by the `id` of its placement. */
  readonly centre?: string;
}

/**
 * A print of the pattern at true size on a page of a standard size: the pattern goes on into the bleed, and the motif at
 * the centre, if one is named, lies whole within the safe margin.
 *
 * @example artPrint({ tile, colorway, size: "50x70cm", centre: tile.placements[4].id })
 * @throws SprigwrightError `unknown-print-size`, `unknown-motif-id`, `motif-outside-safe-margin`, `page-too-small`,
 * `missing-ink`, `length-range`, `unknown-option`
 */
export function artPrint(options: ArtPrintOptions): Page {
  const where = "artPrint";
  const given = readParams(
    {
      tile: option.tile(),
      colorway: option.colorway(),
      size: option.printSize("The trimmed print."),
      landscape: flag({ about: "Whether the longer side lies level.", default: false }),
      bleed: length({ about: "How far the pattern goes on beyond the trim.", min: 0, max: 50, default: 3 }),
      safe: length({
        about: "How far from the trim the centre's motif stays.",
        min: 0,
        max: 500,
        default: 10,
      }),
      centre: text({ about: 'What is in the middle: "repeat" or an id.', max: 200, default: "repeat" }),
    },
    options,
    where,
  );
  const { tile, colorway } = given;
  option.checkInks(tile, [colorway]);
  const { size } = option.frameOf({ ...given, margin: given.safe }, [1, 1], where);
  const centre = readCentre(tile, given.centre, `${where} > centre`);
  checkSafe(centre, size.width, size.height, mmToUm(given.safe), `${where} > centre`);
  const page = { size, bleed: mmToUm(given.bleed) };
  return {
    title: `${titleOf(tile.name)}, ${colorway.name}`,
    ...page,
    items: [cut(tile, colorway, pageBox(page), 1, centre.at)],
  };
}
