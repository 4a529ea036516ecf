/**
 * A convex polygon that a unit is, where it is no rectangle: corners clockwise on the page, in µm from the
 * unit's upper left corner. Corners need not be whole, since only origins of motifs are held against them.
 */
export type Region = readonly (readonly [x: number, y: number])[];

/**
 * Whether a point lies in a region, or within `slack` µm of it.
 *
 * Without slack, of two sides that face each other one belongs to it: the upper and the left one, as in an
 * upright rectangle. So where regions lie side by side, moved by a lattice, every point is in just one.
 */
export function inRegion(region: Region, x: number, y: number, slack = 0): boolean {
  for (let i = 0; i < region.length; i++) {
    const [fromX, fromY] = region[i]!;
    const [toX, toY] = region[(i + 1) % region.length]!;
    const [dx, dy] = [toX - fromX, toY - fromY];
    const side = dx * (y - fromY) - dy * (x - fromX);
    if (slack > 0) {
      if (side < -slack * Math.sqrt(dx * dx + dy * dy)) return false;
    } else if (side < 0 || (side === 0 && (dy > 0 || (dy === 0 && dx < 0)))) return false;
  }
  return true;
}

/** A polygon moved so that its box starts at the origin, as far as whole µm go; with the box and the move. */
export function framed(corners: Region): {
  readonly region: Region;
  readonly unit: { readonly width: number; readonly height: number };
  readonly left: number;
  readonly top: number;
} {
  const xs = corners.map(([x]) => x);
  const ys = corners.map(([, y]) => y);
  const left = Math.floor(Math.min(...xs));
  const top = Math.floor(Math.min(...ys));
  const unit = { width: Math.ceil(Math.max(...xs)) - left, height: Math.ceil(Math.max(...ys)) - top };
  const region = corners.map(([x, y]) => [x - left, y - top] as const);
  return { region: clockwise(region), unit, left, top };
}

function clockwise(region: Region): Region {
  let area = 0;
  region.forEach(([x, y], i) => {
    const [nextX, nextY] = region[(i + 1) % region.length]!;
    area += x * nextY - nextX * y;
  });
  return area < 0 ? [...region].reverse() : region;
}
