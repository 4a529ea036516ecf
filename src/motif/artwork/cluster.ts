import type { Element } from "@xmldom/xmldom";
import type { Box } from "../../geometry/path.ts";
import { boxOfMarks } from "./frame.ts";
import { leavesOf, type Mark, type Painted } from "./journey.ts";
import { placesOf } from "./places.ts";

/** Shapes of a sheet that are one motif. */
export interface Cluster {
  /** As the file calls it; empty where it does not. */
  readonly name: string;
  /** Longer side, in the file's units. */
  readonly longer: number;
  /** Where its painting elements stand in the file. */
  readonly places: ReadonlySet<number>;
}

interface Heap {
  box: Box;
  readonly painted: Painted[];
}

/**
 * Shapes whose boxes come nearer to each other than `apart` (a share of the sheet's longer side) are one motif, and
 * so on through all of them. What spreads over the whole sheet, such as its paper, is nobody's and left out. Motifs
 * come in reading order: row by row, each from the left.
 */
export function clustersOf(root: Element, marks: readonly Mark[], apart: number): readonly Cluster[] {
  const whole = boxOfMarks(marks);
  const near = apart * Math.max(whole.maxX - whole.minX, whole.maxY - whole.minY);
  const byHolder = new Map<Element, Painted[]>();
  for (const one of marks.flatMap(leavesOf)) {
    const held = byHolder.get(one.holder);
    if (held) held.push(one);
    else byHolder.set(one.holder, [one]);
  }
  let heaps: Heap[] = [...byHolder.values()].map((painted) => ({ painted, box: boxOfMarks(painted) }));
  const motifs = heaps.filter(({ box }) => !spreads(box, whole));
  if (motifs.length > 0) heaps = motifs;
  heaps = heaps.filter(({ box }) => box.maxX >= box.minX);
  const joined = joinNear(heaps, near).sort((a, b) => a.box.minY - b.box.minY || a.box.minX - b.box.minX);
  const places = placesOf(root);
  const all = joined.flatMap((heap) => heap.painted);
  return inRows(joined).map(({ box, painted }) => ({
    name: sharedName(painted, all),
    longer: Math.max(box.maxX - box.minX, box.maxY - box.minY),
    places: new Set(painted.map((one) => places.get(one.holder)!)),
  }));
}

/** Whether something lies under the whole sheet, as its paper does. */
export const spreads = (box: Box, whole: Box): boolean =>
  box.maxX - box.minX > 0.95 * (whole.maxX - whole.minX) &&
  box.maxY - box.minY > 0.95 * (whole.maxY - whole.minY);

/** Joins heaps whose boxes are nearer than `near`, swept from left to right until none are. */
function joinNear(heaps: readonly Heap[], near: number): Heap[] {
  let left = [...heaps];
  for (let before = -1; before !== left.length; ) {
    before = left.length;
    left.sort((a, b) => a.box.minX - b.box.minX || a.box.minY - b.box.minY);
    const done: Heap[] = [];
    let open: Heap[] = [];
    for (const heap of left) {
      open = open.filter((one) => one.box.maxX + near >= heap.box.minX);
      const beside = open.find(
        (one) => one.box.minY - near <= heap.box.maxY && heap.box.minY - near <= one.box.maxY,
      );
      if (beside) {
        beside.box = around(beside.box, heap.box);
        beside.painted.push(...heap.painted);
      } else {
        open.push(heap);
        done.push(heap);
      }
    }
    left = done;
  }
  return left;
}

const around = (a: Box, b: Box): Box => ({
  minX: Math.min(a.minX, b.minX),
  minY: Math.min(a.minY, b.minY),
  maxX: Math.max(a.maxX, b.maxX),
  maxY: Math.max(a.maxY, b.maxY),
});

/** Heaps sorted from the top, in rows: what begins above the middle of the first of a row belongs to it. */
function inRows(heaps: readonly Heap[]): Heap[] {
  const sorted: Heap[] = [];
  for (let left = [...heaps]; left.length > 0; ) {
    const middle = (left[0]!.box.minY + left[0]!.box.maxY) / 2;
    const row = left.filter(({ box }) => box.minY <= middle);
    left = left.filter(({ box }) => box.minY > middle);
    sorted.push(...row.sort((a, b) => a.box.minX - b.box.minX || a.box.minY - b.box.minY));
  }
  return sorted;
}

/** The name of the largest group that holds all of a motif and nothing of others: a shape's own id when it is alone. */
function sharedName(painted: readonly Painted[], all: readonly Painted[]): string {
  const own = new Set(painted);
  const trails = painted.map((one) => one.trail);
  const wordAt = (one: Painted, depth: number): string => one.trail[depth]?.names[0] ?? "";
  for (let depth = 0; trails.every((trail) => depth < trail.length); depth++) {
    const word = wordAt(painted[0]!, depth);
    if (!painted.every((one) => wordAt(one, depth) === word)) break;
    if (word !== "" && !all.some((one) => !own.has(one) && wordAt(one, depth) === word)) return word;
  }
  return "";
}
