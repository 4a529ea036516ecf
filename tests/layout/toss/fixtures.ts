import type { Arrangement } from "../../../src/geometry/lattice.ts";
import { placing, transformPath } from "../../../src/geometry/matrix.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { joinPaths } from "../../../src/geometry/path.ts";
import { pen } from "../../../src/geometry/pen.ts";
import type { DrawnMotif, LayoutTools } from "../../../src/layout/layout.ts";
import type { TossEntry, TossOptions } from "../../../src/layout/toss/pack.ts";
import { exactMath } from "../../../src/seed/math.ts";
import { createRandom } from "../../../src/seed/random.ts";
import { cosTurns, sinTurns } from "../../../src/seed/trigonometry.ts";

/** A pointed leaf, 36 mm long. */
export const leaf = (): Path =>
  pen().moveTo(-18, 0).curveTo(-9, -9, 7, -9, 18, 0).curveTo(7, 9, -9, 9, -18, 0).path();

/** A flower of five round petals, 36 mm across. */
export function blossom(): Path {
  const p = pen();
  const at = (turn: number, r: number): [number, number] => [r * cosTurns(turn), r * sinTurns(turn)];
  p.moveTo(...at(-0.1, 5));
  for (let k = 0; k < 5; k++)
    p.curveTo(...at(k / 5 - 0.08, 27), ...at(k / 5 + 0.08, 27), ...at(k / 5 + 0.1, 5));
  return p.path();
}

/** A moon, 36 mm across, open to the right. */
export function crescent(): Path {
  return pen()
    .moveTo(11, 14.2)
    .curveTo(0, 22, -18, 15, -18, 0)
    .curveTo(-18, -15, 0, -22, 11, -14.2)
    .curveTo(-2, -14, -6, -6, -6, 0)
    .curveTo(-6, 6, -2, 14, 11, 14.2)
    .path();
}

/** A stem with five leaflets, drawn as one contour, 36 mm long. */
export function sprig(): Path {
  const p = pen().moveTo(-18, -0.5);
  for (const x of [-8, 0, 8])
    p.lineTo(x - 1, -0.5)
      .curveTo(x - 1, -4, x + 1, -7, x + 5, -9)
      .curveTo(x + 6, -5, x + 4, -2, x + 1, -0.5);
  p.lineTo(12, -0.5).curveTo(13, -3, 16, -3, 18, 0).curveTo(16, 3, 13, 3, 12, 0.5);
  for (const x of [6, -2, -10])
    p.lineTo(x + 1, 0.5)
      .curveTo(x + 4, 2, x + 6, 5, x + 5, 9)
      .curveTo(x + 1, 7, x - 1, 4, x - 1, 0.5);
  return p.lineTo(-18, 0.5).path();
}

/** A five-pointed star, 36 mm across. */
export function star(): Path {
  const p = pen().moveTo(18, 0);
  for (let k = 1; k < 10; k++) {
    const r = k % 2 === 1 ? 8 : 18;
    p.lineTo(r * cosTurns(k / 10), r * sinTurns(k / 10));
  }
  return p.path();
}

/** A disc of the given radius (mm). */
export function disc(r: number): Path {
  const k = 0.5523 * r;
  return pen()
    .moveTo(r, 0)
    .curveTo(r, k, k, r, 0, r)
    .curveTo(-k, r, -r, k, -r, 0)
    .curveTo(-r, -k, -k, -r, 0, -r)
    .curveTo(k, -r, r, -k, r, 0)
    .path();
}

/** A ring: a disc with a hole. */
export function ring(r: number, hole: number): Path {
  const inner = transformPath(disc(hole), placing(0, 0));
  const points = inner.points.slice();
  const count = points.length / 2;
  for (let k = 0; k < count; k++) {
    points[2 * k] = inner.points[2 * ((count - k) % count)]!;
    points[2 * k + 1] = inner.points[2 * ((count - k) % count) + 1]!;
  }
  return joinPaths([disc(r), { points, contours: inner.contours }]);
}

export const drawn = (index: number, name: string, outline: Path): DrawnMotif => ({
  index,
  motif: { name, shapes: [{ role: name, path: outline }], outline },
});

const mixPaths: readonly (readonly [string, () => Path])[] = [
  ["leaf", leaf],
  ["blossom", blossom],
  ["crescent", crescent],
  ["sprig", sprig],
  ["star", star],
];

/** Leaf, blossom, crescent, sprig and star in equal shares. */
export const mix = (scale: readonly [number, number] = [1 / 3, 1]): TossEntry[] =>
  mixPaths.map(([name, path], index) => ({ drawings: [drawn(index, name, path())], share: 1, scale }));

/** One entry for each path, all with share 1 and their drawn size. */
export const entriesOf = (...paths: readonly Path[]): TossEntry[] =>
  paths.map((path, index) => ({ drawings: [drawn(index, `motif-${index}`, path)], share: 1, scale: [1, 1] }));

export const options = (given: Partial<TossOptions> = {}): TossOptions => ({
  gap: 2,
  density: "even",
  count: undefined,
  direction: "tossed",
  flip: false,
  spread: 0.9,
  entries: mix(),
  ...given,
});

export function tools(seed: string, arrangement: Arrangement): LayoutTools {
  return {
    arrangement,
    draw: () => [],
    standing: [],
    held: [],
    random: createRandom(seed),
    math: exactMath,
    step: () => Promise.resolve(),
  };
}

const mm = (n: number): number => Math.round(n * 1000);

/** The four simplest repeats over a unit of the given size (mm). */
export const repeats = {
  straight: (w: number, h: number): Arrangement => ({
    unit: { width: mm(w), height: mm(h) },
    lattice: { a: [mm(w), 0], b: [0, mm(h)], block: { width: mm(w), height: mm(h) } },
    operations: [[1, 0, 0, 1, 0, 0]],
  }),
  "half-drop": (w: number, h: number): Arrangement => ({
    unit: { width: mm(w), height: mm(h) },
    lattice: { a: [mm(w), mm(h) / 2], b: [0, mm(h)], block: { width: 2 * mm(w), height: mm(h) } },
    operations: [[1, 0, 0, 1, 0, 0]],
  }),
  "half-brick": (w: number, h: number): Arrangement => ({
    unit: { width: mm(w), height: mm(h) },
    lattice: { a: [mm(w), 0], b: [mm(w) / 2, mm(h)], block: { width: mm(w), height: 2 * mm(h) } },
    operations: [[1, 0, 0, 1, 0, 0]],
  }),
  mirror: (w: number, h: number): Arrangement => ({
    unit: { width: mm(w), height: mm(h) },
    lattice: {
      a: [2 * mm(w), 0],
      b: [0, 2 * mm(h)],
      block: { width: 2 * mm(w), height: 2 * mm(h) },
    },
    operations: [
      [1, 0, 0, 1, 0, 0],
      [-1, 0, 0, 1, 2 * mm(w), 0],
      [1, 0, 0, -1, 0, 2 * mm(h)],
      [-1, 0, 0, -1, 2 * mm(w), 2 * mm(h)],
    ],
  }),
} as const;
