import { badInput, outOfRange, unknownName } from "../../errors/catalogue.ts";
import { within } from "../../errors/error.ts";
import { kebab, unique } from "../../params/kebab.ts";
import { type Length, toMm } from "../../units/length.ts";
import type { MotifUse } from "../motif.ts";
import { type Cluster, clustersOf } from "./cluster.ts";
import { groupsOf } from "./groups.ts";
import { parseSvg } from "./parse.ts";
import { keepOnly } from "./prune.ts";
import { type ArtworkOptions, type ArtworkShaping, readArtwork } from "./read-artwork.ts";
import { walk } from "./walk.ts";

/** How {@link artworkSheet} tells motifs apart, beside what {@link readArtwork} takes. */
export interface SheetShaping extends ArtworkShaping {
  /**
   * `groups`: every group at the top of the file is a motif, called by its id or its label in the editor.
   * `clusters`: shapes that stand apart from others are motifs, called by a name that all their shapes share, or
   * numbered in reading order. Default: groups when there are two or more of them and nothing else that paints.
   */
  readonly by?: "groups" | "clusters";
  /** Clusters are at least this far apart, as a share of the sheet's longer side, 0 to 0.5; default 0.01. */
  readonly apart?: number;
  /** Longer side of the largest motif; the others keep their proportion to it. Default 30 mm. */
  readonly size?: Length;
  /** Longer sides of single motifs, by name, where they should leave their proportion. */
  readonly sizes?: Readonly<Record<string, Length>>;
}

/** Most motifs of a sheet. */
const MOST_MOTIFS = 200;

/**
 * The motifs of a sheet: one SVG file with several drawings on it, as a set under their names. Each is a motif of its
 * own and carries only its own part of the file. All options hold for each of them.
 *
 * @throws SprigwrightError as {@link readArtwork}, with the motif's name; `one-motif` when the sheet has no two that
 * stand apart, `artwork-too-large`, `unknown-motif` for a size of none
 */
export function artworkSheet<const Roles extends Readonly<Record<string, string>>>(
  svg: string,
  options: Omit<ArtworkOptions<Roles>, "size"> & SheetShaping & { readonly roles: Roles },
): Readonly<Record<string, MotifUse<Roles[keyof Roles]>>>;
export function artworkSheet(svg: string, options?: SheetShaping): Readonly<Record<string, MotifUse<string>>>;
export function artworkSheet(svg: string, options: object = {}): Readonly<Record<string, MotifUse<string>>> {
  const { by, apart = 0.01, size = 30, sizes = {}, ...others } = options as SheetShaping;
  const root = within("sheet", () => parseSvg(svg));
  const found = within("sheet", () => motifsOf(root, by, apart));
  const largest = Math.max(...found.map((cluster) => cluster.longer));
  const names = nameAll(found);
  for (const name of Object.keys(sizes))
    if (!names.includes(name)) throw unknownName(`sheet > sizes > ${name}`, "motif", name, names);
  const set: Record<string, MotifUse<string>> = {};
  found.forEach((cluster, i) => {
    const name = names[i]!;
    const share = toMm(size, "sheet > size") * (cluster.longer / largest);
    // A crumb beside a large motif is still a millimetre, the least that a motif may be.
    const own = sizes[name] ?? Math.max(1, Math.round(share * 1000) / 1000);
    const text = keepOnly(svg, cluster.places);
    set[name] = within(`sheet > ${name}`, () => readArtwork(text, { ...others, size: own }));
  });
  return Object.freeze(set);
}

function motifsOf(
  root: ReturnType<typeof parseSvg>,
  by: SheetShaping["by"],
  apart: number,
): readonly Cluster[] {
  if (by !== undefined && by !== "groups" && by !== "clusters")
    throw unknownName("by", "way", String(by), ["groups", "clusters"]);
  if (typeof apart !== "number" || !(apart >= 0 && apart <= 0.5))
    throw outOfRange("apart", apart, { min: 0, max: 0.5 }, "");
  const { marks } = walk(root);
  const groups = by === "clusters" ? undefined : groupsOf(root, marks, by === "groups");
  const found = groups ?? clustersOf(root, marks, apart);
  if (found.length < 2)
    throw badInput(
      "one-motif",
      "svg",
      `the sheet holds ${found.length === 0 ? "no motif" : "one motif only"}`,
      'read it with readArtwork, put each motif into a group of its own, or say by: "clusters" and how far apart they are',
    );
  if (found.length > MOST_MOTIFS)
    throw badInput(
      "artwork-too-large",
      "svg",
      `the sheet holds ${found.length} motifs, more than ${MOST_MOTIFS}`,
      "say that they are farther apart, group their shapes, or cut the sheet in two",
    );
  return found;
}

/** Names in kebab-case, numbered where they are missing or there twice. */
function nameAll(clusters: readonly Cluster[]): string[] {
  const taken = new Set<string>();
  return clusters.map(({ name }, i) => unique(kebab(name) || `motif-${i + 1}`, taken));
}
