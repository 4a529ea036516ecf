import { strFromU8, Unzlib } from "fflate";
import { badInput, wrongType } from "../../errors/catalogue.ts";
import { type KeptRecipe, readKept } from "../kept-recipe.ts";
import { joinBytes, SIGNATURE } from "./chunks.ts";
import { RECIPE_KEYWORD } from "./notes.ts";

/** Longest text taken once unpacked (bytes): far above any real recipe. */
const LONGEST = 20_000_000;

/** Bytes unpacked at a time: each becomes at most 1032 (RFC 1951), so that a bomb is caught early. */
const STEP = 4096;

/**
 * The recipe in a PNG that `rasterize` wrote; undefined where there is none.
 * @throws SprigwrightError `bad-png` for bytes that are no PNG, or break off; `recipe-too-large`; `wrong-type`
 */
export function recipeInPng(bytes: Uint8Array): KeptRecipe | undefined {
  if (!(bytes instanceof Uint8Array))
    throw wrongType("recipeInPng", bytes, "the bytes of a PNG, a Uint8Array");
  if (SIGNATURE.some((byte, i) => bytes[i] !== byte)) throw bad("it is not a PNG");
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = 8; at + 12 <= bytes.length; ) {
    const length = view.getUint32(at);
    const type = strFromU8(bytes.subarray(at + 4, at + 8), true);
    const end = at + 8 + length;
    if (end + 4 > bytes.length) throw bad("it breaks off in the middle");
    if (type === "IEND") return undefined;
    const text = type === "iTXt" ? textOf(bytes.subarray(at + 8, end)) : undefined;
    const kept = text === undefined ? undefined : readKept(text);
    if (kept) return kept;
    at = end + 4;
  }
  throw bad("it breaks off in the middle");
}

/** The text of an iTXt chunk of ours (PNG, third edition, 11.3.3.4). */
function textOf(data: Uint8Array): string | undefined {
  const key = data.indexOf(0);
  if (strFromU8(data.subarray(0, Math.max(0, key)), true) !== RECIPE_KEYWORD) return undefined;
  const language = data.indexOf(0, key + 3);
  const translated = data.indexOf(0, language + 1);
  if (language < 0 || translated < 0) return undefined;
  const body = data.subarray(translated + 1);
  return strFromU8(data[key + 1] === 1 ? unpacked(body) : body);
}

function unpacked(packed: Uint8Array): Uint8Array {
  const parts: Uint8Array[] = [];
  let length = 0;
  const stream = new Unzlib((part) => {
    length += part.length;
    if (length > LONGEST)
      throw badInput("recipe-too-large", "recipeInPng", "its text unpacks to more than 20 MB", REMEDY);
    parts.push(part);
  });
  try {
    for (let at = 0; at < packed.length; at += STEP)
      stream.push(packed.subarray(at, at + STEP), at + STEP >= packed.length);
  } catch (error) {
    if (error instanceof Error && error.name === "SprigwrightError") throw error;
    throw bad("its recipe cannot be unpacked", error);
  }
  return joinBytes(parts);
}

const REMEDY = "give a PNG as it was written, not one that another program saved";
const bad = (what: string, cause?: unknown): Error => badInput("bad-png", "recipeInPng", what, REMEDY, cause);
