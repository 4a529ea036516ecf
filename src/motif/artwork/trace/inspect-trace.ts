import { extentOf } from "../../../geometry/extent.ts";
import { areaOf } from "../../../geometry/path.ts";
import { createRandom } from "../../../seed/random.ts";
import { drawMotif } from "../../draw.ts";
import type { Motif } from "../../motif.ts";
import type { ArtworkRole } from "../inspect.ts";
import type { TraceOptions } from "./options.ts";
import type { Pixels } from "./picture.ts";
import { tracedUse } from "./trace-image.ts";

/** An ink that was found in a picture. */
export interface TracedInk {
  /** `#rrggbb`, the mean of its pixels; of a listed ink, the colour that was listed. */
  readonly fill: string;
  readonly role: string;
  /** What it covers in the picture, in mm². */
  readonly area: number;
}

/** What {@link traceImage} makes of a picture. */
export interface TraceReport {
  /** Of all that is traced, mm. */
  readonly width: number;
  /** mm */
  readonly height: number;
  /** Pixels an inch, and where that was found; `"default"`: nowhere. */
  readonly dpi: number;
  readonly sized: "size" | "width" | "dpi" | "file" | "default";
  /** Areas of ink that hang together, specks included. */
  readonly shapes: number;
  /** Colour of the paper that is left out, `"transparent"`, or nothing where there is none. */
  readonly paper: string | undefined;
  /** Back to front. */
  readonly inks: readonly TracedInk[];
  /** Back to front, as the layers stack; areas include what others cover. */
  readonly roles: readonly ArtworkRole[];
  /** Areas that were too small: of ink, and of paper within ink. */
  readonly dropped: { readonly specks: number; readonly pinholes: number };
  /** Points of the edges that were found, and nodes of the outlines. */
  readonly nodes: { readonly before: number; readonly after: number };
  /** Corners that were kept. */
  readonly corners: number;
  /** The farthest that an outline lies from the edge that was found, corners apart; mm. */
  readonly deviation: number;
  /** What a user should know; empty when all is plain. */
  readonly warnings: readonly string[];
}

/**
 * Says what a picture becomes, with the same options: copy its inks from here to name their roles.
 * @throws as traceImage
 */
export function inspectTrace(
  picture: Uint8Array | ArrayBuffer | Pixels,
  options: TraceOptions<Readonly<Record<string, string>>> = {},
): TraceReport {
  const { use, trace, notes } = tracedUse(picture, options);
  const { analysis, layers, perMm, factor } = trace;
  const [motif] = drawMotif(use, createRandom("inspect"));
  const outlines = layers.flatMap((layer) => layer.outlines);
  const inks = layers.flatMap(({ group }) =>
    group.inks.map(({ ink, pixels }) => ({
      fill: ink.fill,
      role: group.role,
      area: mm2(pixels / perMm / perMm),
    })),
  );
  const paper = analysis.palette.inks[analysis.palette.paper];
  const clear = analysis.palette.inks.some((ink) => ink.clear);
  return {
    width: extent(motif!, 0),
    height: extent(motif!, 1),
    ...{ inks, sized: trace.sized, warnings: notes },
    dpi: Math.round(perMm * factor * 254) / 10,
    shapes: analysis.areas,
    paper: paper && !paper.clear ? paper.fill : clear ? "transparent" : undefined,
    roles: motif!.shapes.map(({ role, path }) => {
      const parts = inks.filter((ink) => ink.role === role).map(({ fill }) => fill);
      return { role, fill: parts[0]!, parts, area: mm2(areaOf(path) / 1e6) };
    }),
    dropped: { specks: analysis.specks, pinholes: analysis.pinholes },
    nodes: {
      before: trace.points,
      after: motif!.shapes.reduce((sum, { path }) => sum + path.points.length / 6, 0),
    },
    corners: outlines.reduce((sum, outline) => sum + outline.corners, 0),
    deviation: Math.round((Math.max(...outlines.map(({ far }) => far)) / perMm) * 1000) / 1000,
  };
}

/** Width or height of all that is drawn, in mm. */
function extent(motif: Motif, axis: 0 | 1): number {
  const ends = motif.shapes.map(({ path }) => extentOf(path, axis));
  const [least, most] = [Math.min(...ends.map(([from]) => from)), Math.max(...ends.map(([, to]) => to))];
  return Math.round(most - least) / 1000;
}

const mm2 = (area: number): number => Math.round(area * 1e3) / 1e3;

/** A report in a line: `14 shapes in, 3 inks out, 3 roles; left out: 9 specks, 2 pinholes; 84 nodes from 5120`. */
export function sayTrace({ shapes, inks, roles, dropped, nodes }: TraceReport): string {
  const many = (count: number, what: string): string => `${count} ${what}${count === 1 ? "" : "s"}`;
  const { specks, pinholes } = dropped;
  const left = [...(specks ? [many(specks, "speck")] : []), ...(pinholes ? [many(pinholes, "pinhole")] : [])];
  return [
    `${many(shapes, "shape")} in, ${many(inks.length, "ink")}, ${many(roles.length, "role")} out`,
    ...(left.length > 0 ? [`left out: ${left.join(", ")}`] : []),
    `${many(nodes.after, "node")} from ${nodes.before}`,
  ].join("; ");
}
