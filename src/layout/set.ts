import { badInput, motifTooLarge } from "../errors/catalogue.ts";
import { placing, transformPath } from "../geometry/matrix.ts";
import { boxOf } from "../geometry/path.ts";
import { inRegion } from "../geometry/region.ts";
import type { MotifUse } from "../motif/motif.ts";
import { motif } from "../motif/param.ts";
import { list } from "../params/compound.ts";
import { flag, integer, share, turns } from "../params/kinds.ts";
import type { NumberParam, Param } from "../params/param.ts";
import { wrapTurns } from "../seed/trigonometry.ts";
import { defineLayout, type LayoutFactory } from "./define.ts";
import type { LayoutTools, Placement } from "./layout.ts";

const params: {
  /** The motifs, 1 to 64, taken in turn along each row. */
  readonly motifs: Param<readonly MotifUse[], readonly MotifUse[], false>;
  /** Motifs across the unit, 1 to 500. */
  readonly columns: NumberParam<false>;
  /** Motifs down the unit, 1 to 500; an even number where rows are staggered. */
  readonly rows: NumberParam<false>;
  /** How far every second row is moved along, in columns, 0 to 1. Default 0. */
  readonly stagger: NumberParam;
  /** How many motifs further each row starts in the list than the row above, 0 to 63. Default 0. */
  readonly shift: NumberParam;
  /** Angles in turns, 1 to 64 of them from -1 to 1, taken in turn along each row: [0, 0.5] stands every second motif on its head. Default [0]. */
  readonly turns: Param<readonly number[], readonly number[], true>;
  /** How many angles further each row starts than the row above, 0 to 63. Default 0. */
  readonly turnShift: NumberParam;
  /** Whether motifs in every second row are mirrored. Default false. */
  readonly flipRows: Param<boolean, boolean, true>;
  /** Whether motifs may be larger than their place, as scales and shells are. Default false. */
  readonly overlap: Param<boolean, boolean, true>;
} = {
  motifs: list(motif({ about: "A motif of the set." }), {
    about: "The motifs, taken in turn along each row.",
    min: 1,
    max: 64,
  }),
  columns: integer({ about: "Motifs across the unit.", min: 1, max: 500 }),
  rows: integer({ about: "Motifs down the unit.", min: 1, max: 500 }),
  stagger: share({ about: "How far every second row is moved along, in columns.", default: 0 }),
  shift: integer({
    about: "How many motifs further each row starts in the list than the row above.",
    min: 0,
    max: 63,
    default: 0,
  }),
  turns: list(turns({ about: "An angle in turns." }), {
    about: "Angles taken in turn along each row: [0, 0.5] stands every second motif on its head.",
    min: 1,
    max: 64,
    default: [0],
  }),
  turnShift: integer({
    about: "How many angles further each row starts than the row above.",
    min: 0,
    max: 63,
    default: 0,
  }),
  flipRows: flag({ about: "Whether motifs in every second row are mirrored.", default: false }),
  overlap: flag({
    about: "Whether motifs may be larger than their place, as scales and shells are.",
    default: false,
  }),
};

/**
 * Sets motifs in even rows and columns, as far as they lie in the unit: foulards, spots, scales, stripes of motifs.
 * It avoids nothing: in `layered`, it comes before the layouts that are to keep clear of it. Ids are those of row and column:
 * `"r2c5"`.
 *
 * @example set({ motifs: [scallop({ width: 20 })], columns: 6, rows: 8, stagger: 0.5, overlap: true })
 * @throws SprigwrightError when built: `motif-too-large` for a motif larger than its place, unless `overlap` is true;
 * `odd-rows` for a stagger with an odd number of rows, which would not meet at the seam
 */
export const set: LayoutFactory<typeof params> = defineLayout({
  name: "sprigwright/set",
  about: "Sets motifs in even rows and columns.",
  params,
  place: (options, tools) => {
    const { columns, rows } = options;
    const { unit, region } = tools.arrangement;
    const drawn = options.motifs.map((use) => tools.draw(use));
    if (!options.overlap) checkSizes(drawn.flat(), options.turns, unit.width / columns, unit.height / rows);
    checkStagger(options.stagger, rows);
    const placements: Placement[] = [];
    for (let row = 0; row < rows; row++)
      for (let column = 0; column < columns; column++) {
        const kind = drawn[(column + row * options.shift) % drawn.length]!;
        const along = column + 0.5 + (row % 2 === 1 ? options.stagger : 0);
        const x = Math.round((along / columns) * unit.width);
        const y = Math.round(((row + 0.5) / rows) * unit.height);
        if (region && !inRegion(region, x, y)) continue;
        const turn = options.turns[(column + row * options.turnShift) % options.turns.length]!;
        placements.push({
          id: `r${row + 1}c${column + 1}`,
          motif: tools.random.pick(kind).index,
          x,
          y,
          turn: wrapTurns(turn),
          scale: 1,
          flip: options.flipRows && row % 2 === 1,
        });
      }
    return placements;
  },
});

function checkSizes(
  drawn: readonly ReturnType<LayoutTools["draw"]>[number][],
  turns: readonly number[],
  width: number,
  height: number,
): void {
  for (const { motif } of drawn)
    for (const turn of turns) {
      const box = boxOf(transformPath(motif.outline, placing(0, 0, turn)));
      const [w, h] = [box.maxX - box.minX, box.maxY - box.minY];
      if (w > width || h > height)
        throw motifTooLarge(
          `set > motifs > ${motif.name}`,
          `it is ${w / 1000} x ${h / 1000} mm${turn === 0 ? "" : ` when turned by ${turn}`}, its place only ${width / 1000} x ${height / 1000} mm`,
          "draw it smaller, set fewer columns or rows, enlarge the repeat, or say overlap: true",
        );
    }
}

function checkStagger(stagger: number, rows: number): void {
  if (stagger > 0 && rows % 2 === 1)
    throw badInput(
      "odd-rows",
      "set > stagger",
      `with ${rows} rows the last staggered row would meet an unstaggered one at the seam`,
      `give an even number of rows: ${rows > 1 ? `${rows - 1} or ` : ""}${rows + 1}`,
    );
}
