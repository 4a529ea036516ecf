import { cosTurns, sinTurns } from "./trigonometry.ts";

/** The mathematics a piece may use: every result is the same in every JavaScript engine. */
export interface ExactMath {
  /** Sine of an angle in turns (0.25 is a quarter). */
  readonly sin: (turns: number) => number;
  /** Cosine of an angle in turns. */
  readonly cos: (turns: number) => number;
  readonly sqrt: (x: number) => number;
  readonly abs: (x: number) => number;
  readonly floor: (x: number) => number;
  readonly ceil: (x: number) => number;
  readonly round: (x: number) => number;
  readonly min: (...values: number[]) => number;
  readonly max: (...values: number[]) => number;
}

/** See {@link ExactMath}. */
export const exactMath: ExactMath = {
  sin: sinTurns,
  cos: cosTurns,
  sqrt: Math.sqrt,
  abs: Math.abs,
  floor: Math.floor,
  ceil: Math.ceil,
  round: Math.round,
  min: Math.min,
  max: Math.max,
};
