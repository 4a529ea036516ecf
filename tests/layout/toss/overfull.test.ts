import { expect, test } from "vitest";
import { bodiesOf } from "../../../src/layout/toss/body.ts";
import { jobFor } from "../../../src/layout/toss/job.ts";
import type { TossOptions } from "../../../src/layout/toss/options.ts";
import { refuseOverfull } from "../../../src/layout/toss/overfull.ts";
import { packTossed } from "../../../src/layout/toss/pack.ts";
import { planClasses } from "../../../src/layout/toss/plan.ts";
import { disc, entriesOf, leaf, options, repeats, tools } from "./fixtures.ts";

const refusing = (given: Partial<TossOptions>, gap: number, side: number): void => {
  const all = options(given);
  const job = jobFor(
    all,
    planClasses(all.entries, bodiesOf(all.entries)),
    tools("s", repeats.straight(side, side)),
  );
  refuseOverfull(job, gap);
};
const dots = entriesOf(disc(0.5));

test("specks that would fill a wide ground by the hundred thousand are refused at once, whatever the density", async () => {
  for (const density of ["airy", "even", "packed"] as const) {
    const far = packTossed(
      options({ gap: 0, density, entries: dots }),
      tools("s", repeats.straight(1200, 1200)),
    );
    await expect(far).rejects.toMatchObject({ code: "too-many-motifs", where: "toss" });
  }
});

test("nothing is refused that does not take more than 100 000 even if discs lie as densely as at random", () => {
  // Equal discs laid at random one after the other cover 0.547 of a plane (random sequential adsorption, Feder 1980, from memory).
  const side = (count: number): number => Math.sqrt((count * Math.PI * 0.25) / 0.547);
  expect(() => refusing({ entries: dots }, 0, side(100_000))).not.toThrow();
  expect(() => refusing({ entries: dots }, 0, side(200_000))).toThrow("more than 140 000 motifs");
  expect(() => refusing({ entries: dots }, 1000, side(200_000))).not.toThrow();
  // Few specks among as many large ones.
  expect(() => refusing({ entries: entriesOf(disc(0.5), leaf()) }, 0, side(200_000))).not.toThrow();
});

test("where there is little ground, or a number is given, the size of the repeat alone refuses nothing", async () => {
  const few = "M10 10h4v4h-4Z";
  expect(() => refusing({ entries: dots, inside: few }, 0, 1000)).not.toThrow();
  expect(() => refusing({ entries: dots, inside: "M10 10h900v900h-900Z" }, 0, 1000)).toThrow(
    /more than 4[01]0 000 motifs/,
  );
  expect(() => refusing({ entries: dots, outside: few }, 0, 1000)).toThrow("more than 500 000 motifs");
  const placed = await packTossed(
    options({ gap: 0, entries: dots, count: 3 }),
    tools("s", repeats.straight(1000, 1000)),
  );
  expect(placed).toHaveLength(3);
});
