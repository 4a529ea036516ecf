export { berry } from "./berry.ts";
export { blossom } from "./blossom.ts";
export { dot } from "./dot.ts";
export { leaf } from "./leaf.ts";
export { ring } from "./ring.ts";
export { scallop } from "./scallop.ts";
export { sprig } from "./sprig.ts";
export { star } from "./star.ts";
