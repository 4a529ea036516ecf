import type { Matrix } from "./matrix.ts";

/** One run of cubic Béziers in the drawing's own units: x, y, then six numbers a curve (two controls, its end). */
export interface Run {
  readonly points: readonly number[];
  /** Whether a stroke joins its end to its start. Filling closes every run. */
  readonly closed: boolean;
}

/** All runs of one drawing. */
export type Runs = readonly Run[];

/** Draws runs; straight sides are curves whose controls lie on their ends. */
export interface Sketch {
  move(x: number, y: number): void;
  line(x: number, y: number): void;
  curve(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void;
  close(): void;
  /** Where the pen is. */
  at(): readonly [x: number, y: number];
  done(): Runs;
}

/** A fresh sketch. */
export function sketch(): Sketch {
  const runs: Run[] = [];
  let points: number[] = [];
  let start: readonly [number, number] = [0, 0];
  let at: readonly [number, number] = [0, 0];
  const finish = (closed: boolean): void => {
    if (points.length > 0) runs.push({ points, closed });
    points = [];
  };
  const self: Sketch = {
    move(x, y) {
      finish(false);
      start = [x, y];
      at = start;
      points.push(x, y);
    },
    line: (x, y) => self.curve(at[0], at[1], x, y, x, y),
    curve(x1, y1, x2, y2, x, y) {
      // After a close, the next side starts where the closed run did.
      if (points.length === 0) self.move(start[0], start[1]);
      points.push(x1, y1, x2, y2, x, y);
      at = [x, y];
    },
    close() {
      finish(true);
      at = start;
    },
    at: () => at,
    done() {
      finish(false);
      return runs;
    },
  };
  return self;
}

/** Runs under a matrix. */
export function transformRuns(runs: Runs, [a, b, c, d, e, f]: Matrix): Runs {
  return runs.map(({ points, closed }) => {
    const moved: number[] = [];
    for (let i = 0; i < points.length; i += 2) {
      const [x, y] = [points[i]!, points[i + 1]!];
      moved.push(a * x + c * y + e, b * x + d * y + f);
    }
    return { points: moved, closed };
  });
}
