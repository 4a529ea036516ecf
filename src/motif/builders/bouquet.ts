import { badShape } from "../../errors/catalogue.ts";
import type { Path } from "../../geometry/path.ts";
import type { Drawing } from "../motif.ts";
import { brush } from "./brush.ts";
import { type Parts, place } from "./drawing.ts";
import { checkNumbers, checkOptions } from "./given.ts";
import { behind } from "./offset.ts";
import { spline } from "./spline.ts";
import { stack } from "./stack.ts";
import { heading } from "./vector.ts";

/** How stems are gathered. */
export interface BouquetOptions {
  /** From where the stems are tied (the origin) to the origin of the farthest flower, in mm. */
  readonly reach: number;
  /** How far flowers in front stand below those behind, as a share of the reach. Default 0.28. */
  readonly step?: number;
  /** Angle from the leftmost to the rightmost stem, in turns. Default 0.24. */
  readonly spread?: number;
  /** Length of the stems below the tie, in mm. Default: 0.4 of the reach. */
  readonly tail?: number;
  /** Thickness of a stem in mm, at least 0.52. Default 0.8. */
  readonly stem?: number;
  /** Ground left free around what lies in front, in mm. Default 0.6. */
  readonly gap?: number;
}

/**
 * Flowers gathered into a bouquet that is tied at the origin: given from left to right, drawn upright about where their stem
 * ends; every other one stands lower and in front. Stems curve out of the tie and fan out again below it; they make the part
 * `stem`. What lies in front is knocked out of what lies behind.
 * @throws SprigwrightError `bad-shape`: no flowers, or more than 40; `unknown-option`, `not-mm`
 */
export function bouquet<Part extends string>(
  flowers: readonly Drawing<Part>[],
  options: BouquetOptions,
): Parts<Part | "stem"> {
  const n = flowers.length;
  if (n < 1 || n > 40) throw badShape("shapes > bouquet", `${n} flowers, not 1 to 40`);
  checkOptions("bouquet", options, ["reach", "step", "spread", "tail", "stem", "gap"]);
  const { reach, step = 0.28, spread = 0.24, tail = reach * 0.4, stem = 0.8, gap = 0.6 } = options;
  checkNumbers("bouquet", { reach, step, spread, tail, stem, gap });
  const set = flowers.map((flower, k) => {
    const u = n === 1 ? 0 : (2 * k) / (n - 1) - 1;
    const turn = (u * spread) / 2;
    const low = k % 2 === 1;
    const far = reach * (low ? 1 - step : 1) * (1 - 0.1 * u * u);
    const [x, y] = heading(turn);
    const [below, down] = heading(turn * 0.7);
    const end = [x * far, y * far];
    const spine = spline([-below * tail, -down * tail, 0, 0, end[0]! * 0.42, end[1]! * 0.55, ...end]);
    const line = brush(spine, [stem * 1.1, stem, stem * 0.9]);
    const head = place(flower, { x: end[0]!, y: end[1]!, turn: turn * 0.8 });
    return { low, head, line };
  });
  const order = [...set.filter((one) => !one.low), ...set.filter((one) => one.low)];
  const heads = stack<Part | "stem">(
    order.map((one) => one.head as Partial<Drawing<Part | "stem">>),
    gap,
  );
  // A stem runs on into its own flower, and under every other.
  const stems = set.map(({ line, head }) => {
    const others = set
      .filter((one) => one.head !== head)
      .flatMap((one) => Object.values(one.head).flat() as Path[]);
    return others.length === 0 ? line : behind(line, others, gap);
  });
  return { ...heads, stem: [...stems, ...(heads.stem ?? [])] };
}
