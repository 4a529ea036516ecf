import fc from "fast-check";
import seedrandom from "seedrandom";
import { describe, expect, it } from "vitest";
import { createRandom } from "../../src/seed/random.ts";

describe("a stream of chance", () => {
  it("is the alea generator of the seedrandom package, bit by bit", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 20 }), (seed) => {
        const [ours, theirs] = [createRandom(seed), seedrandom.alea(seed)];
        for (let i = 0; i < 20; i++) if (ours.next() !== theirs.double()) throw new Error(`differs at ${i}`);
      }),
      { seed: 10, numRuns: 50 },
    );
  });

  // A golden: no outside source, it only holds the streams still. If it moves, every pattern moves.
  it("begins as it always did", () => {
    const random = createRandom("harbour-1");
    expect([random.next(), random.next(), random.fork("layout").next()]).toMatchInlineSnapshot(`
      [
        0.1076553306185618,
        0.007255685769050779,
        0.15960392338258989,
      ]
    `);
  });

  it("forks independently: drawing from a fork never moves its parent or its sisters", () => {
    const [plain, forked] = [createRandom("a"), createRandom("a")];
    const child = forked.fork("petals");
    for (let i = 0; i < 100; i++) child.next();
    expect(forked.next()).toBe(plain.next());
    expect(forked.fork("leaves").next()).toBe(plain.fork("leaves").next());
    forked.next();
    expect(forked.fork("petals").next()).toBe(createRandom("a").fork("petals").next());
  });

  it("forks by whole names: a/b + c is not a + b/c", () => {
    const first = createRandom("s").fork("a").fork("b").next();
    expect(createRandom("s").fork("a/1:b").next()).not.toBe(first);
    expect(createRandom("s").fork("b").fork("a").next()).not.toBe(first);
    expect(createRandom("t").fork("a").fork("b").next()).not.toBe(first);
  });

  it("keeps its bounds and fills them evenly", () => {
    const random = createRandom("even");
    const counts = [0, 0, 0, 0, 0, 0];
    for (let i = 0; i < 12_000; i++) counts[random.below(6)]!++;
    // Chi-squared with 5 degrees of freedom stays below 20.5 in 999 of 1000 streams (standard tables).
    const chi = counts.reduce((sum, n) => sum + (n - 2000) ** 2 / 2000, 0);
    expect(chi).toBeLessThan(20.5);
    for (let i = 0; i < 1000; i++) {
      const x = random.between(-2, 3);
      if (!(x >= -2 && x < 3)) throw new Error(`${x}`);
    }
    expect(["a", "b"]).toContain(random.pick(["a", "b"]));
    expect(random.below(1)).toBe(0);
  });

  it("uses more than 32 of its bits", () => {
    const random = createRandom("bits");
    expect(Array.from({ length: 50 }, () => random.next()).some((x) => (x * 2 ** 32) % 1 !== 0)).toBe(true);
  });
});
