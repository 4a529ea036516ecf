// The definitions are common practice in the trade: a half-drop moves every column down by half a height,
// a half-brick moves every row along by half a width, a mirror repeat turns neighbours over.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Arrangement } from "../../src/geometry/lattice.ts";
import { definitionOf } from "../../src/params/use.ts";
import { defineRepeat } from "../../src/repeat/define.ts";
import { halfBrick } from "../../src/repeat/half-brick.ts";
import { halfDrop } from "../../src/repeat/half-drop.ts";
import { mirror } from "../../src/repeat/mirror.ts";
import type { RepeatPiece, RepeatUse } from "../../src/repeat/repeat.ts";
import { straight } from "../../src/repeat/straight.ts";
import { checkArrangement } from "../../src/tile/check-arrangement.ts";
import { refusal } from "../given.ts";

const arranged = (use: RepeatUse): Arrangement =>
  definitionOf<RepeatPiece>(use, "repeat").arrange(use.params as never);

/** Whether the lattice brings a point by (x, y), by brute force. */
function recurs({ lattice: { a, b } }: Arrangement, x: number, y: number): boolean {
  for (let i = -6; i <= 6; i++)
    for (let j = -6; j <= 6; j++) if (i * a[0] + j * b[0] === x && i * a[1] + j * b[1] === y) return true;
  return false;
}
const size = { width: "6.4in", height: 120 } as const;
const [W, H] = [162_560, 120_000];

describe("repeats", () => {
  it("a straight repeat recurs in rows and columns, and its block is its unit", () => {
    const repeat = arranged(straight(size));
    expect(repeat.unit).toEqual({ width: W, height: H });
    expect(repeat.lattice.block).toEqual(repeat.unit);
    expect(recurs(repeat, W, 0) && recurs(repeat, 0, H)).toBe(true);
    expect(recurs(repeat, W, H / 2)).toBe(false);
  });

  it("in a half-drop, column k stands k · H / 2 lower", () => {
    const repeat = arranged(halfDrop(size));
    for (let k = -4; k <= 4; k++) expect(recurs(repeat, k * W, (k * H) / 2)).toBe(true);
    expect(recurs(repeat, W, 0)).toBe(false);
    expect(repeat.lattice.block).toEqual({ width: 2 * W, height: H });
  });

  it("in a half-brick, row k stands k · W / 2 to the right", () => {
    const repeat = arranged(halfBrick(size));
    for (let k = -4; k <= 4; k++) expect(recurs(repeat, (k * W) / 2, k * H)).toBe(true);
    expect(recurs(repeat, 0, H)).toBe(false);
    expect(repeat.lattice.block).toEqual({ width: W, height: 2 * H });
  });

  const image = ([a, b, c, d, e, f]: readonly number[], x: number, y: number): number[] => [
    a! * x + c! * y + e!,
    b! * x + d! * y + f!,
  ];
  it.each([
    ["across", { width: 2 * W, height: H }, [[2 * W - 100, 30]]],
    ["down", { width: W, height: 2 * H }, [[100, 2 * H - 30]]],
    [
      "both",
      { width: 2 * W, height: 2 * H },
      [
        [2 * W - 100, 30],
        [100, 2 * H - 30],
        [2 * W - 100, 2 * H - 30],
      ],
    ],
  ] as const)("a mirror %s turns the neighbours over about the shared edge", (axis, block, images) => {
    const repeat = arranged(mirror({ ...size, axis }));
    expect(repeat.lattice.block).toEqual(block);
    expect(repeat.operations.map((m) => image(m, 100, 30))).toEqual([[100, 30], ...images]);
    // The edge itself stays where it is.
    for (const m of repeat.operations) {
      if (m[0] === -1) expect(image(m, W, 0)[0]).toBe(W);
      if (m[3] === -1) expect(image(m, 0, H)[1]).toBe(H);
    }
  });

  it("a mirror is across when nothing is said", () => {
    expect(mirror(size).params).toEqual({ width: 162.56, height: 120, axis: "across" });
  });

  it("all pass the check that custom repeats must pass, for any even size", () => {
    const even = fc.integer({ min: 2500, max: 5_000_000 }).map((half) => half / 500);
    fc.assert(
      fc.property(even, even, (width, height) => {
        const uses = [straight({ width, height }), halfDrop({ width, height }), halfBrick({ width, height })];
        for (const use of [...uses, mirror({ width, height, axis: "both" })]) {
          const repeat = arranged(use);
          expect(checkArrangement(repeat, "x")).toEqual(repeat);
          const { a, b, block } = repeat.lattice;
          const cell = Math.abs(a[0] * b[1] - a[1] * b[0]);
          expect(cell).toBe(repeat.unit.width * repeat.unit.height * repeat.operations.length);
          expect((block.width * block.height) % cell).toBe(0);
        }
      }),
      { seed: 17 },
    );
  });

  it("an odd number of micrometres does not halve: both nearest sizes are offered", () => {
    expect(refusal(() => arranged(halfDrop({ width: 100, height: 120.001 }))).message).toBe(
      "half-drop > height: 120.001 mm is an odd number of micrometres, so half of it is not whole and the repeat would not close\n" +
        "  fix: give 120 mm or 120.002 mm [odd-length]",
    );
    expect(refusal(() => arranged(halfBrick({ width: 99.999, height: 120 }))).fix).toBe(
      "give 99.998 mm or 100 mm",
    );
    expect(arranged(halfDrop({ width: 99.999, height: 120 })).unit.width).toBe(99_999);
  });

  it.each([
    [{ width: 4, height: 120 }, "4 mm is outside 5 mm to 10000 mm"],
    [{ width: 160, height: -1 }, "-1 mm is outside 5 mm to 10000 mm"],
    [{ width: 160 }, "nothing was given"],
    [{ width: 160, height: 120, hight: 3 }, 'there is no option "hight"'],
    [7, "7 is not an object of options"],
    [undefined, "undefined is not an object of options"],
  ])("%j is refused: %s", (options, what) => {
    expect(refusal(() => straight(options as never)).what).toBe(what);
  });
});

describe("a repeat of one's own", () => {
  const sound = {
    unit: { width: 100, height: 60 },
    lattice: { a: [100, 20], b: [0, 60], block: { width: 300, height: 60 } },
    operations: [[1, 0, 0, 1, 0, 0]],
  };
  it("may have any whole lattice", () => {
    const piece = defineRepeat({
      name: "x/third",
      about: "A third drop.",
      params: {},
      arrange: () => sound as never,
    });
    expect(checkArrangement(arranged(piece({})), "x")).toEqual(sound);
  });

  it.each([
    ["nothing", null, "it returned null"],
    ["no unit", { ...sound, unit: undefined }, "its unit is not a width and a height of 1 to 100000000 µm"],
    ["a unit of half µm", { ...sound, unit: { width: 10.5, height: 60 } }, "its unit is not"],
    ["no lattice", { ...sound, lattice: undefined }, "its block is not a width and a height"],
    ["NaN", { ...sound, lattice: { ...sound.lattice, a: [Number.NaN, 0] } }, "are not pairs of whole µm"],
    [
      "no area",
      { ...sound, lattice: { ...sound.lattice, a: [0, 20] } },
      "not a whole number of lattice cells",
    ],
    [
      "a block that does not close",
      { ...sound, lattice: { ...sound.lattice, block: { width: 200, height: 60 } } },
      "does not repeat straight",
    ],
    ["no operations", { ...sound, operations: [] }, "it has not from 1 to 144 copies"],
    ["a mirror first", { ...sound, operations: [[-1, 0, 0, 1, 0, 0]] }, "with the identity first"],
    [
      "a slant",
      { ...sound, operations: [...sound.operations, [0.7, 0.7, -0.7, 0.7, 0, 0]] },
      "not symmetries of its lattice",
    ],
    [
      "a growth",
      { ...sound, operations: [...sound.operations, [2, 0, 0, 1, 0, 0]] },
      "not symmetries of its lattice",
    ],
  ])("is refused when it returns %s", (_, value, what) => {
    const error = refusal(() => checkArrangement(value, "pears > third"));
    expect(error.code).toBe("bad-arrangement");
    expect(error.what).toContain(what);
    expect(error.where).toBe("pears > third");
  });
});
