import { badInput } from "../../errors/catalogue.ts";
import { isPath, type Path } from "../../geometry/path.ts";
import { readPathData } from "../../geometry/path-data.ts";
import type { Run } from "../../geometry/sketch.ts";
import { cosTurns, sinTurns } from "../../seed/trigonometry.ts";
import { LONGEST_MM } from "../../units/length.ts";
import { type Cubic, measure } from "./arc-length.ts";

/** A baseline that letters are set along, in mm. */
export interface Track {
  readonly length: number;
  /** Whether its end is its start. */
  readonly closed: boolean;
  /** The point `s` mm along it. On a closed track `s` may be below 0 and above the length. */
  readonly at: (s: number) => readonly [x: number, y: number];
  /** Which way it runs around `s`, as seen by what covers `half` mm to either side: a vector of length 1. */
  readonly along: (s: number, half: number) => readonly [x: number, y: number];
}

const TAU = 6.283185307179586;

/**
 * A circle about (0, 0). On the outside letters run clockwise and their tops point outwards; on the inside they run
 * the other way round and their tops point to the centre. `start` is where s = 0 lies, clockwise from the top.
 */
export function circleTrack(radius: number, side: "outside" | "inside", start: number): Track {
  const way = side === "outside" ? 1 : -1;
  const turn = (s: number): number => start + (way * s) / (TAU * radius);
  return {
    length: TAU * radius,
    closed: true,
    at: (s) => [radius * sinTurns(turn(s)), -radius * cosTurns(turn(s))],
    along: (s) => [way * cosTurns(turn(s)), way * sinTurns(turn(s))],
  };
}

/** Most characters of path data that lettering follows. */
const MOST_DATA = 50_000;

/**
 * A path that letters follow: SVG path data in mm, or a path from `pen()`, which is always closed.
 * @throws SprigwrightError `bad-path-data`, `bad-lettering` (no length, several pieces, out of reach)
 */
export function pathTrack(given: string | Path, where: string): Track {
  const [run, ...others] = typeof given === "string" ? readRuns(given, where) : runsOfPath(given, where);
  if (!run) throw badTrack(where, "there is no line in it", 'give a line, such as "M0 0C20 -15 40 15 60 0"');
  if (others.length > 0)
    throw badTrack(
      where,
      `it has ${others.length + 1} pieces`,
      "give one unbroken line; set a lettering for each",
    );
  const measured = measure(cubicsOf(run));
  const { length } = measured;
  if (!(length > 0)) throw badTrack(where, "it has no length", "give a line that goes somewhere");
  const at: Track["at"] = run.closed ? (s) => measured.at(s - length * Math.floor(s / length)) : measured.at;
  return { length, closed: run.closed, at, along: (s, half) => chord(at, s, half, length) };
}

/** The chord's direction; where it has none (the line turns back there), that of ever shorter ones. */
function chord(at: Track["at"], s: number, half: number, length: number): readonly [number, number] {
  for (let reach = Math.max(half, length * 1e-6), k = 0; k < 20; reach /= 2, k++) {
    const [[x0, y0], [x1, y1]] = [at(s - reach), at(s + reach)];
    const [dx, dy] = [x1 - x0, y1 - y0];
    const size = Math.sqrt(dx * dx + dy * dy);
    if (size > 0.2 * reach) return [dx / size, dy / size];
  }
  return [1, 0];
}

function readRuns(data: string, where: string): readonly Run[] {
  if (data.length > MOST_DATA)
    throw badTrack(where, `the path data has ${data.length} characters`, `give at most ${MOST_DATA}`);
  const runs = readPathData(data, where).filter(({ points }) => points.length > 2);
  for (const { points } of runs)
    if (!points.every((v) => Math.abs(v) <= LONGEST_MM))
      throw badTrack(where, "it leaves the plane that is drawn on", `keep within ${LONGEST_MM} mm of 0, 0`);
  return runs;
}

function runsOfPath(path: Path, where: string): readonly Run[] {
  if (!isPath(path))
    throw badTrack(
      where,
      "it is neither path data nor a path",
      "give SVG path data in mm, or a path from pen()",
    );
  let from = 0;
  return path.contours.map((curves) => {
    const points = Array.from(path.points.subarray(from, from + 6 * curves), (um) => um / 1000);
    from += 6 * curves;
    return { points: [...points, points[0]!, points[1]!], closed: true };
  });
}

/** A run's cubics; a closed one goes back to its start. */
function cubicsOf({ points: p, closed }: Run): Cubic[] {
  const cubics: Cubic[] = [];
  for (let i = 0; i + 7 < p.length; i += 6) cubics.push(p.slice(i, i + 8) as unknown as Cubic);
  const [x0, y0, x, y] = [p[0]!, p[1]!, p[p.length - 2]!, p[p.length - 1]!];
  if (closed && (x !== x0 || y !== y0)) cubics.push([x, y, x, y, x0, y0, x0, y0]);
  return cubics;
}

const badTrack = (where: string, what: string, fix: string): Error =>
  badInput("bad-lettering", where, what, fix);
