// Programs from outside that read print files. Debian: qpdf, mupdf-tools, ghostscript, poppler-utils, pngcheck, libxml2-utils.
import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Whether all of these programs are there; says loudly what is not. */
export function areInstalled(...programs: readonly string[]): boolean {
  const missing = programs.filter((program) => spawnSync("which", [program]).status !== 0);
  if (missing.length > 0)
    console.warn(`SKIPPED: ${missing.join(", ")} not installed, so these tests were not run`);
  return missing.length === 0;
}

/** What a program says, on both its outputs, about a file of these bytes; throws where it fails. */
export function askAbout(bytes: Uint8Array | string, program: string, ...words: readonly string[]): string {
  const folder = mkdtempSync(join(tmpdir(), "sprigwright-outside-"));
  try {
    writeFileSync(join(folder, "file"), bytes);
    const { status, stdout, stderr } = spawnSync(program, words, { cwd: folder, encoding: "utf8" });
    if (status !== 0) throw new Error(`${program} ${words.join(" ")}: ${stdout}${stderr}`);
    return stdout + stderr;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Runs a program on a file of these bytes, in a folder of its own, and hands that to `read` before it goes. */
export async function madeOf<T>(
  bytes: Uint8Array,
  program: string,
  words: readonly string[],
  read: (folder: string) => Promise<T>,
): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), "sprigwright-outside-"));
  try {
    writeFileSync(join(folder, "file"), bytes);
    execFileSync(program, words, { cwd: folder, stdio: ["ignore", "ignore", "pipe"] });
    return await read(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
