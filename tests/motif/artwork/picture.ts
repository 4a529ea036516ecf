// Draws what was read beside what was given, for tests that compare the two as pictures.
import { Resvg } from "@resvg/resvg-js";
import { PNG } from "pngjs";
import { areaOf, eachContour, type Path } from "../../../src/geometry/path.ts";
import { drawingOf } from "../../../src/motif/artwork/read.ts";
import { type ArtworkShaping, readArtwork } from "../../../src/motif/artwork/read-artwork.ts";
import { drawMotif } from "../../../src/motif/draw.ts";
import type { Motif, MotifUse } from "../../../src/motif/motif.ts";
import { createRandom } from "../../../src/seed/random.ts";

/** An SVG file of a body on a page of some units. */
export const svgOf = (body: string, page = 32): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" viewBox="0 0 ${page} ${page}">${body}</svg>`;

/** The one motif that a use draws. */
export const drawnBy = (use: MotifUse): Motif => drawMotif(use, createRandom("picture"))[0]!;

function pathData(path: Path): string {
  const p = path.points;
  let data = "";
  eachContour(path, (from, to) => {
    data += `M${p[from]} ${p[from + 1]}`;
    for (let i = from; i < to; i += 6) {
      const end = i + 6 < to ? i + 6 : from;
      data += `C${p[i + 2]} ${p[i + 3]} ${p[i + 4]} ${p[i + 5]} ${p[end]} ${p[end + 1]}`;
    }
    data += "Z";
  });
  return data;
}

/** The drawing as it was read, in the colours and on the page of its file. */
export function redrawn(svg: string, ground: string, page = 32, shaping: ArtworkShaping = {}): string {
  const use = readArtwork(svg, shaping);
  return redrawnMotif(use, drawnBy(use), ground, page);
}

/** A motif that was drawn already, in the colours and on the page of its file. */
export function redrawnMotif(use: MotifUse, motif: Motif, ground: string, page = 32): string {
  const { areas, placed } = drawingOf(use.params as unknown as { svg: string; size: number });
  const [scale, , , , x, y] = placed;
  // A role that takes in several fills has the colour of the largest of them.
  const largest = new Map<string, { fill: string; area: number }>();
  const painted = new Map<string, number>();
  for (const { fill, path } of areas) painted.set(fill, (painted.get(fill) ?? 0) + areaOf(path));
  for (const [fill, area] of painted) {
    const role = use.roles[fill]!;
    if (area > (largest.get(role)?.area ?? 0)) largest.set(role, { fill, area });
  }
  const layers = motif.shapes.map(
    ({ role, path }) => `<path fill="${largest.get(role)?.fill}" d="${pathData(path)}"/>`,
  );
  const back = `translate(${-x / scale} ${-y / scale}) scale(${1 / scale / 1000})`;
  return svgOf(`${ground}<g transform="${back}">${layers.join("")}</g>`, page);
}

const pixels = (svg: string, width: number): Buffer =>
  PNG.sync.read(Buffer.from(new Resvg(svg, { fitTo: { mode: "width", value: width } }).render().asPng()))
    .data;

/** Peak signal-to-noise ratio of two drawings rendered by resvg (dB, 8-bit channels): 40 and above looks the same. */
export function likeness(one: string, other: string, width = 256): number {
  const [a, b] = [pixels(one, width), pixels(other, width)];
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i]! - b[i]!) * (a[i]! - b[i]!);
  return sum === 0 ? 99 : 10 * Math.log10((255 * 255 * a.length) / sum);
}
