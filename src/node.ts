// The door for Node: files and scripts. Everything else comes from the front door.

export { defaultFont } from "./node/default-font.ts";
export { type LoadOptions, loadPatterns, loadPlugin } from "./node/load/load-patterns.ts";
export { loadPicks } from "./node/load/load-picks.ts";
export { type TiffOptions, toTiff } from "./node/tiff/to-tiff.ts";
export type { FileKind } from "./node/write/formats/all.ts";
export type { WriteOptions, WriteProgress } from "./node/write/options.ts";
export { writePattern } from "./node/write/write-pattern.ts";
export type { WrittenFile } from "./node/write/written.ts";
