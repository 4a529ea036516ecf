import { badInput } from "../errors/catalogue.ts";

/** Deepest nesting, most values and most text of a recipe: far above any real one. */
const DEEPEST = 32;
const MOST_VALUES = 500_000;
const MOST_TEXT = 16_000_000;

/**
 * Refuses data from outside that is too deep or too large, before anything reads it.
 * Walks with a list of its own, so that no nesting can exhaust the stack.
 * @throws SprigwrightError `recipe-too-deep`, `recipe-too-large`
 */
export function checkBounds(root: unknown): void {
  const queue: { value: unknown; depth: number }[] = [{ value: root, depth: 0 }];
  let values = 0;
  let text = 0;
  for (let at = queue.pop(); at; at = queue.pop()) {
    const { value, depth } = at;
    if (depth > DEEPEST)
      throw badInput(
        "recipe-too-deep",
        "recipe",
        `it nests more than ${DEEPEST} levels deep`,
        "give a recipe that recipeOf wrote",
      );
    if (typeof value === "string") text += value.length;
    if (++values > MOST_VALUES || text > MOST_TEXT)
      throw badInput(
        "recipe-too-large",
        "recipe",
        `it holds more than ${MOST_VALUES} values or ${MOST_TEXT / 1e6} million characters`,
        "give a recipe that recipeOf wrote",
      );
    if (typeof value !== "object" || value === null) continue;
    for (const key of Object.keys(value)) {
      text += key.length;
      queue.push({ value: (value as Record<string, unknown>)[key], depth: depth + 1 });
    }
  }
}
