import { describe, expect, test } from "vitest";
import { isCloser } from "../../../src/geometry/distance.ts";
import type { Arrangement } from "../../../src/geometry/lattice.ts";
import { placing } from "../../../src/geometry/matrix.ts";
import { transformOutline } from "../../../src/geometry/outline.ts";
import { planeGroup } from "../../../src/index.ts";
import type { Placement, Standing } from "../../../src/layout/layout.ts";
import { bodiesOf, SLACK } from "../../../src/layout/toss/body.ts";
import { findClash, type Rules } from "../../../src/layout/toss/check.ts";
import { packTossed } from "../../../src/layout/toss/pack.ts";
import { arrangementOf } from "../../../src/repeat/arrangement.ts";
import { createRandom } from "../../../src/seed/random.ts";
import { disc, mix, options, repeats, tools } from "./fixtures.ts";

const entries = mix([0.2, 0.4]);
const bodies = bodiesOf(entries).flat();
const check = (placements: readonly Placement[], rules: Rules) =>
  findClash(placements, (p) => bodies[p.motif]!, rules);

const at = (id: string, x: number, y: number, motif = 0, scale = 0.3): Placement => ({
  id,
  motif,
  x,
  y,
  turn: 0.13,
  scale,
  flip: false,
});

/** Every placement against every copy of every other, far and wide. */
function byHand(
  placements: readonly Placement[],
  { lattice, operations }: Arrangement,
  limit: number,
): boolean {
  const outlines = placements.map((p) =>
    transformOutline(bodies[p.motif]!.outline, placing(p.x, p.y, p.turn, p.scale, p.flip)),
  );
  return outlines.some((one, i) =>
    outlines.some((two, j) =>
      operations.some((operation, o) => {
        const copy = transformOutline(two, operation);
        for (let m = -4; m <= 4; m++)
          for (let n = -4; n <= 4; n++) {
            if (i === j && o === 0 && m === 0 && n === 0) continue;
            const [dx, dy] = [m * lattice.a[0] + n * lattice.b[0], m * lattice.a[1] + n * lattice.b[1]];
            if (isCloser(one, copy, dx, dy, limit)) return true;
          }
        return false;
      }),
    ),
  );
}

describe("the final check", () => {
  const arrangements: Record<string, Arrangement> = {
    straight: repeats.straight(40, 30),
    "half-drop": repeats["half-drop"](40, 30),
    mirror: repeats.mirror(40, 30),
    p6: arrangementOf(planeGroup({ group: "p6", width: 60 })),
  };
  test.each(Object.entries(arrangements))(
    "finds what comparing all with all finds: %s",
    async (name, arrangement) => {
      const random = createRandom(name);
      const found = { yes: 0, no: 0 };
      for (let k = 0; k < 150; k++) {
        const count = 1 + random.below(4);
        const placements = Array.from({ length: count }, (_, i) =>
          at(
            `1-${i}`,
            random.below(40_000),
            random.below(30_000),
            random.below(5),
            random.between(0.1, 0.35),
          ),
        );
        const clash = await check(placements, { arrangement, gap: 1000 });
        expect(clash !== undefined).toBe(byHand(placements, arrangement, 1000 + SLACK));
        found[clash ? "yes" : "no"]++;
      }
      expect(Math.min(found.yes, found.no)).toBeGreaterThan(15);
    },
  );

  test("looks at 10 000 motifs in about a second, letting others have their turn", async () => {
    const small = repeats.straight(60, 60);
    const list = await packTossed(options({ entries, gap: 0.5 }), tools("many", small));
    const times = Math.ceil(Math.sqrt(10_000 / list.length));
    const many = Array.from({ length: times * times }, (_, k) =>
      list.map((p) => ({
        ...p,
        id: `${p.id}-${k}`,
        x: p.x + 60_000 * (k % times),
        y: p.y + 60_000 * Math.floor(k / times),
      })),
    ).flat();
    expect(many.length).toBeGreaterThan(10_000);
    let breaths = 0;
    const rules = {
      arrangement: repeats.straight(60 * times, 60 * times),
      gap: 500,
      step: () => Promise.resolve(void breaths++),
    };
    const started = performance.now();
    expect(await check(many, rules)).toBeUndefined();
    expect(performance.now() - started).toBeLessThan(5000); // 0.6 s on a quiet machine
    expect(breaths).toBeGreaterThan(10);
    const last = many.at(-1)!;
    const clash = await check([...many.slice(0, -1), { ...last, x: last.x + 900 }], rules);
    expect([clash!.first, clash!.second]).toContain(last.id);
  });

  const hero = (x: number, y: number): Standing => ({
    placement: at("hero", x, y, 99, 1),
    motif: { name: "hero", shapes: [], outline: disc(6) },
  });
  const arrangement = repeats["half-drop"](40, 30);

  test("finds a placement that stands too close to what stood before, copies included, and nothing else", async () => {
    const rules = { arrangement, gap: 1000 };
    expect(
      await check([at("1-1", 20_000, 15_000)], { ...rules, standing: [hero(2000, 2000)] }),
    ).toBeUndefined();
    // The hero's copy stands at 2 + 40, 2 + 15 mm.
    expect(await check([at("1-1", 33_000, 17_000)], { ...rules, standing: [hero(2000, 2000)] })).toEqual({
      first: "1-1",
      second: "hero",
    });
    // Heroes that overlap each other are nobody's business here.
    const heroes = [hero(2000, 2000), hero(5000, 2000)];
    expect(await check([at("1-1", 22_000, 15_000)], { ...rules, standing: heroes })).toBeUndefined();
  });

  test("finds a placement that lies where it may not, or too near there", async () => {
    const rules = { arrangement, gap: 1000 };
    const inside = "M5 5H35V25H5Z";
    expect(await check([at("1-1", 20_000, 15_000)], { ...rules, inside })).toBeUndefined();
    expect(await check([at("1-1", 20_000, 15_000)], { ...rules, inside, edge: 8 })).toEqual({
      first: "1-1",
      second: "inside",
    });
    expect(await check([at("1-1", 8_000, 15_000)], { ...rules, inside })).toMatchObject({ second: "inside" });
    expect(await check([at("1-1", 20_000, 15_000)], { ...rules, outside: inside })).toMatchObject({
      second: "outside",
    });
    expect(await check([at("1-1", 20_000, 29_900)], { ...rules, inside })).toMatchObject({
      second: "inside",
    });
  });
});
