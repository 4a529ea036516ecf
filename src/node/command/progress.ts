import type { WriteProgress } from "../write/options.ts";
import type { Host } from "./host.ts";
import { isTerminal, styleFor } from "./style.ts";

/** Shows how far a pattern is. */
export interface Progress {
  show(progress: WriteProgress): void;
  /** Takes the bar away, so that what is printed next stands in its place. */
  clear(): void;
}

const STAGES = { tile: "laying out", files: "making files" } as const;
const BAR = 24;

/** What is asked of the time left before it is said: enough seconds, and enough of the work, to go by. */
const [LEAST_SECONDS, LEAST_DONE] = [2, 0.05];

/** How long the rest will take at the pace so far; nothing while that would be a guess. */
export function timeLeft(done: number, seconds: number): string {
  if (seconds < LEAST_SECONDS || done < LEAST_DONE || done >= 1) return "";
  const left = Math.ceil((seconds * (1 - done)) / done);
  return left < 100 ? `${left} s left` : `${Math.ceil(left / 60)} min left`;
}

/** One line, drawn again and again, on a terminal; one plain line a stage anywhere else. */
export function progressOf(pattern: string, host: Host): Progress {
  return isTerminal(host.err, host.env) ? drawnBar(pattern, host) : plainLines(pattern, host);
}

function plainLines(pattern: string, { err }: Host): Progress {
  let last: string | undefined;
  return {
    show({ stage }) {
      if (stage === last) return;
      last = stage;
      err.write(`${pattern}: ${STAGES[stage]}\n`);
    },
    clear() {},
  };
}

function drawnBar(pattern: string, { err, env }: Host): Progress {
  const style = styleFor(err, env);
  const begun = performance.now();
  let last = "";
  return {
    show({ stage, done, file }) {
      const percent = Math.min(100, Math.floor(done * 100));
      const worked = Math.floor(done * BAR);
      const what = file ? (file.split(/[\\/]/).at(-1) ?? file) : STAGES[stage];
      // A line that wrapped could not be drawn over: what does not fit is cut.
      const room = Math.max(10, (err.columns || 80) - 1);
      const head = pattern.slice(0, Math.max(0, room - BAR - 9));
      const left = timeLeft(done, (performance.now() - begun) / 1000);
      const tail = [left, what]
        .filter(Boolean)
        .join("  ")
        .slice(0, Math.max(0, room - head.length - BAR - 10));
      const bar = style.worked("▚".repeat(worked)) + style.quiet("·".repeat(BAR - worked));
      const line = `${style.name(head)}  ${bar} ${String(percent).padStart(3)} %  ${style.quiet(tail)}`;
      if (line === last) return;
      last = line;
      err.write(`\r\x1b[K${line}`);
    },
    clear() {
      if (last !== "") err.write("\r\x1b[K");
      last = "";
    },
  };
}
