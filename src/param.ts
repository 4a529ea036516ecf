// The kinds of parameters that a piece can declare, gathered under one name for the front door.

export { ink, palette } from "./colorway/param.ts";
export { layout } from "./layout/param.ts";
export { motif } from "./motif/param.ts";
export { list, object, optional } from "./params/compound.ts";
export { choice, flag, integer, length, number, share, span, text, turns } from "./params/kinds.ts";
