// The door for Node: files and scripts. Everything else comes from the front door.

export { type LoadOptions, loadPatterns, loadPlugin } from "./node/load/load-patterns.ts";
export type { PictureKind, WriteOptions, WriteProgress } from "./node/write/options.ts";
export { writePattern } from "./node/write/write-pattern.ts";
export type { WrittenFile } from "./node/write/written.ts";
