interface Point {
  readonly x: number;
  readonly y: number;
}

/** One step of a letter's outline, in font units, y upwards. */
export type OutlineStep =
  | (Point & { readonly type: "M" | "L" })
  | (Point & { readonly type: "Q"; readonly x1: number; readonly y1: number })
  | (Point & {
      readonly type: "C";
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
    })
  | { readonly type: "Z" };

/** A character's shape in a font, in font units, y upwards. */
export interface Glyph {
  readonly index: number;
  /** The OpenType script that it is kerned in. */
  readonly script: "latn" | "cyrl" | "grek";
  /** How far the pen moves on. */
  readonly advance: number;
  readonly commands: readonly OutlineStep[];
}

/** The script that a character is kerned in; whatever stands among Latin letters goes with them. */
export function scriptOf(character: string): Glyph["script"] {
  if (/\p{Script=Cyrillic}/u.test(character)) return "cyrl";
  return /\p{Script=Greek}/u.test(character) ? "grek" : "latn";
}
