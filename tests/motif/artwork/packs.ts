// Drawings by other hands, from npm packages: Fluent Emoji, flat style (Microsoft, MIT licence) and Noto Emoji
// (Google, Apache licence 2.0), as the packages @iconify-json/fluent-emoji-flat and @iconify-json/noto hold them.
import { readFileSync } from "node:fs";
import { SprigwrightError } from "../../../src/errors/error.ts";
import { drawingOf } from "../../../src/motif/artwork/read.ts";
import { readArtwork } from "../../../src/motif/artwork/read-artwork.ts";
import { completeRoles } from "../../../src/motif/artwork/roles.ts";
import { drawnBy, likeness, redrawnMotif, svgOf } from "./picture.ts";

export interface PackDrawing {
  readonly name: string;
  readonly body: string;
  /** Side of its page. */
  readonly page: number;
  readonly hasGradients: boolean;
}

/** All drawings of a pack. */
export function drawingsOf(pack: "fluent-emoji-flat" | "noto"): PackDrawing[] {
  const file = new URL(`../../../node_modules/@iconify-json/${pack}/icons.json`, import.meta.url);
  const { icons, width } = JSON.parse(readFileSync(file, "utf8")) as {
    icons: Record<string, { body: string }>;
    width: number;
  };
  return Object.entries(icons).map(([name, { body }]) => ({
    ...{ name, body, page: width },
    hasGradients: body.includes("Gradient"),
  }));
}

/** What became of one drawing. */
export interface Tried {
  readonly name: string;
  /** Code of the refusal. */
  readonly refused?: string;
  /** What was thrown, when it was no refusal. */
  readonly crash?: string;
  /** Likeness to resvg's picture of the file, dB. */
  readonly db?: number;
  /** Roles when colours merge within ΔE00 8. */
  readonly roles?: number;
  /** Milliseconds to read it, and to read and draw it. */
  readonly read: number;
  readonly drawn: number;
}

/** Processor time, since the clock on the wall also counts what else a machine does. */
const milliseconds = (since: NodeJS.CpuUsage): number => {
  const { user, system } = process.cpuUsage(since);
  return (user + system) / 1000;
};

/** Reads and draws a drawing, and holds the picture against resvg's unless `compare` is false. */
export function attempt({ name, body, page }: PackDrawing, compare = true): Tried {
  const svg = svgOf(body, page);
  const since = process.cpuUsage();
  try {
    const use = readArtwork(svg);
    const read = milliseconds(since);
    const motif = drawnBy(use);
    const drawn = milliseconds(since);
    if (!compare) return { name, read, drawn };
    const { areas } = drawingOf(use.params as unknown as { svg: string; size: number });
    const roles = new Set(Object.values(completeRoles(areas, {}, 8))).size;
    const ground = `<rect width="${page}" height="${page}" fill="#fff"/>`;
    const db = likeness(svgOf(ground + body, page), redrawnMotif(use, motif, ground, page));
    return { name, read, drawn, roles, db };
  } catch (error) {
    const drawn = milliseconds(since);
    if (error instanceof SprigwrightError) return { name, refused: error.code, read: drawn, drawn };
    return { name, crash: String(error), read: drawn, drawn };
  }
}

/** The value below which a share of a list lies. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(share * (sorted.length - 1))] ?? Number.NaN;
}
