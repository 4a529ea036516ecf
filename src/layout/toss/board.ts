import { isCloser } from "../../geometry/distance.ts";
import { type Images, transformBounds } from "../../geometry/images.ts";
import { compose, type Matrix } from "../../geometry/matrix.ts";
import { copyOutline, type Outline, transformOutline } from "../../geometry/outline.ts";
import type { Body } from "./body.ts";
import { bucketsOver } from "./buckets.ts";
import { createKinIndex, type KinIndex } from "./kin-index.ts";
import type { Obstacles } from "./obstacles.ts";
import type { Band } from "./plan.ts";

/** Where a body stands: whole µm, an index into the allowed turns, a factor, mirrored or not. */
export interface Pose {
  /** The entry and the sizes that it was placed as. */
  readonly band: Band;
  readonly body: Body;
  readonly x: number;
  readonly y: number;
  readonly turn: number;
  readonly scale: number;
  readonly flip: boolean;
  readonly matrix: Matrix;
}

/** A body that stands. */
export interface Piece extends Pose {
  readonly serial: number;
  readonly copies: readonly Copy[];
}

/** One appearance of a piece on or around the unit: its outline under an operation, moved by (dx, dy). */
export interface Copy {
  readonly piece: Piece;
  readonly outline: Outline;
  readonly dx: number;
  readonly dy: number;
  readonly matrix: Matrix;
  /** Centre of the enclosing circle, and its radius. */
  readonly cx: number;
  readonly cy: number;
  readonly r: number;
  /** Middle of its ink. */
  readonly mx: number;
  readonly my: number;
  /** The last search that met it. */
  seen: number;
}

/** All pieces with their copies, in buckets by place. */
export interface Board {
  readonly pieces: Set<Piece>;
  /** Whether an outline at its final place keeps `gap` (and the extra gaps) from all copies and from all obstacles. */
  readonly isClear: (body: Body, outline: Outline, gap: number) => boolean;
  /** Whether an outline keeps `gap` from its own copies. */
  readonly isSelfClear: (body: Body, outline: Outline, gap: number) => boolean;
  /** The copies of the pieces of one entry near a place. */
  readonly nearKin: KinIndex<Copy>["near"];
  readonly add: (pose: Pose, outline: Outline) => Piece;
  /** Counts copies of what stands for kin of an entry's pieces. */
  readonly addKin: (entry: number, copies: readonly Copy[]) => void;
  readonly remove: (piece: Piece) => void;
  /** Puts a removed piece back as it was. */
  readonly restore: (piece: Piece) => void;
  /** Calls `visit` with every copy whose bucket the box touches, once; true from `visit` ends the search. */
  readonly search: (
    minX: number,
    minY: number,
    maxX: number,
    maxY: number,
    visit: (c: Copy) => boolean,
  ) => boolean;
}

/**
 * An empty board for copies that touch `zone` (minX, minY, maxX, maxY in µm), with buckets of `bucket` µm; `extra` is
 * the widest extra gap that any piece may have. Obstacles are kept clear of, and are no pieces.
 */
export function createBoard(
  images: Images,
  zone: Float64Array,
  bucket: number,
  extra: number,
  obstacles?: Obstacles,
): Board {
  const { columns, count, column, row } = bucketsOver(zone, bucket);
  const buckets: Copy[][] = Array.from({ length: count }, () => []);
  const pieces = new Set<Piece>();
  const kin = createKinIndex<Copy>(zone, bucket);
  let searches = 0;
  let serial = 0;

  function eachBucket(copy: Copy, visit: (list: Copy[]) => void): void {
    const { box } = copy.outline;
    const toColumn = column(box[2]! + copy.dx);
    const toRow = row(box[3]! + copy.dy);
    for (let j = row(box[1]! + copy.dy); j <= toRow; j++)
      for (let i = column(box[0]! + copy.dx); i <= toColumn; i++) visit(buckets[j * columns + i]!);
  }
  function restore(piece: Piece): void {
    pieces.add(piece);
    for (const copy of piece.copies) {
      kin.add(piece.body.entry, copy);
      eachBucket(copy, (list) => list.push(copy));
    }
  }
  const search: Board["search"] = (minX, minY, maxX, maxY, visit) => {
    const stamp = ++searches;
    const fromColumn = column(minX);
    const toColumn = column(maxX);
    const toRow = row(maxY);
    for (let j = row(minY); j <= toRow; j++)
      for (let i = fromColumn; i <= toColumn; i++)
        for (const copy of buckets[j * columns + i]!) {
          if (copy.seen === stamp) continue;
          copy.seen = stamp;
          if (visit(copy)) return true;
        }
    return false;
  };

  return {
    pieces,
    search,
    nearKin: kin.near,
    restore,
    isClear(body, outline, gap) {
      const { box } = outline;
      const reach = gap + extra;
      if (obstacles && !obstacles.isClear(outline, gap, body.extra)) return false;
      return !search(box[0]! - reach, box[1]! - reach, box[2]! + reach, box[3]! + reach, (copy) =>
        isCloser(outline, copy.outline, copy.dx, copy.dy, gap + Math.max(body.extra, copy.piece.body.extra)),
      );
    },
    isSelfClear(body, outline, gap) {
      return !selfCopies(images, outline, gap + body.extra, (copy, dx, dy) =>
        isCloser(outline, copy, dx, dy, gap + body.extra),
      );
    },
    add(pose, outline) {
      const copies: Copy[] = [];
      const piece: Piece = { ...pose, serial: serial++, copies };
      const own = copyOutline(outline);
      const { circle, middle } = pose.body;
      images.operations.forEach((operation, index) => {
        const shown = index === 0 ? own : transformOutline(own, operation);
        const matrix = index === 0 ? pose.matrix : compose(pose.matrix, operation);
        const [a, b, c, d, e, f] = matrix;
        const cx = a * circle.x + c * circle.y + e;
        const cy = b * circle.x + d * circle.y + f;
        const mx = a * middle[0] + c * middle[1] + e;
        const my = b * middle[0] + d * middle[1] + f;
        images.between(shown.box, zone, 0, (dx, dy) => {
          copies.push({
            piece,
            outline: shown,
            dx,
            dy,
            matrix: [a, b, c, d, e + dx, f + dy],
            cx: cx + dx,
            cy: cy + dy,
            r: circle.r * pose.scale,
            mx: mx + dx,
            my: my + dy,
            seen: 0,
          });
        });
      });
      restore(piece);
      return piece;
    },
    addKin(entry, copies) {
      for (const copy of copies) kin.add(entry, copy);
    },
    remove(piece) {
      pieces.delete(piece);
      for (const copy of piece.copies) {
        kin.remove(piece.body.entry, copy);
        eachBucket(copy, (list) => list.splice(list.indexOf(copy), 1));
      }
    },
  };
}

/** Visits the copies of an outline that come within `reach` of it, one of each mirrored pair; true ends it. */
export function selfCopies(
  images: Images,
  outline: Outline,
  reach: number,
  visit: (copy: Outline, dx: number, dy: number) => boolean,
): boolean {
  return images.operations.some((operation, index) => {
    let copy: Outline | undefined = index === 0 ? outline : undefined;
    const box = index === 0 ? outline.box : transformBounds(outline.box, operation);
    return images.between(box, outline.box, reach, (dx, dy) => {
      if (index === 0 && (dx < 0 || (dx === 0 && dy <= 0))) return false;
      copy ??= transformOutline(outline, operation);
      return visit(copy, dx, dy);
    });
  });
}
