import { badInput, missingOption, unknownName, wrongType } from "../errors/catalogue.ts";
import { makeParam, type Param } from "../params/param.ts";
import { wrapTurns } from "../seed/trigonometry.ts";
import type { Direction } from "./toss/options.ts";

/** Ways that motifs may face, by the trade's names. */
const NAMES = ["one-way", "two-way", "four-way", "tossed"] as const;
/** Most angles of one's own. */
const MOST = 360;

/** A direction: one of the trade's names, or a list of angles in turns. */
export function direction(about: string): Param<Direction, Direction, true> {
  const wanted = "one-way, two-way, four-way, tossed, or a list of angles in turns";
  const schema = {
    anyOf: [
      { enum: NAMES },
      {
        type: "array",
        items: { type: "number", minimum: -1, maximum: 1, "x-unit": "turn" },
        minItems: 1,
        maxItems: MOST,
      },
    ],
  };
  const check = (value: unknown, where: string): Direction => {
    if (typeof value === "string") {
      if (!(NAMES as readonly string[]).includes(value)) throw unknownName(where, "choice", value, NAMES);
      return value as Direction;
    }
    if (!Array.isArray(value)) throw wrongType(where, value, wanted);
    if (value.length === 0 || value.length > MOST)
      throw badInput(
        "wrong-length",
        where,
        `it lists ${value.length} angles`,
        `list 1 to ${MOST} angles in turns, such as [0, 0.25]`,
      );
    const angles = value.map((angle, k) => {
      if (typeof angle !== "number" || !Number.isFinite(angle) || Math.abs(angle) > 1)
        throw wrongType(`${where}[${k}]`, angle, "an angle in turns, -1 to 1: 0.25 is a quarter clockwise");
      return wrapTurns(angle);
    });
    return Object.freeze([...new Set(angles)].sort((a, b) => a - b));
  };
  return makeParam(
    { about: { about, default: "tossed" as Direction }, wanted, schema, check },
    missingOption,
  );
}
