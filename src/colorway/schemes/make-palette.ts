import { badInput, pieceFailed, shown, wrongType } from "../../errors/catalogue.ts";
import { SprigwrightError, within } from "../../errors/error.ts";
import { colorWord } from "../../motif/artwork/color-word.ts";
import { isRecord, readParams } from "../../params/compound.ts";
import { unique } from "../../params/kebab.ts";
import { integer, text } from "../../params/kinds.ts";
import { definitionOf, isUse } from "../../params/use.ts";
import { exactMath } from "../../seed/math.ts";
import { createRandom, type Random } from "../../seed/random.ts";
import { toInk } from "../ink.ts";
import { MOST_INKS, type Palette, readPalette } from "../palette.ts";
import { apartSquared, oklchOf } from "./oklch.ts";
import type { SchemeColor, SchemePiece, SchemeUse } from "./scheme.ts";

/** Options of {@link makePalette}. */
export interface MakeOptions {
  /** Name of the palette, in kebab-case. */
  readonly name: string;
  /** Any text of at most 200 characters: the same seed gives the same palette. */
  readonly seed: string;
}

/** Options of {@link makePalettes}. */
export interface MakeSeveralOptions extends MakeOptions {
  /** How many, 1 to 100: they are called after the name, `dusk-1`, `dusk-2` … */
  readonly count: number;
}

/** Hues go round and round, but not so often: that is degrees. */
const TURNS = 8;

const seed = text({ about: "Fixes every chance in the palette.", max: 200 });
const name = text({ about: "Name of the palette.", max: 36 });
const one = { name, seed };
const several = { ...one, count: integer({ about: "How many palettes.", min: 1, max: 100 }) };

/**
 * A palette by a scheme. The inks are made in OKLCH and brought into sRGB by lowering chroma (CSS Color 4, 13.2); each is
 * called by a word for its colour, which you may change by making a `palette` of your own from them.
 *
 * @example makePalette(schemes.dusk(), { name: "ferry", seed: "hollin-quay-2" })
 * @throws SprigwrightError `wrong-type`, `unbound-piece`, `piece-failed`, `bad-scheme`, `no-hue`, and what the scheme's options throw
 */
export function makePalette(scheme: SchemeUse, options: MakeOptions): Palette {
  const read = readParams(one, options, "makePalette");
  return made(pieceOf(scheme, "makePalette"), scheme, read.name, createRandom(read.seed));
}

/** Palettes made for each of several: the one farthest from those before it is taken. */
const TRIES = 8;

/**
 * Several palettes by a scheme, each from streams of its own, and each unlike those before it: asking for one more leaves the
 * others as they are.
 * @throws as makePalette
 */
export function makePalettes(scheme: SchemeUse, options: MakeSeveralOptions): readonly Palette[] {
  const read = readParams(several, options, "makePalettes");
  const piece = pieceOf(scheme, "makePalettes");
  const random = createRandom(read.seed);
  const palettes: Tried[] = [];
  for (let i = 1; i <= read.count; i++) {
    const own = random.fork(`palette ${i}`);
    const tries = Array.from({ length: i === 1 ? 1 : TRIES }, (_, n) => {
      const palette = made(piece, scheme, `${read.name}-${i}`, own.fork(`try ${n + 1}`));
      return { palette, colors: Object.values(palette.inks).map(oklchOf) };
    });
    const near = tries.map((one) => palettes.reduce((least, other) => Math.min(least, apart(one, other)), 9));
    palettes.push(tries[near.indexOf(Math.max(...near))]!);
  }
  return Object.freeze(palettes.map(({ palette }) => palette));
}

interface Tried {
  readonly palette: Palette;
  readonly colors: readonly SchemeColor[];
}

/** How different two palettes are, ink by ink: the mean squared distance in OKLab, rounded. */
function apart({ colors: p }: Tried, { colors: q }: Tried): number {
  const count = Math.min(p.length, q.length);
  let sum = 0;
  for (let i = 0; i < count; i++) sum += apartSquared(p[i]!, q[i]!);
  return Math.round((sum / count) * 1e6) / 1e6;
}

function pieceOf(scheme: unknown, where: string): SchemePiece {
  const piece = isUse(scheme) ? definitionOf<SchemePiece>(scheme, where) : undefined;
  if (piece?.kind !== "scheme") throw wrongType(where, scheme, "a scheme, such as schemes.dusk()");
  return piece;
}

function made(piece: SchemePiece, { params }: SchemeUse, called: string, random: Random): Palette {
  return within(piece.name, () => {
    let colors: readonly SchemeColor[];
    try {
      colors = piece.make(params as never, { random: random.fork(piece.name), math: exactMath });
    } catch (cause) {
      if (cause instanceof SprigwrightError) throw cause;
      throw pieceFailed("make", cause);
    }
    if (!Array.isArray(colors) || colors.length === 0 || colors.length > MOST_INKS)
      throw badScheme("make", `it returned ${shown(colors)}`);
    return readPalette({ name: called, inks: inksOf(colors) }, "make");
  });
}

/** Inks by name. One that comes out as another did is made a little darker, or, at black, lighter, until it does not. */
function inksOf(colors: readonly SchemeColor[]): Record<string, string> {
  const inks: [name: string, ink: string][] = [];
  const names = new Set<string>();
  const taken = new Set<string>();
  for (const [i, color] of colors.entries()) {
    const { name: own, lightness, chroma, hue } = checked(color, `make[${i}]`);
    let ink = "";
    for (let n = 0; n <= 2 * MOST_INKS; n++) {
      const shift = n <= MOST_INKS ? -0.004 * n : 0.004 * (n - MOST_INKS);
      const l = Math.min(1, Math.max(0, lightness + shift));
      ink = toInk({ mode: "oklch", l, c: chroma, h: hue * 360 });
      if (!taken.has(ink)) break;
    }
    taken.add(ink);
    inks.push([unique(own ?? colorWord(ink), names), ink]);
  }
  return Object.fromEntries(inks);
}

function checked(color: unknown, where: string): SchemeColor {
  if (!isRecord(color)) throw badScheme(where, `it is ${shown(color)}`);
  const { name: called, lightness, chroma, hue } = color;
  if (called !== undefined && typeof called !== "string")
    throw badScheme(where, `its name is ${shown(called)}`);
  const between = (value: unknown, least: number, most: number): boolean =>
    typeof value === "number" && value >= least && value <= most;
  if (!between(lightness, 0, 1) || !between(chroma, 0, 1) || !between(hue, -TURNS, TURNS))
    throw badScheme(where, `it is { ${String(lightness)}, ${String(chroma)}, ${String(hue)} }`);
  return color as unknown as SchemeColor;
}

const badScheme = (where: string, what: string): Error =>
  badInput(
    "bad-scheme",
    where,
    what,
    `return 1 to ${MOST_INKS} colours { lightness, chroma, hue } in OKLCH: lightness and chroma from 0 to 1, hue in turns, not degrees`,
  );
