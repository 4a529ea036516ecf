import { monogramMotif } from "../motif/lettering/monogram/piece.ts";
import { letteringMotif } from "../motif/lettering/piece.ts";
import { VERSION } from "../tile/version.ts";
import { definePlugin, type Plugin } from "./plugin.ts";

/** Set letters for a kit: `createKit({ plugins: [letteringPlugin()] })` builds recipes that hold them. */
export const letteringPlugin = (): Plugin =>
  definePlugin({ name: "lettering", version: VERSION, pieces: [letteringMotif, monogramMotif] });
