import type { Bounds } from "../../geometry/images.ts";
import type { Arrangement } from "../../geometry/lattice.ts";
import { transformOutline } from "../../geometry/outline.ts";
import type { Pose } from "./board.ts";
import { type Body, SLACK } from "./body.ts";
import { roomAt } from "./field.ts";
import type { Band } from "./plan.ts";
import type { Stage } from "./stage.ts";
import type { Turns } from "./turns.ts";

/** How much a cell's distance may be off before a disc is turned down, in cells. */
const DOUBT = 0.3;

/**
 * Room to spare (µm, a mean over the body's discs) when its first disc lies on (x, y), turned, scaled and mirrored
 * as asked; -1 when the field has no room for one of them. Says nothing yet about the outline itself.
 */
export function roomToSpare(
  stage: Stage,
  body: Body,
  cosine: number,
  sine: number,
  scale: number,
  flip: boolean,
  x: number,
  y: number,
): number {
  const { field, gap } = stage;
  const { columns, rows } = field;
  const { spots, extra } = body;
  const cos = cosine * scale;
  const sin = sine * scale;
  const a = flip ? -cos : cos;
  const b = flip ? -sin : sin;
  const firstX = spots[0]!;
  const firstY = spots[1]!;
  const need = gap - DOUBT * field.cell;
  const per = 1 / field.cell;
  const shiftX = (x - field.left) * per + 0.5;
  const shiftY = (y - field.top) * per + 0.5;
  let spare = 0;
  for (let i = 0; i < spots.length; i += 3) {
    const dx = spots[i]! - firstX;
    const dy = spots[i + 1]! - firstY;
    const column = Math.floor((a * dx - sin * dy) * per + shiftX);
    const row = Math.floor((b * dx + cos * dy) * per + shiftY);
    if (column < 0 || row < 0 || column >= columns || row >= rows) return -1;
    const over = roomAt(field, row * columns + column, extra) - spots[i + 2]! * scale - need;
    if (over < 0) return -1;
    spare += over;
  }
  return (spare * 3) / spots.length;
}

/** The pose in which the first disc of a body lies on (x, y) to the nearest µm. */
export function poseAt(
  band: Band,
  body: Body,
  turns: Turns,
  turn: number,
  scale: number,
  flip: boolean,
  x: number,
  y: number,
): Pose {
  const cos = turns.cos[turn]! * scale;
  const sin = turns.sin[turn]! * scale;
  const a = flip ? -cos : cos;
  const b = flip ? -sin : sin;
  const e = Math.round(x - a * body.spots[0]! + sin * body.spots[1]!);
  const f = Math.round(y - b * body.spots[0]! - cos * body.spots[1]!);
  return { band, body, x: e, y: f, turn, scale, flip, matrix: [a, b, -sin, cos, e, f] };
}

/**
 * Whether a pose's origin can be brought into the unit and its outline keeps clear of everything; the outline is
 * left in the body's scratch.
 */
export function fits(stage: Stage, pose: Pose): boolean {
  const home = stage.images.home(pose.x, pose.y);
  // An operation may not commute with a translation, so with operations a pose has to start in the unit.
  if (!home || (stage.images.operations.length > 1 && (home[0] !== 0 || home[1] !== 0))) return false;
  const outline = transformOutline(pose.body.outline, pose.matrix, pose.body.scratch);
  return (
    inBand(outline.box, home[1], stage.arrangement) &&
    stage.board.isClear(pose.body, outline, stage.gap) &&
    stage.board.isSelfClear(pose.body, outline, stage.gap)
  );
}

/**
 * Whether a box, moved down by `dy`, keeps clear of the long edges where the repeat is a border. The curve may stray
 * from the flattened outline by half of what the gap is given for it.
 */
export function inBand(box: Bounds, dy: number, { border, unit }: Arrangement): boolean {
  if (!border) return true;
  const margin = border.margin + SLACK / 2;
  return box[1]! + dy >= margin && box[3]! + dy <= unit.height - margin;
}

/** The pose brought into the unit. */
export function atHome(stage: Stage, pose: Pose): Pose {
  const [dx, dy] = stage.images.home(pose.x, pose.y) ?? [0, 0];
  if (dx === 0 && dy === 0) return pose;
  const [a, b, c, d] = pose.matrix;
  const [x, y] = [pose.x + dx, pose.y + dy];
  return { ...pose, x, y, matrix: [a, b, c, d, x, y] };
}
