import type { Runs } from "../../geometry/sketch.ts";

/** Parts of an em in which outlines are written: a part is 0.2 µm in letters 20 mm high. */
export const PARTS_PER_EM = 100_000;

/** Runs in mm as SVG path data in whole parts, `perMm` of them a mm, seen from (x, y). */
export function outlineData(runs: Runs, perMm: number, x: number, y: number): string {
  const words: string[] = [];
  for (const { points: p } of runs) {
    const at = (i: number): string =>
      `${Math.round((p[i]! - x) * perMm) + 0} ${Math.round((p[i + 1]! - y) * perMm) + 0}`;
    words.push(`M${at(0)}`);
    let before = at(0);
    for (let i = 2; i + 5 < p.length; i += 6) {
      const [first, second, end] = [at(i), at(i + 2), at(i + 4)];
      if (first === before && second === end) words.push(first === end ? "" : `L${end}`);
      else words.push(`C${first} ${second} ${end}`);
      before = end;
    }
    words.push("Z");
  }
  return words.join("");
}
