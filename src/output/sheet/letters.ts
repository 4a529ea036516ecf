import { shown } from "../../errors/catalogue.ts";
import { pathOfRuns } from "../../geometry/path-of-runs.ts";
import { checkText } from "../../motif/lettering/check-text.ts";
import type { Font } from "../../motif/lettering/font.ts";
import { glyphsOf } from "../../motif/lettering/glyphs-of.ts";
import { type Line, setLine } from "../../motif/lettering/set-line.ts";
import { type Align, setLines } from "../../motif/lettering/set-lines.ts";
import { outlineAt } from "../../motif/lettering/stand.ts";
import type { Fill } from "./page.ts";

/** How a line of text is set. */
export interface Setting {
  /** Where the line's left end, middle or right end lies on the baseline (mm on the page). */
  readonly x: number;
  readonly y: number;
  /** mm of an em. */
  readonly size: number;
  readonly ink: string;
  readonly align?: Exclude<Align, "justify">;
  /** Space added between letters, in ems. Default 0. */
  readonly tracking?: number;
  /** Widest that the line may be (mm): a longer one is set smaller, down to `least`, and then cut short with "…". */
  readonly room?: number;
  /** Least size (mm). Default: the size itself. */
  readonly least?: number;
}

const DOTS = "…";

function lineOf(font: Font, text: string, tracking: number): Line {
  const where = `text ${shown(text)}`;
  return setLine(font, glyphsOf(font, checkText(text, where), where)[0]!, tracking);
}

/** Width of a line of text at `size`, in mm. */
export const widthOf = (font: Font, text: string, size: number, tracking = 0): number =>
  lineOf(font, text, tracking).width * size;

/**
 * One line of text as outlines.
 * @throws SprigwrightError `missing-glyph` (names the characters), `bad-lettering`
 */
export function letters(font: Font, text: string, setting: Setting): Fill {
  const { x, y, ink, align = "left", tracking = 0, room = Number.POSITIVE_INFINITY } = setting;
  const whole = text.replace(/\s+/g, " ").trim();
  const wide = widthOf(font, whole, setting.size, tracking);
  const { least = setting.size } = setting;
  const size = wide > room ? Math.max(least, (setting.size * room) / wide) : setting.size;
  const said = cutShort(font, whole, size, tracking, room);
  const line = lineOf(font, said, tracking);
  const runs = setLines([line], size, align, 0).flatMap((stand) =>
    outlineAt({ ...stand, x: stand.x + x, y: stand.y + y }, size, font.unitsPerEm),
  );
  return { kind: "fill", path: pathOfRuns(runs), ink, says: said };
}

/** The text, or as much of it as has room, ended by three dots. */
function cutShort(font: Font, text: string, size: number, tracking: number, room: number): string {
  if (widthOf(font, text, size, tracking) <= room + 1e-6) return text;
  const dots = font.glyph(DOTS) ? DOTS : "...";
  const signs = [...text];
  let count = signs.length - 1;
  while (count > 1 && widthOf(font, signs.slice(0, count).join("").trimEnd() + dots, size, tracking) > room)
    count--;
  return signs.slice(0, count).join("").trimEnd() + dots;
}
