import type { Path } from "./path.ts";
import { pen } from "./pen.ts";
import type { Runs } from "./sketch.ts";

/** Runs in mm as a path in whole µm, every run closed. */
export function pathOfRuns(runs: Runs): Path {
  const to = pen();
  for (const { points: p } of runs) {
    to.moveTo(p[0]!, p[1]!);
    for (let i = 2; i + 5 < p.length; i += 6)
      to.curveTo(p[i]!, p[i + 1]!, p[i + 2]!, p[i + 3]!, p[i + 4]!, p[i + 5]!);
    to.close();
  }
  return to.path();
}
