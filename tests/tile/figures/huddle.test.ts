import { describe, expect, it } from "vitest";
import { createRandom } from "../../../src/seed/random.ts";
import { huddleOf } from "../../../src/tile/figures/huddle.ts";
import { disc } from "../../layout/toss/fixtures.ts";
import { at, motifOf, sceneFor, straight, tileOf } from "./given.ts";

const SIDE = 12;
const names = ["buoy", "gull", "knot", "net"];

/** A field of 12 x 12 discs in hexagonal order, 10 mm apart, a dot of 2 mm between every two of a row; kinds as told. */
function dealt(kind: (column: number, row: number) => number): { motifs: string[]; chance: number } {
  const motifs = [...names.map((name) => motifOf(name, disc(4))), motifOf("dot", disc(0.5))];
  const places = Array.from({ length: SIDE * SIDE }, (_, i) => {
    const [column, row] = [i % SIDE, Math.floor(i / SIDE)];
    const x = column * 10 + (row % 2) * 5;
    return [
      at(x, row * 9, { motif: kind(column, row), id: `${column}-${row}` }),
      at(x + 5, row * 9, { motif: 4, id: `dot ${column}-${row}` }),
    ];
  }).flat();
  const { placements, chance } = huddleOf(sceneFor(motifs, places, straight(SIDE * 10, SIDE * 9)));
  return { motifs: placements.map((i) => places[i]!.id), chance };
}

describe("the huddle least likely by chance", () => {
  it("is none where no two neighbours are of a kind", () => {
    const stripes = dealt((column, row) => (column + 2 * (row % 2)) % 4);
    expect(stripes.chance).toBeGreaterThan(0.9);
  });

  it("is found where it is dense, with dots between, and is all of it", () => {
    // A place and the six around it, and a few more of that kind that keep apart.
    const patch = ["5-4", "6-4", "7-4", "5-5", "6-5", "5-3", "6-3"];
    const { motifs, chance } = dealt((column, row) =>
      patch.includes(`${column}-${row}`) || (row > 7 && row % 2 === 0 && column % 3 === 0)
        ? 0
        : 1 + ((column + row) % 3),
    );
    expect([...motifs].sort()).toEqual([...patch].sort());
    expect(chance).toBeLessThan(0.05);
  });

  it("is one across the edge of the block as well", () => {
    const patch = ["0-0", "11-0", "1-0", "0-11", "11-11", "0-1", "11-1"];
    const { motifs, chance } = dealt((column, row) =>
      patch.includes(`${column}-${row}`) ? 0 : 1 + ((column + row) % 3),
    );
    expect([...motifs].sort()).toEqual([...patch].sort());
    expect(chance).toBeLessThan(0.05);
  });

  it("is as likely as can be when kinds are dealt by chance: one in twenty fields has a chance below a twentieth", () => {
    const random = createRandom("dealt");
    const fields = 60;
    let rare = 0;
    for (let k = 0; k < fields; k++) if (dealt(() => random.below(4)).chance < 0.05) rare++;
    // Binomial: more than 8 of 60 at 1 in 20 has a chance of about 1 in 200.
    expect(rare).toBeLessThanOrEqual(8);
  });

  it("does not speak of a lone kind, nor of one that is larger than all others", () => {
    expect(dealt(() => 0)).toMatchObject({ chance: 1 });
    expect(tileOf([motifOf("one", disc(3))], [at(5, 5)], straight(20, 20)).figures.huddle).toEqual({
      motifs: [],
      chance: 1,
    });
  });
});
