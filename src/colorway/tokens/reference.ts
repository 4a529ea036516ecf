import { badInput } from "../../errors/catalogue.ts";

/** The path that `{group.token}` names, or undefined for anything else. */
export function readCurly(value: unknown): readonly string[] | undefined {
  const inner = typeof value === "string" && value.length <= 1000 ? /^\{([^{}]+)\}$/.exec(value) : null;
  return inner ? inner[1]!.split(".") : undefined;
}

/** The keys that a JSON Pointer in a fragment names, `#/sea/kelp/$value` (RFC 6901). @throws SprigwrightError `bad-reference` */
export function readPointer(value: unknown, where: string): readonly string[] {
  const wrong = (what: string): Error =>
    badInput("bad-reference", where, what, 'point within the file, as in "#/sea/kelp" or "{sea.kelp}"');
  if (typeof value !== "string" || value.length > 1000) throw wrong("it is no reference");
  if (!value.startsWith("#"))
    throw wrong(
      `${JSON.stringify(value.slice(0, 60))} is outside this file, or not written as a reference is`,
    );
  let text: string;
  try {
    text = decodeURIComponent(value.slice(1));
  } catch {
    throw wrong(`${JSON.stringify(value.slice(0, 60))} has a broken % escape`);
  }
  if (text === "") return [];
  if (!text.startsWith("/"))
    throw wrong(`${JSON.stringify(value.slice(0, 60))} does not go on with / after #`);
  return text
    .slice(1)
    .split("/")
    .map((key) => key.replaceAll("~1", "/").replaceAll("~0", "~"));
}
