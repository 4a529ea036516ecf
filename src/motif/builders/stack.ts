import { unite } from "../../geometry/boolean.ts";
import type { Path } from "../../geometry/path.ts";
import type { Drawing } from "../motif.ts";
import { mapParts, type Parts } from "./drawing.ts";
import { checkNumbers } from "./given.ts";
import { behind } from "./offset.ts";

/**
 * Drawings one over the other, back to front, as one drawing with all their parts: each is cut away under what lies in front
 * of it and `gap` mm around that, so that the ground shows between and one ink never has to cover another.
 * Parts within one drawing are left as they are.
 */
export function stack<Part extends string>(
  drawings: readonly Partial<Drawing<Part>>[],
  gap = 0,
): Parts<Part> {
  checkNumbers("stack", { gap });
  const out = {} as Record<Part, Path[]>;
  let cover: Path[] = [];
  for (const drawing of [...drawings].reverse()) {
    const cut = mapParts(drawing as Drawing<Part>, (paths) => {
      const seen = cover.length === 0 ? unite(paths) : behind(paths, cover, gap);
      return seen.contours.length > 0 ? [seen] : [];
    });
    for (const [part, paths] of Object.entries(cut) as [Part, Path[]][])
      out[part] = [...paths, ...(out[part] ?? [])];
    const all = Object.values(mapParts(drawing as Drawing<Part>, (paths) => paths)) as (readonly Path[])[];
    cover = [unite([...cover, ...all.flat()])];
  }
  return out;
}
