// Kills a build outright at random moments, looks at what it left, and lets another run finish.
import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { chance } from "../output/png/tiles.ts";

/** A pattern whose files take a second or two. */
const SCRIPT = `
import { definePattern, dot, leaf, set, halfDrop } from "sprigwright";
export default definePattern({
  name: "slipway", seed: "slip-1", repeat: halfDrop({ width: "6in", height: "6in" }),
  layout: set({ motifs: [dot({ size: 8 }), leaf({ length: 12 })], columns: 8, rows: 8 }),
  colorways: { chalk: { ground: "#fff", dot: "#234", blade: "#345", vein: "#fff" }, slate: { ground: "#234", dot: "#fff", blade: "#9ab", vein: "#234" } },
});`;

/** What one stop came to. */
export interface Stop {
  /** How many files were made, in sight or out of it, when it was killed. */
  readonly made: number;
  /** Files that lay in their places after the kill. */
  readonly inPlace: number;
  /** Files in their places whose bytes are not those of an undisturbed run. */
  readonly broken: readonly string[];
  /** Whether the next run ended well. */
  readonly finished: boolean;
  /** Whether then every file had the bytes of an undisturbed run, and nothing else was left. */
  readonly same: boolean;
  /** How many files the next run did not have to make again. */
  readonly kept: number;
}

/** Stops `times` builds by `command` (the path of a built command.js) in `folder`. */
export async function stopBuilds(
  command: string,
  folder: string,
  times: number,
  seed: number,
): Promise<Stop[]> {
  const random = chance(seed);
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, "slipway.ts"), SCRIPT);
  const words = (out: string): string[] => [
    command,
    "build",
    "slipway.ts",
    "-o",
    out,
    "--dpi",
    "300",
    "--files",
    "svg,png,field,pattern",
  ];
  const whole = spawnSync(process.execPath, words("whole"), { cwd: folder, encoding: "utf8" });
  if (whole.status !== 0) throw new Error(whole.stderr);
  const wanted = digestsIn(join(folder, "whole/slipway"));
  const stops: Stop[] = [];
  for (let i = 0; i < times; i++) {
    const out = `stopped-${i}`;
    const place = join(folder, out, "slipway");
    const child = spawn(process.execPath, words(out), { cwd: folder, stdio: "ignore" });
    const made = await killed(child, place, Math.floor(random() * 12), 60 * random() * random());
    const after = digestsIn(place);
    const broken = Object.keys(after).filter((name) => after[name] !== wanted[name]);
    const { status, stdout } = spawnSync(process.execPath, words(out), { cwd: folder, encoding: "utf8" });
    const final = JSON.stringify(digestsIn(place, true));
    stops.push({
      made,
      inPlace: Object.keys(after).length,
      broken,
      finished: status === 0,
      same: final === JSON.stringify(wanted),
      kept: stdout.match(/^kept /gm)?.length ?? 0,
    });
  }
  return stops;
}

/** Digest by name of every file in a folder; hidden ones only when asked for. */
function digestsIn(folder: string, hidden = false): Record<string, string> {
  if (!existsSync(folder)) return {};
  const names = readdirSync(folder)
    .filter((name) => hidden || !name.startsWith("."))
    .sort();
  return Object.fromEntries(
    names.map((name) => [
      name,
      name.startsWith(".")
        ? "hidden"
        : createHash("sha256")
            .update(readFileSync(join(folder, name)))
            .digest("hex"),
    ]),
  );
}

/**
 * Kills a process, as `kill -9` does, some milliseconds after so many files are in a folder and below, or when it has
 * ended; returns how many there then are.
 */
async function killed(child: ChildProcess, folder: string, files: number, ms: number): Promise<number> {
  let over = false;
  const ended = new Promise<void>((resolve) => child.once("close", () => resolve()));
  void ended.then(() => {
    over = true;
  });
  const pause = (time: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, time));
  while (!over && filesBelow(folder) < files) await pause(2);
  await pause(ms);
  child.kill("SIGKILL");
  await ended;
  return filesBelow(folder);
}

const filesBelow = (folder: string): number =>
  existsSync(folder)
    ? readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile()).length
    : 0;
