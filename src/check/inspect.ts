import type { Colorway } from "../colorway/colorway.ts";
import { badInput, outOfRange, pieceFailed, shown, unknownName, wrongType } from "../errors/catalogue.ts";
import { isRecord } from "../params/compound.ts";
import { checkTile } from "../tile/check-tile.ts";
import type { Tile } from "../tile/tile.ts";
import type { CheckPiece, Inspected } from "./check.ts";
import { closeMotifs } from "./close-motifs.ts";
import { everyRoleInked } from "./every-role-inked.ts";
import { facingOneWay } from "./facing-one-way.ts";
import type { Finding, Report } from "./finding.ts";
import { inkContrast } from "./ink-contrast.ts";
import { inkToOneSide } from "./ink-to-one-side.ts";
import { kindsInClumps } from "./kinds-in-clumps.ts";
import { lumpy } from "./lumpy.ts";
import { openHole } from "./open-hole.ts";
import { shortOfCoverage } from "./short-of-coverage.ts";
import { straightLanes } from "./straight-lanes.ts";
import { wholePixels } from "./whole-pixels.ts";

/** What a pattern is printed on. It sets the resolution that is checked: common practice among print houses. */
export type Surface = "fabric" | "wallpaper" | "paper";

const DPI: Readonly<Record<Surface, number>> = { fabric: 150, wallpaper: 150, paper: 300 };

/** Options of {@link inspect}. */
export interface InspectOptions {
  /** Default `"fabric"` (150 dpi); `"wallpaper"` is 150 dpi, `"paper"` 300 dpi. */
  readonly surface?: Surface;
  /** Dots per inch, 1 to 2400, when the printer asks for other than the surface's. */
  readonly dpi?: number;
  /** Colorways to look at. Default: all of the pattern's. */
  readonly colorways?: readonly Colorway[];
  /** Checks to run on top of the library's own. */
  readonly checks?: readonly CheckPiece[];
}

/** The checks that `inspect` always runs. */
export const builtInChecks: readonly CheckPiece[] = /* @__PURE__ */ Object.freeze([
  everyRoleInked,
  wholePixels,
  inkContrast,
  closeMotifs,
  openHole,
  straightLanes,
  lumpy,
  facingOneWay,
  kindsInClumps,
  inkToOneSide,
  shortOfCoverage,
]);

/**
 * Looks a tile over before it goes to print. Problems are findings in the report; nothing is changed.
 * @throws SprigwrightError `unknown-surface`, `number-range` for options that make no sense
 */
export function inspect(tile: Tile, options: InspectOptions = {}): Report {
  checkTile(tile, "inspect > tile");
  const { surface = "fabric", checks = [] } = options;
  if (!Object.hasOwn(DPI, surface))
    throw unknownName("inspect > surface", "surface", surface, Object.keys(DPI));
  const dpi = options.dpi ?? DPI[surface];
  if (!Number.isInteger(dpi)) throw wrongType("inspect > dpi", dpi, "a whole number of dots per inch");
  if (dpi < 1 || dpi > 2400) throw outOfRange("inspect > dpi", dpi, { min: 1, max: 2400 }, "dpi");
  const colorways =
    options.colorways ??
    Object.entries(tile.recipe.colorways).map(([name, inks]) => ({ name, inks: inks as Colorway["inks"] }));
  const inspected = Object.freeze({ tile, colorways, dpi });
  const findings = [...builtInChecks, ...checks].flatMap((check) => lookWith(check, inspected));
  return Object.freeze({
    ok: findings.every((finding) => finding.severity !== "fault"),
    findings: Object.freeze(findings),
  });
}

function lookWith(check: CheckPiece, inspected: Inspected): readonly Finding[] {
  const where = `inspect > ${check.name}`;
  let found: unknown;
  try {
    found = check.look(inspected);
  } catch (cause) {
    throw pieceFailed(where, cause);
  }
  if (!Array.isArray(found)) throw badFinding(where, `it returned ${shown(found)} where a list was wanted`);
  for (const [i, finding] of (found as Partial<Finding>[]).entries())
    if (
      !isRecord(finding) ||
      typeof finding["rule"] !== "string" ||
      !SEVERITIES.includes(finding["severity"])
    )
      throw badFinding(`${where}[${i}]`, "it is not a finding");
  return found as readonly Finding[];
}

const SEVERITIES: readonly unknown[] = ["fault", "warning"];

const badFinding = (where: string, what: string): Error =>
  badInput("bad-finding", where, what, "return a list of { rule, severity, measured, limit, unit, fix }");
