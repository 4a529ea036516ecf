import { readProfile } from "../../colorway/proof/read-profile.ts";
import { badInput } from "../../errors/catalogue.ts";
import type { Size } from "../../geometry/lattice.ts";
import { optional, readParams } from "../../params/compound.ts";
import { length, text } from "../../params/kinds.ts";
import type { Param } from "../../params/param.ts";
import type { Tile } from "../../tile/tile.ts";
import { type Length, mmToUm } from "../../units/length.ts";
import { checkNotes, type FileNotes } from "../about.ts";
import { type Cut, cutSize } from "../cut.ts";
import { chosenInks, type InkChoice } from "./ink-choice.ts";
import type { PdfInk, PrintCondition } from "./page.ts";

/** Options of {@link toPdf}; title, subject, rights, creator and recipe are kept in the file's metadata. */
export interface PdfOptions extends FileNotes {
  /** What the trimmed page shows; default `"block"`, one straight repeat. */
  readonly cut?: Cut | undefined;
  /** How far the pattern goes on beyond the trim on every side, to be cut off; 0 to 100 mm, default 0. Printers often ask for 3 mm. */
  readonly bleed?: Length | undefined;
  /** What colours are said in; default `"rgb"`. */
  readonly inks?: InkChoice | undefined;
  /** The ICC profile of the printing condition that the file is made for, as the bytes that your printer gave you. */
  readonly profile?: Uint8Array | undefined;
  /** What that condition is called, up to 120 characters; default "Custom". */
  readonly condition?: string | undefined;
}

/** A value that another reader checks. */
const later: Param<unknown, unknown, true> = { optional: true, read: (value) => value, schema: {} };

const spec = {
  cut: later,
  bleed: length({ about: "How far the pattern goes on beyond the trim.", min: 0, max: 100, default: 0 }),
  inks: later,
  profile: later,
  condition: optional(text({ about: "What the printing condition is called.", max: 120 })),
  title: later,
  subject: later,
  rights: later,
  creator: later,
  recipe: later,
} as const;

/** What the options come to. */
export interface PdfPlan {
  readonly size: Size;
  readonly bleed: number;
  /** The ground's, then each layer's. */
  readonly inks: readonly PdfInk[];
  readonly notes: FileNotes;
  readonly condition: PrintCondition | undefined;
}

export function readPdfOptions(
  tile: Tile,
  roles: readonly string[],
  rgb: readonly string[],
  options: PdfOptions,
  where: string,
): PdfPlan {
  const { bleed, condition, ...later } = readParams(spec, options, where);
  const { cut = "block", inks = "rgb", profile, ...notes } = later as Omit<PdfOptions, "bleed" | "condition">;
  checkNotes(notes, where);
  return {
    size: cutSize(tile, cut, `${where} > cut`),
    bleed: mmToUm(bleed),
    inks: chosenInks(inks, roles, rgb, `${where} > inks`),
    notes,
    condition: readCondition(profile, condition, inks, where),
  };
}

/** A profile is for CMYK or for RGB, and so has to be the colours. */
function readCondition(
  profile: Uint8Array | undefined,
  name: string | undefined,
  inks: InkChoice,
  where: string,
): PrintCondition | undefined {
  if (profile === undefined) {
    if (name === undefined) return undefined;
    throw badInput(
      "missing-option",
      `${where} > profile`,
      "a condition has a name but no profile",
      "give the profile's bytes too, or leave the condition out",
    );
  }
  const { space } = readProfile(profile, `${where} > profile`);
  const values = inks === "rgb" ? "RGB" : typeof inks === "object" ? processOf(inks) : undefined;
  if (values !== undefined && values !== space)
    throw badInput(
      "wrong-profile",
      `${where} > profile`,
      `the profile is for ${space}, and the colours are ${values}`,
      space === "CMYK" ? "give every role its cmyk in inks" : "leave inks out, or give a profile for CMYK",
    );
  return { profile, name: name ?? "Custom" };
}

/** What roles without a spot ink are printed in. */
const processOf = (inks: Exclude<InkChoice, string>): "CMYK" | undefined =>
  Object.values(inks).some((ink) => ink.spot === undefined) ? "CMYK" : undefined;
