import type { Size } from "../../../src/geometry/lattice.ts";
import { CURVE, joinPaths, type Path } from "../../../src/geometry/path.ts";
import { copiesInBlock } from "../../../src/output/copies.ts";
import { cosTurns, sinTurns } from "../../../src/seed/trigonometry.ts";
import type { Layer, Tile } from "../../../src/tile/tile.ts";

/** A tile made by hand of nothing but a block and layers (µm). */
export function tileOf(block: Size, layers: readonly Layer[]): Tile {
  const roles = ["ground", ...layers.map((layer) => layer.role)];
  const use = { use: "test/none", params: {} };
  const lattice = { a: [block.width, 0], b: [0, block.height], block } as const;
  return {
    name: "by-hand",
    block,
    lattice,
    arrangement: { unit: block, lattice, operations: [[1, 0, 0, 1, 0, 0]] },
    motifs: [],
    placements: [],
    layers,
    figures: {} as Tile["figures"],
    recipe: {
      sprigwright: "0.0.0",
      name: "by-hand",
      subject: "",
      seed: "1",
      repeat: use,
      layout: use,
      roles,
      colorways: {},
    },
    digest: "00",
  };
}

/** Numbers from 0 up to 1, the same for the same seed (a 32-bit xorshift, Marsaglia 2003). */
export function chance(seed: number): () => number {
  let state = (seed * 2654435761) >>> 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state / 4294967296;
  };
}

/** A closed smooth outline through `points` (Catmull-Rom as Béziers), whole µm, turned so that its area is positive. */
export function smooth(points: readonly (readonly [number, number])[]): Path {
  const area = points.reduce((sum, [x, y], i) => {
    const [u, v] = points[(i + 1) % points.length]!;
    return sum + x * v - u * y;
  }, 0);
  const ring = area < 0 ? [...points].reverse() : points;
  const n = ring.length;
  const out = new Int32Array(n * CURVE);
  ring.forEach(([x, y], i) => {
    const [px, py] = ring[(i + n - 1) % n]!;
    const [qx, qy] = ring[(i + 1) % n]!;
    const [rx, ry] = ring[(i + 2) % n]!;
    out.set(
      [x, y, x + (qx - px) / 6, y + (qy - py) / 6, qx - (rx - x) / 6, qy - (ry - y) / 6].map(Math.round),
      i * 6,
    );
  });
  return { points: out, contours: [n] };
}

/** An upright rectangle. */
export function rectangle(x: number, y: number, width: number, height: number): Path {
  const [u, v] = [x + width, y + height];
  const corners = [x, y, u, y, u, v, x, v];
  const points = corners.flatMap((_, i) =>
    i % 2 === 1
      ? []
      : [
          corners[i]!,
          corners[i + 1]!,
          corners[i]!,
          corners[i + 1]!,
          corners[(i + 2) % 8]!,
          corners[(i + 3) % 8]!,
        ],
  );
  return { points: Int32Array.from(points), contours: [4] };
}

/** A circle of four cubics, the customary way: k = 4/3 (sqrt 2 - 1). */
export function circle(x: number, y: number, radius: number): Path {
  const k = ((4 * (Math.SQRT2 - 1)) / 3) * radius;
  const at = [
    [radius, 0, radius, k, k, radius],
    [0, radius, -k, radius, -radius, k],
    [-radius, 0, -radius, -k, -k, -radius],
    [0, -radius, k, -radius, radius, -k],
  ].flat();
  return { points: Int32Array.from(at, (v, i) => Math.round(v + (i % 2 === 0 ? x : y))), contours: [4] };
}

/** A wobbly blob of about `radius`; `flat` below 1 makes it thin; turned by `turn`. */
export function blob(
  random: () => number,
  x: number,
  y: number,
  radius: number,
  flat = 1,
  turn = random(),
): Path {
  const corners = 5 + Math.floor(random() * 4);
  const [c, s] = [cosTurns(turn), sinTurns(turn)];
  return smooth(
    Array.from({ length: corners }, (_, i) => {
      const r = radius * (0.7 + 0.3 * random());
      const [u, v] = [r * cosTurns(i / corners), r * flat * sinTurns(i / corners)];
      return [x + u * c - v * s, y + u * s + v * c] as const;
    }),
  );
}

/** The same picture as SVG of `width` x `height` pixels, for a renderer that knows nothing of tiles. */
export function svgOf(
  tile: Tile,
  inks: Readonly<Record<string, string>>,
  width: number,
  height: number,
): string {
  const { block } = tile;
  const layers = tile.layers.map(
    ({ role, path }) => `<path fill="${inks[role]}" d="${dataOf(copiesInBlock(path, block))}"/>`,
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${block.width} ${block.height}" preserveAspectRatio="none"><rect width="${block.width}" height="${block.height}" fill="${inks["ground"]}"/>${layers.join("")}</svg>`;
}

function dataOf(path: Path): string {
  const p = path.points;
  const parts: string[] = [];
  let from = 0;
  for (const curves of path.contours) {
    const to = from + curves * CURVE;
    parts.push(`M${p[from]} ${p[from + 1]}`);
    for (let i = from; i < to; i += CURVE) {
      const end = i + CURVE < to ? i + CURVE : from;
      parts.push(`C${p[i + 2]} ${p[i + 3]} ${p[i + 4]} ${p[i + 5]} ${p[end]} ${p[end + 1]}`);
    }
    parts.push("Z");
    from = to;
  }
  return parts.join("");
}

/** A meadow: `across` x `across` flowers of 15 contours in 4 roles, strewn about a grid, over the edges too. */
export function meadow(size: number, across: number, seed: number): Tile {
  const random = chance(seed);
  const byRole: Record<string, Path[]> = { stem: [], leaf: [], petal: [], centre: [] };
  const pitch = size / across;
  for (let i = 0; i < across; i++)
    for (let j = 0; j < across; j++) {
      const x = (i + 0.5 + 0.5 * (random() - 0.5)) * pitch;
      const y = (j + 0.5 + 0.5 * (random() - 0.5)) * pitch;
      const r = pitch * (0.36 + 0.14 * random());
      const turn = random();
      const at = (t: number, d: number): [number, number] => [
        x + d * cosTurns(turn + t),
        y + d * sinTurns(turn + t),
      ];
      const petalAt = (t: number, d: number, long: number, wide: number): Path =>
        blob(random, ...at(t, d), long, wide / long, turn + t);
      byRole["stem"]!.push(petalAt(0.25, r * 0.8, r * 0.8, r * 0.05));
      for (const t of [0.15, 0.21, 0.29, 0.35])
        byRole["leaf"]!.push(petalAt(t, r * 1.05, r * 0.42, r * 0.13));
      for (let k = 0; k < 6; k++) byRole["petal"]!.push(petalAt(k / 6, r * 0.52, r * 0.36, r * 0.2));
      byRole["centre"]!.push(blob(random, x, y, r * 0.26));
      for (let k = 0; k < 3; k++)
        byRole["centre"]!.push(blob(random, ...at(0.6 + k * 0.12, r * 1.15), r * 0.07));
    }
  const layers = Object.entries(byRole).map(([role, paths]) => ({ role, path: joinPaths(paths) }));
  return tileOf({ width: size, height: size }, layers);
}

/**
 * The same shapes in `count` roles beside the ground: contour after contour of a layer goes to another of its roles, so
 * that every role meets many others.
 */
export function splitRoles(tile: Tile, count: number): Tile {
  const { layers, block } = tile;
  const shares = layers.map(
    (_, i) => Math.floor(((i + 1) * count) / layers.length) - Math.floor((i * count) / layers.length),
  );
  const split = layers.flatMap(({ role, path }, i) =>
    Array.from({ length: shares[i]! }, (_, k) => {
      const kept: Path[] = [];
      let from = 0;
      path.contours.forEach((curves, index) => {
        const to = from + curves * CURVE;
        if (index % shares[i]! === k) kept.push({ points: path.points.slice(from, to), contours: [curves] });
        from = to;
      });
      return { role: `${role}-${k}`, path: joinPaths(kept) };
    }),
  );
  return tileOf(block, split);
}
