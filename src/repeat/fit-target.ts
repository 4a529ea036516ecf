import { badInput, missingOption, outOfRange, unknownName, wrongType } from "../errors/catalogue.ts";
import { isRecord } from "../params/compound.ts";
import { type Length, mmToUm, toMm, UM_PER_INCH } from "../units/length.ts";
import { gcd, wholePixelStep } from "../units/pixels.ts";

/** What a repeat is fitted to. */
export type FitTarget =
  | {
      /** Width of the cloth that blocks lie across, such as "54in", 20 mm to 10 m. */
      readonly width: Length;
      /** How many blocks lie across. Default: as many as change the size least. */
      readonly repeats?: number;
    }
  | {
      /** Circumference of the rotary screen, 100 mm to 5 m. 640, 820, 914 and 1018 mm are common practice. */
      readonly roller: Length;
      /** How many blocks lie around it. Default: as many as change the size least. */
      readonly repeats?: number;
    }
  | {
      /** Width of the block in pixels, 16 to 200 000. */
      readonly pixels: number;
      /** Pixels to the inch, a whole number from 30 to 2400. */
      readonly dpi: number;
    };

/** A target in whole µm. */
export interface Goal {
  /** The side of the block that is fitted. */
  readonly side: "width" | "height";
  /** What that side must divide. */
  readonly length: number;
  /** How many times it must; undefined where that may be chosen. */
  readonly repeats: number | undefined;
  /** What both sides must be multiples of. */
  readonly step: number;
  /** How many pixels `length` was given as, where it was. */
  readonly pixels?: number;
}

const KINDS = ["width", "roller", "pixels"] as const;
const WITH = { width: ["repeats"], roller: ["repeats"], pixels: ["dpi"] } as const;

/** Checks a target. @throws SprigwrightError `wrong-type`, `missing-option`, `unknown-option`, ranges, `not-whole-pixels` */
export function readTarget(target: unknown): Goal {
  const wanted = "one of { width }, { roller } and { pixels, dpi }";
  if (!isRecord(target)) throw wrongType("fit", target, wanted);
  const kinds = KINDS.filter((kind) => target[kind] !== undefined);
  const [kind] = kinds;
  if (!kind) throw missingOption("fit", wanted);
  if (kinds.length > 1) throw wrongType("fit", target, wanted);
  const known: readonly string[] = [kind, ...WITH[kind]];
  for (const key of Object.keys(target))
    if (!known.includes(key)) throw unknownName(`fit > ${key}`, "option", key, known);
  if (kind === "pixels") return pixelGoal(target);
  const range = kind === "width" ? { min: 20, max: 10_000 } : { min: 100, max: 5000 };
  const mm = toMm(target[kind] as Length, `fit > ${kind}`);
  if (mm < range.min || mm > range.max) throw outOfRange(`fit > ${kind}`, mm, range, "mm", "length-range");
  const repeats =
    target["repeats"] === undefined ? undefined : whole(target["repeats"], "fit > repeats", 1, 500);
  return { side: kind === "width" ? "width" : "height", length: mmToUm(mm), repeats, step: 1 };
}

function pixelGoal(target: Readonly<Record<string, unknown>>): Goal {
  const pixels = whole(target["pixels"], "fit > pixels", 16, 200_000);
  const dpi = whole(target["dpi"], "fit > dpi", 30, 2400);
  const step = wholePixelStep(dpi);
  if ((pixels * UM_PER_INCH) % dpi !== 0) {
    const per = dpi / gcd(UM_PER_INCH, dpi);
    const below = per * Math.floor(pixels / per);
    const near = [below, below + per].filter((count) => count > 0).join(" or ");
    throw badInput(
      "not-whole-pixels",
      "fit > pixels",
      `${pixels} pixels at ${dpi} dpi are not a whole number of micrometres`,
      `give ${near} pixels, or another dpi`,
    );
  }
  return { side: "width", length: (pixels * UM_PER_INCH) / dpi, repeats: 1, step, pixels };
}

function whole(value: unknown, where: string, min: number, max: number): number {
  if (value === undefined) throw missingOption(where, `a whole number from ${min} to ${max}`);
  if (typeof value !== "number" || !Number.isInteger(value))
    throw wrongType(where, value, `a whole number from ${min} to ${max}`);
  if (value < min || value > max) throw outOfRange(where, value, { min, max }, "");
  return value;
}
