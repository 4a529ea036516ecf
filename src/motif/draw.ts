import { badShape, pieceFailed, shown } from "../errors/catalogue.ts";
import { SprigwrightError, within } from "../errors/error.ts";
import { subtract, unite } from "../geometry/boolean.ts";
import { isPath, type Path } from "../geometry/path.ts";
import { silhouette } from "../geometry/silhouette.ts";
import { definitionOf } from "../params/use.ts";
import { exactMath } from "../seed/math.ts";
import type { Random } from "../seed/random.ts";
import { checkRoleName, shortName } from "./define.ts";
import type { Motif, MotifPiece, MotifTools, MotifUse, Shape } from "./motif.ts";

/**
 * Draws every variant of a motif: parts become shapes, one for each role, united; what comes back is checked.
 * @throws SprigwrightError `unbound-piece`, `piece-failed` (with the cause), `bad-shape`
 */
export function drawMotif(use: MotifUse, random: Random): Motif[] {
  const piece = definitionOf<MotifPiece>(use, "motif");
  const short = shortName(piece.name);
  return Array.from({ length: use.variants }, (_, n) => {
    const name = use.variants > 1 ? `${short}-${n + 1}` : short;
    return within(short, () => assemble(piece, use, name, callDraw(piece, use, random.fork(`drawing-${n}`))));
  });
}

function callDraw(piece: MotifPiece, use: MotifUse, random: Random): unknown {
  const { vary } = use;
  const stray: MotifTools["stray"] = (value, spread) =>
    vary === 0 ? value : value * (1 + vary * spread * random.between(-1, 1));
  const tools: MotifTools = { random, math: exactMath, vary, stray, roles: use.roles };
  try {
    return piece.draw(use.params as never, tools);
  } catch (cause) {
    if (cause instanceof SprigwrightError) throw cause;
    throw pieceFailed("draw", cause);
  }
}

function assemble(piece: MotifPiece, use: MotifUse, name: string, drawn: unknown): Motif {
  if (typeof drawn !== "object" || drawn === null) throw badShape("draw", `it returned ${shown(drawn)}`);
  const drawing = drawn as Readonly<Record<string, unknown>>;
  const parts = piece.parts === "drawn" ? Object.keys(drawing) : piece.parts;
  const stray = Object.keys(drawing).find((part) => !parts.includes(part));
  if (stray !== undefined) throw badShape("draw", `it returned a part "${stray}" that is not in its parts`);
  let shapes: Shape[] = [];
  for (const part of parts) {
    const role = use.roles[part] ?? checkRoleName(part, part);
    const path = unite(pathsOf(drawing[part], `draw > ${part}`));
    if (path.contours.length > 0) shapes = layOver(shapes, role, path);
  }
  if (shapes.length === 0) throw badShape("draw", "nothing was drawn");
  const outline = silhouette(shapes.map((shape) => shape.path));
  return Object.freeze({ name, shapes: Object.freeze(shapes), outline });
}

/**
 * One more part on top of a motif. A role has one shape, at the height of its first part; what lies between
 * that and the new part is cut away under it, so the picture stays. The ground's role is a knock-out.
 */
function layOver(shapes: readonly Shape[], role: string, path: Path): Shape[] {
  const at = role === "ground" ? -1 : shapes.findIndex((shape) => shape.role === role);
  if (at < 0 && role !== "ground") return [...shapes, Object.freeze({ role, path })];
  return shapes
    .map((shape, i) => {
      if (i === at) return Object.freeze({ role, path: unite([shape.path, path]) });
      return i > at ? Object.freeze({ role: shape.role, path: subtract(shape.path, path) }) : shape;
    })
    .filter((shape) => shape.path.contours.length > 0);
}

function pathsOf(value: unknown, where: string): Path[] {
  const paths = Array.isArray(value) ? value : value === undefined ? [] : [value];
  for (const path of paths)
    if (!isPath(path)) throw badShape(where, `it returned ${shown(path)} where a path was wanted`);
  return paths as Path[];
}
