import { angle, minus, type Point, size } from "./point.ts";
import { type Span, spanOf } from "./span.ts";
import { SIGHT, wayAt } from "./way.ts";

/**
 * Curves through a run of points, each within `tolerance` pixels of them: as few as it takes, and of a kind. First
 * each takes as much of the run as it can; then the run is divided anew among that many, by how far it goes and turns.
 */
export function fitRun(
  points: readonly Point[],
  first: Point | undefined,
  last: Point | undefined,
  tolerance: number,
): Span[] {
  const greedy: Span[] = [];
  const end = points.length - 1;
  for (let from = 0; from < end; ) {
    const found = longest(points, from, from === 0 ? first : wayAt(points, from), last, tolerance);
    greedy.push(found.span);
    from = found.to;
  }
  return divided(points, first, last, tolerance, greedy.length) ?? greedy;
}

const back = ([x, y]: Point): Point => [-x, -y];

function tried(
  points: readonly Point[],
  from: number,
  to: number,
  first: Point | undefined,
  last: Point | undefined,
  tolerance: number,
  best = false,
): Span | undefined {
  const ending = to === points.length - 1 ? last : back(wayAt(points, to));
  return spanOf(points.slice(from, to + 1), first, ending, tolerance, best);
}

function longest(
  points: readonly Point[],
  from: number,
  first: Point | undefined,
  last: Point | undefined,
  tolerance: number,
): { span: Span; to: number } {
  const end = points.length - 1;
  let good = from + 1;
  let best = tried(points, from, good, undefined, undefined, tolerance)!;
  let bad = end + 1;
  for (let step = 8; good < end; step *= 2) {
    const to = Math.min(end, from + step);
    const span = tried(points, from, to, first, last, tolerance);
    if (!span) {
      bad = to;
      break;
    }
    [good, best] = [to, span];
  }
  while (bad - good > 1) {
    const to = (good + bad) >> 1;
    const span = tried(points, from, to, first, last, tolerance);
    if (span) [good, best] = [to, span];
    else bad = to;
  }
  return { span: best, to: good };
}

/** The run in `count` curves of like effort, if all of them fit. */
function divided(
  points: readonly Point[],
  first: Point | undefined,
  last: Point | undefined,
  tolerance: number,
  count: number,
): Span[] | undefined {
  const efforts = effortsOf(points);
  const whole = efforts[efforts.length - 1]!;
  const cuts = [0];
  for (let k = 1, i = 0; k < count; k++) {
    while (i < points.length - 1 && efforts[i]! < (whole * k) / count) i++;
    cuts.push(i);
  }
  cuts.push(points.length - 1);
  const spans: Span[] = [];
  for (let k = 0; k < count; k++) {
    const [from, to] = [cuts[k]!, cuts[k + 1]!];
    if (to - from < 2) return undefined;
    const span = tried(points, from, to, from === 0 ? first : wayAt(points, from), last, tolerance, true);
    if (!span) return undefined;
    spans.push(span);
  }
  return spans;
}

/** What a run takes up to each point: its turns in radians, and a little for its length. */
function effortsOf(points: readonly Point[]): number[] {
  const sums = [0];
  for (let i = 1; i < points.length; i++) {
    const far = i > SIGHT && i + SIGHT < points.length;
    const turn = far
      ? angle(minus(points[i]!, points[i - SIGHT]!), minus(points[i + SIGHT]!, points[i]!)) / SIGHT
      : 0;
    sums.push(sums[i - 1]! + Math.abs(turn) + 0.004 * size(minus(points[i]!, points[i - 1]!)));
  }
  return sums;
}
