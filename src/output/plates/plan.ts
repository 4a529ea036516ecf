import type { Colorway } from "../../colorway/colorway.ts";
import { contrast } from "../../colorway/contrast.ts";
import { badInput, missingInk, missingOption, unknownName, wrongType } from "../../errors/catalogue.ts";
import type { Size } from "../../geometry/lattice.ts";
import { CURVE } from "../../geometry/path.ts";
import { isRecord, readParams } from "../../params/compound.ts";
import { flag, length } from "../../params/kinds.ts";
import type { Param } from "../../params/param.ts";
import { checkTile } from "../../tile/check-tile.ts";
import type { Tile } from "../../tile/tile.ts";
import { type Length, mmToUm } from "../../units/length.ts";
import { type Cut, cutSize } from "../cut.ts";

/** Options of {@link separations}. */
export interface SeparationOptions {
  /** What the trimmed sheet shows; default `"block"`, one straight repeat. */
  readonly cut?: Cut | undefined;
  /** How far the pattern goes on beyond the trim on every side; 0 to 100 mm, default 0. */
  readonly bleed?: Length | undefined;
  /** Whether the ground is printed, and so has a plate of its own; default true. Cloth dyed beforehand wants false. */
  readonly ground?: boolean | undefined;
  /** Roles that print over what lies below, which then goes on beneath them; default none: every role knocks out. */
  readonly overprint?: readonly string[] | undefined;
  /** How far inks spread under their darker neighbours, 0 to 5 mm, default 0: none. Ask your printer. */
  readonly trap?: Length | undefined;
  /**
   * All roles from the lightest ink to the darkest, or a colorway, whose inks are put in that order. Lighter inks spread
   * under darker ones. Wanted for a trap.
   */
  readonly lightToDark?: readonly string[] | Colorway | undefined;
  /** Whether each plate has registration marks, trim marks and its name outside the trim and bleed; default true. */
  readonly marks?: boolean | undefined;
}

const later: Param<unknown, unknown, true> = { optional: true, read: (value) => value, schema: {} };
const spec = {
  cut: later,
  bleed: length({ about: "How far the pattern goes on beyond the trim.", min: 0, max: 100, default: 0 }),
  ground: flag({ about: "Whether the ground is printed.", default: true }),
  overprint: later,
  trap: length({ about: "How far inks spread under darker neighbours.", min: 0, max: 5, default: 0 }),
  lightToDark: later,
  marks: flag({ about: "Whether plates have marks.", default: true }),
} as const;

/** What the options come to; lengths in µm. */
export interface SeparationPlan {
  readonly size: Size;
  readonly bleed: number;
  readonly ground: boolean;
  readonly overprint: ReadonlySet<string>;
  readonly trap: number;
  /** How dark each role is, by its place in the order. */
  readonly rank: ReadonlyMap<string, number>;
  readonly marks: boolean;
}

/** @throws SprigwrightError as {@link separations} says */
export function planSeparations(tile: Tile, options: SeparationOptions): SeparationPlan {
  checkTile(tile, "separations > tile");
  const where = `${tile.name} > separations`;
  const { bleed, ground, trap, marks, ...given } = readParams(spec, options, where);
  const {
    cut = "block",
    overprint = [],
    lightToDark,
  } = given as Pick<SeparationOptions, "cut" | "overprint" | "lightToDark">;
  const roles = ["ground", ...tile.layers.map((layer) => layer.role)];
  if (trap > 0 && lightToDark === undefined)
    throw missingOption(
      `${where} > lightToDark`,
      "all roles from the lightest to the darkest, or a colorway",
    );
  const size = cutSize(tile, cut, `${where} > cut`);
  refuseLarge(tile, size, mmToUm(bleed), `${where} > cut`);
  return {
    size,
    bleed: mmToUm(bleed),
    ground,
    overprint: new Set(known(overprint, roles, `${where} > overprint`)),
    trap: mmToUm(trap),
    rank: ranks(lightToDark ?? [], roles, `${where} > lightToDark`),
    marks,
  };
}

/** Most curves on one sheet, all plates together: some 100 MB of memory, and a minute of work. */
const MOST_CURVES = 1_000_000;

function refuseLarge({ block, layers }: Tile, size: Size, bleed: number, where: string): void {
  const blocks = ((size.width + 2 * bleed) / block.width) * ((size.height + 2 * bleed) / block.height);
  const curves = Math.round(blocks * layers.reduce((sum, { path }) => sum + path.points.length / CURVE, 0));
  if (curves <= MOST_CURVES) return;
  throw badInput(
    "drawing-too-large",
    where,
    `the sheet would hold some ${curves} curves`,
    `keep it to ${MOST_CURVES}: a smaller cut; a press repeats one block by itself`,
  );
}

function known(given: readonly string[], roles: readonly string[], where: string): readonly string[] {
  if (!Array.isArray(given)) throw wrongType(where, given, "a list of roles");
  given.forEach((role, i) => {
    if (!roles.includes(role)) throw unknownName(`${where}[${i}]`, "role", String(role), roles);
  });
  return given;
}

function ranks(
  given: readonly string[] | Colorway,
  roles: readonly string[],
  where: string,
): ReadonlyMap<string, number> {
  const order = isRecord(given) && isRecord(given["inks"]) ? byLightness(given["inks"], roles, where) : given;
  const listed = known(order as readonly string[], roles, where);
  const missing = listed.length === 0 ? [] : roles.filter((role) => !listed.includes(role));
  if (missing.length > 0) throw missingRoles(where, missing);
  return new Map(listed.map((role, i) => [role, i]));
}

/** Roles by the contrast of their inks with black, the highest first; of equals, the one further back. */
function byLightness(
  inks: Readonly<Record<string, unknown>>,
  roles: readonly string[],
  where: string,
): readonly string[] {
  const missing = roles.filter((role) => typeof inks[role] !== "string");
  if (missing.length > 0) throw missingInk(where, missing);
  const light = new Map(roles.map((role) => [role, contrast(inks[role] as string, "#000000")]));
  return [...new Set(roles)].sort(
    (a, b) => light.get(b)! - light.get(a)! || roles.indexOf(a) - roles.indexOf(b),
  );
}

const missingRoles = (where: string, roles: readonly string[]): Error =>
  badInput(
    "missing-role",
    where,
    `nothing is said of ${roles.join(", ")}`,
    "name every role once, the ground too",
  );
