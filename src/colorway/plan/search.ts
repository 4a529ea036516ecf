import type { InkTable } from "./ink-table.ts";
import type { Sight } from "./sight.ts";

/** What a plan may not break. */
export interface Rules {
  /** By role: the only inks (numbers in the table) it may have; undefined for any of the palette. */
  readonly held: readonly (readonly number[] | undefined)[];
  /** Pairs of roles of which the first has to be lighter. */
  readonly order: readonly (readonly [lighter: number, darker: number])[];
  /** Least WCAG contrast with the ground of a role that lies on it. */
  readonly minContrast: number;
}

/** Where inks are looked for. */
export interface Search {
  readonly sight: Sight;
  readonly table: InkTable;
  readonly rules: Rules;
  readonly palette: number;
  /** Inks of the palette, numbers in the table. */
  readonly inks: readonly number[];
}
