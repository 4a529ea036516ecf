import { pathOfRings } from "../../geometry/clip.ts";
import type { Size } from "../../geometry/lattice.ts";
import { areaOf, type Path } from "../../geometry/path.ts";
import { stepper, type Watch } from "../../tile/steps.ts";
import type { Tile } from "../../tile/tile.ts";
import { marksOf, SLUG } from "./marks.ts";
import { planSeparations, type SeparationOptions } from "./plan.ts";
import { separate } from "./separate.ts";

export type { SeparationOptions } from "./plan.ts";

/** What one ink prints: a screen, a cylinder or a film. Frozen plain data; coordinates from the trim's upper left corner. */
export interface Plate {
  /** Name of the pattern. */
  readonly pattern: string;
  /** The role that it prints. */
  readonly role: string;
  /** The trimmed sheet (µm). */
  readonly size: Size;
  /** How far the print goes on beyond the trim, and how much more room there is for marks, on every side (µm). */
  readonly bleed: number;
  readonly slug: number;
  /** What is printed, bleed included (µm, filled nonzero). Nothing in it overlaps. */
  readonly path: Path;
  /** Registration and trim marks, and the plate's name; empty without marks. */
  readonly marks: Path;
  /** Share of the sheet, bleed included, that it prints, 0..1. */
  readonly coverage: number;
}

/**
 * The plates of a tile: one for each role, the ground first. Without a trap they fit together: every point of the sheet is
 * on exactly one of them (or two and more where a role overprints). With a trap, lighter inks reach under darker
 * neighbours, so that a press that is out of register by less shows no gap; the edges that are seen stay where they were.
 *
 * Shapes and spreads go on across the edges of the repeat, to within 4 µm; spreads are within 10 µm of the true parallel curve. Colour has no part in this but
 * for the order of a colorway's inks. `plateToSvg` and `plateToPng` make files of a plate.
 *
 * @example const plates = await separations(tile, { trap: "0.2mm", lightToDark: colorway })
 * @throws SprigwrightError `unknown-option`, `unknown-role`, `missing-option` (a trap without an order), `missing-role`,
 * `missing-ink`, `unknown-cut`, `length-range`, `drawing-too-large`; and the reason of `signal` when it is aborted
 */
export async function separations(
  tile: Tile,
  options: SeparationOptions = {},
  watch: Watch = {},
): Promise<readonly Plate[]> {
  const plan = planSeparations(tile, options);
  const { size, bleed } = plan;
  const step = stepper(watch, 0, 1);
  const work = separate(tile, plan);
  let state = work.next();
  for (; !state.done; state = work.next()) await step(state.value);
  const paths = state.value;
  const sheet = (size.width + 2 * bleed) * (size.height + 2 * bleed);
  const roles = ["ground", ...tile.layers.map((layer) => layer.role)];
  const printed = roles.flatMap((role, i) =>
    role === "ground" && !plan.ground ? [] : [{ role, path: paths[i]! }],
  );
  const trap = plan.trap > 0 ? `  trap ${plan.trap / 1000} mm` : "";
  return Object.freeze(
    printed.map(({ role, path }, i) => {
      const label = `${tile.name}  ${role}  ${i + 1}/${printed.length}${trap}`;
      return Object.freeze({
        pattern: tile.name,
        role,
        size,
        bleed,
        slug: plan.marks ? SLUG : 0,
        path,
        marks: pathOfRings(plan.marks ? marksOf(size, bleed, label) : []),
        coverage: Math.round((areaOf(path) / sheet) * 1e9) / 1e9,
      });
    }),
  );
}
