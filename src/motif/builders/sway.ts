import type { MotifTools } from "../motif.ts";

/** A number by chance from `-most` to `most`, scaled by how far the drawing may stray: 0 when it may not. */
export const sway = ({ vary, random }: MotifTools, most: number): number =>
  vary === 0 ? 0 : vary * random.between(-most, most);
