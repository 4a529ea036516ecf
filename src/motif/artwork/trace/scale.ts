import type { TraceSetting } from "./options.ts";
import type { Picture } from "./picture.ts";

/** Where the size of a trace comes from. */
export type Sized = "size" | "width" | "dpi" | "file" | "default";

/** Pixels of the traced raster in a mm, where that does not hang on what is traced; and who says so. */
export function scaleOf(
  picture: Picture,
  { size, width, dpi }: TraceSetting,
  factor: number,
): { perMm: number | undefined; sized: Sized } {
  if (size !== undefined) return { perMm: undefined, sized: "size" };
  if (width !== undefined) return { perMm: picture.width / factor / width, sized: "width" };
  if (dpi !== undefined) return { perMm: dpi / 25.4 / factor, sized: "dpi" };
  if (picture.perMm !== undefined) return { perMm: picture.perMm / factor, sized: "file" };
  return { perMm: undefined, sized: "default" };
}
