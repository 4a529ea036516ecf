import { badInput } from "../errors/catalogue.ts";

/** What data from outside may take at most. */
export interface Bounds {
  /** What it is, in a word: begins the codes of its errors. */
  readonly what: string;
  readonly deepest: number;
  readonly mostValues: number;
  /** Characters of all texts and keys together. */
  readonly mostText: number;
  readonly fix: string;
}

/**
 * Refuses data from outside that is too deep or too large, before anything reads it.
 * Walks with a list of its own, so that no nesting can exhaust the stack.
 * @throws SprigwrightError `recipe-too-deep`, `recipe-too-large`, and so on for other data
 */
export function checkBounds(root: unknown, { what, deepest, mostValues, mostText, fix }: Bounds): void {
  const queue: { value: unknown; depth: number }[] = [{ value: root, depth: 0 }];
  let values = 0;
  let text = 0;
  for (let at = queue.pop(); at; at = queue.pop()) {
    const { value, depth } = at;
    if (depth > deepest)
      throw badInput(`${what}-too-deep`, what, `it nests more than ${deepest} levels deep`, fix);
    if (typeof value === "string") text += value.length;
    if (++values > mostValues || text > mostText)
      throw badInput(
        `${what}-too-large`,
        what,
        `it holds more than ${mostValues} values or ${mostText / 1e6} million characters`,
        fix,
      );
    if (typeof value !== "object" || value === null) continue;
    for (const key of Object.keys(value)) {
      text += key.length;
      queue.push({ value: (value as Record<string, unknown>)[key], depth: depth + 1 });
    }
  }
}
