import { middleOf } from "../../geometry/middle.ts";
import { boxOf } from "../../geometry/path.ts";
import { createRandom } from "../../seed/random.ts";
import { kindsOf } from "./neighbours.ts";
import { copiesNear, type Scene } from "./scene.ts";

/** See {@link huddleOf}. */
export interface Huddle {
  /** Numbers of the placements, in order, however likely they are: the chance says whether it is a huddle. None where no two of a kind are neighbours. */
  readonly placements: readonly number[];
  readonly chance: number;
}

/** Motifs smaller than this share of the mean size (weighed by ink) are passed over: the eye goes by the large ones. */
const LARGE = 0.6;
/** Motifs whose sizes differ at most so many times are of like size. */
const LIKE = 1.7;
/** Middles nearer than so many spacings of the large motifs are neighbours: six around each, were they in a lattice. */
const NEAR = 1.3;
/** Dealings of the kinds: fewer where there are many links, no fewer than the least. */
const DEALINGS = 400;
const LEAST = 100;
const WORK = 2_000_000;

const NONE: Huddle = { placements: [], chance: 1 };

/**
 * The huddle of one kind that is least likely: motifs of a kind, each a neighbour of another of them, however small
 * motifs lie between. Large motifs only, by the middles of their ink, images included. The more pairs of neighbours, the
 * denser. `chance` is the share of random dealings of the kinds, among motifs of like size, in which that kind has a huddle
 * at least as dense, times the number of kinds (random labelling; Monte Carlo p-value (1 + n) / (1 + N) after Davison and Hinkley 1997, from memory; Bonferroni).
 * 0 to 1, 1 when there is nothing to judge.
 */
export function huddleOf(scene: Scene): Huddle {
  const { placements, motifs, copies, operations } = scene;
  const kinds = kindsOf(motifs);
  const sides = motifs.map(({ outline }) => {
    const { minX, minY, maxX, maxY } = boxOf(outline);
    return (maxX - minX + (maxY - minY)) / 2;
  });
  const size = placements.map(({ motif, scale }) => sides[motif]! * scale);
  let [sum, ink] = [0, 0];
  size.forEach((side, i) => {
    const { area } = copies[i * operations.length]!;
    sum += area * side;
    ink += area;
  });
  const large = [...size.keys()].filter((i) => size[i]! * ink >= LARGE * sum);
  const links = linksOf(scene, large);
  const kind = placements.map(({ motif }) => kinds[motif]!);
  const label = Int32Array.from(copies, ({ placement }) => kind[placement]!);
  const first = joined(links, label);
  const seen = closest(links, label);
  const names = [...seen.keys()].sort((p, q) => p - q);
  if (names.length === 0) return NONE;
  const alike = likeSizes(large, size);
  const random = createRandom("huddles");
  const dealings = Math.max(LEAST, Math.min(DEALINGS, Math.floor(WORK / links.length)));
  const asLarge = new Map(names.map((name) => [name, 0]));
  const dealt = kind.slice();
  for (let k = 0; k < dealings; k++) {
    for (const group of alike)
      for (let i = group.length - 1; i > 0; i--) {
        const [p, q] = [group[i]!, group[random.below(i + 1)]!];
        [dealt[p], dealt[q]] = [dealt[q]!, dealt[p]!];
      }
    copies.forEach(({ placement }, i) => {
      label[i] = dealt[placement]!;
    });
    const other = closest(links, label);
    for (const name of names)
      if ((other.get(name)?.size ?? 0) >= seen.get(name)!.size) asLarge.set(name, asLarge.get(name)! + 1);
  }
  const least = names.reduce((p, q) => (asLarge.get(q)! < asLarge.get(p)! ? q : p));
  const { of } = seen.get(least)!;
  const members = copies.flatMap(({ placement }, i) => (first[i] === of ? [placement] : []));
  return {
    placements: [...new Set(members)].sort((p, q) => p - q),
    chance: Math.min(1, (names.length * (1 + asLarge.get(least)!)) / (1 + dealings)),
  };
}

type Link = readonly [one: number, two: number];

/** Pairs of copies of large motifs that are neighbours, by their numbers. */
function linksOf(scene: Scene, large: readonly number[]): Link[] {
  const { copies, placements, operations, cellArea } = scene;
  const isLarge = new Set(large);
  const middles = scene.motifs.map(({ outline }) => middleOf(outline));
  const reach = NEAR * Math.sqrt(cellArea / (large.length * operations.length));
  const at = copies.map(({ placement, matrix: [a, b, c, d, e, f] }) => {
    const [x, y] = middles[placements[placement]!.motif]!;
    return [a * x + c * y + e, b * x + d * y + f] as const;
  });
  const links: Link[] = [];
  for (const placement of large)
    for (let k = 0; k < operations.length; k++) {
      const one = placement * operations.length + k;
      const [x, y] = at[one]!;
      copiesNear(scene, [x, y, x, y], reach, (copy, dx, dy, two) => {
        if (two <= one || !isLarge.has(copy.placement)) return;
        const [ox, oy] = [at[two]![0] + dx - x, at[two]![1] + dy - y];
        if (ox * ox + oy * oy < reach * reach) links.push([one, two]);
      });
    }
  return links;
}

/** Joins the ends of links that are labelled alike: the first of the huddle that each copy lies in. */
function joined(links: readonly Link[], label: Int32Array): Int32Array {
  const first = Int32Array.from(label, (_, i) => i);
  const find = (i: number): number => {
    let at = i;
    while (first[at] !== at) {
      first[at] = first[first[at]!]!;
      at = first[at]!;
    }
    return at;
  };
  for (const [one, two] of links) if (label[one] === label[two]) first[find(two)] = find(one);
  return first.map((_, i) => find(i));
}

/** The huddle of each label that has the most links, and how many. */
function closest(links: readonly Link[], label: Int32Array): Map<number, { size: number; of: number }> {
  const first = joined(links, label);
  const sizes = new Int32Array(first.length);
  for (const [one, two] of links) if (label[one] === label[two]) sizes[first[one]!] = sizes[first[one]!]! + 1;
  const found = new Map<number, { size: number; of: number }>();
  sizes.forEach((size, of) => {
    if (size > (found.get(label[of]!)?.size ?? 0)) found.set(label[of]!, { size, of });
  });
  return found;
}

/** Placements parted by size, the largest first. */
function likeSizes(large: readonly number[], size: readonly number[]): number[][] {
  const groups: number[][] = [];
  for (const i of [...large].sort((p, q) => size[q]! - size[p]! || p - q)) {
    const group = groups.at(-1);
    if (group && size[i]! * LIKE >= size[group[0]!]!) group.push(i);
    else groups.push([i]);
  }
  return groups;
}
