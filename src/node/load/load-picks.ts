import { readFile, stat } from "node:fs/promises";
import { dirname, join } from "node:path";
import { readPicks } from "../../colorway/picks.ts";
import { badInput } from "../../errors/catalogue.ts";
import { reasonOf } from "../faults.ts";

/** Largest file of picks that is opened (bytes). */
const LARGEST = 400_000;

/**
 * The colorways of a pattern that were picked: the names in `NAME.picks.json` beside the script (or recipe) that the pattern
 * comes from, such as `{ "colorways": ["dawn", "high-tide"] }`. Undefined when there is no such file.
 *
 * @example await writePattern(pattern, { out: "out", colorways: await loadPicks("quay-garden.ts", pattern) });
 * @throws SprigwrightError `bad-json`, `unknown-colorway` with the nearest known name, `unknown-option`, `wrong-type`,
 * `no-such-file` when it is there but cannot be read
 */
export async function loadPicks<C extends string>(
  script: string,
  pattern: { readonly name: string; readonly colorways: { readonly [N in C]: unknown } },
): Promise<readonly C[] | undefined> {
  const file = join(dirname(script), `${pattern.name}.picks.json`);
  const text = await readText(file);
  if (text === undefined) return undefined;
  return readPicks(text, Object.keys(pattern.colorways), file) as readonly C[];
}

async function readText(file: string): Promise<string | undefined> {
  let size: number;
  try {
    size = (await stat(file)).size;
    if (size <= LARGEST) return await readFile(file, "utf8");
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === "ENOENT") return undefined;
    throw badInput(
      "no-such-file",
      file,
      `it cannot be read: ${reasonOf(cause)}`,
      "make it readable, or remove it",
      cause,
    );
  }
  throw badInput("bad-json", file, `it is ${size} bytes long`, "give the names of colorways alone");
}
