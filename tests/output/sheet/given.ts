// What the tests of sheets start from.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { PNG } from "pngjs";
import type { Colorway } from "../../../src/colorway/colorway.ts";
import { type Box, boxOf } from "../../../src/geometry/path.ts";
import { loadFont } from "../../../src/motif/lettering/font.ts";
import type { Fill, Page } from "../../../src/output/sheet/page.ts";
import { buildTile } from "../../../src/tile/build.ts";
import type { Tile } from "../../../src/tile/tile.ts";
import { shore } from "../../given-patterns.ts";

const { resolve } = createRequire(import.meta.url);
export const font = loadFont(
  new Uint8Array(
    readFileSync(resolve("@fontsource/hanken-grotesk/files/hanken-grotesk-latin-400-normal.woff")),
  ),
);

export const tile: Tile = await buildTile(shore);
export const { dawn } = shore.colorways;

/** The shore in as many colorways as wanted. */
export const colorwaysOf = (count: number): Colorway[] =>
  Array.from({ length: count }, (_, i) => ({
    name: `tide-${i + 1}`,
    inks: { ...dawn.inks, ground: `#${(i * 40_503 + 0x203040).toString(16).padStart(6, "0").slice(-6)}` },
  }));

/** The shore with its layers shared out over as many roles as wanted, and a colorway for them. */
export function manyRoles(count: number): { tile: Tile; colorway: Colorway } {
  const roles = ["ground", ...Array.from({ length: count - 1 }, (_, i) => `role-${i + 1}`)];
  const layers = roles.slice(1).map((role, i) => ({ role, path: tile.layers[i % tile.layers.length]!.path }));
  const inks = Object.fromEntries(roles.map((role, i) => [role, i % 2 === 0 ? "#f6ead7" : "#28536b"]));
  return { tile: { ...tile, layers, recipe: { ...tile.recipe, roles } }, colorway: { name: "many", inks } };
}

export const texts = (page: Page): Fill[] =>
  page.items.filter((item): item is Fill => item.kind === "fill" && item.says !== undefined);
export const said = (page: Page): string[] => texts(page).map(({ says }) => says!);

export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}
export const decode = (png: Uint8Array): Pixels => PNG.sync.read(Buffer.from(png));

/**
 * Signal to noise of two pictures of a page at 120 dpi, in dB. Ours begins and ends cloth on whole pixels, so the pixels along
 * its edges are left out.
 */
export function psnr(a: Pixels, b: Pixels, page: Page): number {
  if (a.width !== b.width || a.height !== b.height)
    throw new Error(`${a.width} x ${a.height}, ${b.width} x ${b.height}`);
  const { width, height } = a;
  const pixel = (um: number): number => Math.floor(((um + page.bleed) * 120) / 25_400);
  const leftOut = new Uint8Array(width * height);
  for (const item of page.items) {
    if (item.kind !== "cloth") continue;
    const { minX, minY, maxX, maxY } = item.area;
    const [left, top, right, bottom] = [minX, minY, maxX, maxY].map(pixel) as [
      number,
      number,
      number,
      number,
    ];
    for (let y = Math.max(0, top - 1); y <= Math.min(height - 1, bottom + 1); y++)
      for (let x = Math.max(0, left - 1); x <= Math.min(width - 1, right + 1); x++)
        if (x < left + 2 || x > right - 2 || y < top + 2 || y > bottom - 2) leftOut[y * width + x] = 1;
  }
  let [sum, count] = [0, 0];
  leftOut.forEach((out, i) => {
    if (out === 1) return;
    count += 3;
    for (let c = 4 * i; c < 4 * i + 3; c++) sum += (a.data[c]! - b.data[c]!) ** 2;
  });
  return 10 * Math.log10((255 * 255 * count) / Math.max(1e-9, sum));
}

/** Pairs of texts whose boxes overlap, and what lies beyond the margin (mm): there should be none of either. */
export function clashes(page: Page, margin: number): string[] {
  const found: string[] = [];
  const boxes = texts(page).map((text) => ({ says: text.says!, box: boxOf(text.path) }));
  boxes.forEach((a, i) => {
    for (const b of boxes.slice(i + 1)) if (overlaps(a.box, b.box)) found.push(`"${a.says}" and "${b.says}"`);
  });
  const { width, height } = page.size;
  const um = margin * 1000;
  for (const item of page.items) {
    const box = item.kind === "cloth" ? item.area : boxOf(item.path);
    // Ticks may stand a little outside, and letters have overshoot.
    const slack = item.kind === "fill" && item.says === undefined ? 3000 : 300;
    if (
      box.minX < um - slack ||
      box.minY < um - slack ||
      box.maxX > width - um + slack ||
      box.maxY > height - um + slack
    )
      found.push(`${item.kind === "fill" ? (item.says ?? "a shape") : "cloth"} leaves the margins`);
    if (item.kind === "cloth")
      for (const text of boxes) if (overlaps(text.box, item.area)) found.push(`"${text.says}" lies on cloth`);
  }
  return found;
}

const overlaps = (a: Box, b: Box): boolean =>
  a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
