/** Takes one side, in 1/256 pixel. */
export type PutSide = (x0: number, y0: number, x1: number, y1: number) => void;

/** A rectangle in 1/256 pixel. */
export interface Window {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/**
 * The sides of a closed polygon (x, y, x, y …) that bound what of it lies in a window.
 *
 * What is above or below is dropped, and what is to the left or right is pushed to that edge of the window: as areas are
 * added up from left to right, that leaves the inside as it was. Where a side is cut depends on the side
 * alone, not on its direction, so that shapes that share a side leave no gap.
 */
export function clipSides(ring: ArrayLike<number>, window: Window, put: PutSide): void {
  const { left, top, right, bottom } = window;
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
    const down = ring[j + 1]! < ring[i + 1]!;
    const [a, b] = down ? [j, i] : [i, j];
    let [x0, y0, x1, y1] = [ring[a]!, ring[a + 1]!, ring[b]!, ring[b + 1]!];
    if (y0 === y1 || y1 <= top || y0 >= bottom) continue;
    const side = { x0, y0, dx: x1 - x0, dy: y1 - y0 };
    if (y0 < top) [x0, y0] = [xAt(side, top), top];
    if (y1 > bottom) [x1, y1] = [xAt(side, bottom), bottom];
    const emit: PutSide = down ? put : (px, py, qx, qy) => put(qx, qy, px, py);
    pushed(x0, y0, x1, y1, left, right, emit);
  }
}

interface Side {
  readonly x0: number;
  readonly y0: number;
  readonly dx: number;
  readonly dy: number;
}

const xAt = ({ x0, y0, dx, dy }: Side, y: number): number => x0 + Math.floor(((y - y0) * dx) / dy);

/** A side that runs down, cut where it crosses the edges of the window, each part pushed inside. */
function pushed(
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  left: number,
  right: number,
  put: PutSide,
): void {
  const cuts = [y0, y1];
  for (const x of [left, right])
    if (x0 < x !== x1 < x) cuts.push(y0 + Math.floor(((x - x0) * (y1 - y0)) / (x1 - x0)));
  cuts.sort((p, q) => p - q);
  const inside = (x: number): number => Math.min(right, Math.max(left, x));
  const at = (y: number): number =>
    y === y0 ? x0 : y === y1 ? x1 : x0 + Math.floor(((y - y0) * (x1 - x0)) / (y1 - y0));
  for (let k = 1; k < cuts.length; k++) {
    const [from, to] = [cuts[k - 1]!, cuts[k]!];
    if (from < to) put(inside(at(from)), from, inside(at(to)), to);
  }
}
