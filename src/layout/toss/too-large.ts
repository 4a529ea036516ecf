import { motifTooLarge } from "../../errors/catalogue.ts";
import { isCloser } from "../../geometry/distance.ts";
import { type Bounds, type Images, imagesOf } from "../../geometry/images.ts";
import type { Arrangement } from "../../geometry/lattice.ts";
import { transformOutline } from "../../geometry/outline.ts";
import { selfCopies } from "./board.ts";
import { type Body, SLACK } from "./body.ts";
import type { TossEntry } from "./options.ts";
import { inBand } from "./trial.ts";
import type { Turns } from "./turns.ts";

/** Turns tried: enough to find the diagonal of a repeat. */
const MOST_TURNS = 48;
/** Places tried on each axis, when it matters where a motif stands. */
const PLACES = 13;

/**
 * Refuses drawings that keep no `gap` (µm) from their own copies, however they are turned and wherever they stand.
 * @throws SprigwrightError `motif-too-large`
 */
export function refuseTooLarge(
  entries: readonly TossEntry[],
  bodies: readonly (readonly Body[])[],
  arrangement: Arrangement,
  turns: Turns,
  gap: number,
): void {
  const images = imagesOf(arrangement);
  const stands = (body: Body, scale: number): boolean =>
    standsAnywhere(images, arrangement, body, scale, turns, gap);
  entries.forEach((entry, index) => {
    for (const body of bodies[index]!) {
      const least = entry.scale[0];
      if (stands(body, least)) continue;
      let [low, high] = [0, least];
      for (let k = 0; k < 8; k++) {
        const middle = (low + high) / 2;
        if (stands(body, middle)) low = middle;
        else high = middle;
      }
      const { box } = body.outline;
      const size = (scale: number): string =>
        `${mm((box[2]! - box[0]!) * scale)} x ${mm((box[3]! - box[1]!) * scale)} mm`;
      const { width, height } = arrangement.unit;
      throw motifTooLarge(
        `toss > motifs[${entry.listed ?? index}]`,
        `"${body.drawn.motif.name}" is ${size(least)} and does not keep a gap of ${mm(gap + body.extra)} mm from its own copies in a repeat of ${mm(width)} x ${mm(height)} mm`,
        low > 0
          ? `make it at most about ${size(low)}, make the repeat larger, or lessen the gap`
          : "make the repeat larger, or lessen the gap",
      );
    }
  });
}

const mm = (um: number): number => Math.floor(um / 100) / 10;

/** Whether a box is low enough for a border, wherever in it it stands. */
const standsInBand = (box: Bounds, arrangement: Arrangement): boolean =>
  inBand(box, arrangement.unit.height / 2 - (box[1]! + box[3]!) / 2, arrangement);

function standsAnywhere(
  images: Images,
  arrangement: Arrangement,
  body: Body,
  scale: number,
  turns: Turns,
  gap: number,
): boolean {
  const { width, height } = arrangement.unit;
  const limit = gap + SLACK + body.extra;
  // Without reflections and rotations all places are alike.
  const places = images.operations.length > 1 ? PLACES : 1;
  const stride = Math.max(1, Math.floor(turns.turn.length / MOST_TURNS));
  const { circle } = body;
  for (let turn = 0; turn < turns.turn.length; turn += stride) {
    const cos = turns.cos[turn]! * scale;
    const sin = turns.sin[turn]! * scale;
    for (let i = 0; i < places; i++)
      for (let j = 0; j < places; j++) {
        const e = ((i + 0.5) * width) / places - cos * circle.x + sin * circle.y;
        const f = ((j + 0.5) * height) / places - sin * circle.x - cos * circle.y;
        const outline = transformOutline(body.outline, [cos, sin, -sin, cos, e, f], body.scratch);
        const clash = selfCopies(images, outline, limit, (copy, dx, dy) =>
          isCloser(outline, copy, dx, dy, limit),
        );
        if (!clash && standsInBand(outline.box, arrangement)) return true;
      }
  }
  return false;
}
