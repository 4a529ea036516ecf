import type { Path } from "../../geometry/path.ts";
import { pen } from "../../geometry/pen.ts";
import type { Outline } from "./outline.ts";

/** An outline in mm as a path in whole µm. */
export function toPath(outline: Outline): Path {
  const to = pen();
  for (const { points: p } of outline) {
    to.moveTo(p[0]!, p[1]!);
    for (let i = 2; i + 5 < p.length; i += 6)
      to.curveTo(p[i]!, p[i + 1]!, p[i + 2]!, p[i + 3]!, p[i + 4]!, p[i + 5]!);
    to.close();
  }
  return to.path();
}
