// The library's own schemes: they make and change palettes.

export { bright } from "./bright.ts";
export { deep } from "./deep.ts";
export { dusk } from "./dusk.ts";
export { analogous, complementary, split, tetrad, triad } from "./harmonies.ts";
export { muted } from "./muted.ts";
export { nightGround } from "./night-ground.ts";
export { pastel } from "./pastel.ts";
export { sunBleached } from "./sun-bleached.ts";
export { tonal } from "./tonal.ts";
export { twoInk } from "./two-ink.ts";
