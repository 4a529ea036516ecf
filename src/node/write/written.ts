import type { FileKind } from "./formats/all.ts";

/** A file that `writePattern` wrote, or found as it should be. */
export interface WrittenFile {
  /** Its path, starting with the `out` that was given. */
  readonly file: string;
  readonly bytes: number;
  /** SHA-256 of its bytes, in hexadecimal. */
  readonly sha256: string;
  readonly kind: FileKind | "recipe" | "manifest";
  /** The colorway that it shows; recipe and manifest hold them all. */
  readonly colorway?: string;
  /** Whether it was there already, as it should be, and so was left alone. */
  readonly unchanged: boolean;
}
