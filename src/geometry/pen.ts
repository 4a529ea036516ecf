import { badShape, shown } from "../errors/catalogue.ts";
import { LONGEST_MM, mmToUm } from "../units/length.ts";
import type { Path } from "./path.ts";

/**
 * Draws closed contours in millimetres, y downwards; every coordinate is rounded to a whole µm.
 * Every method throws SprigwrightError `bad-shape` for a coordinate that is not a finite number within 100 m.
 */
export interface Pen {
  /** Starts a contour at (x, y); one that is open is closed first. */
  moveTo(x: number, y: number): Pen;
  /** A straight side to (x, y). */
  lineTo(x: number, y: number): Pen;
  /** A cubic Bézier with controls (x1, y1) and (x2, y2) to (x, y). */
  curveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): Pen;
  /** Closes the contour, with a straight side if it is not back at its start. */
  close(): Pen;
  /** What was drawn. */
  path(): Path;
}

/** A fresh pen. */
export function pen(): Pen {
  const points: number[] = [];
  const contours: number[] = [];
  let start = 0; // index of the open contour's first number
  let curves = 0;
  let [x0, y0] = [0, 0];
  let open = false;

  const um = (mm: number): number => {
    if (!Number.isFinite(mm) || Math.abs(mm) > LONGEST_MM)
      throw badShape(
        "pen",
        `a coordinate is ${shown(mm)}, not a number of mm from -${LONGEST_MM} to ${LONGEST_MM}`,
      );
    return mmToUm(mm);
  };
  const side = (x1: number, y1: number, x2: number, y2: number, x: number, y: number): void => {
    if (!open) throw badShape("pen", "a side was drawn before moveTo");
    if (x1 === x0 && y1 === y0 && x2 === x0 && y2 === y0 && x === x0 && y === y0) return;
    points.push(x0, y0, x1, y1, x2, y2);
    [x0, y0] = [x, y];
    curves++;
  };
  const line = (x: number, y: number): void => {
    if (!open || x !== x0 || y !== y0) side(x0, y0, x, y, x, y);
  };
  const self: Pen = {
    moveTo(x, y) {
      self.close();
      start = points.length;
      [x0, y0] = [um(x), um(y)];
      open = true;
      return self;
    },
    lineTo(x, y) {
      line(um(x), um(y));
      return self;
    },
    curveTo(x1, y1, x2, y2, x, y) {
      side(um(x1), um(y1), um(x2), um(y2), um(x), um(y));
      return self;
    },
    close() {
      if (open && curves > 0) {
        line(points[start]!, points[start + 1]!);
        contours.push(curves);
      }
      curves = 0;
      open = false;
      return self;
    },
    path() {
      self.close();
      return { points: Int32Array.from(points), contours: contours.slice() };
    },
  };
  return self;
}
