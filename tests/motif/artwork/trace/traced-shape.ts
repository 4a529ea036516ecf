// Holds what was traced against the drawing that was rendered.
import { flatten, type Ring } from "../../../../src/geometry/flatten.ts";
import { areaOf, boxOf, type Path } from "../../../../src/geometry/path.ts";
import { readPathData } from "../../../../src/geometry/path-data.ts";
import { pathOfRuns } from "../../../../src/geometry/path-of-runs.ts";
import { transformRuns } from "../../../../src/geometry/sketch.ts";
import { deviation } from "../../../../src/motif/artwork/deviation.ts";
import { traceImage } from "../../../../src/motif/artwork/trace/trace-image.ts";
import { drawMotif } from "../../../../src/motif/draw.ts";
import type { Motif, MotifUse } from "../../../../src/motif/motif.ts";
import { createRandom } from "../../../../src/seed/random.ts";
import { rendered, sheetOf } from "./painted.ts";

export const motifOf = (use: MotifUse): Motif => drawMotif(use, createRandom("trace"))[0]!;

export interface Held {
  /** Share by which the area is off. */
  readonly area: number;
  /** The farthest that outline and drawing lie from each other, in pixels, the worst of their rings. */
  readonly far: number;
  readonly nodes: number;
}

/** Traces path data on a page of 100 units, rendered by resvg `width` pixels wide, and holds it against the data. */
export function held(data: string, width: number): Held {
  // A pixel is a millimetre here, and 1000 of the path's steps.
  const use = traceImage(rendered(sheetOf(`<path d="${data}" fill="#3a5a40"/>`), width), { width });
  const shape = motifOf(use).shapes[0]!.path;
  const scale = width / 100;
  const drawn = pathOfRuns(transformRuns(readPathData(data, "reference"), [scale, 0, 0, scale, 0, 0]));
  const [own, wanted] = [centred(shape), centred(drawn)];
  let far = 0;
  if (own.length !== wanted.length) far = Infinity;
  for (const ring of wanted)
    far = Math.max(far, Math.min(...own.map((other) => deviation(ring, other, 1e9))));
  return {
    area: Math.abs(areaOf(shape)) / Math.abs(areaOf(drawn)) - 1,
    far: far / 1000,
    nodes: shape.points.length / 6,
  };
}

function centred(path: Path): Ring[] {
  const rings = flatten(path, 10);
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const ring of rings)
    for (let i = 0; i < ring.length; i += 2) {
      minX = Math.min(minX, ring[i]!);
      maxX = Math.max(maxX, ring[i]!);
      minY = Math.min(minY, ring[i + 1]!);
      maxY = Math.max(maxY, ring[i + 1]!);
    }
  const [x, y] = [(minX + maxX) / 2, (minY + maxY) / 2];
  // Rings that a union left in another order are found by their likeness.
  return rings.map((ring) => ring.map((v, i) => v - (i % 2 === 0 ? x : y)));
}

/** Smallest box of a motif's shapes, for where it lies. */
export const frameOf = (motif: Motif): ReturnType<typeof boxOf> => boxOf(motif.outline);
