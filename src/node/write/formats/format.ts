import type { Colorway } from "../../../colorway/colorway.ts";
import type { Arrangement, Size } from "../../../geometry/lattice.ts";
import type { Cut } from "../../../output/cut.ts";
import type { ColorType } from "../../../output/png/rasterize.ts";
import type { Layering } from "../../../output/svg/to-svg.ts";
import type { Tile } from "../../../tile/tile.ts";
import type { Length } from "../../../units/length.ts";

/** All that can change a file beside the tile and its colorways: plain data, part of what says whether a file is right. */
export interface Settings {
  readonly dpi: number;
  readonly cut: Cut;
  readonly bleed: Length;
  readonly color?: ColorType | undefined;
  readonly layers: Layering;
  readonly rights?: string | undefined;
  readonly creator?: string | undefined;
  readonly recipe: boolean;
  readonly hero: boolean;
  readonly studio?: string | undefined;
}

/** What is known of a tile before it is built. */
export type Outline = { readonly name: string; readonly block: Size; readonly arrangement: Arrangement };

/** A file that is known before another is made. */
export interface OtherFile {
  readonly file: string;
  readonly colorway?: string | undefined;
}

/** What a format is asked to make. */
export interface Order {
  readonly tile: Tile;
  readonly colorways: readonly Colorway[];
  readonly settings: Settings;
  /** For formats that come last: all other files of this run. */
  readonly others: readonly OtherFile[];
  /** Told the share that is done, 0 to 1. */
  readonly onProgress: (done: number) => void;
  /** Writes one file, whole or not at all. */
  readonly put: (name: string, content: Uint8Array | string, colorway?: string) => Promise<void>;
}

/** A kind of files that can be asked for. */
export interface Format {
  /** For help: what the files are and what they are for. */
  readonly about: string;
  /** Whether it is written when nothing is asked for. */
  readonly usual?: true;
  /** Whether colorways share work, so that they are made together; else each is a job of its own. */
  readonly together?: true;
  /** Whether it names other files, and so is made when they are there. */
  readonly last?: true;
  /** Refuses what cannot be made, before the tile is built, which takes long. */
  readonly check?: (outline: Outline, settings: Settings) => void | Promise<void>;
  /** For a summary: what is in the files. */
  readonly says: (tile: Tile, settings: Settings) => string;
  /** For a summary: what is odd about what was made. */
  readonly warns?: (
    tile: Tile,
    colorways: readonly Colorway[],
    settings: Settings,
  ) => Promise<readonly string[]>;
  readonly make: (order: Order) => Promise<void>;
}
