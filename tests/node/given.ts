// A small pattern, scratch folders, and a host that remembers what the command said.
import { mkdtemp, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { onTestFinished } from "vitest";
import { toss } from "../../src/layout/toss.ts";
import type { Host, Sink } from "../../src/node/command/host.ts";
import { definePattern } from "../../src/pattern/pattern.ts";
import { straight } from "../../src/repeat/straight.ts";
import type { Length } from "../../src/units/length.ts";
import { buoy, pebble } from "../given.ts";

/** A folder of its own for one test, gone when the test is over. */
export async function scratch(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), "sprigwright-test-"));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  return folder;
}

/** Every file and folder under a folder, sorted, hidden ones too. */
export const contents = async (folder: string): Promise<string[]> =>
  (await readdir(folder, { recursive: true })).sort();

/** Buoys and pebbles on a square inch. */
export const moorings = mooringsOn("1in");

/** The same on a block that is no whole number of pixels at 150 dpi. */
export const offGrid = mooringsOn("26mm");

function mooringsOn(side: Length) {
  return definePattern({
    name: "moorings",
    subject: "buoy",
    seed: "ebb-1",
    repeat: straight({ width: side, height: side }),
    layout: toss({ gap: 1, motifs: [{ motif: buoy({ size: 6 }) }, { motif: pebble({ size: 4 }) }] }),
    colorways: {
      dawn: { ground: "#f6ead7", float: "#c8402f", flag: "#20304a", pebble: "#8a8f86" },
      dusk: { ground: "#20304a", float: "#e9a23b", flag: "#f6ead7", pebble: "#5f7a8a" },
    },
  });
}

/** A script that makes a small pattern, as text. */
export const scriptText = (name = "slipway", more = ""): string => `
import { definePattern, dot, set, straight } from "sprigwright";
${more}
const size: number = 4;
export default definePattern({
  name: ${JSON.stringify(name)},
  seed: "slip-1",
  repeat: straight({ width: "1in", height: "1in" }),
  layout: set({ motifs: [dot({ size, roles: { dot: "spot" } })], columns: 2, rows: 2 }),
  colorways: { chalk: { ground: "#ffffff", spot: "#203040" }, slate: { ground: "#203040", spot: "#ffffff" } },
});
`;

/** Writes a file into a folder and returns its path. */
export async function put(folder: string, name: string, text: string): Promise<string> {
  const file = join(folder, name);
  await writeFile(file, text);
  return file;
}

/** A host whose words can be read back. */
export function listener(
  given: { terminal?: boolean; columns?: number; env?: Record<string, string>; signal?: AbortSignal } = {},
): Host & { said: () => string; told: () => string } {
  const sink = (list: string[]): Sink => ({
    write: (text: string) => list.push(text),
    isTTY: given.terminal === true,
    columns: given.columns,
  });
  const [out, err]: [string[], string[]] = [[], []];
  const signal = given.signal ?? new AbortController().signal;
  return {
    out: sink(out),
    err: sink(err),
    env: given.env ?? {},
    signal,
    heed: () => {},
    said: () => out.join(""),
    told: () => err.join(""),
  };
}
