import { badInput } from "../errors/catalogue.ts";
import { SprigwrightError } from "../errors/error.ts";

/** What the system's error codes mean to somebody who wants a file. */
const REASONS: Readonly<Record<string, string>> = {
  EACCES: "there is no permission",
  EPERM: "there is no permission",
  EROFS: "the disk is read-only",
  ENOSPC: "the disk is full",
  EDQUOT: "the disk quota is used up",
  EEXIST: "a file is in the way",
  ENOTDIR: "a part of the path is a file",
  EISDIR: "a folder is in the way",
  ENAMETOOLONG: "the path is too long",
  ENOENT: "a part of the path does not exist",
};

/** The reason of a system error in plain words. */
export function reasonOf(cause: unknown): string {
  if (!(cause instanceof Error)) return String(cause);
  const code = (cause as NodeJS.ErrnoException).code;
  return (code !== undefined && REASONS[code]) || cause.message.split("\n")[0]!;
}

export const unwritableFolder = (folder: string, cause: unknown): SprigwrightError =>
  badInput(
    "unwritable-folder",
    folder,
    `nothing can be written there: ${reasonOf(cause)}`,
    "give a folder that may be made or written in",
    cause,
  );

export const writeFailed = (file: string, cause: unknown): SprigwrightError =>
  badInput(
    "write-failed",
    file,
    `it could not be written: ${reasonOf(cause)}`,
    "clear the way and run it again; no file of this pattern was left half-written",
    cause,
  );

/**
 * An error of this library, also when another copy of it threw: a script may have one of its own.
 * It comes back as an error of this copy, with `prefix` in front of the place it names.
 */
export function ownError(error: unknown, prefix = ""): SprigwrightError | undefined {
  if (!(error instanceof Error) || error.name !== "SprigwrightError") return undefined;
  const { code, where, what, fix, cause } = error as SprigwrightError;
  if (![code, where, what, fix].every((part) => typeof part === "string")) return undefined;
  if (error instanceof SprigwrightError && prefix === "") return error;
  return new SprigwrightError({ code, what, fix, cause, where: prefix ? `${prefix} > ${where}` : where });
}
