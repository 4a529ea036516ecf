import type { Colorway } from "../../colorway/colorway.ts";
import { unknownName, wrongType } from "../../errors/catalogue.ts";
import { isRecord } from "../../params/compound.ts";

/** What each kind of motif is called: the given words, or the kind itself. */
export function readWords(
  given: unknown,
  kinds: readonly string[],
  where: string,
): ReadonlyMap<string, string> {
  if (!isRecord(given)) throw wrongType(where, given, "an object: kind of motif to what one of it is called");
  for (const [kind, word] of Object.entries(given)) {
    if (!kinds.includes(kind)) throw unknownName(`${where} > ${kind}`, "kind of motif", kind, kinds);
    if (typeof word !== "string" || word.trim() === "" || word.length > 80)
      throw wrongType(`${where} > ${kind}`, word, "a word or two, at most 80 characters");
  }
  return new Map(kinds.map((kind) => [kind, String(given[kind] ?? kind.replace(/-/g, " "))]));
}

/** Names of files without their folders, and the colorway that each shows. */
export function readFiles(
  given: unknown,
  colorways: readonly Colorway[],
  where: string,
): readonly { readonly file: string; readonly colorway: string | undefined }[] {
  if (!Array.isArray(given)) throw wrongType(where, given, "a list of { file, colorway }");
  const names = colorways.map(({ name }) => name);
  return (given as unknown[]).map((entry, i) => {
    const place = `${where}[${i}]`;
    if (!isRecord(entry) || typeof entry["file"] !== "string")
      throw wrongType(place, entry, "{ file, colorway }");
    const colorway = entry["colorway"] as string | undefined;
    if (colorway !== undefined && !names.includes(colorway))
      throw unknownName(`${place} > colorway`, "colorway", String(colorway), names);
    return { file: entry["file"].replace(/^.*[/\\]/, ""), colorway };
  });
}
