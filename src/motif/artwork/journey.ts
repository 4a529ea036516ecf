import type { Element } from "@xmldom/xmldom";
import type { Matrix } from "../../geometry/matrix.ts";
import type { Budget } from "./limits.ts";
import type { Outline } from "./outline.ts";
import type { PaintSource } from "./paint.ts";
import type { Style } from "./style.ts";
import type { Viewport } from "./viewport.ts";

/** One flat area of a drawing, in the coordinates of its root. */
export interface Painted {
  readonly fill: string;
  readonly outline: Outline;
  readonly rule: "nonzero" | "evenodd";
  /** The element that painted it, for messages. */
  readonly from: string;
}

/** Where the walk stands. */
export interface Place {
  readonly matrix: Matrix;
  readonly style: Style;
  readonly viewport: Viewport | undefined;
  readonly opacity: number;
  readonly depth: number;
  /** What `use` elements are being followed: none may come back to itself. */
  readonly following: readonly Element[];
  /** The `use` that led to this element. */
  readonly use?: Element;
}

/** What the whole walk shares. */
export interface Journey {
  readonly painted: Painted[];
  readonly warn: (what: string) => void;
  readonly budget: Budget;
  readonly byId: (id: string) => Element | undefined;
  /** Gradients that were flattened already. */
  readonly means: PaintSource["means"];
  readonly style: (element: Element, parent: Style) => Style;
}
