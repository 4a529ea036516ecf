import { badInput, unknownName } from "../../../errors/catalogue.ts";
import { bytesOf } from "../color.ts";
import { nameFills } from "../roles.ts";
import type { Analysis } from "./analyse.ts";
import { apartSquared, placeOf } from "./histogram.ts";
import type { Ink } from "./inks.ts";
import { opaque } from "./options.ts";

/** An ink of the drawing, and the pixels that it has. */
export interface Covered {
  readonly ink: Ink;
  /** Its label in the picture. */
  readonly label: number;
  readonly pixels: number;
}

/** Inks that fill one role. */
export interface InkGroup {
  readonly role: string;
  /** Largest first. */
  readonly inks: readonly Covered[];
  readonly pixels: number;
}

/** How far a colour may be from the ink that it stands for (OKLab): an ink and its faded scan, not another paint. */
const NEAR = 0.12;

/**
 * Inks by role, back to front: those that cover most lie lowest, so that details and outlines are on top of what
 * they are painted on.
 * @throws SprigwrightError `unknown-fill`, `missing-role`, `ink-named-twice`, `wrong-type`
 */
export function groupInks(
  covered: readonly Covered[],
  roles: Readonly<Record<string, string>> | undefined,
  where: string,
): InkGroup[] {
  const sorted = [...covered].sort((p, q) => q.pixels - p.pixels || p.label - q.label);
  const fills = sorted.map(({ ink }) => ink.fill);
  const named = roles ? namedInks(sorted, roles, where) : nameFills(fills);
  const unnamed = fills.filter((fill) => named[fill] === undefined);
  if (unnamed.length > 0) throw missingRole(unnamed, fills.length, where);
  const groups = new Map<string, Covered[]>();
  for (const one of sorted) {
    const role = named[one.ink.fill]!;
    groups.set(role, [...(groups.get(role) ?? []), one]);
  }
  return [...groups]
    .map(([role, inks]) => ({ role, inks, pixels: inks.reduce((sum, { pixels }) => sum + pixels, 0) }))
    .sort((p, q) => q.pixels - p.pixels || p.inks[0]!.label - q.inks[0]!.label);
}

function namedInks(
  covered: readonly Covered[],
  roles: Readonly<Record<string, string>>,
  where: string,
): Record<string, string> {
  const named: Record<string, string> = {};
  for (const [color, role] of Object.entries(roles)) {
    const fill = opaque(color, `${where} > ${color}`);
    const place = placeOf([...bytesOf(fill), 255]);
    const near = covered.map(({ ink }) => ({
      fill: ink.fill,
      far: ink.fill === fill ? 0 : apartSquared(ink.place, place),
    }));
    const best = near.reduce((p, q) => (q.far < p.far ? q : p));
    if (best.far > NEAR * NEAR)
      throw unknownName(
        `${where} > ${color}`,
        "fill",
        color,
        covered.map(({ ink }) => ink.fill),
      );
    const other = named[best.fill];
    if (other !== undefined && other !== role)
      throw badInput(
        "ink-named-twice",
        `${where} > ${color}`,
        `the ink ${best.fill} is to be both "${other}" and "${role}"`,
        "ask for more inks, or name the ink once",
      );
    named[best.fill] = role;
  }
  return named;
}

function missingRole(unnamed: readonly string[], all: number, where: string): Error {
  const suggested = Object.entries(nameFills(unnamed)).map(([fill, name]) => `"${fill}": "${name}"`);
  return badInput(
    "missing-role",
    where,
    `no role is given for ${unnamed.length} of ${all} inks`,
    `add a role for each, such as ${suggested.join(", ")}`,
  );
}

/** The inks of a picture that are not its paper. @throws SprigwrightError `empty-artwork` */
export function coveredBy({ palette, shares, isPaper }: Analysis, where: string): Covered[] {
  const pixels = new Array<number>(palette.inks.length).fill(0);
  for (const label of shares.major) pixels[label]!++;
  const covered = palette.inks
    .map((ink, label) => ({ ink, label, pixels: pixels[label]! }))
    .filter(({ label, pixels }) => !isPaper(label) && pixels > 0);
  if (covered.length === 0)
    throw badInput(
      "empty-artwork",
      where,
      "nothing is left but paper and specks",
      'give a lower limit, such as specks: "1px"',
    );
  return covered;
}
