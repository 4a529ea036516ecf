import { areaOf } from "../../geometry/path.ts";
import type { MotifUse } from "../motif.ts";
import { drawingOf, type FlatArea } from "./read.ts";
import { partsOf } from "./roles.ts";

/** A role of a drawing with the colour that most of it has. */
export interface RoleFill {
  readonly role: string;
  /** `#rrggbb` */
  readonly fill: string;
}

/** What every fill paints of every role, µm². */
export type Painted = ReadonlyMap<string, ReadonlyMap<string, number>>;

/** @param parts the part of every area */
export function paintedBy(
  areas: readonly FlatArea[],
  parts: readonly string[],
  roles: Readonly<Record<string, string>>,
): Painted {
  const painted = new Map<string, Map<string, number>>();
  areas.forEach(({ fill, path }, i) => {
    const of = painted.get(fill) ?? new Map<string, number>();
    const role = roles[parts[i]!]!;
    painted.set(fill, of.set(role, (of.get(role) ?? 0) + areaOf(path)));
  });
  return painted;
}

/** The fill that has most of a role. */
export const fillOf = (painted: Painted, role: string): string =>
  largest(new Map([...painted].map(([fill, of]) => [fill, of.get(role) ?? 0])));

/** The first of those with the largest area. */
export const largest = (areas: ReadonlyMap<string, number>): string =>
  [...areas].reduce((best, one) => (one[1] > best[1] ? one : best))[0];

/** The roles of an imported or traced drawing, back to front, with their colours; undefined for any other motif. */
export function roleFills({ use, params, roles }: MotifUse): readonly RoleFill[] | undefined {
  const named = [...new Set(Object.values(roles))];
  if (use === "artwork/traced")
    return named.map((role) => ({ role, fill: Object.keys(roles).find((ink) => roles[ink] === role)! }));
  if (use !== "artwork/artwork") return undefined;
  const { areas } = drawingOf(params as unknown as { readonly svg: string; readonly size: number });
  const painted = paintedBy(areas, partsOf(areas, roles).parts, roles);
  const drawn = new Set([...painted.values()].flatMap((of) => [...of.keys()]));
  return named.filter((role) => drawn.has(role)).map((role) => ({ role, fill: fillOf(painted, role) }));
}
