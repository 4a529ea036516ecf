import { badInput } from "../../../errors/catalogue.ts";
import { flatten, type Ring } from "../../../geometry/flatten.ts";
import type { Path } from "../../../geometry/path.ts";
import { readPathData } from "../../../geometry/path-data.ts";
import { pathOfRuns } from "../../../geometry/path-of-runs.ts";
import { type Runs, transformRuns } from "../../../geometry/sketch.ts";
import { extentOf } from "../../artwork/extent.ts";
import { PARTS_PER_EM } from "../outline-data.ts";
import { type Arrangement, flanked, interlaced, type Spot } from "./arrange.ts";
import { type Frame, framing } from "./frame.ts";
import { leastCrossings, weave } from "./weave.ts";

/** A monogram to compose; lengths in mm. */
interface Composition {
  readonly letters: readonly string[];
  readonly size: number;
  readonly arrangement: Arrangement;
  readonly overlap: number | undefined;
  readonly drop: number | undefined;
  readonly gap: number | undefined;
  readonly frame: Frame;
  readonly line: number | undefined;
}

/** The gap as a share of the height of capitals, and the frame's line as one of the size, where none is given. */
const [GAP, LINE] = [1 / 36, 1 / 42];

/** Letters and frame about the middle of the frame, or of the letters where there is none, in µm. */
export function compose(given: Composition): { readonly letters: Path[]; readonly frame: Path | undefined } {
  const { size, line = size * LINE } = given;
  const outlines = given.letters.map((letter, i) => inHeights(letter, i));
  const placed = spotsOf(given, outlines).map(({ scale, x, y }, i) =>
    transformRuns(outlines[i]!, [scale, 0, 0, scale, x, y]),
  );
  const { minX, minY, maxX, maxY } = extentOf(placed);
  const points = placed.flatMap((runs) => ringsOf(runs).flatMap((ring) => [...ring]));
  const frame = given.frame === "none" ? undefined : framing(given.frame, points);
  const [x, y] = frame ? [frame.x, frame.y] : [(minX + maxX) / 2, (minY + maxY) / 2];
  // How many mm a height of capitals takes: a frame's line of so many mm takes its share first.
  const width = frame ? 2 * frame.reach(0) : Math.max(maxX - minX, maxY - minY);
  const unit = (size - (frame ? line * (2 * frame.reach(1) - width) : 0)) / width;
  const letters = placed.map((runs) =>
    pathOfRuns(transformRuns(runs, [unit, 0, 0, unit, -x * unit, -y * unit])),
  );
  const gap = given.gap ?? unit * GAP;
  return {
    letters: given.arrangement === "interlaced" ? weave(letters, gap * 1000) : letters,
    frame: frame?.draw(line / unit, unit),
  };
}

function inHeights(letter: string, i: number): Runs {
  const scale = 1 / PARTS_PER_EM;
  const runs = transformRuns(readPathData(letter, `letters[${i}]`), [scale, 0, 0, scale, 0, 0]);
  if (!runs.some(({ points }) => points.length > 2))
    throw badInput("bad-lettering", `letters[${i}]`, "nothing is drawn", "give a letter's outline");
  return runs;
}

function spotsOf(given: Composition, outlines: readonly Runs[]): Spot[] {
  if (given.arrangement !== "interlaced") return flanked(outlines.map(ringsOf));
  const boxes = outlines.map((runs) => extentOf([runs]));
  let best: Spot[] = [];
  let most = -1;
  for (const overlap of given.overlap === undefined ? OVERLAPS : [given.overlap])
    for (const drop of given.drop === undefined ? DROPS : [given.drop]) {
      const spots = interlaced(boxes, overlap, drop);
      const crossings = leastCrossings(letterPaths(outlines, spots), TRIED * GAP * 1000);
      if (crossings >= 2) return spots;
      if (crossings > most) [best, most] = [spots, crossings];
    }
  return best;
}

/** What is tried where nothing is given, until neighbours cross twice: once, and one only lies on the other. */
const [OVERLAPS, DROPS] = [
  [0.45, 0.55, 0.65, 0.75, 0.85, 0.35],
  [0.3, 0.2, 0.4],
];

/** Height of capitals at which it is tried (mm). */
const TRIED = 30;

const letterPaths = (outlines: readonly Runs[], spots: readonly Spot[]): Path[] =>
  outlines.map((runs, i) => {
    const { scale, x, y } = spots[i]!;
    return pathOfRuns(transformRuns(runs, [scale * TRIED, 0, 0, scale * TRIED, x * TRIED, y * TRIED]));
  });

/** Outlines in heights as polygons in heights, to within a two-thousandth. */
function ringsOf(runs: Runs): Ring[] {
  const mm = 100;
  const path = pathOfRuns(transformRuns(runs, [mm, 0, 0, mm, 0, 0]));
  return flatten(path, 50).map((ring) => ring.map((um) => um / (mm * 1000)));
}
