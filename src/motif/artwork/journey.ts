import type { Element } from "@xmldom/xmldom";
import type { Matrix } from "../../geometry/matrix.ts";
import type { Runs } from "../../geometry/sketch.ts";
import type { FlatColor } from "./color.ts";
import type { Budget } from "./limits.ts";
import type { Dropped } from "./report.ts";
import type { Style } from "./style.ts";
import type { Viewport } from "./viewport.ts";

/** What an outline fills, in the coordinates of the root. */
export interface Region {
  readonly outline: Runs;
  readonly rule: "nonzero" | "evenodd";
  /** What it is cut to. */
  readonly clips: readonly Clip[];
}

/** One step of a clip: what shows as well, or, of a mask's black, shows no longer. */
export interface ClipRegion extends Region {
  readonly away?: boolean;
}

/** Everything but its regions, one after the other, is cut away; none: everything is. */
export interface Clip {
  readonly regions: readonly ClipRegion[];
}

/** One flat area of a drawing. */
export interface Painted extends Region, FlatColor {
  readonly kind: "painted";
  /** The element that painted it, for messages. */
  readonly from: string;
  /** Names of its element and of the groups around it, outermost first. */
  readonly trail: readonly Named[];
  /** Where in the file it comes from: its element, or the outermost `use` that led there. */
  readonly holder: Element;
}

/** Marks seen through: painted as one picture, which then covers what lies below by a share. */
export interface Veil {
  readonly kind: "veil";
  readonly alpha: number;
  readonly marks: Mark[];
}

/** What a walk leaves behind, in paint order. */
export type Mark = Painted | Veil;

/** All painted areas in a mark. */
export const leavesOf = (mark: Mark): Painted[] =>
  mark.kind === "veil" ? mark.marks.flatMap(leavesOf) : [mark];

/** What an element is called. */
export interface Named {
  /** Its id, and the label that an editor shows for it. */
  readonly names: readonly string[];
  readonly classes: readonly string[];
}

/** Where the walk stands. */
export interface Place {
  readonly matrix: Matrix;
  readonly style: Style;
  readonly viewport: Viewport | undefined;
  readonly depth: number;
  /** Where marks are left. */
  readonly marks: Mark[];
  readonly clips: readonly Clip[];
  readonly trail: readonly Named[];
  /** What `use` elements and clips are being followed: none may come back to itself. */
  readonly following: readonly Element[];
  readonly holder?: Element;
  /** The `use` that led to this element. */
  readonly use?: Element;
}

/** What the whole walk shares. */
export interface Journey {
  readonly warn: (what: string) => void;
  readonly drop: (element: string, why: Dropped["why"]) => void;
  readonly budget: Budget;
  readonly byId: (id: string) => Element | undefined;
  /** Clips that were read already, by their element and matrix. */
  readonly clips: Map<string, Clip>;
  readonly style: (element: Element, parent: Style) => Style;
  /** Counts a drawing element. */
  readonly count: () => void;
}
