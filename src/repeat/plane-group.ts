import { badInput, missingOption } from "../errors/catalogue.ts";
import { commonDivisor } from "../geometry/block.ts";
import type { Vector } from "../geometry/lattice.ts";
import { arrangedOn } from "../geometry/symmetry/arranged.ts";
import { type PlaneGroup, type PlaneGroupSymbol, planeGroups } from "../geometry/symmetry/plane-groups.ts";
import { otherSymbols } from "../geometry/symmetry/symbols.ts";
import { optional } from "../params/compound.ts";
import { choice, length } from "../params/kinds.ts";
import type { LengthParam, NumberParam, Param, ParamsOut } from "../params/param.ts";
import { type Length, mmToUm } from "../units/length.ts";
import { closing, distortion } from "./closing.ts";
import { defineRepeat, type RepeatFactory } from "./define.ts";
import { sixfold } from "./sixfold.ts";

/** A symbol that {@link planeGroup} takes. */
export type PlaneGroupName = PlaneGroupSymbol | keyof typeof otherSymbols;

/** Most cells in one block: a lean that needs more is no use to a printer. */
const MOST_CELLS = 48;

const symbol = (): Param<PlaneGroupName, PlaneGroupSymbol, false> => {
  const names = [...Object.keys(planeGroups), ...Object.keys(otherSymbols)] as PlaneGroupName[];
  const named = choice({ about: "The plane group, by its IUCr symbol or a common short one.", of: names });
  return {
    optional: false,
    schema: named.schema,
    read(value, where) {
      const name = named.read(value, where);
      return Object.hasOwn(otherSymbols, name)
        ? otherSymbols[name as keyof typeof otherSymbols]
        : (name as PlaneGroupSymbol);
    },
  };
};

const params: {
  /** The plane group, by its IUCr symbol or a common short one. "p1" to "p6mm"; "pmm", "cmm", "p4m", "p6m" … are known too. */
  readonly group: Param<PlaneGroupName, PlaneGroupSymbol, false>;
  /** Width of the cell; the unit that is drawn is a part of it. 5 mm to 10 m. */
  readonly width: Param<Length, number, false>;
  /** Height of the cell. Square cells are as high as wide; in hexagonal ones rows stand width · √3 / 2 apart. 5 mm to 10 m; default: that, for them. */
  readonly height: Param<Length, number | undefined, true>;
  /** How far right each row of cells stands from the one above, for p1 and p2 only. -10 m to 10 m; default 0. */
  readonly lean: LengthParam;
  /** How far sizes may be changed so that the repeat closes, as a share of them. 0 to 0.05; default 0: refused, but for the rounding to whole µm that no hexagonal cell escapes. */
  readonly distortion: NumberParam;
} = {
  group: symbol(),
  width: length({ about: "Width of the cell; the unit that is drawn is a part of it.", min: 5, max: 10_000 }),
  height: optional(
    length({
      about:
        "Height of the cell. Square cells are as high as wide; in hexagonal ones rows stand width · √3 / 2 apart.",
      min: 5,
      max: 10_000,
    }),
  ),
  lean: length({
    about: "How far right each row of cells stands from the one above, for p1 and p2 only.",
    min: -10_000,
    max: 10_000,
    default: 0,
  }),
  ...distortion,
};
type Options = ParamsOut<typeof params>;

/**
 * One of the seventeen plane groups: all the ways in which turns, mirrors and glides can fill a plane. What stands
 * in the unit (an asymmetric unit: a half to a twelfth of the cell) is completed by the group.
 *
 * @example planeGroup({ group: "p4mm", width: 160 })
 * @throws SprigwrightError when built: `missing-option` for a height that the group needs, `not-square`,
 * `not-hexagonal`, `no-lean` for what it has no room for, `uneven-length` for a size that does not halve
 */
export const planeGroup: RepeatFactory<typeof params> = defineRepeat({
  name: "sprigwright/plane-group",
  about:
    "One of the seventeen plane groups: a part of the cell is drawn, and turns, mirrors and glides complete it.",
  params,
  arrange: (options) => {
    const group = planeGroups[options.group];
    const where = `plane-group ${options.group}`;
    if (options.lean !== 0 && group.system !== "oblique")
      throw badInput(
        "no-lean",
        `${where} > lean`,
        `its cell is ${group.system} and cannot lean`,
        "leave the lean out, or take p1 or p2",
      );
    const { a, b, off } = cells[group.system](options, group, where);
    return { ...arrangedOn(group, a, b), distortion: off };
  },
});

interface Cell {
  readonly a: Vector;
  readonly b: Vector;
  readonly off: number;
}

/** The edges of the cell, for each kind of cell. */
const cells: Record<PlaneGroup["system"], (options: Options, group: PlaneGroup, where: string) => Cell> = {
  oblique({ width, height, lean }, _, where) {
    if (height === undefined) throw missingOption(`${where} > height`, "the height of the cell");
    const a: Vector = [mmToUm(width), 0];
    // A lean of more than half a width is the same lattice as what is left of it beyond whole widths.
    const leaning = mmToUm(lean);
    const b: Vector = [leaning - a[0] * Math.round(leaning / a[0]) + 0, mmToUm(height)];
    checkLean(a, b, where);
    return { a, b, off: 0 };
  },
  rectangular({ width, height, distortion }, group, where) {
    if (height === undefined) throw missingOption(`${where} > height`, "the height of the cell");
    const [x, y] = halves(group);
    const across = closing(width, x, `${where} > width`, distortion);
    const down = closing(height, y, `${where} > height`, distortion);
    return { a: [across.um, 0], b: [0, down.um], off: Math.max(across.off, down.off) };
  },
  square({ width, height, distortion }, group, where) {
    const { um, off } = closing(width, halves(group)[0], `${where} > width`, distortion);
    const bent = height === undefined ? 0 : Math.abs(mmToUm(height) / um - 1);
    if (bent > distortion)
      throw badInput(
        "not-square",
        `${where} > height`,
        `${height} mm high and ${um / 1000} mm wide is not square`,
        "leave the height out: it is the width",
      );
    return { a: [um, 0], b: [0, um], off: Math.max(off, bent) };
  },
  hexagonal({ width, height, distortion }, _, where) {
    const { width: w, row, off } = sixfold(width, height, distortion, where);
    return { a: [w, 0], b: [-w / 2, row], off };
  },
};

/** What width and height must be multiples of, in µm: 2 where positions or centring halve the edge. */
function halves({ centred, operations }: PlaneGroup): readonly [number, number] {
  const halved = (i: 4 | 5): number => (centred || operations.some((op) => op[i] !== 0) ? 2 : 1);
  return [halved(4), halved(5)];
}

function checkLean(a: Vector, b: Vector, where: string): void {
  const rows = a[0] / commonDivisor(a[0], b[0]);
  if (rows <= MOST_CELLS && rows * b[1] <= 100_000_000) return;
  const simple = Math.round((a[0] * Math.round((b[0] / a[0]) * 10)) / 10);
  throw badInput(
    "block-too-large",
    `${where} > lean`,
    `a lean of ${b[0] / 1000} mm recurs only after ${rows} rows of cells`,
    `give a simple part of the width, such as ${simple / 1000} mm`,
  );
}
