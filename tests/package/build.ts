// Before the tests of the package: builds it if the source is newer, packs it, and installs it in an empty folder.
import { execFileSync, spawnSync } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import type { TestProject } from "vitest/node";

declare module "vitest" {
  interface ProvidedContext {
    /** A folder in which the packed package is installed, and nothing else. */
    installed: string;
  }
}

const root = join(import.meta.dirname, "../..");

export default function setup(project: TestProject): () => void {
  if (isStale()) build();
  const folder = mkdtempSync(join(tmpdir(), "sprigwright-installed-"));
  install(folder);
  project.provide("installed", folder);
  return () => rmSync(folder, { recursive: true, force: true });
}

function build(): void {
  const { status, stdout, stderr } = spawnSync("npm", ["run", "--silent", "build"], {
    cwd: root,
    encoding: "utf8",
  });
  if (status !== 0) throw new Error(`the package does not build\n${stdout}\n${stderr}`);
}

function isStale(): boolean {
  const built = join(root, "dist/index.d.ts");
  if (!existsSync(built)) return true;
  const inputs = [...filesIn(join(root, "src")), join(root, "package.json"), join(root, "tsup.config.ts")];
  const last = Math.max(...inputs.map((file) => statSync(file).mtimeMs));
  return last > statSync(built).mtimeMs;
}

const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));

function install(folder: string): void {
  const npm = (words: string[], cwd: string): string =>
    execFileSync("npm", words, { cwd, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"], timeout: 60_000 });
  const [packed] = JSON.parse(npm(["pack", "--json", "--pack-destination", folder], root)) as {
    filename: string;
  }[];
  writeFileSync(join(folder, "package.json"), '{ "name": "studio", "private": true, "type": "module" }\n');
  const tarball = join(folder, packed!.filename);
  try {
    npm(["install", tarball, "--prefer-offline", "--no-audit", "--no-fund", "--ignore-scripts"], folder);
  } catch {
    // No registry within reach: the same tarball, with the dependencies that are installed here.
    const place = join(folder, "node_modules/sprigwright");
    mkdirSync(place, { recursive: true });
    execFileSync("tar", ["-xzf", tarball, "-C", place, "--strip-components=1"]);
    link(Object.keys(dependencies()), folder);
  }
}

const dependencies = (): Readonly<Record<string, string>> =>
  (JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { dependencies: Record<string, string> })
    .dependencies;

function link(names: readonly string[], folder: string): void {
  for (const name of names) {
    const place = join(folder, "node_modules", name);
    mkdirSync(dirname(place), { recursive: true });
    symlinkSync(join(root, "node_modules", name), place, "dir");
  }
}
