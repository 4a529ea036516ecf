import type { Path } from "../../geometry/path.ts";
import { egg } from "../../geometry/shapes.ts";
import { integer, length, number, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { belt } from "../builders/belt.ts";
import { bent, type Chain, toPath } from "../builders/chain.ts";
import { type Fan, fan, fanBand, fanWheels } from "../builders/fan.ts";
import { FINE, stroke } from "../builders/stroke.ts";
import { sway } from "../builders/sway.ts";
import { mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";
import type { MotifTools } from "../motif.ts";

const params: {
  /** Width; also how far apart columns are when shells are set edge to edge. 6 to 250 mm; default 26 mm. */
  readonly size: LengthParam;
  /** How far apart rows are when shells are set edge to edge, as a share of the size: more is taller. 0.34 to 0.5; default 0.48. */
  readonly rise: NumberParam;
  /** Ribs from the hinge to the rim; the rim has one lobe more. 4 to 14; default 8. */
  readonly ribs: NumberParam;
  /** How broad the band along the rim is; 0 for none. 0 to 1; default 0.5. */
  readonly rim: NumberParam;
} = {
  size: length({
    about: "Width; also how far apart columns are when shells are set edge to edge.",
    min: 6,
    max: 250,
    default: 26,
  }),
  rise: number({
    about: "How far apart rows are when shells are set edge to edge, as a share of the size: more is taller.",
    min: 0.34,
    max: 0.5,
    default: 0.48,
  }),
  ribs: integer({
    about: "Ribs from the hinge to the rim; the rim has one lobe more.",
    min: 4,
    max: 14,
    default: 8,
  }),
  rim: share({ about: "How broad the band along the rim is; 0 for none.", default: 0.5 }),
};

/**
 * A scallop shell, hinge down. The origin is the middle of its box.
 *
 * It is also the scale of a scale pattern: set shells `size` apart in a row, rows `rise × size` apart, and
 * every other row half a `size` along. Each then nestles between the two below it and touches its
 * neighbours without overlapping them (with `vary: 0`). Slightly larger distances leave a line of ground.
 */
export const scallop: MotifFactory<typeof params, "scallop" | "rib" | "rim"> = defineMotif({
  name: "sprigwright/scallop",
  about: "A scallop shell with ribs and a rim; set edge to edge, it makes a scale pattern.",
  params,
  parts: ["scallop", "rib", "rim"],
  draw(p, tools) {
    const size = tools.stray(p.size, 0.06);
    const row = size * tools.stray(p.rise, 0.04);
    const shape = fan(size, row, p.ribs + 1);
    const lean = sway(tools, size * 0.035);
    const set = (chain: Chain): number[] => bent(chain, -row, row, lean);
    const { x, y, r } = shape.hinge;
    const rim = [egg(x, y - r * 0.25, [r * 1.5, r * 0.74, r * 0.78, r * 0.74])];
    if (p.rim > 0) {
      const outer = tools.stray(0.91, 0.012);
      const inner = outer - Math.max((FINE * 2) / size, p.rim * 0.2);
      rim.push(toPath(set(belt(fanBand(shape, row, outer, inner)))));
    }
    return { scallop: toPath(set(belt(fanWheels(shape)))), rib: ribs(shape, set, tools), rim };
  },
});

/** Ribs that fan out from the hinge towards the hollows between lobes, broader as they go. */
function ribs({ lobes, hinge, size }: Fan, set: (chain: Chain) => number[], { stray }: MotifTools): Path[] {
  const y = hinge.y - size * 0.06;
  const room = (1.6 * size) / lobes.length;
  const thick = Math.max(FINE, Math.min(size * 0.03, room * 0.3));
  return lobes.slice(1).map((lobe, k) => {
    const before = lobes[k]!;
    const [gx, gy] = [(lobe.x + before.x) / 2, (lobe.y + before.y) / 2];
    const to = stray(0.84, 0.02);
    const [ex, ey] = [gx * to, mix(y, gy, to)];
    const spine = [gx * 0.05, y, gx * 0.12, mix(y, ey, 0.34), ex * 0.55, mix(y, ey, 0.62), ex, ey];
    return stroke(set(spine), [FINE, thick]);
  });
}
