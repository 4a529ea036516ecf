import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cosTurns, sinTurns, wrapTurns } from "../../src/seed/trigonometry.ts";

// The reference: sine and cosine by Taylor's series in fixed point with 60 decimals, 2π by Machin's formula
// (π/4 = 4 arctan 1/5 - arctan 1/239). An angle is the exact binary fraction that the double stands for.
const ONE = 10n ** 60n;

function arctanInverse(n: bigint): bigint {
  let term = ONE / n;
  let sum = term;
  for (let k = 3n, sign = -1n; term !== 0n; k += 2n, sign = -sign) {
    term /= n * n;
    sum += (sign * term) / k;
  }
  return sum;
}
const TWO_PI = 8n * (4n * arctanInverse(5n) - arctanInverse(239n));

/** A double as an exact fraction of bigints. */
function fraction(x: number): [bigint, bigint] {
  let below = 1n;
  let above = x;
  while (!Number.isInteger(above)) {
    above *= 2;
    below *= 2n;
  }
  return [BigInt(above), below];
}

function series(turns: number, first: bigint): bigint {
  const [above, below] = fraction(turns);
  const whole = ((above % below) + below) % below;
  const half = 2n * whole > below ? whole - below : whole; // within half a turn
  const x = (half * TWO_PI) / below;
  let term = first === 0n ? ONE : x;
  let sum = term;
  for (let k = first + 1n; term !== 0n; k += 2n) {
    term = (-term * x * x) / (ONE * ONE) / (k * (k + 1n));
    sum += term;
  }
  return sum;
}
const ULP_OF_ONE = 2.220446049250313e-16;
const exact = (value: bigint): number => Number(value / 10n ** 30n) / 1e30;
const errorOf = (result: number, reference: bigint): number => {
  const [above, below] = fraction(result);
  return Math.abs(exact((above * ONE) / below - reference));
};

describe("sinTurns and cosTurns", () => {
  it("the reference knows pi (digits after OEIS A000796)", () => {
    expect(String(TWO_PI / 2n)).toMatch(/^31415926535897932384626433832795028841971693993751/);
  });

  it("are within one unit in the last place of 1 of the true value, everywhere", () => {
    const check = (t: number): void => {
      const worst = Math.max(errorOf(sinTurns(t), series(t, 1n)), errorOf(cosTurns(t), series(t, 0n)));
      if (worst > ULP_OF_ONE) throw new Error(`${t}: off by ${worst}`);
    };
    for (let i = -500; i <= 500; i++) check(i / 360);
    fc.assert(fc.property(fc.double({ min: -1, max: 1, noNaN: true }), check), { seed: 6, numRuns: 1000 });
    fc.assert(fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), check), { seed: 7, numRuns: 300 });
  });

  it("agree with the closed forms of 15, 18, 30, 36, 45 and 60 degrees", () => {
    const close = (got: number, want: number): void => expect(Math.abs(got - want)).toBeLessThan(2.3e-16);
    close(sinTurns(15 / 360), (Math.sqrt(6) - Math.sqrt(2)) / 4);
    close(sinTurns(18 / 360), (Math.sqrt(5) - 1) / 4);
    close(sinTurns(30 / 360), 0.5);
    close(cosTurns(36 / 360), (Math.sqrt(5) + 1) / 4);
    close(sinTurns(0.125), Math.SQRT1_2);
    close(cosTurns(0.125), Math.SQRT1_2);
    close(cosTurns(60 / 360), 0.5);
  });

  it("are exact at every quarter, however many turns, and never -0", () => {
    for (const whole of [0, 1, -1, 7, -13, 1e9, 2 ** 50]) {
      expect([0, 0.25, 0.5, 0.75].map((q) => sinTurns(whole + q))).toEqual([0, 1, 0, -1]);
      expect([0, 0.25, 0.5, 0.75].map((q) => cosTurns(whole + q))).toEqual([1, 0, -1, 0]);
    }
    expect(Object.is(sinTurns(-0.5), 0)).toBe(true);
    expect(Object.is(sinTurns(-0), 0)).toBe(true);
    expect(Object.is(cosTurns(-0.75), 0)).toBe(true);
  });

  it("are odd and even to the last bit, and repeat every turn", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 100, noNaN: true }), fc.integer({ min: 0, max: 4095 }), (t, n) => {
        expect(sinTurns(-t)).toBe(-sinTurns(t) + 0);
        expect(cosTurns(-t)).toBe(cosTurns(t));
        expect(sinTurns(n / 4096 + 3)).toBe(sinTurns(n / 4096));
        expect(sinTurns(0.5 - n / 4096)).toBeCloseTo(sinTurns(n / 4096), 15);
      }),
      { seed: 8, numRuns: 400 },
    );
  });

  it("never leave -1..1, and stay on the unit circle", () => {
    fc.assert(
      fc.property(fc.double({ min: -10, max: 10, noNaN: true }), (t) => {
        const [s, c] = [sinTurns(t), cosTurns(t)];
        expect(Math.abs(s) <= 1 && Math.abs(c) <= 1).toBe(true);
        expect(Math.abs(s * s + c * c - 1)).toBeLessThan(7e-16);
      }),
      { seed: 9, numRuns: 500 },
    );
  });

  it("give NaN for what is no angle", () => {
    expect(sinTurns(Number.NaN)).toBeNaN();
    expect(cosTurns(Infinity)).toBeNaN();
  });
});

describe("wrapTurns", () => {
  it("comes out from 0 up to 1, and not at 1, not even for a tiny negative turn", () => {
    expect(wrapTurns(-0.25)).toBe(0.75);
    expect(wrapTurns(1)).toBe(0);
    expect(wrapTurns(-1e-18)).toBe(0);
    expect(Object.is(wrapTurns(-0), 0)).toBe(true);
  });
});
