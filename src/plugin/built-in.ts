import { builtInChecks } from "../check/inspect.ts";
import * as schemes from "../colorway/schemes/index.ts";
import { adjusted } from "../layout/adjusted.ts";
import { layered } from "../layout/layered.ts";
import { placeAt } from "../layout/place-at.ts";
import { set } from "../layout/set.ts";
import { toss } from "../layout/toss.ts";
import * as primitives from "../motif/primitives/index.ts";
import { border } from "../repeat/border.ts";
import { brick } from "../repeat/brick.ts";
import { diamond } from "../repeat/diamond.ts";
import { drop } from "../repeat/drop.ts";
import { halfBrick } from "../repeat/half-brick.ts";
import { halfDrop } from "../repeat/half-drop.ts";
import { hexagonal } from "../repeat/hexagonal.ts";
import { mirror } from "../repeat/mirror.ts";
import { ogee } from "../repeat/ogee.ts";
import { planeGroup } from "../repeat/plane-group.ts";
import { skew } from "../repeat/skew.ts";
import { straight } from "../repeat/straight.ts";
import { turnover } from "../repeat/turnover.ts";
import { VERSION } from "../tile/version.ts";
import { definePlugin, type Plugin } from "./plugin.ts";

/** The library's own pieces, brought by the same interface that plugins use. */
export const builtIn = (): Plugin =>
  definePlugin({
    name: "sprigwright",
    version: VERSION,
    pieces: [
      ...Object.values(primitives),
      ...[toss, set, placeAt, layered, adjusted],
      ...[straight, halfDrop, halfBrick, drop, brick, mirror, turnover],
      ...[diamond, ogee, hexagonal, skew, planeGroup, border],
      ...Object.values(schemes),
      ...builtInChecks,
    ],
  });
