/**
 * The name in `known` that is fewest edits away from `given`, if it is near enough to be a slip: at most a third of the
 * letters given, one at the least, and fewer than half of the longer name, so that a name of one or two letters is no
 * slip of just any other ("x" of "a", "up" of "uv").
 * Distance after Levenshtein (1966): one edit inserts, drops or replaces one letter; and after Damerau (1964),
 * who counts two neighbours in the wrong order as one slip too.
 */
export function nearestName(given: string, known: readonly string[]): string | undefined {
  const wanted = given.slice(0, 64).toLowerCase();
  let best: string | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const name of known) {
    const distance = edits(wanted, name.toLowerCase());
    if (distance < least && (distance === 0 || 2 * distance < Math.max(wanted.length, name.length))) {
      least = distance;
      best = name;
    }
  }
  return least <= Math.max(1, Math.floor(wanted.length / 3)) ? best : undefined;
}

function edits(a: string, b: string): number {
  let above: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const swap = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      const turned = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      next.push(Math.min(swap, row[j]! + 1, next[j - 1]! + 1, turned ? above[j - 2]! + 1 : swap));
    }
    above = row;
    row = next;
  }
  return row[b.length]!;
}
