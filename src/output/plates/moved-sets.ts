/** Sets that grow together, each entry with where it stands against its set's first: a union-find with moves. */
export function movedSets(count: number): {
  find: (i: number) => { root: number; x: number; y: number };
  areJoined: (i: number, j: number, dx: number, dy: number) => boolean;
  join: (i: number, j: number, dx: number, dy: number) => void;
  isEndless: (root: number) => boolean;
} {
  const parent = Int32Array.from({ length: count }, (_, i) => i);
  const [x, y] = [new Float64Array(count), new Float64Array(count)];
  const endless = new Uint8Array(count);
  const find = (i: number): { root: number; x: number; y: number } => {
    let [root, atX, atY] = [i, 0, 0];
    while (parent[root] !== root) {
      atX += x[root]!;
      atY += y[root]!;
      root = parent[root]!;
    }
    if (parent[i] !== root) {
      parent[i] = root;
      x[i] = atX;
      y[i] = atY;
    }
    return { root, x: atX, y: atY };
  };
  return {
    find,
    areJoined(i, j, dx, dy) {
      const [a, b] = [find(i), find(j)];
      return a.root === b.root && ((a.x + dx === b.x && a.y + dy === b.y) || endless[a.root] === 1);
    },
    join(i, j, dx, dy) {
      const [a, b] = [find(i), find(j)];
      if (a.root === b.root) {
        endless[a.root] = 1;
        return;
      }
      const [low, high] = a.root < b.root ? [a, b] : [b, a];
      const way = a.root < b.root ? 1 : -1;
      parent[high.root] = low.root;
      x[high.root] = low.x - high.x + way * dx;
      y[high.root] = low.y - high.y + way * dy;
      if (endless[high.root] === 1) endless[low.root] = 1;
    },
    isEndless: (root) => endless[root] === 1,
  };
}
