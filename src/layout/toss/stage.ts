import { type Images, imagesOf } from "../../geometry/images.ts";
import { type Arrangement, groundOf } from "../../geometry/lattice.ts";
import type { Outline } from "../../geometry/outline.ts";
import { type Board, createBoard, type Piece, type Pose } from "./board.ts";
import { SLACK } from "./body.ts";
import type { Grid } from "./distance-map.ts";
import {
  clearField,
  clearPatch,
  createField,
  type Field,
  gridOver,
  type Patch,
  paint,
  patchAround,
} from "./field.ts";
import type { Band, SizeClass } from "./plan.ts";
import type { Ground, Terrain } from "./terrain.ts";

/** Most cells of a field: beyond, cells grow. */
const MOST_CELLS = 1_500_000;

/** A packing under way: pieces, room left, and how many of each entry. */
export interface Stage {
  readonly arrangement: Arrangement;
  readonly images: Images;
  readonly board: Board;
  readonly field: Field;
  /**
   * Room (µm) from each point of the field's grid to what lies on the ground already or is forbidden, with the gap or
   * the edge taken off, and what those that stand want beyond what any piece does; undefined when the ground is bare.
   */
  readonly room: Float32Array | undefined;
  /** Least distance of flattened outlines (µm): the gap and what flattening and rounding may take of it. */
  readonly gap: number;
  /** Largest radius of any piece (µm). */
  readonly radius: number;
  /** How far the middle of any piece's ink may lie from its centre (µm). */
  readonly sway: number;
  /** Pieces of each entry. */
  readonly used: number[];
  /** Pieces of each band. */
  readonly placed: Map<Band, number>;
  /** Area of all pieces (µm²). */
  area: number;
}

/**
 * An empty stage that the given classes can be packed on, with `gap` µm between drawn outlines. What lies on the
 * ground already is part of the board and of the field's ground, and of nothing that is moved or counted.
 */
export function createStage(
  arrangement: Arrangement,
  classes: readonly SizeClass[],
  entries: number,
  gap: number,
  terrain?: Terrain,
): Stage {
  let [reach, radius, sway, least, widest, extra] = [0, 0, 0, Infinity, 0, 0];
  for (const band of classes.flat())
    for (const body of band.bodies) {
      reach = Math.max(reach, body.reach * band.high);
      radius = Math.max(radius, body.circle.r * band.high);
      const { circle, middle } = body;
      const [ox, oy] = [middle[0] - circle.x, middle[1] - circle.y];
      sway = Math.max(sway, Math.sqrt(ox * ox + oy * oy) * band.high);
      least = Math.min(least, body.circle.r * band.low);
      widest = Math.max(widest, body.spots[2]! * band.high);
      extra = Math.max(extra, body.extra);
    }
  const { width, height } = arrangement.unit;
  const around = (margin: number): Float64Array =>
    Float64Array.from([-margin, -margin, width + margin, height + margin]);
  const whole = gap + SLACK;
  const area = (width + 2 * reach) * (height + 2 * reach);
  const cell = Math.ceil(Math.max(least / 3.3, Math.sqrt(area / MOST_CELLS)));
  const cap = widest + whole + extra + 2 * cell;
  const images = imagesOf(arrangement);
  const zone = around(2 * reach + Math.max(cap, whole + extra));
  const bucket = Math.max(radius, 4 * least);
  const grid = gridOver(around(reach), cell);
  const ground = terrain?.over(zone, grid, bucket);
  const lower = [
    ...(ground?.standing ?? []).map((one) => ({ distances: one.distances, values: -one.extra, plain: 0 })),
    // The field is read with the gap taken off, and what a motif wants itself, which the edge of the ground does not ask for.
    ...(ground?.free ? [{ distances: ground.free, values: whole, plain: whole + extra }] : []),
  ];
  return {
    arrangement,
    images,
    board: createBoard(images, zone, bucket, extra, ground?.obstacles),
    field: createField(images, grid, cap, whole, extra, lower),
    room: roomOver(grid, arrangement, ground, whole, extra),
    gap: whole,
    radius,
    sway,
    used: new Array<number>(entries).fill(0),
    placed: new Map(classes.flat().map((band): [Band, number] => [band, 0])),
    area: 0,
  };
}

/** See {@link Stage.room}. */
function roomOver(
  grid: Grid,
  { border, unit }: Arrangement,
  ground: Ground | undefined,
  gap: number,
  most: number,
): Float32Array | undefined {
  if (!ground && !border) return undefined;
  const { columns, rows, cell, top } = grid;
  const room = new Float32Array(columns * rows).fill(Infinity);
  for (let at = 0; at < room.length; at++) {
    const y = top + Math.floor(at / columns) * cell;
    if (border) room[at] = Math.min(y, unit.height - y) - border.margin - SLACK;
    for (const { distances, extra } of ground?.standing ?? [])
      room[at] = Math.min(room[at]!, distances[at]! - Math.max(0, extra - most) - gap);
    if (ground?.free) room[at] = Math.min(room[at]!, ground.free[at]!);
  }
  return room;
}

/** Sets a piece down. */
export function setDown(stage: Stage, pose: Pose, outline: Outline): Piece {
  const piece = stage.board.add(pose, outline);
  for (const copy of piece.copies) paint(stage.field, copy);
  tally(stage, piece, 1);
  return piece;
}

/** More pieces than this share of all that moved: the field is painted anew as a whole. */
const MANY = 0.1;

/**
 * Takes pieces up and sets others down in one go, if each pose is clear once those before it are down, which `outlineAt` says
 * by giving its outline. Returns whether that went; otherwise nothing changes.
 */
export function exchange(
  stage: Stage,
  gone: readonly Piece[],
  poses: readonly Pose[],
  outlineAt: (pose: Pose) => Outline | undefined,
): boolean {
  const { board, field } = stage;
  for (const piece of gone) {
    board.remove(piece);
    tally(stage, piece, -1);
  }
  const fresh: Piece[] = [];
  for (const pose of poses) {
    const outline = outlineAt(pose);
    if (!outline) {
      for (const piece of fresh) {
        board.remove(piece);
        tally(stage, piece, -1);
      }
      for (const piece of gone) {
        board.restore(piece);
        tally(stage, piece, 1);
      }
      return false;
    }
    const piece = board.add(pose, outline);
    tally(stage, piece, 1);
    fresh.push(piece);
  }
  if (gone.length > MANY * board.pieces.size) {
    clearField(field);
    for (const { copies } of board.pieces) for (const copy of copies) paint(field, copy);
  } else {
    for (const piece of gone) repaintAround(stage, piece);
    for (const { copies } of fresh) for (const copy of copies) paint(field, copy);
  }
  return true;
}

function repaintAround(stage: Stage, { copies, body }: Piece): void {
  const { field } = stage;
  for (const copy of copies)
    repaint(stage, patchAround(field, copy.cx, copy.cy, copy.r + field.cap + body.extra));
}

/** Keeps the counts in step with a piece that came (1) or went (-1). */
function tally(stage: Stage, piece: Piece, sign: 1 | -1): void {
  stage.used[piece.body.entry]! += sign;
  stage.placed.set(piece.band, stage.placed.get(piece.band)! + sign);
  stage.area += sign * piece.body.area * piece.scale * piece.scale;
}

function repaint({ board, field }: Stage, patch: Patch): void {
  if (patch.toColumn < patch.fromColumn || patch.toRow < patch.fromRow) return;
  clearPatch(field, patch);
  const { cell, left, top, cap, extra } = field;
  const reach = cap + extra;
  board.search(
    left + patch.fromColumn * cell - reach,
    top + patch.fromRow * cell - reach,
    left + patch.toColumn * cell + reach,
    top + patch.toRow * cell + reach,
    (copy) => {
      paint(field, copy, patch);
      return false;
    },
  );
}

/** Mean distance (µm) of so many motifs, their copies by the operations among them: the side of the square that each has to itself. */
export const meanDistance = (arrangement: Arrangement, number: number): number =>
  Math.sqrt(groundOf(arrangement) / number);
