import { pieceFailed } from "../errors/catalogue.ts";
import { SprigwrightError, within } from "../errors/error.ts";
import type { DrawnMotif, LayoutPiece, LayoutTools, Placement } from "../layout/layout.ts";
import { shortName } from "../motif/define.ts";
import { drawMotif } from "../motif/draw.ts";
import type { Motif, MotifUse } from "../motif/motif.ts";
import { canonicalJson } from "../params/canonical.ts";
import { definitionOf } from "../params/use.ts";
import type { RepeatPiece } from "../repeat/repeat.ts";
import { exactMath } from "../seed/math.ts";
import { createRandom, type Random } from "../seed/random.ts";
import { checkPlacements } from "./check-placements.ts";
import { digestOf } from "./digest.ts";
import { measure } from "./figures.ts";
import { makeLayers } from "./layers.ts";
import { recipeOf, type TilePlan } from "./recipe.ts";
import { stackShapes } from "./stack.ts";
import { stepper, type Watch } from "./steps.ts";
import type { Tile } from "./tile.ts";

/**
 * Builds the tile of a pattern: draws its motifs, lays them out, repeats them, and stacks them in roles.
 * The same pattern with the same version gives the same tile, to the byte, in every JavaScript engine.
 *
 * @throws SprigwrightError that names the pattern and the piece; the signal's reason when called off
 */
export async function buildTile(pattern: TilePlan, watch: Watch = {}): Promise<Tile> {
  const random = createRandom(pattern.seed);
  const { motifs, draw } = motifStore(random);
  const repeat = definitionOf<RepeatPiece>(pattern.repeat, `${pattern.name} > repeat`);
  const arrangement = within(pattern.name, () => repeat.arrange(pattern.repeat.params as never));
  const step = stepper(watch, 0, 0.95);
  await step(0);
  const placements = await layOut(pattern, motifs, {
    arrangement,
    draw,
    random: random.fork("layout"),
    math: exactMath,
    step,
  });
  const stacked = motifs.map((motif) => stackShapes(motif, pattern.roles));
  const drawnRoles = pattern.roles.filter((role) => role !== "ground");
  const layers = makeLayers(placements, stacked, arrangement, drawnRoles);
  const { lattice, operations } = arrangement;
  const { block } = lattice;
  const cells = (block.width * block.height) / Math.abs(lattice.a[0] * lattice.b[1] - lattice.a[1] * lattice.b[0]);
  watch.onProgress?.(1);
  return Object.freeze({
    name: pattern.name,
    block,
    lattice,
    motifs: Object.freeze(motifs),
    placements,
    layers: Object.freeze(layers),
    figures: measure(block, layers, placements.length * operations.length * cells),
    recipe: recipeOf(pattern),
    digest: digestOf(block, layers),
  });
}

/** Draws each motif once, however often it is asked for; every motif has a random stream of its own. */
function motifStore(random: Random): { motifs: Motif[]; draw: (use: MotifUse) => readonly DrawnMotif[] } {
  const motifs: Motif[] = [];
  const drawn = new Map<string, readonly DrawnMotif[]>();
  const draw = (use: MotifUse): readonly DrawnMotif[] => {
    const key = canonicalJson(use);
    const known = drawn.get(key);
    if (known) return known;
    const fresh = drawMotif(use, random.fork(`motif ${key}`)).map((motif) => ({
      index: motifs.push(motif) - 1,
      motif,
    }));
    drawn.set(key, fresh);
    return fresh;
  };
  return { motifs, draw };
}

async function layOut(
  pattern: TilePlan,
  motifs: readonly Motif[],
  tools: LayoutTools,
): Promise<readonly Placement[]> {
  const piece = definitionOf<LayoutPiece>(pattern.layout, `${pattern.name} > layout`);
  const where = shortName(piece.name);
  let placed: unknown;
  try {
    placed = await piece.place(pattern.layout.params as never, tools);
  } catch (cause) {
    if (cause instanceof SprigwrightError)
      within(pattern.name, () => {
        throw cause;
      });
    if (isAbort(cause)) throw cause;
    throw pieceFailed(`${pattern.name} > ${where}`, cause);
  }
  return checkPlacements(placed, motifs.length, `${pattern.name} > ${where}`);
}

const isAbort = (cause: unknown): boolean => cause instanceof Error && cause.name === "AbortError";
