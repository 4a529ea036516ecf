import { badInput, shown } from "../errors/catalogue.ts";
import type { Placement } from "../layout/layout.ts";

/** Most motifs in one unit. */
const MOST_PLACEMENTS = 100_000;

/** The gap that a layout promises (µm), if it does. @throws SprigwrightError `bad-gap` */
export function checkGap(value: unknown, where: string): number | undefined {
  if (value === undefined) return undefined;
  if (typeof value !== "number" || !(value >= 0 && value <= 100_000_000))
    throw badInput(
      "bad-gap",
      where,
      `its promised gap is ${shown(value)}`,
      "return { placements, gap } with a gap from 0 µm",
    );
  return value + 0;
}

/** What a layout returned, checked and frozen. @throws SprigwrightError `bad-placement` that names the entry */
export function checkPlacements(value: unknown, motifs: number, where: string): readonly Placement[] {
  const wrong = (at: string, what: string): Error =>
    badInput(
      "bad-placement",
      at,
      what,
      "return a list of { id, motif, x, y, turn, scale, flip }, x and y in whole µm",
    );
  if (!Array.isArray(value)) throw wrong(where, `it returned ${shown(value)} where a list was wanted`);
  if (value.length === 0) throw wrong(where, "it placed nothing");
  if (value.length > MOST_PLACEMENTS)
    throw wrong(where, `it placed ${value.length}, more than ${MOST_PLACEMENTS}`);
  const ids = new Set<string>();
  const checked = value.map((entry: unknown, i) => {
    const at = `${where}[${i}]`;
    if (typeof entry !== "object" || entry === null) throw wrong(at, `it is ${shown(entry)}`);
    const { id, motif, x, y, turn, scale, flip } = entry as Placement;
    if (typeof id !== "string" || id === "" || id.length > 60) throw wrong(at, `its id is ${shown(id)}`);
    if (ids.has(id)) throw wrong(at, `its id ${shown(id)} was used before`);
    if (!Number.isInteger(motif) || motif < 0 || motif >= motifs)
      throw wrong(at, `its motif is ${shown(motif)}`);
    for (const [name, um] of [["x", x] as const, ["y", y] as const])
      if (!Number.isInteger(um) || Math.abs(um) > 100_000_000) throw wrong(at, `its ${name} is ${shown(um)}`);
    if (typeof turn !== "number" || !(turn >= 0 && turn < 1))
      throw wrong(at, `its turn is ${shown(turn)}, not from 0 up to 1`);
    if (typeof scale !== "number" || !(scale >= 0.001 && scale <= 1000))
      throw wrong(at, `its scale is ${shown(scale)}, not from 0.001 to 1000`);
    if (typeof flip !== "boolean") throw wrong(at, `its flip is ${shown(flip)}`);
    ids.add(id);
    return Object.freeze({ id, motif, x: x + 0, y: y + 0, turn: turn + 0, scale, flip });
  });
  return Object.freeze(checked);
}
