import { readdir, stat } from "node:fs/promises";
import { basename, dirname, extname, join, relative, resolve } from "node:path";
import { badInput } from "../../errors/catalogue.ts";
import { nearestName } from "../../errors/nearest.ts";
import { reasonOf } from "../faults.ts";

/** Endings of scripts, which are run. */
const SCRIPT_ENDINGS = [".ts", ".mts", ".js", ".mjs"];

/** A path that exists, made absolute, and what it is. */
export interface FoundPath {
  readonly path: string;
  readonly kind: "script" | "recipe" | "folder";
}

/**
 * Looks for a script, a recipe or a folder.
 * @throws SprigwrightError `no-such-file` with the nearest names beside it, `unknown-file-type`
 */
export async function findPath(file: string): Promise<FoundPath> {
  const path = resolve(file);
  const found = await stat(path).catch((cause: unknown) => cause as NodeJS.ErrnoException);
  if (found instanceof Error) {
    if (found.code !== "ENOENT" && found.code !== "ENOTDIR")
      throw badInput(
        "no-such-file",
        file,
        `it cannot be read: ${reasonOf(found)}`,
        "give a file that may be read",
        found,
      );
    throw badInput("no-such-file", file, "there is no such file", await nearby(path));
  }
  if (found.isDirectory()) return { path, kind: "folder" };
  const ending = extname(path);
  if (ending === ".json") return { path, kind: "recipe" };
  if (SCRIPT_ENDINGS.includes(ending)) return { path, kind: "script" };
  const endings = [...SCRIPT_ENDINGS, ".json"].join(", ");
  throw badInput(
    "unknown-file-type",
    file,
    "it is neither a script nor a recipe",
    `give a file that ends in ${endings}`,
  );
}

/** The scripts that lie directly in a folder, by name. */
export async function scriptsIn(folder: string): Promise<string[]> {
  const names = (await readdir(folder)).filter(isScriptName).sort();
  return names.map((name) => join(folder, name));
}

const isScriptName = (name: string): boolean =>
  SCRIPT_ENDINGS.includes(extname(name)) && !/\.d\.m?ts$/.test(name) && !name.startsWith(".");

async function nearby(path: string): Promise<string> {
  const folder = dirname(path);
  const shownFolder = relative(process.cwd(), folder) || "this folder";
  const entries = await readdir(folder).catch(() => undefined);
  if (!entries) return `give a file that exists; there is no folder ${shownFolder} either`;
  const names = entries.filter((name) => isScriptName(name) || extname(name) === ".json").sort();
  const near =
    nearestName(basename(path), names) ??
    names.find((name) => basename(name, extname(name)) === basename(path));
  if (near) return `did you mean "${near}"?`;
  if (names.length === 0) return `give a script; there is none in ${shownFolder}`;
  return `scripts in ${shownFolder}: ${names.slice(0, 8).join(", ")}${names.length > 8 ? ", …" : ""}`;
}
