import type { Colorway } from "../../colorway/colorway.ts";
import type { Size } from "../../geometry/lattice.ts";
import { deepFreeze } from "../../params/canonical.ts";
import { isRecord, list, optional, readParams } from "../../params/compound.ts";
import { flag, integer, text } from "../../params/kinds.ts";
import type { Tile } from "../../tile/tile.ts";
import { VERSION } from "../../tile/version.ts";
import { UM_PER_INCH } from "../../units/length.ts";
import { repeatKind, repeatSize, titleOf } from "../sheet/facts.ts";
import * as option from "../sheet/options.ts";
import { altOf } from "./alt.ts";
import { kindsOf, listed, plural, subjectsAmong } from "./kinds.ts";
import { readFiles, readWords } from "./read.ts";

/** A size in both units, to a hundredth. */
export interface BothUnits {
  readonly mm: { readonly width: number; readonly height: number };
  readonly in: { readonly width: number; readonly height: number };
}

/** A colorway as it is listed. */
export interface ListedColorway {
  readonly name: string;
  /** Role → `#rrggbb`. */
  readonly inks: Readonly<Record<string, string>>;
  /** What the picture shows, for those who cannot see it. */
  readonly alt: string;
  /** Names of the files that show it. */
  readonly files: readonly string[];
}

/** What is odd about a listing: data, of which `sayListingWarning` makes a sentence. */
export type ListingWarning =
  | { readonly rule: "several-subjects"; readonly subjects: readonly string[] }
  | { readonly rule: "no-subject"; readonly taken: string };

/** What a shop asks about a pattern: plain frozen data. */
export interface Listing {
  /** The pattern's name, which names its files. */
  readonly name: string;
  readonly title: string;
  /** The one thing that it shows. */
  readonly subject: string;
  /** Whether it is the hero of its collection, in which several subjects may meet. */
  readonly hero: boolean;
  readonly tags: readonly string[];
  readonly repeat: BothUnits & { readonly kind: string };
  /** The smallest rectangle that repeats straight. */
  readonly block: BothUnits;
  readonly dpi: number;
  readonly colorways: readonly ListedColorway[];
  /** Files that show no one colorway. */
  readonly files: readonly string[];
  readonly digest: string;
  readonly sprigwright: string;
  readonly warnings: readonly ListingWarning[];
}

/** What {@link listing} is given. */
export interface ListingOptions {
  readonly tile: Tile;
  /** 1 to 500 colorways. */
  readonly colorways: readonly Colorway[] | Readonly<Record<string, Colorway>>;
  /** Default: the pattern's name. */
  readonly title?: string;
  /** The one thing that the pattern shows. Default: the pattern's `subject`. */
  readonly subject?: string;
  /** Tags of your own, at most 40; those that follow from the pattern come after. */
  readonly tags?: readonly string[];
  /** Whether the pattern is the hero of its collection: several subjects are then meant. Default false. */
  readonly hero?: boolean;
  /** Dots per inch of the print files. Default 150. */
  readonly dpi?: number;
  /** The pattern's files, such as `writePattern` returns: of paths, only the names are listed. */
  readonly files?: readonly { readonly file: string; readonly colorway?: string | undefined }[];
  /** Kind of motif → what to call one of it: `{ blossom: "pear blossom" }`. Default: the kind itself. */
  readonly words?: Readonly<Record<string, string>>;
}

/**
 * Listing data of one pattern. The alt text says what is in the tile: its kinds of motifs, those that cover most first, and
 * the colours, in plain words.
 *
 * A pattern sells by its one subject: where motifs of several are in it, `warnings` says so, unless it is the hero.
 *
 * @throws SprigwrightError `no-colorways`, `missing-ink`, `unknown-kind-of-motif`, `unknown-colorway`, `number-range`,
 * `wrong-type`, `unknown-option`
 */
export function listing(options: ListingOptions): Listing {
  const where = "listing";
  const {
    words: givenWords,
    files: givenFiles,
    ...rest
  } = isRecord(options) ? options : ({} as ListingOptions);
  const given = readParams(
    {
      tile: option.tile(),
      colorways: option.colorways(500),
      title: optional(text({ about: "Title.", max: 200 })),
      subject: optional(text({ about: "The one thing that it shows.", max: 80 })),
      tags: list(text({ about: "A tag.", max: 60 }), { about: "Tags.", min: 0, max: 40, default: [] }),
      hero: flag({ about: "Whether it is the hero.", default: false }),
      dpi: integer({ about: "Dots per inch.", min: 1, max: 2400, default: 150 }),
    },
    rest,
    where,
  );
  const { tile, colorways, hero, dpi } = given;
  option.checkInks(tile, colorways);
  const kinds = kindsOf(tile);
  const words = readWords(givenWords ?? {}, kinds, `${where} > words`);
  const subjects = subjectsAmong(kinds).map((kind) => words.get(kind)!);
  const subject = given.subject ?? tile.recipe.subject;
  const taken = subjects[0] ?? (kinds[0] ? words.get(kinds[0])! : tile.name);
  const shown = kinds.slice(0, 4).map((kind) => plural(words.get(kind)!));
  const files = readFiles(givenFiles ?? [], colorways, `${where} > files`);
  const repeat = repeatSize(tile);
  return deepFreeze({
    name: tile.name,
    title: given.title ?? titleOf(tile.name),
    subject: subject || taken,
    hero,
    tags: tagsOf([
      ...given.tags,
      subject || taken,
      ...shown.filter((kind) => kind !== plural(subject || taken)),
      `${repeatKind(tile)} repeat`,
      "seamless pattern",
    ]),
    repeat: { kind: repeatKind(tile), ...bothUnits(repeat) },
    block: bothUnits(tile.block),
    dpi,
    colorways: colorways.map(({ name, inks }) => ({
      name,
      inks: Object.fromEntries(tile.recipe.roles.map((role) => [role, inks[role]!])),
      alt: altOf(tile, inks, subject || taken, shown),
      files: files.filter((entry) => entry.colorway === name).map(({ file }) => file),
    })),
    files: files.filter(({ colorway }) => colorway === undefined).map(({ file }) => file),
    digest: tile.digest,
    sprigwright: VERSION,
    warnings: [
      ...(subjects.length > 1 && !hero ? [{ rule: "several-subjects" as const, subjects }] : []),
      ...(subject ? [] : [{ rule: "no-subject" as const, taken }]),
    ],
  });
}

/** A warning as a sentence. */
export const sayListingWarning = (warning: ListingWarning): string =>
  warning.rule === "several-subjects"
    ? `${listed(warning.subjects.map(plural))} are ${warning.subjects.length} subjects: a pattern sells by one; keep the one, or list it as a hero`
    : `the pattern names no subject: "${warning.taken}" was taken, which covers most of it`;

const hundredth = (value: number): number => Math.round(value * 100) / 100;
const bothUnits = ({ width, height }: Size): BothUnits => ({
  mm: { width: hundredth(width / 1000), height: hundredth(height / 1000) },
  in: { width: hundredth(width / UM_PER_INCH), height: hundredth(height / UM_PER_INCH) },
});

/** Tags in lower case, each once, in order. */
const tagsOf = (tags: readonly string[]): readonly string[] => [
  ...new Set(tags.map((tag) => tag.trim().replace(/\s+/g, " ").toLowerCase()).filter((tag) => tag !== "")),
];
