import { badInput } from "../errors/catalogue.ts";
import { choice } from "../params/kinds.ts";
import type { Param } from "../params/param.ts";

/** A part of the unit that neighbours are moved by: halves, thirds, quarters and fifths. */
export type Fraction = "1/2" | "1/3" | "2/3" | "1/4" | "3/4" | "1/5" | "2/5" | "3/5" | "4/5";

const fractions: readonly Fraction[] = ["1/2", "1/3", "2/3", "1/4", "3/4", "1/5", "2/5", "3/5", "4/5"];

/** A parameter that takes a {@link Fraction}. */
export function fraction(about: string): Param<Fraction, Fraction, false> {
  const known = choice({ about, of: fractions });
  const read = (value: unknown, where: string): Fraction => {
    const amount = typeof value === "number" ? value : amountOf(value);
    if (amount !== undefined && (amount <= 0 || amount >= 1))
      throw badInput(
        "fraction-range",
        where,
        `${JSON.stringify(value)} is not more than 0 and less than 1`,
        amount === 0 || amount === 1
          ? "use a straight repeat, which is the same"
          : 'give a fraction such as "1/3", as text',
      );
    return known.read(value, where);
  };
  return { ...known, read };
}

function amountOf(value: unknown): number | undefined {
  const match = typeof value === "string" ? /^\s*(-?\d+)(?:\s*\/\s*(\d+))?\s*$/.exec(value) : null;
  return match ? Number(match[1]) / Number(match[2] ?? 1) : undefined;
}

/** Numerator and denominator. */
export const termsOf = (text: Fraction): readonly [number, number] => [Number(text[0]), Number(text[2])];
