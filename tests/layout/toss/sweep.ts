// npm run sweep:packing [seeds]: tosses over many seeds, five lattices and every way of asking, judged by jsts. Prints one
// line for each lattice and way; fails when any two motifs come under the gap, or a toss places nothing.
import type { Arrangement } from "../../../src/geometry/lattice.ts";
import { halfDrop, mirror, planeGroup, type RepeatUse, skew, straight } from "../../../src/index.ts";
import { packTossed, type TossOptions } from "../../../src/layout/toss/pack.ts";
import { definitionOf } from "../../../src/params/use.ts";
import type { RepeatPiece } from "../../../src/repeat/repeat.ts";
import { smallestClearance } from "./clearance.ts";
import { mix, options, tools } from "./fixtures.ts";

const GAP = 1.5;
/** What distances in floating point may be off (mm). */
const HAIR = 1e-6;

const arranged = (repeat: RepeatUse): Arrangement =>
  definitionOf<RepeatPiece>(repeat, "sweep").arrange(repeat.params as never);

const lattices: Readonly<Record<string, Arrangement>> = {
  straight: arranged(straight({ width: 70, height: 60 })),
  "half-drop": arranged(halfDrop({ width: 70, height: 60 })),
  skew: arranged(skew({ a: [70, 25], b: [-10, 60] })),
  mirror: arranged(mirror({ width: 70, height: 60 })),
  p6: arranged(planeGroup({ group: "p6", width: 110 })),
};

const ways: readonly Partial<TossOptions>[] = [
  { density: "airy" },
  { density: "even", flip: true },
  { density: "packed" },
  { count: 7 },
  { coverage: 0.3, direction: "two-way" },
];

const entries = mix([1 / 4, 0.7]);
const outlines = entries.map(({ drawings }) => drawings[0]!.motif.outline);
const seeds = Number(process.argv[2] ?? 40);
let failed = 0;
for (const [name, arrangement] of Object.entries(lattices))
  for (const way of ways) {
    let [least, motifs, under] = [Infinity, 0, 0];
    for (let seed = 1; seed <= seeds; seed++) {
      const placements = await packTossed(
        options({ ...way, entries, gap: GAP }),
        tools(`sweep-${seed}`, arrangement),
      );
      const { distance } = smallestClearance(placements, outlines, arrangement, GAP + 1);
      least = Math.min(least, distance);
      motifs += placements.length;
      if (distance < GAP - HAIR || placements.length === 0) under++;
    }
    if (under > 0) failed++;
    console.log(
      `${under === 0 ? "holds" : "FAILS"}  ${name.padEnd(10)} ${JSON.stringify(way).padEnd(42)} ${seeds} seeds, ` +
        `${motifs} motifs, ${under} tosses under the gap of ${GAP} mm, least ${least.toFixed(4)} mm`,
    );
  }
if (failed > 0) throw new Error(`${failed} ways of tossing do not hold`);
