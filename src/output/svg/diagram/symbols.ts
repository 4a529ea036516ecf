/** A number as SVG text: mm to a thousandth. */
export const n = (value: number): string => String(Math.round(value * 1000) / 1000 + 0);

/** Text that XML takes as text. */
export const escaped = (text: string): string =>
  text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");

/** Half the root of three: height of a triangle of side 1. */
const ROW = Math.sqrt(3) / 2;

/**
 * The printed symbol of a centre of rotation, `r` mm about (x, y): a lens, a triangle, a square or a hexagon, filled,
 * as in the International Tables for Crystallography, Vol. A (IUCr), section 1.4 "Graphical symbols".
 */
export function rotationSymbol(order: 2 | 3 | 4 | 6, x: number, y: number, r: number): string {
  const corner = (u: number, v: number): string => `${n(x + u * r)} ${n(y + v * r)}`;
  const polygon = (...points: readonly (readonly [number, number])[]): string =>
    `M${points.map(([u, v]) => corner(u, v)).join("L")}Z`;
  if (order === 2)
    return `M${corner(0, -1.05)}Q${corner(0.95, 0)} ${corner(0, 1.05)}Q${corner(-0.95, 0)} ${corner(0, -1.05)}Z`;
  if (order === 3) return polygon([0, -1.1], [1.1 * ROW, 0.55], [-1.1 * ROW, 0.55]);
  if (order === 4) return polygon([-0.78, -0.78], [0.78, -0.78], [0.78, 0.78], [-0.78, 0.78]);
  return polygon([0, -1], [ROW, -0.5], [ROW, 0.5], [0, 1], [-ROW, 0.5], [-ROW, -0.5]);
}

/** An arrow from one point to another (mm), `clear` short of both, with a slender head `head` mm long. */
export function arrow(
  [fromX, fromY]: readonly [number, number],
  [pointX, pointY]: readonly [number, number],
  head: number,
  clear: number,
): { readonly shaft: string; readonly head: string } {
  const [dx, dy] = [pointX - fromX, pointY - fromY];
  const length = Math.sqrt(dx * dx + dy * dy);
  const [u, v] = [dx / length, dy / length];
  const [x, y] = [fromX + u * clear, fromY + v * clear];
  const [toX, toY] = [pointX - u * clear, pointY - v * clear];
  const back = (along: number, aside: number): string =>
    `${n(toX - u * along - v * aside)} ${n(toY - v * along + u * aside)}`;
  return {
    shaft: `M${n(x)} ${n(y)}L${back(head * 0.8, 0)}`,
    head: `M${n(toX)} ${n(toY)}L${back(head, head * 0.34)}L${back(head * 0.78, 0)}L${back(head, -head * 0.34)}Z`,
  };
}
