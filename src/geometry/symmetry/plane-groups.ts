import type { Operation } from "./operation.ts";

/** The seventeen plane groups by their IUCr symbols. */
export type PlaneGroupSymbol =
  | "p1"
  | "p2"
  | "pm"
  | "pg"
  | "cm"
  | "p2mm"
  | "p2mg"
  | "p2gg"
  | "c2mm"
  | "p4"
  | "p4mm"
  | "p4gm"
  | "p3"
  | "p3m1"
  | "p31m"
  | "p6"
  | "p6mm";

/** What a cell may look like: any parallelogram, a rectangle, a square, or two equilateral triangles. */
export type CellSystem = "oblique" | "rectangular" | "square" | "hexagonal";

/** One plane group. */
export interface PlaneGroup {
  /** Its number in the Tables, 1 to 17. */
  readonly number: number;
  readonly system: CellSystem;
  /** Whether every position recurs in the middle of the cell. */
  readonly centred: boolean;
  /** The general positions, x,y first, without those that centring adds. */
  readonly operations: readonly Operation[];
  /** Corners of an asymmetric unit: its images cover the plane once. In twelfths of the cell's edges. */
  readonly unit: readonly (readonly [number, number])[];
}

const stay: Operation = [1, 0, 0, 1, 0, 0]; // x,y
const half: Operation = [-1, 0, 0, -1, 0, 0]; // -x,-y
const quarters: readonly Operation[] = [stay, half, [0, -1, 1, 0, 0, 0], [0, 1, -1, 0, 0, 0]];
const thirds: readonly Operation[] = [stay, [0, -1, 1, -1, 0, 0], [-1, 1, -1, 0, 0, 0]];
const sixths: readonly Operation[] = [...thirds, half, [0, 1, -1, 1, 0, 0], [1, -1, 1, 0, 0, 0]];
/** Mirrors across the cell's long diagonals, and along its edges. */
const between: readonly Operation[] = [
  [0, -1, -1, 0, 0, 0],
  [-1, 1, 0, 1, 0, 0],
  [1, 0, 1, -1, 0, 0],
];
const along: readonly Operation[] = [
  [0, 1, 1, 0, 0, 0],
  [1, -1, 0, -1, 0, 0],
  [-1, 0, -1, 1, 0, 0],
];
const box = (x: number, y: number): PlaneGroup["unit"] => [
  [0, 0],
  [x, 0],
  [x, y],
  [0, y],
];

/**
 * The plane groups. General positions: International Tables for Crystallography, Vol. A (IUCr), part 6. The
 * asymmetric units are those given there, but for p3, whose unit here is the rhombus between four threefold
 * centres. Translations and corners are in twelfths, positions in the standard setting; y runs down the page.
 */
export const planeGroups: { readonly [S in PlaneGroupSymbol]: PlaneGroup } = {
  p1: { number: 1, system: "oblique", centred: false, operations: [stay], unit: box(12, 12) },
  p2: { number: 2, system: "oblique", centred: false, operations: [stay, half], unit: box(6, 12) },
  pm: {
    number: 3,
    system: "rectangular",
    centred: false,
    operations: [stay, [-1, 0, 0, 1, 0, 0]],
    unit: box(6, 12),
  },
  pg: {
    number: 4,
    system: "rectangular",
    centred: false,
    operations: [stay, [-1, 0, 0, 1, 0, 6]],
    unit: box(6, 12),
  },
  cm: {
    number: 5,
    system: "rectangular",
    centred: true,
    operations: [stay, [-1, 0, 0, 1, 0, 0]],
    unit: box(6, 6),
  },
  p2mm: {
    number: 6,
    system: "rectangular",
    centred: false,
    operations: [stay, half, [-1, 0, 0, 1, 0, 0], [1, 0, 0, -1, 0, 0]],
    unit: box(6, 6),
  },
  p2mg: {
    number: 7,
    system: "rectangular",
    centred: false,
    operations: [stay, half, [-1, 0, 0, 1, 6, 0], [1, 0, 0, -1, 6, 0]],
    unit: box(3, 12),
  },
  p2gg: {
    number: 8,
    system: "rectangular",
    centred: false,
    operations: [stay, half, [-1, 0, 0, 1, 6, 6], [1, 0, 0, -1, 6, 6]],
    unit: box(6, 6),
  },
  c2mm: {
    number: 9,
    system: "rectangular",
    centred: true,
    operations: [stay, half, [-1, 0, 0, 1, 0, 0], [1, 0, 0, -1, 0, 0]],
    unit: box(3, 6),
  },
  p4: { number: 10, system: "square", centred: false, operations: quarters, unit: box(6, 6) },
  p4mm: {
    number: 11,
    system: "square",
    centred: false,
    operations: [
      ...quarters,
      [-1, 0, 0, 1, 0, 0],
      [1, 0, 0, -1, 0, 0],
      [0, 1, 1, 0, 0, 0],
      [0, -1, -1, 0, 0, 0],
    ],
    unit: [
      [0, 0],
      [6, 0],
      [6, 6],
    ],
  },
  p4gm: {
    number: 12,
    system: "square",
    centred: false,
    operations: [
      ...quarters,
      [-1, 0, 0, 1, 6, 6],
      [1, 0, 0, -1, 6, 6],
      [0, 1, 1, 0, 6, 6],
      [0, -1, -1, 0, 6, 6],
    ],
    unit: [
      [0, 0],
      [6, 0],
      [0, 6],
    ],
  },
  p3: {
    number: 13,
    system: "hexagonal",
    centred: false,
    operations: thirds,
    unit: [
      [0, 0],
      [8, 4],
      [12, 12],
      [4, 8],
    ],
  },
  p3m1: {
    number: 14,
    system: "hexagonal",
    centred: false,
    operations: [...thirds, ...between],
    unit: [
      [0, 0],
      [8, 4],
      [4, 8],
    ],
  },
  p31m: {
    number: 15,
    system: "hexagonal",
    centred: false,
    operations: [...thirds, ...along],
    unit: [
      [0, 0],
      [6, 0],
      [8, 4],
      [6, 6],
    ],
  },
  p6: {
    number: 16,
    system: "hexagonal",
    centred: false,
    operations: sixths,
    unit: [
      [0, 0],
      [6, 0],
      [8, 4],
      [6, 6],
    ],
  },
  p6mm: {
    number: 17,
    system: "hexagonal",
    centred: false,
    operations: [...sixths, ...between, ...along],
    unit: [
      [0, 0],
      [6, 0],
      [8, 4],
    ],
  },
};
