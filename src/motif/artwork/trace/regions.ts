/** Connected areas of one label. */
export interface Regions {
  /** Region of each pixel, numbered in reading order. */
  readonly of: Int32Array;
  readonly count: number;
  /** Pixels of each region. */
  readonly areas: Int32Array;
  /** Label of each region. */
  readonly labels: Uint8Array;
}

/**
 * Connected areas of equal labels. Pixels of a label hang together at their sides; those of labels that `atCorners`
 * holds at their corners too, so that a thin slanting line is one.
 */
export function regionsOf(labels: Uint8Array, width: number, atCorners: (label: number) => boolean): Regions {
  const of = new Int32Array(labels.length);
  let parents = new Int32Array(1024);
  let count = 0;
  const top = (region: number): number => {
    let at = region;
    while (parents[at] !== at) {
      parents[at] = parents[parents[at]!]!;
      at = parents[at]!;
    }
    return at;
  };
  const join = (i: number, j: number): void => {
    const [p, q] = [top(of[i]!), top(of[j]!)];
    if (p < q) parents[q] = p;
    else parents[p] = q;
  };
  for (let i = 0, x = 0; i < labels.length; i++, x = x + 1 === width ? 0 : x + 1) {
    const label = labels[i]!;
    const left = x > 0 && labels[i - 1] === label;
    const above = i >= width && labels[i - width] === label;
    if (left) of[i] = of[i - 1]!;
    else if (above) of[i] = of[i - width]!;
    else {
      if (count === parents.length) {
        const wider = new Int32Array(2 * count);
        wider.set(parents);
        parents = wider;
      }
      parents[count] = count;
      of[i] = count++;
    }
    if (left && above && of[i - width] !== of[i]) join(i, i - width);
    if (i < width || !atCorners(label)) continue;
    if (x > 0 && labels[i - width - 1] === label) join(i, i - width - 1);
    if (x + 1 < width && labels[i - width + 1] === label) join(i, i - width + 1);
  }
  return numbered(of, labels, count, top);
}

function numbered(
  of: Int32Array,
  labels: Uint8Array,
  count: number,
  top: (region: number) => number,
): Regions {
  const numbers = new Int32Array(count).fill(-1);
  const areas: number[] = [];
  const kinds: number[] = [];
  for (let i = 0; i < of.length; i++) {
    const root = top(of[i]!);
    let number = numbers[root]!;
    if (number < 0) {
      number = numbers[root] = areas.length;
      areas.push(0);
      kinds.push(labels[i]!);
    }
    of[i] = number;
    areas[number]!++;
  }
  return { of, count: areas.length, areas: Int32Array.from(areas), labels: Uint8Array.from(kinds) };
}
