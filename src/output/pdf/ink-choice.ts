import { badInput, missingInk, outOfRange, unknownName, wrongType } from "../../errors/catalogue.ts";
import { isRecord } from "../../params/compound.ts";
import type { PdfInk, ProcessInk } from "./page.ts";

/** What one role is printed with: a spot ink of that name, or the four process inks. */
export interface PrintInk {
  /** Name of the ink, and of its plate, such as "Tide blue": up to 60 characters. Roles may share one. */
  readonly spot?: string;
  /**
   * Cyan, magenta, yellow and black, 0 to 1 each. With `spot` it is what stands for that ink on screens and on
   * printers that have none of it; the colorway's own colour when left out.
   */
  readonly cmyk?: readonly [cyan: number, magenta: number, yellow: number, black: number];
}

/**
 * What a PDF's colours are said in:
 * - `"rgb"`: the colorway's sRGB values. For digital printers who ask for RGB, and for screens.
 * - `"spot"`: one ink, and so one plate, for each role, called after it.
 * - by role: a {@link PrintInk} for the ground and for every role that is drawn. For printers who name their inks.
 */
export type InkChoice = "rgb" | "spot" | Readonly<Record<string, PrintInk>>;

const KEYS = ["spot", "cmyk"];
/** What a PDF takes to mean all plates, or none (ISO 32000-1, 8.6.6.4). */
const RESERVED = ["All", "None"];

/**
 * The ink of each of `roles`, in their order.
 * @throws SprigwrightError `unknown-ink-choice`, `unknown-role`, `missing-ink`, `bad-spot-ink`, `wrong-type`, `number-range`
 */
export function chosenInks(
  choice: InkChoice,
  roles: readonly string[],
  inks: readonly string[],
  where: string,
): readonly PdfInk[] {
  if (choice === "rgb") return inks.map((rgb) => ({ rgb }));
  if (choice === "spot") return roles.map((spot, i) => ({ spot, shownAs: { rgb: inks[i]! } }));
  if (typeof choice === "string") throw unknownName(where, "ink choice", choice, ["rgb", "spot"]);
  if (!isRecord(choice)) throw wrongType(where, choice, '"rgb", "spot", or an ink for each role');
  for (const role of Object.keys(choice))
    if (!roles.includes(role)) throw unknownName(`${where} > ${role}`, "role", role, roles);
  const missing = roles.filter((role) => !Object.hasOwn(choice, role));
  if (missing.length > 0) throw missingInk(where, missing);
  const chosen = roles.map((role, i) => readInkOf(choice[role], inks[i]!, `${where} > ${role}`));
  refuseTwoColors(chosen, roles, where);
  return chosen;
}

function readInkOf(given: unknown, rgb: string, where: string): PdfInk {
  if (!isRecord(given)) throw wrongType(where, given, "an ink: { spot }, { cmyk } or both");
  for (const key of Object.keys(given))
    if (!KEYS.includes(key)) throw unknownName(where, "option", key, KEYS);
  const { spot, cmyk } = given;
  const process: ProcessInk | undefined =
    cmyk === undefined ? undefined : { cmyk: readShares(cmyk, `${where} > cmyk`) };
  if (spot === undefined) {
    if (process) return process;
    throw badInput(
      "missing-ink",
      where,
      "neither a spot ink nor CMYK values",
      "give { spot }, { cmyk } or both",
    );
  }
  // A name in a PDF cannot hold U+0000 (ISO 32000-1, 7.3.5).
  if (typeof spot !== "string" || spot.trim() === "" || spot.length > 60 || /\p{Cc}/u.test(spot))
    throw wrongType(`${where} > spot`, spot, "the name of an ink, 1 to 60 characters in one line");
  if (RESERVED.includes(spot))
    throw badInput(
      "bad-spot-ink",
      `${where} > spot`,
      `"${spot}" means all plates or none in a PDF`,
      "call the ink otherwise",
    );
  return { spot, shownAs: process ?? { rgb } };
}

function readShares(given: unknown, where: string): readonly [number, number, number, number] {
  if (
    !Array.isArray(given) ||
    given.length !== 4 ||
    !given.every((v) => typeof v === "number" && Number.isFinite(v))
  )
    throw wrongType(where, given, "four numbers: cyan, magenta, yellow, black, 0 to 1 each");
  for (const value of given as number[])
    if (value < 0 || value > 1) throw outOfRange(where, value, { min: 0, max: 1 }, "");
  const [c, m, y, k] = given as [number, number, number, number];
  return [c, m, y, k];
}

/** One plate has one ink: roles that share a name have to share its colour too. */
function refuseTwoColors(chosen: readonly PdfInk[], roles: readonly string[], where: string): void {
  const seen = new Map<string, { role: string; shown: string }>();
  chosen.forEach((ink, i) => {
    if (!("spot" in ink)) return;
    const shown = JSON.stringify(ink.shownAs);
    const before = seen.get(ink.spot);
    if (before && before.shown !== shown)
      throw badInput(
        "bad-spot-ink",
        `${where} > ${roles[i]}`,
        `"${ink.spot}" has another colour than for ${before.role}`,
        "give both roles the same cmyk, or their inks different names",
      );
    seen.set(ink.spot, { role: roles[i]!, shown });
  });
}
