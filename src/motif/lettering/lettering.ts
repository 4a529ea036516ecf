import { badInput, wrongType } from "../../errors/catalogue.ts";
import type { Path } from "../../geometry/path.ts";
import type { Runs } from "../../geometry/sketch.ts";
import { extentOf } from "../artwork/extent.ts";
import { checkRoleName, useMotif } from "../define.ts";
import type { MotifUse } from "../motif.ts";
import { badText, checkText } from "./check-text.ts";
import type { Font } from "./font.ts";
import { bendGauge, insideGauge, plainGauge } from "./gauge.ts";
import { glyphsOf } from "./glyphs-of.ts";
import { type LetteringOptions, readSetting, type Setting } from "./options.ts";
import { outlineData, PARTS_PER_EM } from "./outline-data.ts";
import { letteringMotif, MOST_DATA, partNames } from "./piece.ts";
import { byRole, readCycle } from "./role-cycle.ts";
import { type Course, setAlong } from "./set-along.ts";
import { type Line, setLine } from "./set-line.ts";
import { setLines } from "./set-lines.ts";
import { outlineAt, type Stand } from "./stand.ts";
import { circleTrack, pathTrack } from "./track.ts";

const WHERE = "lettering";

/**
 * Letters as a motif: `lettering(font, "Harbour\nPears", { size: 24, role: "ink" })`, in lines, on a circle
 * (`onArc`) or along a path (`onPath`). Kerned, without ligatures; letters that overlap are united.
 * A recipe holds the outlines, never the font.
 * @throws SprigwrightError `missing-glyph` (names the characters), `bad-lettering`, `text-too-long` (with the size
 * that fits), `bad-path-data`, `length-range`, `number-range`, `unknown-option`, `wrong-type`
 */
export function lettering<const Role extends string = "letter">(
  font: Font,
  text: string,
  options: LetteringOptions<Role> = {},
): MotifUse<Role> {
  checkFont(font, WHERE);
  const setting = readSetting(options, WHERE);
  const { size, origin } = setting;
  const cycle = readCycle(setting.role, `${WHERE} > role`);
  const stands = standsOf(font, checkText(text, `${WHERE} > text`), setting);
  const groups = cycle
    ? byRole(stands, cycle, `${WHERE} > role`)
    : new Map([[checkRoleName(setting.role ?? "letter", `${WHERE} > role`), stands]]);
  const runs = [...groups.values()].map((group) =>
    group.flatMap((stand) => outlineAt(stand, size, font.unitsPerEm)),
  );
  const [x, y] = origin === "middle" ? middleOf(runs) : [0, 0];
  const outlines = runs.map((outline) => outlineData(outline, PARTS_PER_EM / size, x, y));
  if (outlines.some((outline) => outline.length > MOST_DATA))
    throw badText(
      `${WHERE} > text`,
      `its outlines take more than ${MOST_DATA} characters`,
      "set fewer letters in one motif, or take a plainer font",
    );
  const parts = partNames(groups.size);
  return useMotif(letteringMotif, {
    text,
    outlines,
    size,
    roles: Object.fromEntries([...groups.keys()].map((role, i) => [parts[i]!, role])),
  }) as MotifUse<Role>;
}

/** @throws SprigwrightError `wrong-type` */
export function checkFont(font: unknown, where: string): void {
  if (typeof (font as Font | undefined)?.glyph !== "function")
    throw wrongType(`${where} > font`, font, "a font from loadFont(bytes)");
}

/** Where every glyph of a checked text stands, in mm. */
export function standsOf(font: Font, text: string, setting: Setting): Stand[] {
  const { size, align, tracking } = setting;
  const course = courseOf(setting);
  const lines = glyphsOf(font, text, `${WHERE} > text`).map(
    (signs): Line => setLine(font, signs, tracking / 1000),
  );
  if (!course) return setLines(lines, size, align, setting.lineHeight * size);
  if (lines.length > 1)
    throw badText(
      `${WHERE} > text`,
      `the text has ${lines.length} lines, and a path takes one`,
      "take the line breaks out, or set a lettering for each line",
    );
  return setAlong(lines[0]!, size, align, course, `${WHERE} > ${setting.onArc ? "onArc" : "onPath"}`);
}

function courseOf({ onArc, onPath, spacing }: Setting): Course | undefined {
  if (onArc && onPath !== undefined)
    throw badInput("bad-lettering", WHERE, "both onArc and onPath are given", "give one of them");
  const even = spacing === "even";
  if (onArc) {
    const { radius, side, start = side === "inside" ? 0.5 : 0 } = onArc;
    const track = circleTrack(radius, side, start);
    return { track, gauging: even && side === "inside" ? insideGauge(track, radius) : plainGauge(track) };
  }
  if (onPath === undefined) return undefined;
  const track = pathTrack(onPath as string | Path, `${WHERE} > onPath`);
  return { track, gauging: even ? bendGauge(track) : plainGauge(track) };
}

function middleOf(runs: readonly Runs[]): readonly [number, number] {
  const { minX, minY, maxX, maxY } = extentOf(runs);
  return [(minX + maxX) / 2, (minY + maxY) / 2];
}
