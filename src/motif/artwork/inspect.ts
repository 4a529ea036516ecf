import { areaOf } from "../../geometry/path.ts";
import { createRandom } from "../../seed/random.ts";
import { drawMotif } from "../draw.ts";
import { drawingOf } from "./read.ts";
import { type ArtworkOptions, readArtwork } from "./read-artwork.ts";
import type { Dropped } from "./report.ts";
import { fillOf, largest, paintedBy } from "./role-fills.ts";
import { partsOf } from "./roles.ts";
import { separate } from "./separate.ts";

/** One colour of a drawing. */
export interface ArtworkFill {
  /** Its colour in the file, `#rrggbb`; half transparent paint in the colour that is seen. */
  readonly fill: string;
  /** The role that it fills, or, where names decide, that most of it fills. */
  readonly role: string;
  /** What it paints, in mm², parts that others cover included. */
  readonly area: number;
}

/** One layer of the motif that a drawing becomes. */
export interface ArtworkRole {
  readonly role: string;
  /** The colour of the file that most of it has: a first ink for it. */
  readonly fill: string;
  /** Colours and names of the file that it takes in. */
  readonly parts: readonly string[];
  /** mm² of the layer, what others cover of it included. */
  readonly area: number;
}

/** What {@link readArtwork} makes of a drawing, and what became of everything in the file. */
export interface ArtworkReport {
  /** mm */
  readonly width: number;
  /** mm */
  readonly height: number;
  /** Drawing elements of the file, those that `use` repeats counted each time. */
  readonly shapes: number;
  /** Back to front, as the layers stack. */
  readonly roles: readonly ArtworkRole[];
  /** Back to front, as the layers stack. */
  readonly fills: readonly ArtworkFill[];
  /** Shapes that are not in the motif, and why. */
  readonly dropped: readonly Dropped[];
  /** Knock-outs: what was cut away from a role for others that lie lower in the stack; mm². */
  readonly cut: readonly { readonly role: string; readonly for: readonly string[]; readonly area: number }[];
  /** Nodes of all shapes that are kept, as drawn, and of all layers of the motif. */
  readonly nodes: { readonly before: number; readonly after: number };
  /** What was changed or left out, naming the element and what to do; empty when the drawing is taken as it is. */
  readonly warnings: readonly string[];
}

/**
 * Says what a drawing becomes, with the same options: copy its fills from here to name their roles.
 * @throws as readArtwork
 */
export function inspectArtwork(
  svg: string,
  options: ArtworkOptions<Readonly<Record<string, string>>> = {},
): ArtworkReport {
  const use = readArtwork(svg, options as { readonly roles: Readonly<Record<string, string>> });
  const { areas, width, height, shapes, dropped, warnings } = drawingOf(
    use.params as unknown as { readonly svg: string; readonly size: number },
  );
  const { parts } = partsOf(areas, use.roles);
  const { cut } = separate(areas, use.roles);
  const [motif] = drawMotif(use, createRandom("inspect"));
  const painted = paintedBy(areas, parts, use.roles);
  const order = [...new Set(Object.values(use.roles))];
  const fills = [...painted]
    .map(([fill, roles]) => ({
      fill,
      role: largest(roles),
      area: mm2([...roles.values()].reduce((sum, area) => sum + area, 0)),
    }))
    .sort((p, q) => order.indexOf(p.role) - order.indexOf(q.role));
  const roles = motif!.shapes.map(({ role, path }): ArtworkRole => {
    const own = Object.keys(use.roles).filter((part) => use.roles[part] === role);
    return { role, fill: fillOf(painted, role), parts: own, area: mm2(areaOf(path)) };
  });
  const nodes = {
    before: areas.reduce((sum, { path }) => sum + path.points.length / 6, 0),
    after: motif!.shapes.reduce((sum, { path }) => sum + path.points.length / 6, 0),
  };
  return {
    ...{ width, height, shapes, roles, fills, dropped, nodes, warnings },
    cut: cut.map((one) => ({ ...one, area: mm2(one.area) })),
  };
}

/** A report in a line: `42 shapes in, 3 roles out; left out: 6 covered, 2 hidden; 310 nodes from 512`. */
export function sayArtwork({ shapes, roles, dropped, nodes }: ArtworkReport): string {
  const counts = new Map<string, number>();
  for (const { why } of dropped) counts.set(why, (counts.get(why) ?? 0) + 1);
  const left = [...counts].map(([why, count]) => `${count} ${why}`).join(", ");
  const many = (count: number, what: string): string => `${count} ${what}${count === 1 ? "" : "s"}`;
  return [
    `${many(shapes, "shape")} in, ${many(roles.length, "role")} out`,
    ...(left === "" ? [] : [`left out: ${left}`]),
    `${many(nodes.after, "node")} from ${nodes.before}`,
  ].join("; ");
}

const mm2 = (um2: number): number => Math.round(um2 / 1e3) / 1e3;
