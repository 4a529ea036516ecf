import { badShape, shown } from "../../errors/catalogue.ts";
import { compose, type Matrix, placing, transformPath } from "../../geometry/matrix.ts";
import type { Path } from "../../geometry/path.ts";
import { mmToUm } from "../../units/length.ts";
import { checkNumbers, checkOptions } from "./given.ts";
import { listed, type Paths } from "./offset.ts";

/** How a rosette is turned and where its middle is. */
export interface RosetteOptions {
  /** Middle of the rosette, in mm. Default: the origin. */
  readonly about?: readonly [x: number, y: number];
  /** By how much the first copy is turned, clockwise in turns. Default 0. */
  readonly turn?: number;
  /** Whether every other copy is a mirror image. Default false; `count` must then be even. */
  readonly mirror?: boolean;
}

/**
 * `count` copies of what was drawn, turned evenly about a middle: petals of a flower, arms of a star.
 * One whole drawing per copy; copies that overlap are united when they fill one part.
 * @throws SprigwrightError `bad-shape`: a count that is not a whole number from 1 to 360
 */
export function rosette(paths: Paths, count: number, options: RosetteOptions = {}): Path[] {
  checkOptions("rosette", options, ["about", "turn", "mirror"]);
  const { about = [0, 0], turn = 0, mirror = false } = options;
  checkNumbers("rosette", { turn, x: about[0], y: about[1] });
  if (!Number.isInteger(count) || count < 1 || count > 360 || (mirror && count % 2 === 1))
    throw badShape("shapes > rosette", `${shown(count)} copies${mirror ? " with every other mirrored" : ""}`);
  const [x, y] = [mmToUm(about[0]), mmToUm(about[1])];
  const back: Matrix = [1, 0, 0, 1, -x, -y];
  return Array.from({ length: count }, (_, k) =>
    compose(back, placing(x, y, turn + k / count, 1, mirror && k % 2 === 1)),
  ).flatMap((matrix) => listed(paths).map((path) => transformPath(path, matrix)));
}
