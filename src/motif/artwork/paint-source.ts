import type { Element } from "@xmldom/xmldom";
import type { Runs } from "../../geometry/sketch.ts";
import type { Style } from "./style.ts";
import type { Viewport } from "./viewport.ts";

/** What a paint needs to know of its drawing. */
export interface PaintSource {
  /** The element with an id of this file. */
  readonly byId: (id: string) => Element | undefined;
  /** The style of a gradient's stop. */
  readonly styleOf: (stop: Element) => Style;
  readonly viewport: Viewport;
  /** What is painted, in its own coordinates, and whether its inside or its line. */
  readonly outline: Runs;
  readonly kind: "fill" | "stroke";
  /** Takes a sentence about what was changed or left out. */
  readonly warn: (what: string) => void;
}
