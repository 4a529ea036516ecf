import { badInput } from "../../errors/catalogue.ts";
import type { Cut } from "../../output/cut.ts";

/** A cut as words say it: `block`, `unit`, `3x2`, `1400x2000mm`. @throws SprigwrightError `bad-argument` */
export function cutOf(given: string): Cut {
  if (given === "block" || given === "unit") return given;
  const blocks = /^(\d{1,4})x(\d{1,4})$/.exec(given);
  if (blocks) return { across: Number(blocks[1]), down: Number(blocks[2]) };
  const lengths = /^(\d{1,6}(?:\.\d{1,6})?)x(\d{1,6}(?:\.\d{1,6})?)(mm|cm|in)$/.exec(given);
  if (!lengths)
    throw badInput(
      "bad-argument",
      "build > --cut",
      `${JSON.stringify(given)} is no cut`,
      "give block, unit, blocks across and down such as 3x2, or a length of cloth such as 1400x2000mm",
    );
  const [, width, height, unit] = lengths;
  return { width: `${Number(width)}${unit as "mm"}`, height: `${Number(height)}${unit as "mm"}` };
}
