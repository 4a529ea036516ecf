import { MOST_ROLES } from "../../motif/motif.ts";
import { MIX_COUNT, solid } from "./mix.ts";

/** A palette without colours: each entry is a role, or a step of the way from one role to another. */
export interface Levels {
  /** Entry e shows (1 - share) of role `low[e]` and share of `high[e]`; share = step / of. */
  readonly low: Uint8Array;
  readonly high: Uint8Array;
  readonly step: Uint16Array;
  readonly of: Uint16Array;
  /** Mix → nearest entry. */
  readonly entryOf: Uint8Array;
  /**
   * How far shares are off by the rounding to steps: the sum, over the pixels where two roles meet, of the square of
   * the share, where every deviation up to half a step is as likely as any other.
   */
  readonly loss: number;
}

/** Entries of an 8-bit palette. */
const ENTRIES = 256;

/**
 * Shares the palette out: one entry a role, the rest as steps between those pairs of roles that meet.
 *
 * `pixels` counts, by pair, the pixels that show a bit of both. With k steps between two roles a pixel is off
 * by up to 1/(2(k+1)) of their difference, so each entry in turn goes to the pair where it lowers the sum of
 * pixels / (k+1)² most. A pair that gets no step shows its nearer role.
 */
export function shareLevels(roles: number, pixels: Float64Array): Levels {
  const pairs: number[] = [];
  pixels.forEach((count, pair) => {
    if (count > 0) pairs.push(pair);
  });
  const steps = pairs.map(() => 0);
  const gain = (i: number): number => {
    const now = steps[i]! + 1;
    return pixels[pairs[i]!]! * (1 / (now * now) - 1 / ((now + 1) * (now + 1)));
  };
  const gains = pairs.map((_, i) => gain(i));
  for (let left = ENTRIES - roles; left > 0 && pairs.length > 0; left--) {
    let best = 0;
    for (let i = 1; i < gains.length; i++) if (gains[i]! > gains[best]!) best = i;
    steps[best]!++;
    gains[best] = gain(best);
  }
  const loss = pairs.reduce((sum, pair, i) => {
    const parts = steps[i]! + 1;
    return sum + pixels[pair]! / (12 * parts * parts);
  }, 0);
  return { ...tabulate(roles, pairs, steps), loss };
}

function tabulate(roles: number, pairs: readonly number[], steps: readonly number[]): Omit<Levels, "loss"> {
  const count = steps.reduce((sum, k) => sum + k, roles);
  const [low, high] = [new Uint8Array(count), new Uint8Array(count)];
  const [step, of] = [new Uint16Array(count), new Uint16Array(count).fill(1)];
  const entryOf = new Uint8Array(MIX_COUNT);
  for (let role = 0; role < roles; role++) {
    low[role] = role;
    high[role] = role;
    entryOf[solid(role)] = role;
  }
  let entry = roles;
  pairs.forEach((pair, i) => {
    const parts = steps[i]! + 1;
    const [a, b] = [Math.floor(pair / MOST_ROLES), pair % MOST_ROLES];
    for (let share = 1; share < 255; share++) {
      const nearest = Math.round((share * parts) / 255);
      entryOf[pair * 256 + share] = nearest === 0 ? a : nearest === parts ? b : entry + nearest - 1;
    }
    for (let k = 1; k < parts; k++, entry++) {
      low[entry] = a;
      high[entry] = b;
      step[entry] = k;
      of[entry] = parts;
    }
  });
  return { low, high, step, of, entryOf };
}
