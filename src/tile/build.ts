import { pieceFailed, unknownName, wrongType } from "../errors/catalogue.ts";
import { SprigwrightError, within } from "../errors/error.ts";
import type { Arrangement } from "../geometry/lattice.ts";
import type { DrawnMotif, LayoutPiece, LayoutTools, LayoutUse } from "../layout/layout.ts";
import { shortName } from "../motif/define.ts";
import { drawMotif } from "../motif/draw.ts";
import type { Motif, MotifPiece, MotifUse } from "../motif/motif.ts";
import { canonicalJson } from "../params/canonical.ts";
import { isRecord } from "../params/compound.ts";
import { definitionOf } from "../params/use.ts";
import type { RepeatPiece } from "../repeat/repeat.ts";
import { exactMath } from "../seed/math.ts";
import { createRandom, type Random } from "../seed/random.ts";
import { checkArrangement } from "./check-arrangement.ts";
import { checkBorder } from "./check-border.ts";
import { checkGap, checkPlacements } from "./check-placements.ts";
import { checkSizes } from "./check-sizes.ts";
import { finishTile, type Laid } from "./finish.ts";
import { builtFrom, readyTile } from "./ready.ts";
import { recipeOf, type TilePlan } from "./recipe.ts";
import { scaled } from "./scale.ts";
import { stepper, type Watch } from "./steps.ts";
import type { Tile } from "./tile.ts";

/**
 * Builds the tile of a pattern: draws its motifs, lays them out, repeats them, and stacks them in roles.
 * The same pattern with the same version gives the same tile, to the byte, in every JavaScript engine.
 *
 * @throws SprigwrightError that names the pattern and the piece; the signal's reason when called off
 */
export async function buildTile<R extends string = string>(
  pattern: TilePlan & { readonly layout: LayoutUse<R> },
  watch: Watch = {},
): Promise<Tile<R>> {
  if (!isRecord(pattern) || typeof pattern.seed !== "string")
    throw wrongType("buildTile > pattern", pattern, "a pattern: what definePattern or kit.read gives");
  const ready = readyTile(pattern);
  if (ready) {
    watch.signal?.throwIfAborted();
    watch.onProgress?.(1);
    return ready as Tile<R>;
  }
  const random = createRandom(pattern.seed);
  const { motifs, draw } = motifStore(random);
  const repeat = definitionOf<RepeatPiece>(pattern.repeat, `${pattern.name} > repeat`);
  const arrangement = arrange(repeat, pattern);
  const step = stepper(watch, 0, 0.95);
  await step(0);
  const { placements, gap } = await layOut(
    pattern,
    motifs,
    {
      arrangement,
      draw,
      standing: [],
      held: [],
      random: random.fork("layout"),
      math: exactMath,
      step,
    },
    watch,
  );
  checkRoles(motifs, pattern);
  checkSizes(placements, motifs, arrangement.lattice.block, pattern.name);
  checkBorder(placements, motifs, arrangement, pattern.name);
  watch.onProgress?.(1);
  const laid = { motifs, placements, gap, arrangement, recipe: recipeOf(pattern) };
  const tile = finishTile(pattern.scale === undefined ? laid : scaled(laid, pattern.scale, pattern.name));
  // That every layer's role is one of the pattern's was checked above.
  return builtFrom(tile, pattern) as Tile<R>;
}

/** Draws each motif once, however often it is asked for; every motif has a random stream of its own. */
function motifStore(random: Random): { motifs: Motif[]; draw: (use: MotifUse) => readonly DrawnMotif[] } {
  const motifs: Motif[] = [];
  const drawn = new Map<MotifPiece, Map<string, readonly DrawnMotif[]>>();
  const draw = (use: MotifUse): readonly DrawnMotif[] => {
    const key = canonicalJson(use);
    const piece = definitionOf<MotifPiece>(use, "motif");
    const own = drawn.get(piece) ?? new Map<string, readonly DrawnMotif[]>();
    drawn.set(piece, own);
    const known = own.get(key);
    if (known) return known;
    // Not by its roles: a part that is recoloured keeps its shape.
    const { roles: _, ...drawing } = use;
    const fresh = drawMotif(use, random.fork(`motif ${canonicalJson(drawing)}`)).map((motif) => ({
      index: motifs.push(motif) - 1,
      motif,
    }));
    own.set(key, fresh);
    return fresh;
  };
  return { motifs, draw };
}

async function layOut(
  pattern: TilePlan,
  motifs: readonly Motif[],
  tools: LayoutTools,
  watch: Watch,
): Promise<Pick<Laid, "placements" | "gap">> {
  const piece = definitionOf<LayoutPiece>(pattern.layout, `${pattern.name} > layout`);
  const where = shortName(piece.name);
  let placed: unknown;
  try {
    placed = await piece.place(pattern.layout.params as never, tools);
  } catch (cause) {
    if (watch.signal?.aborted && cause === watch.signal.reason) throw cause;
    if (cause instanceof SprigwrightError)
      within(pattern.name, () => {
        throw cause;
      });
    throw pieceFailed(`${pattern.name} > ${where}`, cause);
  }
  const at = `${pattern.name} > ${where}`;
  if (!isRecord(placed)) return { placements: checkPlacements(placed, motifs.length, at), gap: undefined };
  const placements = checkPlacements(placed["placements"], motifs.length, at);
  return { placements, gap: checkGap(placed["gap"], at) };
}

function arrange(repeat: RepeatPiece, pattern: TilePlan): Arrangement {
  const where = `${pattern.name} > ${shortName(repeat.name)}`;
  let arranged: unknown;
  try {
    arranged = within(pattern.name, () => repeat.arrange(pattern.repeat.params as never));
  } catch (cause) {
    if (cause instanceof SprigwrightError) throw cause;
    throw pieceFailed(where, cause);
  }
  return checkArrangement(arranged, where);
}

/** A motif that names its parts itself may draw one that it did not announce: the pattern has no place for it. */
function checkRoles(motifs: readonly Motif[], pattern: TilePlan): void {
  for (const { name, shapes } of motifs)
    for (const { role } of shapes)
      if (!pattern.roles.includes(role))
        throw unknownName(`${pattern.name} > ${name}`, "role", role, pattern.roles);
}
