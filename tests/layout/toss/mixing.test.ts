import { describe, expect, test } from "vitest";
import type { Arrangement, Vector } from "../../../src/geometry/lattice.ts";
import { middleOf } from "../../../src/geometry/middle.ts";
import type { Placement } from "../../../src/layout/layout.ts";
import { packTossed, type TossEntry, type TossOptions } from "../../../src/layout/toss/pack.ts";
import { createRandom } from "../../../src/seed/random.ts";
import { cosTurns, sinTurns } from "../../../src/seed/trigonometry.ts";
import { blossom, entriesOf, leaf, options, repeats, star, tools } from "./fixtures.ts";

/** A leaf of 25 mm, a blossom of 20 and a star of 13: sizes that no two of them share. */
const entries: TossEntry[] = entriesOf(leaf(), blossom(), star()).map((entry, k) => ({
  ...entry,
  scale: [[0.7, 0.7] as const, [0.55, 0.55] as const, [0.36, 0.36] as const][k]!,
}));
const middles = entries.map(({ drawings }) => middleOf(drawings[0]!.motif.outline));

interface Spot {
  readonly at: Vector;
  readonly kind: number;
}

function spotsOf(placements: readonly Placement[]): Spot[] {
  return placements.map(({ motif, x, y, turn, scale, flip }) => {
    const [mx, my] = middles[motif]!;
    const [cos, sin] = [cosTurns(turn) * scale, sinTurns(turn) * scale];
    const across = flip ? -mx : mx;
    return { at: [cos * across - sin * my + x, sin * across + cos * my + y], kind: motif };
  });
}

/** Share of motifs with one of their kind nearer than 0.62 of the mean distance that the kind would have all alone. */
function besideTheirKind(spots: readonly Spot[], { lattice: { a, b } }: Arrangement): number {
  const cell = Math.abs(a[0] * b[1] - a[1] * b[0]);
  const beside = spots.filter(({ at, kind }) => {
    const kin = spots.filter((other) => other.kind === kind);
    const near = 0.62 * Math.sqrt(cell / kin.length);
    return kin.some((other) => {
      for (let i = -2; i <= 2; i++)
        for (let j = -2; j <= 2; j++) {
          const dx = other.at[0] + i * a[0] + j * b[0] - at[0];
          const dy = other.at[1] + i * a[1] + j * b[1] - at[1];
          const apart = dx * dx + dy * dy;
          if (apart > 0 && apart < near * near) return true;
        }
      return false;
    });
  });
  return beside.length / spots.length;
}

/** The same places with the kinds dealt blindly, on average over many deals. */
function dealtBlindly(spots: readonly Spot[], arrangement: Arrangement): number {
  const random = createRandom("deal");
  let sum = 0;
  for (let deal = 0; deal < 40; deal++) {
    const kinds = spots.map(({ kind }) => kind);
    for (let i = kinds.length - 1; i > 0; i--) {
      const j = random.below(i + 1);
      [kinds[i], kinds[j]] = [kinds[j]!, kinds[i]!];
    }
    sum += besideTheirKind(
      spots.map(({ at }, i) => ({ at, kind: kinds[i]! })),
      arrangement,
    );
  }
  return sum / 40;
}

describe("motifs of three kinds, in sizes of their own, stand beside their own kind far less often than chance would have it", () => {
  test.each<[string, Partial<TossOptions>]>([
    ["even", {}],
    ["airy", { density: "airy" }],
    ["counted", { count: 24 }],
    ["even and two-way", { direction: "two-way" }],
  ])("in a toss that is %s", async (_, given) => {
    let [toss, chance] = [0, 0];
    for (const [name, seed] of [
      ["straight", "a"],
      ["half-drop", "b"],
      ["straight", "c"],
      ["half-drop", "d"],
    ] as const) {
      const arrangement = repeats[name](100, 90);
      const spots = spotsOf(await packTossed(options({ entries, ...given }), tools(seed, arrangement)));
      expect(spots.length).toBeGreaterThan(12);
      toss += besideTheirKind(spots, arrangement);
      chance += dealtBlindly(spots, arrangement);
    }
    expect(toss).toBeLessThan(0.42 * chance);
  });

  test("but not where they need not keep apart", async () => {
    const arrangement = repeats.straight(100, 90);
    let [toss, chance] = [0, 0];
    for (const seed of ["a", "b", "c", "d"]) {
      const spots = spotsOf(await packTossed(options({ entries, spread: 0 }), tools(seed, arrangement)));
      toss += besideTheirKind(spots, arrangement);
      chance += dealtBlindly(spots, arrangement);
    }
    expect(toss).toBeGreaterThan(0.5 * chance);
  });
});
