import { badInput, unknownName, wrongType } from "../errors/catalogue.ts";
import { isRecord } from "../params/compound.ts";

/** Longest text of picks that is taken: hundreds of names are far below it. */
const LONGEST = 100_000;

/**
 * The colorways that a text of picks chooses, JSON such as `{ "colorways": ["dawn", "high-tide"] }`, in its order.
 * `known` are the names that there are.
 * @throws SprigwrightError `bad-json`, `unknown-option`, `unknown-colorway` with the nearest known name, `wrong-type`
 */
export function readPicks(text: string, known: readonly string[], where: string): readonly string[] {
  const picks = parse(text, where);
  if (!isRecord(picks)) throw wrongType(where, picks, FORM);
  for (const key of Object.keys(picks))
    if (key !== "colorways") throw unknownName(`${where} > ${key}`, "option", key, ["colorways"]);
  const names = picks["colorways"];
  if (!Array.isArray(names)) throw wrongType(`${where} > colorways`, names, FORM);
  if (names.length === 0)
    throw badInput(
      "no-colorways",
      `${where} > colorways`,
      "no colorway is picked",
      "list some, or remove the file",
    );
  (names as unknown[]).forEach((name, i) => {
    const place = `${where} > colorways[${i}]`;
    if (typeof name !== "string") throw wrongType(place, name, "the name of a colorway");
    if (!known.includes(name)) throw unknownName(place, "colorway", name, known);
  });
  return Object.freeze([...new Set(names as string[])]);
}

const FORM = 'an object with the names that were picked, such as { "colorways": ["dawn"] }';

function parse(text: string, where: string): unknown {
  if (text.length > LONGEST)
    throw badInput(
      "bad-json",
      where,
      `it is ${text.length} characters long`,
      "give the names of colorways alone",
    );
  try {
    return JSON.parse(text.replace(/^\ufeff/, ""));
  } catch (cause) {
    throw badInput("bad-json", where, "it cannot be read as JSON", `write ${FORM}`, cause);
  }
}
