import type { Path } from "../../geometry/path.ts";
import { egg } from "../../geometry/shapes.ts";
import type { MotifTools } from "../motif.ts";
import { heading } from "./vector.ts";

/**
 * A circle about (x, y), in mm, as a hand would draw it: it starts anywhere, and each quarter of it reaches
 * up to `spread` (a share) farther or less far. Exactly the circle when nothing strays.
 */
export function dab(x: number, y: number, r: number, tools: MotifTools, spread: number): Path {
  const up = heading(tools.vary === 0 ? 0 : tools.random.next());
  const reach = (): number => tools.stray(r, spread);
  return egg(x, y, [reach(), reach(), reach(), reach()], up);
}
