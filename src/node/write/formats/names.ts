import { mm } from "../../../geometry/path-text.ts";
import type { Cut } from "../../../output/cut.ts";
import { mmToUm, toMm } from "../../../units/length.ts";

/** What a cut adds to a file's name; nothing for one block. */
export function cutTag(cut: Cut): string {
  if (cut === "block") return "";
  if (cut === "unit") return "-unit";
  if ("across" in cut) return `-${cut.across}x${cut.down}`;
  const [width, height] = [cut.width, cut.height].map((side) => mm(mmToUm(toMm(side))));
  return `-${width}x${height}mm`;
}

/** The same in words. */
export function sayCut(cut: Cut): string {
  if (cut === "block") return "one block";
  if (cut === "unit") return "one unit";
  return "across" in cut
    ? `${cut.across} x ${cut.down} blocks`
    : `${cutTag(cut).slice(1).replace("x", " x ").replace("mm", " mm")} of cloth`;
}
