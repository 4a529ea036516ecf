import { wrongType } from "../../errors/catalogue.ts";
import type { Path } from "../../geometry/path.ts";
import { isRecord, object, optional, readParams } from "../../params/compound.ts";
import { choice, length, number, turns } from "../../params/kinds.ts";
import type { Param } from "../../params/param.ts";
import type { Length } from "../../units/length.ts";
import type { RoleCycle } from "./role-cycle.ts";
import type { Align } from "./set-lines.ts";

/** A circle that letters stand on. */
export interface ArcOptions {
  /** From the centre to the baseline, 0.5 mm to 10 m. */
  readonly radius: Length;
  /**
   * "outside" (default): letters run clockwise, tops outwards, as on the upper half of a badge.
   * "inside": anticlockwise, tops to the centre, as on its lower half.
   */
  readonly side?: "outside" | "inside";
  /** Where `align` puts the text, in turns clockwise from the top. Default 0 outside (top), 0.5 inside (bottom). */
  readonly start?: number;
}

/** How letters are set, whatever they fill. */
export interface SetOptions {
  /** Size of type, 1 mm to 2 m: the height of an em, of which capitals take about 0.7. Default 20 mm. */
  readonly size?: Length;
  /** Room added between all letters, in thousandths of an em, -200 to 2000. Capitals like 20 to 100. Default 0. */
  readonly tracking?: number;
}

/** Options of {@link lettering}. */
export interface LetteringOptions<Role extends string> extends SetOptions {
  /** How lines stand to each other, or the text to its path; "justify" spreads the letters. Default "center". */
  readonly align?: Align;
  /** From one baseline to the next, as a multiple of `size`, 0.3 to 5. Default 1.2. */
  readonly lineHeight?: number;
  /** Sets one line on a circle. */
  readonly onArc?: ArcOptions;
  /** Sets one line along SVG path data in mm, or around a path from `pen()`. */
  readonly onPath?: string | Path;
  /**
   * On a circle or path: "even" (default) gives letters room where the line bends to their tops, so that those do not
   * crowd, by measuring lengths 0.3 em above the baseline there; "baseline" measures all along the baseline.
   */
  readonly spacing?: "even" | "baseline";
  /**
   * What the motif is placed and turned by: "middle" (default) of what is drawn, or the "anchor": the first baseline
   * where lines align, the circle's centre, or the path's own 0, 0.
   */
  readonly origin?: "middle" | "anchor";
  /** The role that the letters fill, or roles that letters, words or lines fill in turn; default "letter". */
  readonly role?: Role | RoleCycle<Role>;
}

const size: Param<Length, number, true> = length({ about: "Size of type.", min: 1, max: 2000, default: 20 });
const tracking: Param<number, number, true> = number({
  about: "Room between letters, in thousandths of an em.",
  min: -200,
  max: 2000,
  default: 0,
});
const align: Param<Align, Align, true> = choice({
  about: "How lines stand to each other.",
  of: ["left", "center", "right", "justify"],
  default: "center",
});
const side: Param<"outside" | "inside", "outside" | "inside", true> = choice({
  about: "Which side of the circle letters stand on.",
  of: ["outside", "inside"],
  default: "outside",
});
const origin: Param<"middle" | "anchor", "middle" | "anchor", true> = choice({
  about: "What the motif is placed by.",
  of: ["middle", "anchor"],
  default: "middle",
});
const spacing: Param<"even" | "baseline", "even" | "baseline", true> = choice({
  about: "How lengths are measured along curves.",
  of: ["even", "baseline"],
  default: "even",
});
const arc = {
  radius: length({ about: "From the centre to the baseline.", min: 0.5, max: 10_000 }),
  side,
  start: optional(turns({ about: "Where the text is put, clockwise from the top." })),
};

const setSpec = { size, tracking };
const spec = {
  ...setSpec,
  align,
  lineHeight: number({ about: "From baseline to baseline, in sizes.", min: 0.3, max: 5, default: 1.2 }),
  onArc: optional(object(arc, { about: "A circle to set on." })),
  spacing,
  origin,
};

/** Options of one lettering, checked and complete; lengths in mm. */
export interface Setting {
  readonly size: number;
  readonly tracking: number;
  readonly align: Align;
  readonly lineHeight: number;
  readonly onArc:
    | { readonly radius: number; readonly side: "outside" | "inside"; readonly start: number | undefined }
    | undefined;
  readonly spacing: "even" | "baseline";
  readonly origin: "middle" | "anchor";
  /** As it was given: what it is a path of is seen when it is followed. */
  readonly onPath: unknown;
  readonly role: unknown;
}

/** @throws SprigwrightError `length-range`, `number-range`, `unknown-option`, `wrong-type` */
export function readSetting(given: unknown, where: string): Setting {
  if (!isRecord(given)) throw wrongType(where, given, "an object of options");
  const { onPath, role, ...others } = given;
  return { ...readParams(spec, others, where), onPath, role };
}

/** Options that all motifs of a set share, checked and complete. */
export interface BareSetting {
  readonly size: number;
  readonly tracking: number;
  readonly role: unknown;
}

/** @throws SprigwrightError `length-range`, `number-range`, `unknown-option`, `wrong-type` */
export function readBareSetting(given: unknown, where: string): BareSetting {
  if (!isRecord(given)) throw wrongType(where, given, "an object of options");
  const { role, ...others } = given;
  return { ...readParams(setSpec, others, where), role };
}
