/** A file that `writePattern` wrote. */
export interface WrittenFile {
  /** Its path, starting with the `out` that was given. */
  readonly file: string;
  readonly bytes: number;
  readonly kind: "svg" | "png" | "field" | "recipe";
  /** The colorway that it shows; the recipe holds them all. */
  readonly colorway?: string;
}
