import { inflateSync } from "node:zlib";

/** The recipe in a PNG's iTXt chunk, read by the letter of the PNG specification (third edition, 11.3.3.4). */
export function recipeIn(png: Buffer): unknown {
  for (let at = 8; at < png.length; at += png.readUInt32BE(at) + 12) {
    if (png.toString("latin1", at + 4, at + 8) !== "iTXt") continue;
    const data = png.subarray(at + 8, at + 8 + png.readUInt32BE(at));
    // Keyword, compressed or not, method, language, translated keyword, text.
    const keyword = data.indexOf(0);
    if (data.toString("latin1", 0, keyword) !== "sprigwright:recipe") continue;
    const language = data.indexOf(0, keyword + 3);
    const text = data.subarray(data.indexOf(0, language + 1) + 1);
    const json = data[keyword + 1] === 1 ? inflateSync(text) : text;
    return (JSON.parse(json.toString("utf8")) as { recipe: unknown }).recipe;
  }
  return undefined;
}
