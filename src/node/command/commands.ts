import { FILE_KINDS, formatOf, USUAL_KINDS } from "../write/formats/all.ts";

/** A flag of a command: the same data serves parsing, help, hints and the tests of the docs. */
export interface Flag {
  /** What stands for its value in help; without it the flag is a switch. */
  readonly value?: string;
  readonly about: string;
  /** What holds when it is left out. */
  readonly fallback?: string;
  /** May be given more than once. */
  readonly many?: true;
  readonly short?: string;
}

/** A command: what it is called and what it takes. */
export interface CommandInfo {
  readonly about: string;
  /** What follows the name. */
  readonly takes: string;
  /** Least number of names that must follow. */
  readonly least: number;
  readonly most: number;
  readonly detail: string;
  readonly flags: Readonly<Record<string, Flag>>;
}

const plugin: Flag = {
  value: "FILE",
  about: "a script that exports a plugin, for recipes that use its pieces",
  many: true,
};
const dpi = { value: "N", about: "dots per inch of the print, 1 to 2400" };
const MANY = Number.POSITIVE_INFINITY;

/** Flags that every command knows. */
export const SHARED: Readonly<Record<string, Flag>> = {
  help: { short: "h", about: "show this and stop" },
  stack: { about: "with an error, also show where in the code it arose" },
};

export type CommandName = "build" | "inspect" | "describe" | "reproduce";

export const COMMANDS: Readonly<Record<CommandName, CommandInfo>> = {
  build: {
    about: "write the pictures and the recipe of patterns",
    takes: "SCRIPT...",
    least: 1,
    most: MANY,
    detail:
      "A script is a .ts, .mts, .js or .mjs file whose default export is a pattern or a list of patterns. A recipe.json does as well; and of a folder, every script that exports a pattern. All are read before the first is built.",
    flags: {
      out: { value: "DIR", short: "o", about: "where each pattern gets its folder", fallback: "out" },
      dpi: { ...dpi, fallback: "150" },
      colorway: { value: "NAME", many: true, about: "write this colorway only", fallback: "all" },
      all: { about: "write all colorways, also when a NAME.picks.json beside the script picks some" },
      files: {
        value: "KINDS",
        many: true,
        about: `kinds of files, with commas between, or all. ${FILE_KINDS.map((kind) => `${kind}: ${formatOf(kind).about}`).join("; ")}`,
        fallback: USUAL_KINDS.join(","),
      },
      cut: {
        value: "SIZE",
        about:
          "what they show: block; unit; 3x2 (blocks across and down); or 1400x2000mm, 60x40in (a length of cloth)",
        fallback: "block",
      },
      bleed: { value: "LENGTH", about: "how far a PDF goes on beyond its trim, such as 3mm", fallback: "0" },
      truecolor: { about: "PNG files without a palette" },
      "knock-out": { about: "SVG files in which no two roles overlap" },
      rights: { value: "TEXT", about: "who holds the rights, for the metadata of files" },
      creator: { value: "TEXT", about: "who made it, for the metadata of files" },
      "no-recipe": { about: "leave the recipe out of pictures, for clients and shops" },
      studio: { value: "TEXT", about: "who sells it and how to be reached, at the foot of line sheets" },
      hero: { about: "the pattern is the hero of its collection: its listing may show several subjects" },
      workers: { value: "N", about: "threads that make files", fallback: "one a core" },
      plugin,
    },
  },
  inspect: {
    about: "look patterns over before they go to print",
    takes: "SCRIPT...",
    least: 1,
    most: MANY,
    detail:
      "Builds each pattern, writes nothing, and lists what a print might suffer from. Ends with 1 when there is a fault.",
    flags: {
      surface: {
        value: "NAME",
        about: "what it is printed on: fabric (150 dpi), wallpaper (150), paper (300)",
        fallback: "fabric",
      },
      dpi: { ...dpi, fallback: "the surface's" },
      plugin,
    },
  },
  describe: {
    about: "list the pieces that patterns are made of",
    takes: "[PIECE]",
    least: 0,
    most: 1,
    detail: "With the name of a piece: what it takes, with ranges and what it does when left alone.",
    flags: { json: { about: "as JSON, each piece's parameters as a JSON Schema (2020-12)" }, plugin },
  },
  reproduce: {
    about: "build again what a file shows, and compare",
    takes: "FILE",
    least: 1,
    most: 1,
    detail:
      "FILE is a PNG, SVG or PDF of a pattern that this command wrote. The recipe in it is read, never run; the tile is built, and its digest is held against the one in the file. The picture of a PNG or SVG is drawn again and compared too. Ends with 1 when either differs.",
    flags: {
      recipe: { value: "FILE", about: "write the recipe there, from which build makes all files again" },
      at: {
        value: "SCRIPT",
        many: true,
        about:
          "a script of your own that has the motifs, layouts and repeats of the recipe: a pattern's, or a plugin",
      },
    },
  },
};
