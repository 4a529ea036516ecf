import type { Host, Sink } from "./host.ts";

type Paint = (text: string) => string;

/** How words are set: in colour on a terminal, plain anywhere else. */
export interface Style {
  /** Names of patterns and pieces. */
  readonly name: Paint;
  /** What may be skipped in reading. */
  readonly quiet: Paint;
  readonly good: Paint;
  readonly warning: Paint;
  readonly fault: Paint;
  /** The worked part of a progress bar. */
  readonly worked: Paint;
}

const plain: Paint = (text) => text;
const sgr =
  (on: number, off: number): Paint =>
  (text) =>
    text === "" ? "" : `\x1b[${on}m${text}\x1b[${off}m`;

/** Whether a sink is a terminal that can redraw a line. */
export const isTerminal = (sink: Sink, env: Host["env"]): boolean =>
  sink.isTTY === true && env["TERM"] !== "dumb";

/** Colour for a sink: only on a terminal, and not when NO_COLOR is set to anything (no-color.org). */
export function styleFor(sink: Sink, env: Host["env"]): Style {
  if (!isTerminal(sink, env) || (env["NO_COLOR"] ?? "") !== "")
    return { name: plain, quiet: plain, good: plain, warning: plain, fault: plain, worked: plain };
  return {
    name: sgr(1, 22),
    quiet: sgr(2, 22),
    good: sgr(32, 39),
    warning: sgr(33, 39),
    fault: sgr(31, 39),
    worked: sgr(36, 39),
  };
}

/** Width to set text in: the terminal's, within what reads well. */
export const widthOf = (sink: Sink): number => Math.max(40, Math.min(100, sink.columns ?? 80));
