import { isStraight } from "./flatten.ts";
import { CURVE, eachContour, type Path } from "./path.ts";

/** SVG path data of a path, in mm to the micrometre: absolute M, L, C and Z, which every editor reads. */
export function pathData(path: Path): string {
  const p = path.points;
  const at = (i: number): string => `${mm(p[i]!)} ${mm(p[i + 1]!)}`;
  const parts: string[] = [];
  eachContour(path, (from, to) => {
    parts.push(`M${at(from)}`);
    for (let i = from; i < to; i += CURVE) {
      const last = i + CURVE >= to;
      const end = last ? from : i + CURVE;
      if (!isStraight(p, i, end)) parts.push(`C${at(i + 2)} ${at(i + 4)} ${at(end)}`);
      else if (!last) parts.push(`L${at(end)}`);
    }
    parts.push("Z");
  });
  return parts.join("");
}

/** Whole µm as mm without trailing zeros, exactly. */
export function mm(um: number): string {
  const text = String(Math.abs(um)).padStart(4, "0");
  const fraction = text.slice(-3).replace(/0+$/, "");
  return `${um < 0 ? "-" : ""}${text.slice(0, -3)}${fraction ? `.${fraction}` : ""}`;
}
