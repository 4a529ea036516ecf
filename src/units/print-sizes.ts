import { outOfRange, unknownName, wrongType } from "../errors/catalogue.ts";
import { type Length, mmToUm, toMm, UM_PER_INCH } from "./length.ts";

/** How often a sheet was cut in half. */
type Step = 0 | 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10;

/** Sheet sizes of ISO 216. */
export type IsoSize = `A${Step}` | `B${Step}`;

/** Sizes that frames are sold in, in inches and in centimetres, and the letter sheet. Common practice. */
export type FrameSize =
  | "letter"
  | "5x7in"
  | "8x10in"
  | "11x14in"
  | "12x16in"
  | "16x20in"
  | "18x24in"
  | "24x36in"
  | "13x18cm"
  | "18x24cm"
  | "21x30cm"
  | "30x40cm"
  | "40x50cm"
  | "50x70cm"
  | "60x80cm"
  | "70x100cm";

/** A size to print at: a standard sheet or frame by its name (upright), or any width and height. */
export type PrintSize = IsoSize | FrameSize | { readonly width: Length; readonly height: Length };

const INCHES: readonly (readonly [short: number, long: number])[] = [
  [5, 7],
  [8, 10],
  [11, 14],
  [12, 16],
  [16, 20],
  [18, 24],
  [24, 36],
];
const CENTIMETRES: readonly (readonly [short: number, long: number])[] = [
  [13, 18],
  [18, 24],
  [21, 30],
  [30, 40],
  [40, 50],
  [50, 70],
  [60, 80],
  [70, 100],
];

/** Smallest and largest side of a print, in mm. */
export const PRINT_SIDES = { min: 20, max: 5000 } as const;

/**
 * Every size that has a name: width and height in whole µm, upright.
 *
 * ISO 216: sides are as 1 to √2; A0 has one square metre, B0 is a metre wide, both to the nearest mm; every next
 * size is the one before cut in half across its longer side, and halves of a millimetre are dropped.
 */
export function printSizes(): Readonly<
  Record<IsoSize | FrameSize, readonly [width: number, height: number]>
> {
  const sizes: Record<string, readonly [number, number]> = {};
  const root = Math.sqrt(Math.SQRT2);
  for (const [series, short, long] of [
    ["A", 1000 / root, 1000 * root],
    ["B", 1000, 1000 * Math.SQRT2],
  ] as const) {
    let [width, height] = [Math.round(short), Math.round(long)];
    for (let n = 0; n <= 10; n++) {
      sizes[`${series}${n}`] = [mmToUm(width), mmToUm(height)];
      [width, height] = [Math.floor(height / 2), width];
    }
  }
  // 8 1/2 by 11 inches: size A of ANSI Y14.1.
  sizes["letter"] = [8.5 * UM_PER_INCH, 11 * UM_PER_INCH];
  for (const [short, long] of INCHES) sizes[`${short}x${long}in`] = [short * UM_PER_INCH, long * UM_PER_INCH];
  for (const [short, long] of CENTIMETRES)
    sizes[`${short}x${long}cm`] = [mmToUm(short * 10), mmToUm(long * 10)];
  return sizes as ReturnType<typeof printSizes>;
}

/**
 * A print size in whole µm.
 * @throws SprigwrightError `unknown-print-size`, `wrong-type`, `length-range` for sides outside 20 mm to 5 m
 */
export function readPrintSize(
  size: unknown,
  where: string,
): { readonly width: number; readonly height: number } {
  if (typeof size === "string") {
    const known: Readonly<Record<string, readonly [number, number]>> = printSizes();
    if (!Object.hasOwn(known, size)) throw unknownName(where, "print size", size, Object.keys(known));
    const [width, height] = known[size]!;
    return { width, height };
  }
  const wanted = 'a size such as "A4", "8x10in", "50x70cm" or { width: "12in", height: "12in" }';
  if (typeof size !== "object" || size === null || Array.isArray(size)) throw wrongType(where, size, wanted);
  for (const key of Object.keys(size))
    if (key !== "width" && key !== "height")
      throw unknownName(`${where} > ${key}`, "option", key, ["width", "height"]);
  const side = (name: "width" | "height"): number => {
    const mm = toMm((size as Record<string, Length>)[name]!, `${where} > ${name}`);
    if (mm < PRINT_SIDES.min || mm > PRINT_SIDES.max)
      throw outOfRange(`${where} > ${name}`, mm, PRINT_SIDES, "mm", "length-range");
    return mmToUm(mm);
  };
  return { width: side("width"), height: side("height") };
}
