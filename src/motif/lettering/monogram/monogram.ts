import { wrongType } from "../../../errors/catalogue.ts";
import { isRecord, readParams } from "../../../params/compound.ts";
import type { ParamsIn } from "../../../params/param.ts";
import type { Length } from "../../../units/length.ts";
import { checkRoleName, useMotif } from "../../define.ts";
import type { MotifUse } from "../../motif.ts";
import { badText, checkText } from "../check-text.ts";
import type { Font } from "../font.ts";
import { glyphsOf } from "../glyphs-of.ts";
import { checkFont } from "../lettering.ts";
import { outlineData, PARTS_PER_EM } from "../outline-data.ts";
import { type RoleCycle, readCycle } from "../role-cycle.ts";
import { setLine } from "../set-line.ts";
import { outlineAt } from "../stand.ts";
import type { Arrangement } from "./arrange.ts";
import type { Frame } from "./frame.ts";
import { monogramMotif, monogramParts, shaping } from "./piece.ts";

/** Options of {@link monogram}. */
export interface MonogramOptions<Role extends string> {
  /** Longer side of everything, the frame included, 2 mm to 2 m. Default 30 mm. */
  readonly size?: Length;
  /**
   * "interlaced" (default): letters of one height that go over and under each other.
   * "flanked": three letters, the middle one tall, the others small beside it.
   */
  readonly arrangement?: Arrangement;
  /**
   * Interlaced: how far each letter reaches over the one before, as a share of the narrower, 0 to 1. Default: what of
   * 0.35 to 0.85 makes neighbours cross twice at least, so that they go over and under; 0.45 where nothing does.
   */
  readonly overlap?: number;
  /** Interlaced: how far the second letter hangs lower, as a share of the height of capitals, 0 to 1. Default: 0.2 to 0.4, alike. */
  readonly drop?: number;
  /** Interlaced: air beside a letter that goes over another, up to a tenth of the size. Default: a 36th of the height of capitals. */
  readonly gap?: Length;
  /** What stands around the letters. Default "none". */
  readonly frame?: Frame;
  /** Width of the frame's line, up to a tenth of the size. Default: a 42nd of the size. */
  readonly line?: Length;
  /** The role of all letters, or a role for each in turn; default "letter". */
  readonly role?: Role | (RoleCycle<Role> & { readonly each: "letter" });
  /** The role of the frame. Default: that of the first letter. */
  readonly frameRole?: Role;
}

/**
 * Two or three initials as a motif: `monogram(font, "HQ", { size: 40, frame: "ring" })`.
 * A recipe holds the outlines of the letters, never the font, and all options, so that they can still be changed.
 * @throws SprigwrightError `missing-glyph`, `bad-lettering` (not two or three letters), `length-range`,
 * `number-range`, `unknown-choice`, `unknown-option`, `wrong-type`
 */
export function monogram<const Role extends string = "letter">(
  font: Font,
  initials: string,
  options: MonogramOptions<Role> = {},
): MotifUse<Role> {
  const where = "monogram";
  checkFont(font, where);
  if (!isRecord(options)) throw wrongType(where, options, "an object of options");
  const { role, frameRole, ...others } = options as MonogramOptions<string>;
  const read = readParams(shaping, others, where);
  const text = checkText(initials, `${where} > initials`);
  const signs = glyphsOf(font, text, `${where} > initials`).flat();
  if (
    signs.length < 2 ||
    signs.length > 3 ||
    text.includes("\n") ||
    signs.some(({ glyph }) => glyph.commands.length === 0)
  )
    throw badText(
      `${where} > initials`,
      `"${text}" is not two or three letters`,
      'give initials without spaces, such as "HQ"',
    );
  const cycle = readCycle(role, `${where} > role`);
  if (cycle && cycle.each !== "letter")
    throw wrongType(`${where} > role`, cycle.each, '{ each: "letter", roles }');
  const roleOf = (i: number): string =>
    checkRoleName(cycle ? cycle.roles[i % cycle.roles.length] : (role ?? "letter"), `${where} > role`);
  if (frameRole !== undefined && read.frame === "none")
    throw badText(
      `${where} > frameRole`,
      "there is no frame to fill it",
      'give a frame, such as "ring", or leave frameRole out',
    );
  const letters = signs.map((sign) => {
    const [spaced] = setLine(font, [sign], 0).signs;
    const runs = outlineAt({ sign: spaced!, line: 0, x: 0, y: 0, along: [1, 0] }, 1, font.unitsPerEm);
    return outlineData(runs, PARTS_PER_EM / font.capHeight, 0, 0);
  });
  const roles = Object.fromEntries(
    monogramParts(letters.length, read.frame).map((part) => [
      part,
      part === "frame"
        ? checkRoleName(frameRole ?? roleOf(0), `${where} > frameRole`)
        : roleOf(["first", "second", "third"].indexOf(part)),
    ]),
  );
  return useMotif(monogramMotif, {
    text,
    letters,
    ...(read as ParamsIn<typeof shaping>),
    roles,
  }) as MotifUse<Role>;
}
