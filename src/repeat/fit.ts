import { badInput } from "../errors/catalogue.ts";
import { SprigwrightError } from "../errors/error.ts";
import type { Size } from "../geometry/lattice.ts";
import { arrangementOf } from "./arrangement.ts";
import { type FitTarget, type Goal, readTarget } from "./fit-target.ts";
import type { RepeatUse } from "./repeat.ts";
import { resize } from "./resize.ts";

export type { FitTarget } from "./fit-target.ts";

/** What {@link fitTo} returns. */
export interface Fitted {
  /** The same kind of repeat, with other sizes. */
  readonly repeat: RepeatUse;
  /** The block before (µm). */
  readonly from: Size;
  /** The block now (µm). */
  readonly to: Size;
  /** New over old, along the side that was fitted. */
  readonly factor: number;
  /** How much taller in proportion the block has become: 0.001 is a tenth of a percent. Mostly 0 or a few millionths. */
  readonly distortion: number;
  /** How many blocks lie across the cloth or around the roller; 1 for pixels. */
  readonly repeats: number;
}

/** How many sizes of the other side are looked at, nearest first. */
const TRIES = 200;
/** How many numbers of repeats are looked at, nearest first. */
const COUNTS = 40;
/** How many lengths on either side are looked at for one that fits, to be offered. */
const NEIGHBOURS = 60;

/**
 * Fits a repeat to a width of cloth, a rotary screen or a picture: scales it so that its block divides the width or
 * the circumference exactly, or is whole pixels and whole µm both ways. The proportions stay as near as whole µm allow.
 *
 * Scale the motifs by `factor` too, or build first and scale the tile (`scaleTile`), to keep the look.
 *
 * @example fitTo(halfDrop({ width: 160, height: 120 }), { width: "54in" }).repeat // four blocks of 342.9 mm across
 * @throws SprigwrightError `does-not-fit` with the numbers of repeats that do; `not-whole-pixels`; ranges
 */
export function fitTo(repeat: RepeatUse, target: FitTarget): Fitted {
  const goal = readTarget(target);
  const from = arrangementOf(repeat).lattice.block;
  for (const count of goal.repeats === undefined ? counts(goal, from) : [goal.repeats]) {
    const found = closed(repeat, from, goal, count);
    if (found) return found;
  }
  throw doesNotFit(repeat, from, goal);
}

/** Numbers of repeats that leave whole µm, those that change the size least first. */
function counts({ length, side }: Goal, from: Size): number[] {
  const ideal = length / from[side];
  const change = (n: number): number => Math.max(n / ideal, ideal / n);
  const first = Math.max(1, Math.floor(ideal) - 250);
  return Array.from({ length: 500 }, (_, i) => first + i)
    .filter((n) => length % n === 0)
    .sort((p, q) => change(p) - change(q) || p - q)
    .slice(0, COUNTS);
}

/** The repeat at the size nearest in proportion for so many repeats, if any closes. */
function closed(repeat: RepeatUse, from: Size, goal: Goal, repeats: number): Fitted | undefined {
  const { side, length, step } = goal;
  if (length % repeats !== 0) return undefined;
  const fitted = length / repeats;
  const other = side === "width" ? "height" : "width";
  const factor = fitted / from[side];
  const ideal = from[other] * factor;
  for (const size of around(ideal, step)) {
    const wanted = side === "width" ? { width: fitted, height: size } : { width: size, height: fitted };
    const resized = attempt(repeat, from, wanted);
    if (!resized) continue;
    const bent = (wanted.height * from.width) / (wanted.width * from.height) - 1;
    return Object.freeze({
      repeat: resized,
      from,
      to: Object.freeze(wanted),
      factor,
      distortion: Math.round(bent * 1e9) / 1e9 + 0,
      repeats,
    });
  }
  return undefined;
}

/** Multiples of `step` from the nearest to `ideal` outwards. */
function around(ideal: number, step: number): number[] {
  const middle = Math.round(ideal / step);
  return Array.from({ length: TRIES }, (_, k) => {
    const away = Math.ceil(k / 2);
    return (middle + ((k % 2 === 1) === middle * step <= ideal ? away : -away)) * step;
  }).filter((um) => um > 0);
}

/** The repeat with a block of just that size, or nothing where the repeat does not close there. */
function attempt(repeat: RepeatUse, from: Size, wanted: Size): RepeatUse | undefined {
  try {
    const resized = resize(repeat, wanted.width / from.width, wanted.height / from.height);
    const { block } = arrangementOf(resized).lattice;
    return block.width === wanted.width && block.height === wanted.height ? resized : undefined;
  } catch (error) {
    if (error instanceof SprigwrightError && error.code !== "unbound-piece") return undefined;
    throw error;
  }
}

function doesNotFit(repeat: RepeatUse, from: Size, goal: Goal): Error {
  const { side, length, repeats, step } = goal;
  const mm = (um: number): string => `${um / 1000} mm`;
  const name = repeat.use.split("/").at(-1)!;
  const block = `the ${name} block of ${from.width / 1000} x ${from.height / 1000} mm`;
  const near = nearestLengths(repeat, from, goal);
  if (step > 1 || repeats === 1)
    return badInput(
      "does-not-fit",
      step > 1 ? "fit > pixels" : "fit > repeats",
      `${block} does not close on a ${side} of ${mm(length)}${step > 1 ? ", whole pixels and whole micrometres both ways" : ""}`,
      near.length > 0
        ? `nearest that do: ${near.map(mm).join(" and ")}${step > 1 ? ` (${near.map((um) => Math.round((um / length) * goal.pixels!)).join(" and ")} pixels)` : ""}`
        : "take another size; a lattice of sixths needs its height given, and some distortion allowed",
    );
  const times = counts({ ...goal, repeats: undefined }, from).filter((n) => closed(repeat, from, goal, n));
  const across = side === "width" ? "across" : "around";
  const fitting = times.slice(0, 5).sort((p, q) => p - q);
  return badInput(
    "does-not-fit",
    `fit > ${repeats !== undefined ? "repeats" : side === "width" ? "width" : "roller"}`,
    `${block} does not lie ${repeats === undefined ? "any number of times" : `${repeats} times`} ${across} ${mm(length)} in whole micrometres`,
    [
      ...(fitting.length > 0 ? [`ask for ${fitting.join(", ")} repeats`] : []),
      ...(near.length > 0 ? [`give ${near.map(mm).join(" or ")}`] : []),
    ].join(", or ") || "give a rounder length",
  );
}

/** The lengths next below and above that the repeat fits, as often as was asked or comes nearest. */
function nearestLengths(repeat: RepeatUse, from: Size, goal: Goal): number[] {
  const count = goal.repeats ?? Math.max(1, Math.round(goal.length / from[goal.side]));
  const middle = Math.floor(goal.length / count / goal.step);
  const fits = (k: number): boolean => {
    const length = (middle + k) * goal.step * count;
    return length > 0 && closed(repeat, from, { ...goal, length }, count) !== undefined;
  };
  const away = Array.from({ length: NEIGHBOURS }, (_, k) => k);
  const below = away.find((k) => fits(-k));
  const above = away.find((k) => fits(k + 1));
  return [below === undefined ? [] : -below, above === undefined ? [] : above + 1]
    .flat()
    .map((k) => (middle + k) * goal.step * count);
}
