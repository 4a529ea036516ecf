import { badInput } from "../../errors/catalogue.ts";
import type { Pattern } from "../../pattern/pattern.ts";
import { loadPicks } from "../load/load-picks.ts";
import type { Arguments } from "./arguments.ts";

/**
 * Which colorways of a pattern are built: those that were named, else those picked in a file beside `script`; undefined
 * for all of them.
 * @throws SprigwrightError `bad-argument` for `--all` beside `--colorway`, and what `loadPicks` throws
 */
export async function chosenColorways(
  { flags }: Arguments,
  pattern: Pattern,
  script: string,
): Promise<readonly string[] | undefined> {
  const named = flags.get("colorway");
  if (named && flags.has("all"))
    throw badInput("bad-argument", "build > --all", "--colorway was given too", "give one of the two");
  if (named || flags.has("all")) return named;
  return loadPicks(script, pattern);
}
