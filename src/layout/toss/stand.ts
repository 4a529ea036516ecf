import { isCloser } from "../../geometry/distance.ts";
import type { Bounds, Images } from "../../geometry/images.ts";
import type { Arrangement } from "../../geometry/lattice.ts";
import { type Matrix, placing } from "../../geometry/matrix.ts";
import { transformOutline } from "../../geometry/outline.ts";
import { selfCopies } from "./board.ts";
import { type Body, SLACK } from "./body.ts";
import { inBand } from "./trial.ts";
import type { Turns } from "./turns.ts";

/** What a motif is held against: its own copies, at a gap (µm), in the ways that it may stand. */
export interface Holding {
  readonly arrangement: Arrangement;
  readonly turns: Turns;
  readonly flip: boolean;
  readonly gap: number;
  /** Awaited now and then. */
  readonly breathe: () => Promise<void>;
}

/** Where a motif is tried: the middle of its circle (µm), an index into the turns, mirrored or not. */
export interface Stand {
  readonly x: number;
  readonly y: number;
  readonly turn: number;
  readonly flip: boolean;
}

/** The pose of a drawing that stands somewhere, its origin in whole µm. */
export function poseOfStand(
  { circle }: Body,
  { x, y, turn, flip }: Stand,
  scale: number,
  turns: Turns,
): Matrix {
  const [a, b, c, d] = placing(0, 0, turns.turn[turn]!, scale, flip);
  return [
    a,
    b,
    c,
    d,
    Math.round(x - a * circle.x - c * circle.y),
    Math.round(y - b * circle.x - d * circle.y),
  ];
}

/** Whether a drawing keeps the gap from its own copies somewhere, and may stand there. */
export function standsAt(
  images: Images,
  body: Body,
  stand: Stand,
  scale: number,
  { arrangement, turns, gap }: Holding,
): boolean {
  const limit = gap + SLACK + body.extra;
  const matrix = poseOfStand(body, stand, scale, turns);
  // An operation may not commute with a translation, so with operations a pose has to start in the unit.
  const home = images.operations.length > 1 ? images.home(matrix[4], matrix[5]) : [0, 0];
  if (home?.[0] !== 0 || home[1] !== 0) return false;
  const outline = transformOutline(body.outline, matrix, body.scratch);
  const clash = selfCopies(images, outline, limit, (copy, dx, dy) => isCloser(outline, copy, dx, dy, limit));
  return !clash && standsInBand(outline.box, arrangement);
}

/** Whether a box is low enough for a border, wherever in it it stands. */
const standsInBand = (box: Bounds, arrangement: Arrangement): boolean =>
  inBand(box, arrangement.unit.height / 2 - (box[1]! + box[3]!) / 2, arrangement);
