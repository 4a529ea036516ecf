import { badInput } from "../../../errors/catalogue.ts";
import type { Vector } from "../../../geometry/lattice.ts";
import { transformPath } from "../../../geometry/matrix.ts";
import { type Box, CURVE, type Path } from "../../../geometry/path.ts";
import type { Tile } from "../../../tile/tile.ts";
import { copiesInBlock } from "../../copies.ts";
import { inksFor } from "../../inks.ts";
import { boxPath, PAPER } from "../marks.ts";
import { type Cloth, type Page, pageBox } from "../page.ts";

/** A shape in one ink, of which only what lies in `clip` is painted. */
export interface Coat {
  /** µm; the same object in every colorway of one cut. */
  readonly path: Path;
  /** Where the path's origin lies on the page (µm). */
  readonly at: Vector;
  readonly ink: string;
  /** On the page (µm). */
  readonly clip: Box;
  /** Whether it covers all of its clip. */
  readonly floods?: true;
}

const ORIGIN: Vector = [0, 0];

/**
 * All that a checked page shows as coats of ink, back to front, white paper first.
 * @throws SprigwrightError `missing-ink` when a colorway is not for its tile, `too-many-shapes`
 */
export function coatsOf(page: Page): Coat[] {
  const clip = pageBox(page);
  const cuts: Cut[] = [];
  return [
    { path: boxPath(clip), at: ORIGIN, ink: PAPER, clip, floods: true },
    ...page.items.flatMap((item) => {
      if (item.kind === "fill") return [{ path: item.path, at: ORIGIN, ink: item.ink, clip }];
      const [ground, ...inks] = inksFor(item.tile, item.colorway);
      const area = overlap(item.area, clip);
      if (area.minX >= area.maxX || area.minY >= area.maxY) return [];
      return [
        { path: boxPath(area), at: ORIGIN, ink: ground!, clip: area, floods: true as const },
        ...layersIn(item, area, cuts).map((path, i) => ({ path, at: item.at, ink: inks[i]!, clip: area })),
      ];
    }),
  ];
}

const overlap = (a: Box, b: Box): Box => ({
  minX: Math.max(a.minX, b.minX),
  minY: Math.max(a.minY, b.minY),
  maxX: Math.min(a.maxX, b.maxX),
  maxY: Math.min(a.maxY, b.maxY),
});

/** A cut of a tile that was worked out before: another colorway of it only has to be put in its place. */
interface Cut extends Pick<Cloth, "tile" | "scale"> {
  /** From the corner of a block (µm on the page). */
  readonly view: Box;
  readonly layers: readonly Path[];
}

/** What each layer of a cloth draws in `area`, about the corner of its block; copies are whole shapes. */
function layersIn({ tile, scale, at: [x, y] }: Cloth, area: Box, cuts: Cut[]): readonly Path[] {
  const view: Box = { minX: area.minX - x, minY: area.minY - y, maxX: area.maxX - x, maxY: area.maxY - y };
  const known = cuts.find((cut) => cut.tile === tile && cut.scale === scale && sameBox(cut.view, view));
  if (known) return known.layers;
  const inTile: Box = {
    minX: Math.floor(view.minX / scale),
    minY: Math.floor(view.minY / scale),
    maxX: Math.ceil(view.maxX / scale),
    maxY: Math.ceil(view.maxY / scale),
  };
  refuseTooMany(tile, inTile);
  const layers = tile.layers.map(({ path }) => {
    const copies = copiesInBlock(path, tile.block, inTile);
    return scale === 1 ? copies : transformPath(copies, [scale, 0, 0, scale, 0, 0]);
  });
  cuts.push({ tile, scale, view, layers });
  return layers;
}

/** Most curves that one cut may come to: they take 24 bytes each, and as much again on their way. */
const MOST_CURVES = 8_000_000;

function refuseTooMany({ name, block, layers }: Tile, { minX, minY, maxX, maxY }: Box): void {
  const blocks = ((maxX - minX) / block.width + 1) * ((maxY - minY) / block.height + 1);
  const curves = layers.reduce((sum, { path }) => sum + path.points.length / CURVE, 0);
  if (blocks * curves > MOST_CURVES)
    throw badInput(
      "too-many-shapes",
      name,
      `the page shows about ${Math.round(blocks)} blocks of ${curves} curves each`,
      "make a smaller page, or a PDF, in which a block is there once; for plain cloth, rasterize and toSvg cut any length",
    );
}

const sameBox = (a: Box, b: Box): boolean =>
  a.minX === b.minX && a.minY === b.minY && a.maxX === b.maxX && a.maxY === b.maxY;
