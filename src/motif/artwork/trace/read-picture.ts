import { wrongType } from "../../../errors/catalogue.ts";
import type { Picture, Pixels } from "./picture.ts";
import { checkExtent } from "./png/header.ts";
import { readPng } from "./png/read-png.ts";
import { badPicture } from "./png/refused.ts";

/**
 * A PNG's bytes, or pixels.
 * @throws SprigwrightError `wrong-type`, `not-png`, `bad-picture`, `picture-too-large`
 */
export function readPicture(given: unknown, where: string): Picture {
  if (given instanceof Uint8Array) return readPng(given, where);
  if (given instanceof ArrayBuffer) return readPng(new Uint8Array(given), where);
  const { width, height, data } = (given ?? {}) as Partial<Pixels>;
  const bytes = data instanceof Uint8Array || data instanceof Uint8ClampedArray;
  if (!bytes || !Number.isInteger(width) || !Number.isInteger(height))
    throw wrongType(where, given, "the bytes of a PNG, or { width, height, data } with four bytes a pixel");
  checkExtent(width!, height!, where);
  if (data.length !== 4 * width! * height!)
    throw badPicture(
      where,
      `${data.length} bytes are not ${width} x ${height} pixels of four bytes`,
      "give red, green, blue and alpha of every pixel",
    );
  return { width: width!, height: height!, data, notes: [] };
}
