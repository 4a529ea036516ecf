/** What a {@link SprigwrightError} is made of. */
export interface ErrorParts {
  /** Stable kebab-case name of the kind of mistake, for programs. */
  readonly code: string;
  /** Path to the mistake, outermost name first, parts joined by " > ". */
  readonly where: string;
  /** What is wrong, with the value that was given. */
  readonly what: string;
  /** What would be right. */
  readonly fix: string;
  /** The error that led here, where there is one. */
  readonly cause?: unknown;
}

/**
 * The one class that this library throws.
 *
 * Wrong calls throw; problems of a print are findings, which `inspect` returns.
 * `message` reads `where: what`, then the fix and the code on a line of their own.
 */
export class SprigwrightError extends Error {
  readonly code: string;
  readonly where: string;
  readonly what: string;
  readonly fix: string;

  constructor(parts: ErrorParts) {
    const where = onOneLine(plain(parts.where));
    const [what, fix] = [plain(parts.what), plain(parts.fix)];
    super(
      `${where}: ${what}\n  fix: ${fix} [${parts.code}]`,
      parts.cause === undefined ? undefined : { cause: parts.cause },
    );
    this.name = "SprigwrightError";
    this.code = parts.code;
    this.where = where;
    this.what = what;
    this.fix = fix;
  }
}

/** Messages quote names from outside: what would steer a terminal or turn text round is spelled out. */
const plain = (text: string): string =>
  text.replace(
    /(?![\n\t])[\p{Cc}\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu,
    (sign) => `\\u{${sign.codePointAt(0)!.toString(16)}}`,
  );

/** A place may hold names from outside: it stays one line of at most 400 characters. */
const onOneLine = (where: string): string =>
  (where.length > 400 ? `${where.slice(0, 200)} … ${where.slice(-190)}` : where).replace(/\s+/g, " ");

/** Runs `work`, putting `prefix` in front of the place that any SprigwrightError names. */
export function within<T>(prefix: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (error instanceof SprigwrightError) {
      const { code, what, fix, cause } = error;
      throw new SprigwrightError({ code, what, fix, cause, where: `${prefix} > ${error.where}` });
    }
    throw error;
  }
}
