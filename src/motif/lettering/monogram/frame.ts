import { joinPaths, type Path } from "../../../geometry/path.ts";
import { pen } from "../../../geometry/pen.ts";
import { ellipse, holed } from "../../../geometry/shapes.ts";

/** What stands around a monogram. */
export type Frame = "none" | "ring" | "double-ring" | "lozenge";

/** Air between letters and frame, in heights of capitals. */
const AIR = 0.14;

/** The inner line of a double ring against the outer, and the air between them, in widths of the outer. */
const [INNER, BETWEEN] = [0.4, 1];

/** The smallest frame of its kind around some letters, in heights of capitals. */
export interface Framing {
  /** Its middle. */
  readonly x: number;
  readonly y: number;
  /** Half of the width of everything, once lines of `line` are drawn. */
  readonly reach: (line: number) => number;
  /** Drawn about (0, 0), `unit` mm for a height. */
  readonly draw: (line: number, unit: number) => Path;
}

/** A frame that keeps clear of points, given as x, y, x, y … */
export function framing(kind: Exclude<Frame, "none">, points: readonly number[]): Framing {
  return kind === "lozenge" ? lozenge(points) : rings(kind, points);
}

/** A square on its corner: how far it reaches is found along its sides, x + y and x - y. */
function lozenge(points: readonly number[]): Framing {
  const range = (sign: 1 | -1): readonly [number, number] => {
    let [least, most] = [Infinity, -Infinity];
    for (let i = 0; i < points.length; i += 2) {
      least = Math.min(least, points[i]! + sign * points[i + 1]!);
      most = Math.max(most, points[i]! + sign * points[i + 1]!);
    }
    return [least, most];
  };
  const [[a, b], [c, d]] = [range(1), range(-1)];
  const inner = Math.max(b - a, d - c) / 2 + AIR * Math.SQRT2;
  return {
    x: (a + b + c + d) / 4,
    y: (a + b - c - d) / 4,
    reach: (line) => inner + line * Math.SQRT2,
    draw: (line, unit) => holed(diamond((inner + line * Math.SQRT2) * unit), diamond(inner * unit)),
  };
}

const diamond = (r: number): Path =>
  pen().moveTo(0, -r).lineTo(r, 0).lineTo(0, r).lineTo(-r, 0).close().path();

function rings(kind: "ring" | "double-ring", points: readonly number[]): Framing {
  const { x, y, r } = smallestCircle(points);
  const inner = r + AIR;
  const ring = (radius: number, line: number, unit: number): Path =>
    holed(ellipse(0, 0, (radius + line) * unit), ellipse(0, 0, radius * unit));
  if (kind === "ring")
    return { x, y, reach: (line) => inner + line, draw: (line, unit) => ring(inner, line, unit) };
  return {
    x,
    y,
    reach: (line) => inner + (INNER + BETWEEN + 1) * line,
    draw: (line, unit) =>
      joinPaths([ring(inner, INNER * line, unit), ring(inner + (INNER + BETWEEN) * line, line, unit)]),
  };
}

/** Steps towards the middle of the smallest circle: what is left to go is below the first step's length / STEPS. */
const STEPS = 600;

/** The smallest circle around points, nearly: ever smaller steps to the farthest (Bădoiu and Clarkson, 2003). */
function smallestCircle(points: readonly number[]): {
  readonly x: number;
  readonly y: number;
  readonly r: number;
} {
  let [x, y, r] = [points[0]!, points[1]!, 0];
  for (let step = 1; step <= STEPS + 1; step++) {
    let [far, most] = [0, -1];
    for (let i = 0; i < points.length; i += 2) {
      const [dx, dy] = [points[i]! - x, points[i + 1]! - y];
      if (dx * dx + dy * dy > most) [far, most] = [i, dx * dx + dy * dy];
    }
    r = Math.sqrt(most);
    if (step > STEPS) break;
    x += (points[far]! - x) / (step + 1);
    y += (points[far + 1]! - y) / (step + 1);
  }
  return { x, y, r };
}
