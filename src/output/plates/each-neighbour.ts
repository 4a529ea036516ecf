import { modulo, type Size } from "../../geometry/lattice.ts";

/** Calls `visit` once for every two boxes on the torus that are within reach of each other, the second moved by (dx, dy). */
export function eachNeighbour(
  boxes: readonly Float64Array[],
  block: Size,
  reach: number,
  visit: (i: number, j: number, dx: number, dy: number) => void,
): void {
  const side = Math.max(500, Math.sqrt((block.width * block.height) / Math.max(1, boxes.length)));
  const [columns, rows] = [block.width, block.height].map((size) => Math.max(1, Math.floor(size / side)));
  const columnOf = (x: number): number => Math.floor((x * columns!) / block.width);
  const rowOf = (y: number): number => Math.floor((y * rows!) / block.height);
  const cells = new Map<number, { box: number; right: number; down: number }[]>();
  boxes.forEach((box, index) => {
    for (let r = rowOf(box[1]! - reach); r <= rowOf(box[3]! + reach); r++)
      for (let c = columnOf(box[0]! - reach); c <= columnOf(box[2]! + reach); c++) {
        const key = modulo(r, rows!) * columns! + modulo(c, columns!);
        const entry = { box: index, right: Math.floor(c / columns!), down: Math.floor(r / rows!) };
        const cell = cells.get(key);
        if (cell) cell.push(entry);
        else cells.set(key, [entry]);
      }
  });
  for (const [key, cell] of cells)
    cell.forEach((one, k) => {
      for (const other of cell.slice(k + 1)) {
        const [dx, dy] = [(one.right - other.right) * block.width, (one.down - other.down) * block.height];
        const [a, b] = [boxes[one.box]!, boxes[other.box]!];
        const x = Math.max(a[0]!, b[0]! + dx) - reach;
        const y = Math.max(a[1]!, b[1]! + dy) - reach;
        if (x > Math.min(a[2]!, b[2]! + dx) || y > Math.min(a[3]!, b[3]! + dy)) continue;
        // Two boxes share several cells: the one that holds the corner of what they share is taken.
        const [c, r] = [columnOf(x), rowOf(y)];
        if (Math.floor(c / columns!) !== one.right || Math.floor(r / rows!) !== one.down) continue;
        if (modulo(r, rows!) * columns! + modulo(c, columns!) !== key) continue;
        visit(one.box, other.box, dx, dy);
      }
    });
}
