import { cosTurns, sinTurns } from "../seed/trigonometry.ts";
import type { Sketch } from "./sketch.ts";

/** Length of the controls of a quarter circle of radius 1: 4/3 (√2 - 1). Its area is off by 2.8e-4. */
const QUARTER = (4 / 3) * (Math.sqrt(2) - 1);

/** An ellipse as four curves, clockwise on the page from its rightmost point. */
export function drawEllipse(to: Sketch, cx: number, cy: number, rx: number, ry: number): void {
  const [kx, ky] = [rx * QUARTER, ry * QUARTER];
  to.move(cx + rx, cy);
  to.curve(cx + rx, cy + ky, cx + kx, cy + ry, cx, cy + ry);
  to.curve(cx - kx, cy + ry, cx - rx, cy + ky, cx - rx, cy);
  to.curve(cx - rx, cy - ky, cx - kx, cy - ry, cx, cy - ry);
  to.curve(cx + kx, cy - ry, cx + rx, cy - ky, cx + rx, cy);
  to.close();
}

/** An elliptical arc as SVG writes it, from where the pen is. */
export interface Arc {
  readonly rx: number;
  readonly ry: number;
  /** Turn of the ellipse's own axes, in degrees. */
  readonly turn: number;
  /** Whether it is the way round of half a turn or more. */
  readonly large: boolean;
  /** Whether it runs clockwise on the page. */
  readonly sweep: boolean;
  readonly x: number;
  readonly y: number;
}

/**
 * Draws an arc as curves of at most a quarter turn each. The geometry is that of SVG 2, appendix B.2.4, but done
 * with vectors on the unit circle and square roots alone, so that every engine gets the same numbers.
 */
export function drawArc(to: Sketch, arc: Arc): void {
  const [x0, y0] = to.at();
  const { x, y } = arc;
  if (x0 === x && y0 === y) return;
  if (arc.rx === 0 || arc.ry === 0) {
    to.line(x, y);
    return;
  }
  const c = cosTurns(arc.turn / 360);
  const s = sinTurns(arc.turn / 360);
  // Half the chord, in the space where the ellipse is the unit circle.
  const hx = (c * (x - x0) + s * (y - y0)) / 2 / arc.rx;
  const hy = (c * (y - y0) - s * (x - x0)) / 2 / arc.ry;
  // Radii too small for the chord grow until they fit.
  const grow = Math.sqrt(Math.max(1, hx * hx + hy * hy));
  const [ux, uy] = [hx / grow, hy / grow];
  const half = ux * ux + uy * uy;
  const away = Math.sqrt(Math.max(0, 1 - half) / half) * (arc.large === arc.sweep ? -1 : 1);
  const [cx, cy] = [-uy * away, ux * away]; // centre, seen from the middle of the chord
  const [rx, ry] = [arc.rx * grow, arc.ry * grow];
  const [mx, my] = [(x0 + x) / 2, (y0 + y) / 2];
  const page = (px: number, py: number): [number, number] => {
    const [vx, vy] = [(px + cx) * rx, (py + cy) * ry];
    return [mx + c * vx - s * vy, my + s * vx + c * vy];
  };
  const way = arc.sweep ? 1 : -1;
  let [px, py] = [-ux - cx, -uy - cy]; // from the centre to the start, then to each joint
  const [qx, qy] = [ux - cx, uy - cy];
  const step = (nx: number, ny: number, k: number, end: readonly [number, number]): void => {
    const one = page(px - way * py * k, py + way * px * k);
    const two = page(nx + way * ny * k, ny - way * nx * k);
    to.curve(one[0], one[1], two[0], two[1], end[0], end[1]);
    [px, py] = [nx, ny];
  };
  const quarter = (): void => {
    const [nx, ny] = [-way * py, way * px];
    step(nx, ny, QUARTER, page(nx, ny));
  };
  if (arc.large) {
    quarter();
    quarter();
  }
  if (px * qx + py * qy < 0) quarter();
  const cos = Math.min(1, Math.max(0, px * qx + py * qy));
  const sin = Math.max(0, way * (px * qy - py * qx));
  const cosHalf = Math.sqrt((1 + cos) / 2);
  const tanQuarter = sin / (2 * cosHalf) / (1 + cosHalf);
  step(qx, qy, (4 / 3) * tanQuarter, [x, y]);
}
