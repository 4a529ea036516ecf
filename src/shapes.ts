// What motifs are drawn with besides the pen, gathered under one name for the front door.

export { ellipse } from "./geometry/shapes.ts";
export { type BouquetOptions, bouquet } from "./motif/builders/bouquet.ts";
export { type BranchOptions, branch, type LeafPlace } from "./motif/builders/branch.ts";
export { brush } from "./motif/builders/brush.ts";
export { blob, type Curve, contour, curve, halves } from "./motif/builders/curve.ts";
export { drawingOf, type Parts, place, type Spot } from "./motif/builders/drawing.ts";
export { behind, inset, outline, type Paths, within } from "./motif/builders/offset.ts";
export { polygon } from "./motif/builders/polygon.ts";
export { type RosetteOptions, rosette } from "./motif/builders/rosette.ts";
export type { Ends } from "./motif/builders/spline.ts";
export { stack } from "./motif/builders/stack.ts";
