import { builtInChecks } from "../check/inspect.ts";
import { placeAt } from "../layout/place-at.ts";
import { set } from "../layout/set.ts";
import { toss } from "../layout/toss.ts";
import { berry, blossom, dot, leaf, ring, scallop, sprig, star } from "../motif/primitives/index.ts";
import { halfBrick } from "../repeat/half-brick.ts";
import { halfDrop } from "../repeat/half-drop.ts";
import { mirror } from "../repeat/mirror.ts";
import { straight } from "../repeat/straight.ts";
import { VERSION } from "../tile/version.ts";
import { definePlugin, type Plugin } from "./plugin.ts";

/** The library's own pieces, brought by the same interface that plugins use. */
export const builtIn = (): Plugin =>
  definePlugin({
    name: "sprigwright",
    version: VERSION,
    pieces: [
      ...[berry, blossom, dot, leaf, ring, scallop, sprig, star],
      ...[toss, set, placeAt],
      ...[straight, halfDrop, halfBrick, mirror],
      ...builtInChecks,
    ],
  });
