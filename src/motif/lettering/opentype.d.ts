// opentype.js 2 has no types of its own; this is the part of it that lettering uses.
declare module "opentype.js" {
  export interface Glyph {
    readonly index: number;
    readonly advanceWidth?: number;
    readonly path: { readonly commands: readonly import("./glyph.ts").OutlineStep[] };
  }
  export interface Font {
    readonly unitsPerEm: number;
    readonly tables: { readonly os2?: { readonly sCapHeight?: number } };
    getEnglishName(name: "fontFamily"): string | undefined;
    charToGlyph(character: string): Glyph;
    readonly kerningPairs: Readonly<Record<string, number>>;
  }
  /** The ES module build. */
  export const parse: ((bytes: ArrayBuffer) => Font) | undefined;
  /** The CommonJS build, as Node sees it. */
  const whole: { readonly parse: (bytes: ArrayBuffer) => Font } | undefined;
  export default whole;
}
